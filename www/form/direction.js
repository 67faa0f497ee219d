// A direction: one of six along the axes at a press, or any other as three numbers.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { valueAt } from "../design/pointer.js";
import { pointIn } from "../design/typed.js";
import { same } from "../words/presets.js";
import { numberField } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";

/** @import { Point } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

const SIDES = [
  { label: "+x", way: [1, 0, 0] },
  { label: "\u2212x", way: [-1, 0, 0] },
  { label: "+y", way: [0, 1, 0] },
  { label: "\u2212y", way: [0, -1, 0] },
  { label: "+z", way: [0, 0, 1] },
  { label: "\u2212z", way: [0, 0, -1] },
];

/**
 * @param {Sheet} sheet
 * @param {string} place of the direction in the design
 */
export function directionGroup(sheet, place) {
  const value = /** @type {Point} */ (valueAt(sheet.design, place));
  const quantity = sheet.words.quantity(`${place}/*`);
  const side = sideOf(value);
  const own = side === undefined || sheet.cards.isOpen(value, false);
  const name = idOf(`${place}/side`);
  const { problems, findings } = sheet.notes(place);
  const described = problems.length + findings.length > 0 ? `${idOf(place)}-notes` : nothing;
  /** @param {number[]} way */
  const take = (way) => {
    sheet.cards.set(value, false);
    sheet.act.set(place, [...way]);
  };
  const askOwn = () => {
    sheet.cards.set(value, true);
    sheet.act.redraw();
  };
  return html`<fieldset class="facing" id=${idOf(place)} aria-describedby=${described}>
    <legend title=${quantity.hint}>${quantity.label}</legend>
    <div class="sides">
      ${SIDES.map((one) => html`<label><input type="radio" name=${name} .checked=${live(!own && one === side)}
        @change=${() => take(one.way)}><span>${one.label}</span></label>`)}
      <label class="wide"><input type="radio" name=${name} .checked=${live(own)} @change=${askOwn}><span>other</span></label>
    </div>
    ${own
      ? html`<div class="row three">${["x", "y", "z"].map((axis, part) => numberField(sheet, `${place}/${part}`, { label: axis, spoken: quantity.label }).body)}</div>`
      : nothing}
    ${[0, 1, 2].map((part) => notesAt(sheet, `${place}/${part}`))} ${notesAt(sheet, place)}
  </fieldset>`;
}

/**
 * The one of the six that a direction is, if it is one of them.
 * @param {Point} direction
 */
export function sideOf(direction) {
  const typed = pointIn(direction);
  return typed && SIDES.find((one) => same(one.way, typed));
}
