// What the tubes are made of and on, and what their strength is lessened by.

import { html } from "../words/html.js";
import { showTyped } from "../design/typed.js";
import { numberField, pointGroup, row } from "./field.js";
import { lookFields } from "./look.js";
import { materialFigures } from "./material.js";
import { notesAt } from "./notes.js";
import { section } from "./section.js";
import { servicePrices } from "./service-price.js";
import { idOf } from "./sheet.js";
import { stuff } from "./stuff.js";
import { listed } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "./sheet.js" */

const FACTORS = /** @type {const} */ (["warm", "lasting", "safety"]);

/** @param {Sheet} sheet */
export function makingSection(sheet) {
  const { materials, printers } = sheet.presets;
  const body = html`${notesAt(sheet, "/process")}
    ${stuff(sheet, "/process/material", materials, {
      main: ["hdt_180_c", "strength_mpa", "elongation_percent", "tight_from_mm"],
      figures: (place) => materialFigures(sheet, place),
    })}
    ${lookFields(sheet)} ${factors(sheet)} ${joint(sheet)}
    ${stuff(sheet, "/process/printer", printers, {
      main: ["build_volume", "least_wall", "tolerance"],
      figures: (place) => html`${pointGroup(sheet, `${place}/build_volume`)}
        ${row(sheet, [numberField(sheet, `${place}/least_wall`), numberField(sheet, `${place}/tolerance`, { unknown: true })], "two")}
        ${printerFigures(sheet, place)}`,
    })}
    ${servicePrices(sheet)}`;
  return section("making", say`Making`, say`What the tubes are printed in and on. The shipped figures are cautious ones of a class: put in those of the sheet that came with yours.`, body);
}

/**
 * What a printer needs of the way that a tube stands in it.
 * @param {Sheet} sheet
 * @param {string} place
 */
function printerFigures(sheet, place) {
  const known = (/** @type {string} */ key) => numberField(sheet, `${place}/${key}`, { unknown: true });
  return html`${row(sheet, [numberField(sheet, `${place}/margin`, { optional: true }), known("bridge_mm")], "two")}
    ${row(sheet, [known("overhang_deg"), known("bore_deg")], "two")}
    ${row(sheet, [known("layer_mm"), known("spot_mm"), known("seconds_per_layer")], "three")}
    ${row(sheet, [known("most_triangles"), known("most_mb")], "two")}`;
}

/**
 * How pieces of a cut run are joined.
 * @param {Sheet} sheet
 */
function joint(sheet) {
  const place = "/process/joint";
  const { mend, stop, care } = sheet.countUnder(place);
  const number = (/** @type {string} */ key) => numberField(sheet, `${place}/${key}`);
  return html`<details class="more" id=${idOf(place)} ?open=${mend + stop + care > 0}>
    <summary>How pieces of a cut tube are joined</summary>
    ${row(sheet, [number("length"), number("clearance"), number("wall")], "three")} ${row(sheet, [number("key_depth"), number("bond_mpa")], "two")}
    <p class="source">Bond strength as the adhesive's data sheet gives it for this plastic, warm and wet: halve it where the sheet says nothing. Gloves, fresh air, and the sheet's own cautions. Leave the leak test to run after it has cured.</p>
    ${notesAt(sheet, place)}
  </details>`;
}

/** @param {Sheet} sheet */
function factors(sheet) {
  const place = "/process/factors";
  const { mend, stop, care } = sheet.countUnder(place);
  const stated = sheet.design.process.factors;
  return html`<details class="more" id=${idOf(place)} ?open=${mend + stop + care > 0}>
    <summary>What strength is lessened by${stated ? html`: <span class="source">${listed(FACTORS.map((key) => showTyped(stated[key]) || "?"))}</span>` : ""}</summary>
    ${row(sheet, FACTORS.map((key) => numberField(sheet, `${place}/${key}`)), "three")} ${notesAt(sheet, place)}
  </details>`;
}
