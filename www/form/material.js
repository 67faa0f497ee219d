// The figures of a material of the builder's own, grouped by the question that they answer. An empty figure is not known.

import { html } from "../words/html.js";
import { valueAt } from "../design/pointer.js";
import { choiceField, flagField, longTextField, numberField, row } from "./field.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "./sheet.js" */

const WAYS = ["resin", "powder", "filament"];
const NAMES = /** @type {Record<string, string>} */ ({ resin: say`resin`, powder: say`powder`, filament: say`filament` });

/**
 * @param {Sheet} sheet
 * @param {string} place
 */
export function materialFigures(sheet, place) {
  /** @type {(...keys: string[]) => import("./field.js").Field[]} */
  const known = (...keys) => keys.map((key) => numberField(sheet, `${place}/${key}`, { unknown: true }));
  const way = choiceField(sheet, `${place}/way`, {
    value: String(valueAt(sheet.design, `${place}/way`) ?? ""),
    options: [...WAYS, ""].map((value) => ({ value, label: NAMES[value] ?? say`Not known` })),
    take: (value) => sheet.act.set(`${place}/way`, value || null),
  });
  return html`
    ${row(sheet, [way, numberField(sheet, `${place}/density_g_per_cm3`)], "two")}
    ${group(say`Heat`, html`${row(sheet, known("hdt_180_c", "hdt_045_c", "glass_c", "expansion_um_per_m_k"), "two")}
      ${row(sheet, [flagField(sheet, `${place}/semicrystalline`)])}`)}
    ${group(say`Strength`, row(sheet, known("strength_mpa", "across_layers", "modulus_mpa", "elongation_percent"), "two"))}
    ${group(say`Wall and cost`, row(sheet, known("tight_from_mm", "roughness_um", "water_uptake_percent", "price_per_l"), "two"))}
    ${row(sheet, [longTextField(sheet, `${place}/cautions`)])}`;
}

/**
 * @param {string} name
 * @param {unknown} fields
 */
function group(name, fields) {
  return html`<fieldset class="group"><legend>${name}</legend>${fields}</fieldset>`;
}
