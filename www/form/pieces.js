// Where a run is cut into pieces, and the way to the fewest that fit the printer.

import { html, nothing } from "../words/html.js";
import { repeat } from "../vendor/directives/repeat.js";
import { identityOf } from "../design/identity.js";
import { counted, fixed } from "../words/numbers.js";
import { sign } from "../words/marks.js";
import { numberField, row } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { say } from "../words/say.js";

/** @import { Cut, Run } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** The runs whose pieces were unfolded: a fold that closed when its last cut goes would take the focus with it. @type {Set<number>} */
const unfolded = new Set();

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {number} index
 */
export function piecesPart(sheet, run, index) {
  const place = `/runs/${index}/cuts`;
  const cuts = run.cuts ?? [];
  const { mend, stop, care } = sheet.countUnder(place);
  const told = sheet.report?.runs.find(({ name }) => name === run.name);
  const length = told?.length_mm ?? undefined;
  const add = () => {
    const last = typeof cuts.at(-1)?.at === "number" ? Number(cuts.at(-1)?.at) : 0;
    const at = length === undefined ? "" : Number(((last + length) / 2).toFixed(1));
    sheet.act.update(place, (/** @type {Cut[]} */ all = []) => [...all, { at, stance: null }]);
    sheet.act.goTo(`${place}/${cuts.length}/at`);
  };
  return html`<details class="more" id=${idOf(place)} ?open=${cuts.length > 0 || mend + stop + care > 0 || unfolded.has(identityOf(run))}
    @toggle=${(/** @type {Event} */ event) => fold(run, /** @type {HTMLDetailsElement} */ (event.target).open)}>
    <summary>Pieces: <span class="source">${cuts.length === 0 ? say`printed whole` : say`cut into ${cuts.length + 1}`}</span></summary>
    <p class="source">A tube that does not fit the printer is cut, and its pieces are bonded: each slides into a socket on the next, a key lets it go in one way only, and rings count the joints.${length === undefined ? "" : say` It is ${fixed(length, 1)} mm long.`}</p>
    ${repeat(cuts, identityOf, (_, at) => cutRow(sheet, `${place}/${at}`, at))} ${notesAt(sheet, place)}
    <div class="adder">
      <button type="button" id="${idOf(place)}-find" ?disabled=${!sheet.fresh} @click=${() => sheet.act.cut(run.name)}>Find the fewest pieces<span class="unseen"> of ${run.name}</span></button>
      <button type="button" class="add" @click=${add}>${sign("add")}<span>Add a cut<span class="unseen"> to ${run.name}</span></span></button>
    </div>
    ${told && told.pieces.length > 1 ? html`<p class="source">Made in ${counted(told.pieces.length, "piece")}; how each stands is shown under <a href="#plate">On the plate</a>.</p>` : nothing}
  </details>`;
}

/**
 * @param {Run} run
 * @param {boolean} open
 */
function fold(run, open) {
  if (open) unfolded.add(identityOf(run));
  else unfolded.delete(identityOf(run));
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {number} index
 */
function cutRow(sheet, place, index) {
  const list = place.slice(0, place.lastIndexOf("/"));
  const remove = () => {
    sheet.act.update(list, (/** @type {Cut[]} */ all) => all.filter((_, at) => at !== index));
    document.getElementById(`${idOf(list)}-find`)?.focus();
  };
  return html`<div class="cut" id=${idOf(place)}>
    ${row(sheet, [numberField(sheet, `${place}/at`, { label: say`Cut ${index + 1} at` })])}
    <button type="button" class="quiet" id="${idOf(place)}-remove" @click=${remove}>${sign("remove")}<span class="unseen">Remove cut ${index + 1}</span></button>
    ${notesAt(sheet, place)}
  </div>`;
}
