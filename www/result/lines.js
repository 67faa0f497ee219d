// Results line by line: what each is, what it may be, what is left between them, and where it comes from.

import { html, nothing } from "../words/html.js";
import { mark } from "../words/marks.js";
import { fixed } from "../words/numbers.js";
import { askable } from "./origin.js";

/** @import { Sheet } from "../form/sheet.js" */

/**
 * A line. `at`: places of its numbers in the report, the one that names it first; `value` and `limit` are in its unit, to
 * so many decimals; `unit` and `label` stand in for the table's; `more` says what it comes of.
 * @typedef {{ at: string[], label?: string, unit?: string, value: number | null, limit?: number | null, decimals: number,
 *   more?: unknown }} Line
 */

/**
 * @param {Sheet} sheet
 * @param {string} id
 * @param {unknown} caption
 * @param {Line[]} lines
 */
export function linesTable(sheet, id, caption, lines) {
  return html`<div class="scroll" tabindex="0" role="region" aria-labelledby=${id}>
    <table class="figures service" data-stale=${!sheet.fresh}>
      <caption id=${id}>${caption}</caption>
      <thead class="unseen"><tr><th scope="col">What</th><th scope="col">Is</th><th scope="col">May be, and what is left</th></tr></thead>
      <tbody>${lines.map((line) => lineRow(sheet, line))}</tbody>
    </table>
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {Line} line
 */
function lineRow(sheet, { at, label, unit, value, limit, decimals, more }) {
  const words = sheet.words.result(at[0]);
  const shown = unit ?? words.unit;
  const said = label ?? words.label;
  const name = `${said.charAt(0).toUpperCase()}${said.slice(1)}`;
  const head = html`<th scope="row">${askable(sheet, name, at)}</th>`;
  // For the tests: which result it is, without the run that it is of.
  const key = at[0].replace(/^\/runs\/\d+\/service\//, "").replace(/\/\d+(?=\/|$)/g, "/*");
  if (value === null) return html`<tr data-result=${key}>${head}<td colspan="2" class="unknown">${more}</td></tr>`;
  return html`<tr data-result=${key}>${head}<td class="figure">${fixed(value, decimals)}${shown ? html` <span class="unit">${shown}</span>` : nothing}</td>
    <td class="against">${typeof limit === "number" ? against(value, limit, decimals, shown) : nothing}
      ${more ? html`<span class="source">${more}</span>` : nothing}</td></tr>`;
}

/**
 * "of 70 °C: 10 K left".
 * @param {number} value
 * @param {number} limit
 * @param {number} decimals
 * @param {string} unit
 */
function against(value, limit, decimals, unit) {
  const left = limit - value;
  // A difference of temperatures is in kelvin.
  const margin = html`<b>${fixed(Math.abs(left), decimals)}\u00a0${unit === "°C" ? "K" : unit}</b>`;
  return html`<span>may be ${fixed(limit, decimals)}\u00a0${unit}: ${left < 0 ? html`${mark("stop")} ${margin} too much` : html`${margin} left`}</span>`;
}
