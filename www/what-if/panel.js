// The panel that tries the design in other sizes and materials: what to try, the chart and the table.

import { html, nothing } from "../words/html.js";
import { guard } from "../vendor/directives/guard.js";
import { live } from "../vendor/directives/live.js";
import { mark, SEVERITY } from "../words/marks.js";
import { counted, short } from "../words/numbers.js";
import { chart } from "./chart.js";
import { readSizes, toggled } from "./sizes.js";
import { variantsTable } from "./table.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "../form/sheet.js" */
/** @import { SizeList, WhatIf } from "./what-if.js" */

const KEYS = /** @type {const} */ ({ outer_diameters: "outer_diameter", bores: "bore" });

/**
 * @param {Sheet} sheet
 * @param {WhatIf} whatIf
 */
export function whatIfPanel(sheet, whatIf) {
  if (sheet.design.runs.length === 0) return html`<p class="nothing">No run yet. Once there is one, other sizes and materials can be tried on it here.</p>`;
  return html`<details class="what-if" ?open=${whatIf.open} @toggle=${(/** @type {Event} */ event) => whatIf.unfold(/** @type {HTMLDetailsElement} */ (event.target).open)}>
    <summary>Try other sizes and materials, side by side</summary>
    ${whatIf.open ? opened(sheet, whatIf) : nothing}
  </details>`;
}

/**
 * @param {Sheet} sheet
 * @param {WhatIf} whatIf
 */
function opened(sheet, whatIf) {
  const { rows, trouble, fresh, marked } = whatIf;
  return html`<div class="what-if-body">
    <p class="about">Your design stays as it is until you take a variant over; then one press undoes it. Ways and bend radii stay as they are.</p>
    ${scope(sheet, whatIf)} ${sizes(sheet, whatIf, "outer_diameters")} ${sizes(sheet, whatIf, "bores")} ${materials(sheet, whatIf)}
    <div class="adder"><button type="button" id="what-if-anew" @click=${() => whatIf.startOver()}>Start over from the design</button></div>
    <p class="variants-count" role="status">${statusWords(sheet, whatIf)}</p>
    ${trouble.words !== "" && trouble.list === "" ? html`<p class="trouble">${trouble.words}</p>` : nothing}
    ${rows.length > 0 ? html`<div class="variants-answer" data-stale=${!fresh}>
        ${guard([rows, whatIf.order, marked], () => variantsTable(sheet, whatIf))} ${guard([rows, whatIf.axes, marked], () => chart(sheet.words, whatIf))}
      </div>` : nothing}
  </div>`;
}

/**
 * Which runs are changed; nothing to choose where there is one.
 * @param {Sheet} sheet
 * @param {WhatIf} whatIf
 */
function scope({ design }, whatIf) {
  if (design.runs.length < 2) return nothing;
  /** @param {Event} event */
  const take = (event) => whatIf.only(/** @type {HTMLSelectElement} */ (event.target).value || null);
  return html`<div class="field">
    <label for="what-if-run">Change</label>
    <select id="what-if-run" .value=${live(whatIf.run ?? "")} @change=${take}>
      <option value="" ?selected=${whatIf.run === null}>all ${design.runs.length} runs</option>
      ${design.runs.map(({ name }) => html`<option value=${name} ?selected=${whatIf.run === name}>only ${name}</option>`)}
    </select>
  </div>`;
}

/**
 * A list of sizes to type, and those in trade use to press.
 * @param {Sheet} sheet
 * @param {WhatIf} whatIf
 * @param {SizeList} list
 */
function sizes(sheet, whatIf, list) {
  const key = KEYS[list];
  const { label, unit } = sheet.words.quantity(`/runs/*/tube/${key}`);
  const id = `what-if-${list}`;
  const text = whatIf.text(list);
  const error = whatIf.error(list);
  const chosen = readSizes(text).sizes;
  const inTrade = [...new Set(sheet.presets.tubes.map(({ tube }) => Number(tube[key])))].sort((a, b) => a - b);
  /** @param {Event} event */
  const take = (event) => whatIf.type(list, /** @type {HTMLInputElement} */ (event.target).value);
  return html`<div class="field sizes">
    <label for=${id}>${label}s <span class="unit">${unit}</span></label>
    <input id=${id} type="text" class="number" autocomplete="off" spellcheck="false" placeholder="as it is"
      aria-describedby="${error ? `${id}-error ` : ""}${id}-hint" aria-invalid=${error ? "true" : "false"} .value=${live(text)} @input=${take}>
    <span class="unseen" id="${id}-hint">One size or several with commas between them, such as 12, 14.5, 16. Empty leaves each run as it is.</span>
    ${error ? html`<ul class="notes" id="${id}-error"><li class="note mend">${mark("mend")}<p><b>${SEVERITY.mend}:</b> ${error}</p></li></ul>` : nothing}
    <div class="chips" role="group" aria-label="${label}s in trade use">
      <span class="group-name" aria-hidden="true">In trade use:</span>
      ${inTrade.map((size) => html`<button type="button" class="number" aria-pressed=${chosen.includes(size)} @click=${() => whatIf.type(list, toggled(whatIf.text(list), size))}>${short(size)}</button>`)}
    </div>
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {WhatIf} whatIf
 */
function materials({ design, presets, words }, whatIf) {
  const { material } = design.process;
  const now = typeof material === "object" ? material.name : material;
  return html`<fieldset class="ticks">
    <legend>${words.quantity("/process/material").label}s <span class="unit">none ticked: as it is${now ? html`, <span dir="auto">${engineWord(now)}</span>` : nothing}</span></legend>
    ${presets.materials.map(({ name }) => html`<label class="check"><input type="checkbox" .checked=${live(whatIf.materials.has(name))}
      @change=${(/** @type {Event} */ event) => whatIf.tick(name, /** @type {HTMLInputElement} */ (event.target).checked)}> ${engineWord(name)}</label>`)}
  </fieldset>`;
}

/**
 * @param {Sheet} sheet
 * @param {WhatIf} whatIf
 */
function statusWords({ design }, whatIf) {
  const { rows, fresh, waiting } = whatIf;
  if (rows.length === 0) return waiting ? say`Being worked out…` : "";
  const made = rows.filter((row) => row.feasible).length;
  const stopped = rows.length - made;
  const words = say`${counted(rows.length, "variant")}${whatIf.run === null && design.runs.length > 1 ? say`, of ${counted(design.runs.length, "run")} together` : ""}: ${made} can be made${stopped > 0 ? say`, ${stopped} stopped` : ""}.`;
  if (fresh) return words;
  return waiting ? say`${words} Being worked out anew…` : say`${words} This is as it was before; what is marked has to be mended first.`;
}
