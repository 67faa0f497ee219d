// What the readings of a leak test say: how much of the fall is temperature, how much leaked, and whether that may be.

import { html, nothing } from "../words/html.js";
import { showTyped } from "../design/typed.js";
import { mark } from "../words/marks.js";
import { fixed } from "../words/numbers.js";
import { decimalsFor, significant } from "./figure.js";
import { linesTable } from "./lines.js";
import { say, within } from "../words/say.js";

/** @import { LeakReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { LeakTest } from "../design/types.js" */
/** @import { Line } from "./lines.js" */

/** @param {Sheet} sheet */
export function leakReading(sheet) {
  const { leak_test: stated } = sheet.design.loop;
  const read = sheet.report?.loop.leak_test;
  // What was read before says nothing of what is typed now.
  if (!stated || !read || !sheet.fresh) return html`<p class="nothing">Once every reading is filled in, what it says stands here.</p>`;
  return html`${verdict(sheet, stated, read)}
    ${linesTable(sheet, "leak-lines", html`<span class="unseen">What the leak test says</span>`, lines(sheet, stated, read))}`;
}

/**
 * @param {Sheet} sheet
 * @param {LeakTest} stated
 * @param {LeakReport} read
 */
function verdict(sheet, { limit_kpa, limit_minutes }, { passes, in_limit_time_kpa }) {
  const { unit } = sheet.words.result("/loop/leak_test/in_limit_time_kpa");
  const leaks = say`${fixed(in_limit_time_kpa, 2)} ${unit} leaks in ${showTyped(limit_minutes)} minutes; ${showTyped(limit_kpa)} ${unit} may`;
  return html`<p class="verdict" data-passes=${passes}>${mark(passes ? "fine" : "stop")}
    <span>${passes ? html`<b>Pass:</b> ${leaks}.` : html`<b>Fail:</b> ${leaks}. Do not fill it yet.`}</span></p>`;
}

/**
 * @param {Sheet} sheet
 * @param {LeakTest} stated
 * @param {LeakReport} read
 * @returns {Line[]}
 */
function lines(sheet, { limit_kpa, limit_minutes }, read) {
  const of = (/** @type {string} */ key) => `/loop/leak_test/${key}`;
  /** @type {(key: keyof LeakReport, value: number) => string} */
  const told = (key, value) => `${within(sheet.words.result(of(key)).label)} ${significant(value, 3)} ${sheet.words.result(of(key)).unit}`;
  const [least, most] = read.energy_j;
  return [
    { at: [of("fall_kpa")], value: read.fall_kpa, decimals: 2 },
    { at: [of("by_temperature_kpa"), of("per_kelvin_kpa")], value: read.by_temperature_kpa, decimals: 2,
      more: html`${told("per_kelvin_kpa", read.per_kelvin_kpa)}${read.by_temperature_kpa < 0 ? say`; it warmed up, which hides a leak` : nothing}` },
    { at: [of("by_leak_kpa")], value: read.by_leak_kpa, decimals: 2 },
    { at: [of("in_limit_time_kpa")], value: read.in_limit_time_kpa, limit: typeof limit_kpa === "number" ? limit_kpa : null, decimals: 2,
      more: say`in ${showTyped(limit_minutes)} minutes` },
    { at: [of("rate_mbar_l_per_s"), of("rate_sccm"), of("volume_ml")], value: read.rate_mbar_l_per_s,
      decimals: decimalsFor(read.rate_mbar_l_per_s, 2),
      more: `${told("rate_sccm", read.rate_sccm)}; ${told("volume_ml", read.volume_ml)}` },
    { at: [of("energy_j")], value: most, decimals: 0, more: say`at most; ${fixed(least, 0)} at least` },
  ];
}
