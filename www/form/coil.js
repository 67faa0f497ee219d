// The fields of a coil, below its station's point: axis, radii, pitch, turns, hand, where it starts.

import { html } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { say } from "../words/say.js";
import { directionGroup } from "./direction.js";
import { numberField, row } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";

/** @import { Coil } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

// The document's own words; a key that is missing means the first.
const HANDS = /** @type {const} */ (["right", "left"]);
const NAMES = { right: say`right`, left: say`left` };

/**
 * @param {Sheet} sheet
 * @param {Coil} coil
 * @param {string} place of the coil
 */
export function coilFields(sheet, coil, place) {
  /** @param {string} key */
  const number = (key) => numberField(sheet, `${place}/${key}`);
  return html`<div class="coil" id=${idOf(place)}>
    ${directionGroup(sheet, `${place}/axis`)}
    ${row(sheet, [
      number("radius"),
      numberField(sheet, `${place}/end_radius`, { optional: true, stands: sheet.lengths.shown(coil.radius) }),
      number("pitch"),
      number("turns"),
    ], "four")}
    <div class="row two">${handChoice(sheet, coil, `${place}/hand`)} ${number("start_deg").body}</div>
    ${notesAt(sheet, `${place}/hand`)} ${notesAt(sheet, `${place}/start_deg`)} ${notesAt(sheet, place)}
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {Coil} coil
 * @param {string} place
 */
function handChoice(sheet, coil, place) {
  const quantity = sheet.words.quantity(place);
  const chosen = coil.hand ?? HANDS[0];
  return html`<fieldset class="hand" id=${idOf(place)}>
    <legend title=${quantity.hint}>${quantity.label}</legend>
    <div class="sides">
      ${HANDS.map((hand) => html`<label class="wide"><input type="radio" name="${idOf(place)}-hand" .checked=${live(hand === chosen)}
        @change=${() => sheet.act.set(place, hand)}><span>${NAMES[hand]}</span></label>`)}
    </div>
  </fieldset>`;
}
