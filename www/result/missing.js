// What has to be stated for a result that cannot be told, and a way to its place.

import { html } from "../words/html.js";
import { valueAt } from "../design/pointer.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "../form/sheet.js" */

/** The figures of material and coolant that each result follows from: all of them, or any one. */
const NEEDS = /** @type {const} */ ({
  heat: { any: ["/process/material/hdt_180_c", "/process/material/glass_c"] },
  growth: { all: ["/process/material/expansion_um_per_m_k"] },
  strength: { all: ["/process/material/strength_mpa", "/process/material/across_layers"] },
  cost: { all: ["/process/material/price_per_l"] },
  service_price: { all: ["/process/service/price_per_cm3"] },
  flow: { any: ["/loop/coolant/base", "/loop/coolant/viscosity_mpa_s"] },
});

/**
 * @param {Sheet} sheet
 * @param {keyof typeof NEEDS | "seal"} result
 * @param {string} [port] the seal's
 */
export function missing(sheet, result, port) {
  if (result === "seal") return sealMissing(sheet, port ?? "");
  const needs = NEEDS[result];
  const any = "any" in needs;
  const places = (any ? needs.any : needs.all).filter((place) => unknown(sheet, place));
  // Where one would do and is there, something else is wrong, such as a temperature at which the coolant freezes.
  if (places.length === 0 || (any && places.length < needs.any.length)) return html`cannot be told: see what is found`;
  const ways = places.map((place) => way(sheet, place, sheet.words.quantity(place).label));
  return html`not known: needs ${ways.map((one, at) => html`${at > 0 ? (any ? say` or ` : say` and `) : ""}${one}`)}`;
}

/**
 * A preset stands by its name until the engine has written it out; its figures are known to the engine.
 * @param {Sheet} sheet
 * @param {string} place
 */
function unknown(sheet, place) {
  const holder = valueAt(sheet.design, place.slice(0, place.lastIndexOf("/")));
  if (typeof holder !== "object" || holder === null) return false;
  return (valueAt(sheet.design, place) ?? null) === null;
}

/**
 * @param {Sheet} sheet
 * @param {string} port
 */
function sealMissing(sheet, port) {
  const fitting = sheet.design.ports.find((one) => one.name === port)?.fitting;
  const at = sheet.design.fittings.findIndex((one) => one.name === fitting);
  if (at < 0 || sheet.design.fittings[at].seal) return html`cannot be told: see what is found`;
  return html`not known: needs ${way(sheet, `/fittings/${at}/seal`, say`the O-ring and gland of ${fitting}`)}`;
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {string} words
 */
function way(sheet, place, words) {
  return html`<button type="button" class="link" @click=${() => sheet.act.goTo(place)}>${words}</button>`;
}
