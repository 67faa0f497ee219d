// What is known of a shipped thing: the figures that matter most at once, the rest and where they come from a press away.

import { html, nothing } from "../words/html.js";
import { short } from "../words/numbers.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { Stuff } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** Keys that are told elsewhere or in words. */
const NO_FIGURES = ["name", "source", "cautions", "points", "look"];

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {Stuff} thing
 * @param {string[]} main keys, in their order
 * @param {unknown} [said] what is told of it beside its figures
 */
export function facts(sheet, place, thing, main, said = nothing) {
  const figures = /** @type {Record<string, unknown>} */ ({ ...thing });
  const rest = Object.keys(figures).filter((key) => !NO_FIGURES.includes(key) && !main.includes(key));
  const list = (/** @type {string[]} */ keys) => html`<dl class="facts">${keys.map((key) => fact(sheet, `${place}/${key}`, figures[key]))}</dl>`;
  const cautions = figures["cautions"];
  return html`<div class="known">
    ${main.length > 0 ? list(main) : nothing} ${said}
    ${cautions ? html`<p class="mind"><b>${sheet.words.quantity(`${place}/cautions`).label}:</b> ${engineWord(String(cautions))}</p>` : nothing}
    <details class="more"><summary>${rest.length > 0 ? say`All figures, and where they come from` : say`Where the figures come from`}</summary>
      ${rest.length > 0 ? list(rest) : nothing}
      <p class="source"><b>${sheet.words.quantity(`${place}/source`).label}:</b> ${thing.source ? engineWord(thing.source) : say`none is named`}</p>
    </details>
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {unknown} value
 */
function fact(sheet, place, value) {
  const quantity = sheet.words.quantity(Array.isArray(value) ? `${place}/*` : place);
  const unit = value === null || value === undefined || !quantity.unit ? nothing : html` <span class="unit">${quantity.unit}</span>`;
  return html`<div><dt>${quantity.label}</dt><dd class=${typeof value === "number" || Array.isArray(value) ? "figure" : nothing}>${told(value)}${unit}</dd></div>`;
}

/**
 * @param {unknown} value
 * @returns {string}
 */
function told(value) {
  if (value === null || value === undefined || value === "") return say`not known`;
  if (typeof value === "boolean") return value ? say`yes` : say`no`;
  if (Array.isArray(value)) return value.map(told).join(" × ");
  return typeof value === "number" ? short(value, 4) : engineWord(String(value));
}
