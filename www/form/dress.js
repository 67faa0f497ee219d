// A run's dress: the shape of its body between the leads, or none for plain tube.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { newDress } from "../design/fresh.js";
import { numberField, row } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";

/** @import { Dress, Run } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** The dress that each run had when it was taken off, so that putting it on again brings it back. @type {Map<string, Dress>} */
const off = new Map();

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {string} pointer of the run
 */
export function dressPart(sheet, run, pointer) {
  const place = `${pointer}/dress`;
  const worn = run.dress ?? null;
  const { label, hint } = sheet.words.quantity(place);
  const take = () => {
    if (worn) off.set(run.name, worn);
    sheet.act.set(place, worn ? null : off.get(run.name) ?? newDress(run, sheet.words));
  };
  /** @type {(key: string, stands?: string) => import("./field.js").Field} */
  const number = (key, stands) => numberField(sheet, `${place}/${key}`, stands === undefined ? {} : { optional: true, stands });
  const plain = sheet.lengths.shown(run.tube.outer_diameter);
  return html`<fieldset class="choice" id=${idOf(place)}>
    <legend class="unseen">${label}</legend>
    <label title=${hint}><input type="checkbox" .checked=${live(worn !== null)} @change=${take}>
      ${label}</label>
    ${worn
      ? html`${row(sheet, [number("diameter", plain), number("end_diameter", sheet.lengths.shown(worn.diameter ?? plain)), number("blend")], "three")}
        ${row(sheet, [number("lobes"), number("depth"), number("twist_deg_per_mm")], "three")}`
      : nothing}
    ${notesAt(sheet, place)}
  </fieldset>`;
}
