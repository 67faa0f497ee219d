// The plots in the page: pictures that read without colour, the same in words, and a file of each.

import { html, nothing } from "../words/html.js";
import { ref } from "../vendor/directives/ref.js";
import { PLOTS } from "./graphs.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "../form/sheet.js" */
/** @import { FilesState } from "./files.js" */
/** @import { Graphs, Plot, PlotKind } from "./graphs.js" */

/**
 * @param {Sheet} sheet
 * @param {Graphs} graphs
 * @param {FilesState["save"]} save
 */
export function plotsPanel(sheet, graphs, save) {
  if (!sheet.report || sheet.report.runs.length === 0) return html`<p class="nothing">No run yet. Once there is one, its loss, margins and temperatures are drawn here.</p>`;
  return html`<div class="plots" ${ref(graphs.stand)}>${PLOTS.map(([kind, short]) => plotFigure(graphs, kind, short, sheet.fresh, save))}</div>`;
}

/**
 * @param {Graphs} graphs
 * @param {PlotKind} kind
 * @param {string} short
 * @param {boolean} fresh
 * @param {FilesState["save"]} save
 */
function plotFigure(graphs, kind, short, fresh, save) {
  const { plot, trouble, stale } = graphs.shown(kind);
  if (!plot) return html`<p class="nothing" data-plot=${kind}>${trouble || say`Drawing…`}</p>`;
  return html`<figure class="plot-figure" data-plot=${kind} data-edition=${plot.edition} data-stale=${stale}>
    ${plot.picture}
    ${fresh ? nothing : html`<p class="source">Drawn of the design as it was before the last change.</p>`}
    <figcaption>
      <details class="more"><summary>In words<span class="unseen">: ${plot.title}</span></summary>${inWords(plot)}</details>
      <button type="button" ?disabled=${!fresh} @click=${() => save({ kind })}>Save it (.svg)<span class="unseen">: ${short}</span></button>
    </figcaption>
  </figure>`;
}

/**
 * The picture's own text alternative, a sentence a line.
 * @param {Plot} plot
 */
function inWords({ told }) {
  return html`<ul class="told">${told.split(/(?<=\.) (?=[\p{Lu}\d“„])/u).map((sentence) => html`<li dir="auto">${sentence}</li>`)}</ul>`;
}
