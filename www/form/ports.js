// The ports: threaded holes, where they are and which way they face.

import { html, nothing } from "../vendor/lit-html.js";
import { live } from "../vendor/directives/live.js";
import { newPort } from "../design/fresh.js";
import { added } from "../design/lists.js";
import { pointIn, showTyped } from "../design/typed.js";
import { same } from "../words/presets.js";
import { addButton } from "./adder.js";
import { cards } from "./card.js";
import { choiceField, numberField, pointGroup, row, textField } from "./field.js";
import { notesAt } from "./notes.js";
import { section } from "./section.js";
import { idOf } from "./sheet.js";

/** @import { Port } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

const SIDES = [
  { label: "+x", facing: [1, 0, 0] },
  { label: "\u2212x", facing: [-1, 0, 0] },
  { label: "+y", facing: [0, 1, 0] },
  { label: "\u2212y", facing: [0, -1, 0] },
  { label: "+z", facing: [0, 0, 1] },
  { label: "\u2212z", facing: [0, 0, -1] },
];

/** @param {Sheet} sheet */
export function portsSection(sheet) {
  const body = html`${notesAt(sheet, "/ports")}
    ${cards(sheet, "ports", {
      one: "port",
      open: sheet.design.ports.length <= 12,
      short: (port) => `${port.at.map((part) => showTyped(part) || "?").join(", ")}, faces ${sideOf(port)?.label ?? "its own way"}`,
      body: (port, index, pointer) => portBody(sheet, port, index, pointer),
    })}
    ${addButton("ports", "Add a port", () => {
      sheet.act.change((design) => {
        sheet.act.goTo(`/ports/${design.ports.length}/name`);
        return added(design, "ports", newPort(design, sheet.words));
      });
    })}`;
  return section("ports", "Ports", "The threaded holes that the tubes join, measured from one datum of your choice, z up.", body);
}

/**
 * @param {Sheet} sheet
 * @param {Port} port
 * @param {number} index
 * @param {string} pointer
 */
function portBody(sheet, port, index, pointer) {
  return html`
    ${row(sheet, [
      textField(sheet, `${pointer}/name`, { take: (name) => sheet.act.rename("ports", index, name) }),
      choiceField(sheet, `${pointer}/fitting`, {
        value: port.fitting,
        blank: sheet.design.fittings.length > 0 ? "Choose a fitting" : "Add a fitting above first",
        options: sheet.design.fittings.map(({ name }) => ({ value: name, label: name })),
        take: (fitting) => sheet.act.set(`${pointer}/fitting`, fitting),
      }),
    ], "two")}
    <div class="row at">
      ${pointGroup(sheet, `${pointer}/at`, { notes: false })} ${numberField(sheet, `${pointer}/measured_to`).body}
    </div>
    ${["at/0", "at/1", "at/2", "at", "measured_to"].map((key) => notesAt(sheet, `${pointer}/${key}`))}
    ${facing(sheet, port, pointer)}`;
}

/**
 * @param {Sheet} sheet
 * @param {Port} port
 * @param {string} pointer
 */
function facing(sheet, port, pointer) {
  const place = `${pointer}/facing`;
  const quantity = sheet.words.quantity(`${place}/*`);
  const side = sideOf(port);
  const own = side === undefined || sheet.cards.isOpen(port.facing, false);
  const name = idOf(`${place}/side`);
  const { problems, findings } = sheet.notes(place);
  const described = problems.length + findings.length > 0 ? `${idOf(place)}-notes` : nothing;
  /** @param {number[]} value */
  const take = (value) => {
    sheet.cards.set(port.facing, false);
    sheet.act.set(place, [...value]);
  };
  const askOwn = () => {
    sheet.cards.set(port.facing, true);
    sheet.act.redraw();
  };
  return html`<fieldset class="facing" id=${idOf(place)} aria-describedby=${described}>
    <legend title=${quantity.hint}>${quantity.label}</legend>
    <div class="sides">
      ${SIDES.map((one) => html`<label><input type="radio" name=${name} .checked=${live(!own && one === side)}
        @change=${() => take(one.facing)}><span>${one.label}</span></label>`)}
      <label class="wide"><input type="radio" name=${name} .checked=${live(own)} @change=${askOwn}><span>other</span></label>
    </div>
    ${own
      ? html`<div class="row three">${["x", "y", "z"].map((axis, part) => numberField(sheet, `${place}/${part}`, { label: axis, spoken: quantity.label }).body)}</div>`
      : nothing}
    ${[0, 1, 2].map((part) => notesAt(sheet, `${place}/${part}`))} ${notesAt(sheet, place)}
  </fieldset>`;
}

/** @param {Port} port */
function sideOf(port) {
  const typed = pointIn(port.facing);
  return typed && SIDES.find((one) => same(one.facing, typed));
}
