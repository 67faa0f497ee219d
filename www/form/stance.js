// A run's own stance on the printer's plate, or none where the best that is found is taken.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { directionGroup } from "./direction.js";
import { numberField, row } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";

/** @import { Run, Stance } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** The stance that each run had when it was left to the best, so that having its own again brings it back. @type {Map<string, Stance>} */
const off = new Map();

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {string} pointer of the run
 */
export function stancePart(sheet, run, pointer) {
  const place = `${pointer}/stance`;
  const own = run.stance ?? null;
  const { label, hint } = sheet.words.quantity(place);
  const take = () => {
    if (own) off.set(run.name, own);
    sheet.act.set(place, own ? null : off.get(run.name) ?? { up: [0, 0, 1], turn_deg: 0 });
  };
  return html`<fieldset class="choice" id=${idOf(place)}>
    <legend class="unseen">${label}</legend>
    <label title=${hint}><input type="checkbox" .checked=${live(own !== null)} @change=${take}>
      ${label}</label>
    ${own ? html`${directionGroup(sheet, `${place}/up`)} ${row(sheet, [numberField(sheet, `${place}/turn_deg`, { optional: true, stands: "0" })])}` : nothing}
    ${notesAt(sheet, place)}
  </fieldset>`;
}
