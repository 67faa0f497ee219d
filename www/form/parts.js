// What else the coolant passes: blocks, radiators, reservoirs, each with what it costs at one flow and what it holds.

import { html, nothing } from "../words/html.js";
import { repeat } from "../vendor/directives/repeat.js";
import { newPart } from "../design/fresh.js";
import { identityOf } from "../design/identity.js";
import { sign } from "../words/marks.js";
import { addChooser } from "./adder.js";
import { numberField, row, textField } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { Part } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

const LIST = "/loop/parts";

/** @param {Sheet} sheet */
export function partsList(sheet) {
  const parts = sheet.design.loop.parts ?? [];
  const { parts: shipped } = sheet.presets;
  /** @param {string} choice */
  const add = (choice) => {
    sheet.act.update(LIST, (/** @type {Part[]} */ all = []) => [...all, newPart(all, shipped[Number(choice)])]);
    sheet.act.goTo(`${LIST}/${parts.length}/name`);
  };
  return html`<fieldset class="parts" id=${idOf(LIST)}>
    <legend>Parts of the loop</legend>
    ${parts.length === 0 ? html`<p class="nothing">None yet: without them the pump has only the tubes to drive.</p>` : nothing}
    ${notesAt(sheet, LIST)}
    ${repeat(parts, identityOf, (part, index) => partRows(sheet, part, index))}
    ${addChooser("parts", say`Add a part`, [
      ...shipped.map((part, at) => ({ value: String(at), label: engineWord(part.name) })),
      { value: "own", label: say`Measure yours` },
    ], add)}
    ${sources(shipped)}
  </fieldset>`;
}

/**
 * @param {Sheet} sheet
 * @param {Part} part
 * @param {number} index
 */
function partRows(sheet, part, index) {
  const place = `${LIST}/${index}`;
  const remove = () => {
    sheet.act.update(LIST, (/** @type {Part[]} */ all) => all.filter((_, at) => at !== index));
    requestAnimationFrame(() => {
      const near = [index, index - 1].map((at) => document.getElementById(`${idOf(`${LIST}/${at}`)}-remove`));
      (near.find(Boolean) ?? document.getElementById("add-parts"))?.focus();
    });
  };
  /** @type {(key: string) => import("./field.js").Field} */
  const number = (key) => numberField(sheet, `${place}/${key}`);
  return html`<fieldset class="loop-part" id=${idOf(place)}>
    <legend class="unseen">${part.name || say`Part ${index + 1}`}</legend>
    <div class="row which">${textField(sheet, `${place}/name`).body}
      <button type="button" class="quiet" id="${idOf(place)}-remove" @click=${remove}>
        ${sign("remove")}<span class="unseen">Remove ${part.name || say`part ${index + 1}`}</span></button></div>
    ${notesAt(sheet, `${place}/name`)} ${row(sheet, [number("drop_kpa"), number("at_l_per_h"), number("volume_ml")], "three")}
    ${notesAt(sheet, place)}
  </fieldset>`;
}

/** @param {(Part & { source?: string })[]} shipped */
function sources(shipped) {
  const named = shipped.filter((part) => part.source);
  if (named.length === 0) return nothing;
  return html`<details class="more"><summary>Where the shipped figures come from</summary>
    <ul class="source">${named.map((part) => html`<li>${engineWord(part.name)}: ${engineWord(part.source ?? "")}</li>`)}</ul></details>`;
}
