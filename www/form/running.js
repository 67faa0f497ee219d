// What goes through the tubes: which coolant, how much of it, how warm, at what pressure, and which way is up.

import { html } from "../words/html.js";
import { valueAt } from "../design/pointer.js";
import { directionGroup } from "./direction.js";
import { choiceField, numberField, row } from "./field.js";
import { notesAt } from "./notes.js";
import { section } from "./section.js";
import { stuff } from "./stuff.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "./sheet.js" */

const BASES = ["water", "ethylene glycol", "propylene glycol"];
const NAMES = /** @type {Record<string, string>} */ ({ water: say`water`, "ethylene glycol": say`ethylene glycol`, "propylene glycol": say`propylene glycol` });

/** @param {Sheet} sheet */
export function runningSection(sheet) {
  /** @type {(...keys: string[]) => import("./field.js").Field[]} */
  const numbers = (...keys) => keys.map((key) => numberField(sheet, `/loop/${key}`));
  const body = html`${notesAt(sheet, "/loop")}
    ${stuff(sheet, "/loop/coolant", sheet.presets.coolants, {
      main: ["base", "density_g_per_cm3"],
      figures: (place) => coolantFigures(sheet, place),
    })}
    ${row(sheet, numbers("flow_l_per_h", "pressure_kpa", "test_kpa"), "three")}
    ${row(sheet, numbers("cold_c", "working_c", "fault_c"), "three")}
    ${directionGroup(sheet, "/loop/up")}`;
  return section("running", say`Running`, say`What goes through the tubes, how warm and at what pressure.`, body);
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 */
function coolantFigures(sheet, place) {
  const base = String(valueAt(sheet.design, `${place}/base`) ?? "");
  const made = choiceField(sheet, `${place}/base`, {
    value: base,
    options: [...BASES, ""].map((value) => ({ value, label: NAMES[value] ?? say`Something else` })),
    take: (value) => sheet.act.set(`${place}/base`, value || null),
  });
  // What a base gives the engine reckons itself, so that an empty viscosity is only then not known.
  const viscosity = numberField(sheet, `${place}/viscosity_mpa_s`, base ? { unknown: true, stands: say`from what it is made of` } : { unknown: true });
  return html`${row(sheet, [made, numberField(sheet, `${place}/glycol_percent`)], "two")}
    ${row(sheet, [numberField(sheet, `${place}/density_g_per_cm3`), viscosity], "two")}`;
}
