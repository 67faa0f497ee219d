// What can be done with a run as a whole: copied, told from its other end, mirrored onto ports of its own.

import { html } from "../words/html.js";
import { readTyped } from "../design/typed.js";
import { unitMark } from "./field.js";
import { idOf } from "./sheet.js";

/** @import { Run } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {number} index
 */
export function runEdits(sheet, run, index) {
  const id = `${idOf(`/runs/${index}`)}-edits`;
  const { name } = run;
  // The engine puts a copy and a mirrored run right behind the one they come from.
  const next = `/runs/${index + 1}/name`;
  const position = sheet.words.quantity("/ports/*/at/*");
  const mirror = () => {
    const [across, at] = ["across", "at"].map((part) => /** @type {HTMLInputElement | HTMLSelectElement | null} */ (document.getElementById(`${id}-${part}`))?.value ?? "");
    sheet.act.edit({ edit: "mirror", run: name, across, at: readTyped(at, sheet.lengths.size) }, next);
  };
  return html`<details class="more run-edits" id=${id}>
    <summary>Copy, turn round or mirror</summary>
    <div class="adder">
      <button type="button" @click=${() => sheet.act.edit({ edit: "copy", run: name }, next)}>Copy<span class="unseen"> ${name}</span></button>
      <button type="button" @click=${() => sheet.act.edit({ edit: "reverse", run: name }, `/runs/${index}/from`)}>Turn round<span class="unseen"> ${name}: start at its other end</span></button>
    </div>
    <fieldset class="mirror" aria-describedby="${id}-about">
      <legend>Mirror across a plane</legend>
      <p class="source" id="${id}-about">The mirrored run gets mirrored ports, or those that are there already.</p>
      <div class="row mirror">
        <div class="field"><label for="${id}-across">Across</label>
          <select id="${id}-across">${["x", "y", "z"].map((axis) => html`<option value=${axis}>${axis}</option>`)}</select></div>
        <div class="field"><label for="${id}-at">${position.label}${unitMark(sheet, position)}</label>
          <input id="${id}-at" type="text" inputmode="decimal" autocomplete="off" spellcheck="false"></div>
        <button type="button" @click=${mirror}>Mirror<span class="unseen"> ${name}</span></button>
      </div>
    </fieldset>
  </details>`;
}
