// What the tubes are made of and on, and what runs through them.

import { html, nothing } from "../vendor/lit-html.js";
import { valueAt } from "../design/pointer.js";
import { same } from "../words/presets.js";
import { numberField, pointGroup, row, textField } from "./field.js";
import { isBad, notesAt } from "./notes.js";
import { section } from "./section.js";
import { idOf } from "./sheet.js";

/** @import { Material, Printer } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** @param {Sheet} sheet */
export function makingSection(sheet) {
  const { materials, printers, coolants } = sheet.presets;
  /** @param {string} key */
  const number = (key) => numberField(sheet, `/loop/${key}`);
  const body = html`
    ${notesAt(sheet, "/process")}
    ${stuff(sheet, "/process/material", materials, (place) => row(sheet, [numberField(sheet, `${place}/density_g_per_cm3`)], "two"))}
    ${stuff(sheet, "/process/printer", printers, (place) => html`
      ${pointGroup(sheet, `${place}/build_volume`)} ${row(sheet, [numberField(sheet, `${place}/least_wall`)], "two")}`)}
    ${stuff(sheet, "/loop/coolant", coolants, (place) => row(sheet, [numberField(sheet, `${place}/density_g_per_cm3`)], "two"))}
    ${notesAt(sheet, "/loop")}
    ${row(sheet, [number("flow_l_per_h"), number("pressure_kpa"), number("working_c"), number("fault_c")], "four")}`;
  return section("making", "Making and running", "What the tubes are printed in and on, and what goes through them.", body);
}

/**
 * A material, printer or coolant: one of the shipped ones, or with its own figures.
 * @param {Sheet} sheet
 * @param {string} place
 * @param {(Material | Printer)[]} shipped
 * @param {(place: string) => unknown} figures
 */
function stuff(sheet, place, shipped, figures) {
  const value = /** @type {string | Material | Printer} */ (valueAt(sheet.design, place));
  const chosen = shipped.findIndex((one) => same(one, value) || one.name === value);
  const preset = shipped[chosen];
  const own = chosen < 0;
  const quantity = sheet.words.quantity(place);
  const id = own ? `${idOf(place)}-which` : idOf(place);
  /** @param {Event} event */
  const take = (event) => {
    const choice = /** @type {HTMLSelectElement} */ (event.target).value;
    if (choice !== "own") sheet.act.set(place, structuredClone(shipped[Number(choice)]));
    else if (preset) sheet.act.set(place, { ...structuredClone(preset), name: `own ${preset.name}`, source: "" });
  };
  return html`<fieldset class="stuff" id=${own ? idOf(place) : nothing}>
    <legend class="unseen">${quantity.label}</legend>
    <div class="row">
      <div class="field">
        <label for=${id}>${quantity.label}</label>
        <select id=${id} aria-describedby="${id}-hint" aria-invalid=${isBad(sheet, place) ? "true" : "false"} @change=${take}>
          ${shipped.map((one, at) => html`<option value=${at} .selected=${at === chosen}>${one.name}</option>`)}
          <option value="own" .selected=${own}>Own figures</option>
        </select>
        <span class="unseen" id="${id}-hint">${quantity.hint}</span>
      </div>
    </div>
    ${notesAt(sheet, place)}
    ${own && typeof value === "object"
      ? html`${row(sheet, [textField(sheet, `${place}/name`)])} ${figures(place)}
        ${value.source === undefined ? nothing : row(sheet, [textField(sheet, `${place}/source`)])}`
      : html`<p class="source">${facts(preset)}</p>`}
  </fieldset>`;
}

/**
 * A shipped thing's figures and where they come from.
 * @param {Material | Printer | undefined} preset
 */
function facts(preset) {
  if (!preset) return "";
  const figures =
    "build_volume" in preset
      ? `${preset.build_volume.join(" × ")} mm, walls from ${preset.least_wall} mm.`
      : `${preset.density_g_per_cm3} g/cm³.`;
  return preset.source ? `${figures} Source: ${preset.source}` : figures;
}
