// The pump: a shipped one, or its own curve as a small table of what it lifts at which flow.

import { html, nothing } from "../words/html.js";
import { valueAt } from "../design/pointer.js";
import { numberIn, showTyped } from "../design/typed.js";
import { short } from "../words/numbers.js";
import { addButton } from "./adder.js";
import { numberField } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { stuff } from "./stuff.js";
import { sign } from "../words/marks.js";
import { say, within } from "../words/say.js";

/** @import { Pump, PumpPoint, Stuff } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

const PLACE = "/loop/pump";
const KEYS = /** @type {const} */ (["flow_l_per_h", "head_m"]);
// A curve has two points at least.
const LEAST = 2;

/** @param {Sheet} sheet */
export function pumpPart(sheet) {
  return stuff(sheet, PLACE, sheet.presets.pumps, {
    main: [],
    said: (preset) => curveInWords(sheet, preset),
    figures: (place) => pointsTable(sheet, `${place}/points`),
  });
}

/**
 * "Head 4 m at 0 L/h, 0 m at 1000 L/h."
 * @param {Sheet} sheet
 * @param {Stuff} preset
 */
function curveInWords(sheet, preset) {
  const [flow, head] = KEYS.map((key) => sheet.words.quantity(`${PLACE}/points/*/${key}`));
  const points = /** @type {Pump} */ (preset).points ?? [];
  /** @param {PumpPoint} point */
  const words = (point) => say`${told(point.head_m)} ${head.unit} at ${told(point.flow_l_per_h)} ${flow.unit}`;
  return html`<p>${head.label}: ${points.map(words).join(", ")}.</p>`;
}

/** @param {unknown} value */
function told(value) {
  const number = numberIn(value);
  return number === undefined ? showTyped(value) : short(number);
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 */
function pointsTable(sheet, place) {
  const points = /** @type {PumpPoint[]} */ (valueAt(sheet.design, place) ?? []);
  const [flow, head] = KEYS.map((key) => sheet.words.quantity(`${place}/*/${key}`));
  const add = () => {
    sheet.act.update(place, (/** @type {PumpPoint[]} */ all) => [...all, { flow_l_per_h: "", head_m: "" }]);
    sheet.act.goTo(`${place}/${points.length}/flow_l_per_h`);
  };
  return html`<div id=${idOf(place)}>
    <table class="points">
      <caption class="unseen">${head.label} by ${within(flow.label)}</caption>
      <thead><tr>
        <th scope="col">${flow.label} <span class="unit">${flow.unit}</span></th>
        <th scope="col">${head.label} <span class="unit">${head.unit}</span></th>
        <td></td>
      </tr></thead>
      <tbody>${points.map((_, index) => pointRows(sheet, place, index, points.length))}</tbody>
    </table>
    ${notesAt(sheet, place)}
    ${addButton("pump-points", say`Add a point`, add)}
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {string} list
 * @param {number} index
 * @param {number} count
 */
function pointRows(sheet, list, index, count) {
  const place = `${list}/${index}`;
  const notes = [...KEYS.map((key) => notesAt(sheet, `${place}/${key}`)), notesAt(sheet, place)].filter((note) => note !== nothing);
  const remove = () => {
    if (count <= LEAST) return;
    sheet.act.update(list, (/** @type {PumpPoint[]} */ all) => all.filter((_, at) => at !== index));
    // What stands in its place has the focus next.
    sheet.act.goTo(`${list}/${Math.min(index, count - 2)}/flow_l_per_h`);
  };
  return html`<tr>
      ${KEYS.map((key) => html`<td>${numberField(sheet, `${place}/${key}`, { spoken: say`Point ${index + 1}:` }).body}</td>`)}
      <td><button type="button" class="quiet" id="${idOf(place)}-remove" aria-disabled=${count <= LEAST} @click=${remove}>
        ${sign("remove")}<span class="unseen">Remove point ${index + 1}</span></button></td>
    </tr>
    ${notes.length > 0 ? html`<tr><td colspan="3">${notes}</td></tr>` : nothing}`;
}
