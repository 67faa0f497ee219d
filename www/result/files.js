// The files: one of each kind for a run, all at once, and the design itself.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { language } from "../words/language.js";
import { mark } from "../words/marks.js";
import { askedOf } from "./asked.js";
import { PLOTS } from "./graphs.js";
import { say } from "../words/say.js";

/** @import { Finding, RunReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { Stood } from "../plate/plate.js" */
/** @import { Asked, Fineness } from "./asked.js" */
/** @import { PlotKind } from "./graphs.js" */

/** @typedef {{ kind: "stl" | "3mf" | "bend-table" | "points" | "drawing" | PlotKind | "all" | "pack" | "design" | "coupon" | "plate", run?: string, deviation?: Fineness, flip?: boolean, from?: string,
 *   stance?: Stood | true, piece?: number, plate?: number, format?: "3mf" | "stl", compensated?: boolean }} FileRequest */
/** @typedef {{ deviation: Fineness, setDeviation: (deviation: Fineness) => void, asked: Asked, making: boolean, compensated: boolean,
 *   setCompensated: (compensated: boolean) => void, save: (request: FileRequest) => void }} FilesState */

/** Tables and drawing of a run: what the engine calls each, and the button's words. */
const PAPERS = /** @type {const} */ ([["bend-table", say`Bends (.csv)`], ["points", say`Points (.csv)`], ["drawing", say`Drawing (.svg)`]]);

/** How far the printed skin may leave the exact one, in words. */
export const FINENESS = /** @type {const} */ ([
  { deviation: 0.01, name: say`Fine`, words: say`0.01 mm: for a print service` },
  { deviation: 0.02, name: say`Normal`, words: say`0.02 mm: smaller files` },
  { deviation: 0.05, name: say`Coarse`, words: say`0.05 mm: smallest, for a first try` },
  { deviation: "fit", name: say`As it fits`, words: say`the finest file that the printer’s limits of a file take` },
]);

/**
 * @param {Sheet} sheet
 * @param {FilesState} state
 */
export function files(sheet, state) {
  const runs = sheet.report?.runs ?? [];
  const made = sheet.fresh ? runs.filter((run) => run.made).length : 0;
  const why = !sheet.fresh ? say`Fill in or mend what is marked first.` : "";
  return html`
    <fieldset class="fineness">
      <legend>How closely the files follow the exact shape</legend>
      ${FINENESS.map(({ deviation, name, words }) => html`<label>
        <input type="radio" name="fineness" .checked=${live(state.deviation === deviation)} @change=${() => state.setDeviation(deviation)}>
        <span><b>${name}</b> <span class="unit">${words}</span></span></label>`)}
    </fieldset>
    ${correction(sheet, state)}
    ${why ? html`<p class="trouble">${why}</p>` : nothing}
    <ul class="file-list">${runs.map((run, index) => runFiles(sheet, state, run, index))}</ul>
    ${runs.length > 0 ? plotFiles(sheet, state) : nothing}
    <div class="adder">
      <!-- Not disabled while the pack is made: the focus would be lost. -->
      <button type="button" class="main" id="pack" ?disabled=${made === 0} aria-disabled=${state.making} aria-describedby="pack-is"
        @click=${() => state.save({ kind: "pack", deviation: state.deviation })}>${state.making ? say`Making the pack…` : say`The pack: files, sheet, coupon (.zip)`}</button>
      <button type="button" class="main" ?disabled=${made === 0}
        @click=${() => state.save({ kind: "all", deviation: state.deviation })}>All files in one (.zip)</button>
      <button type="button" ?disabled=${!sheet.fresh} @click=${() => state.save({ kind: "design" })}>Save the design (.json)</button>
    </div>
    <p class="source" id="pack-is">The pack has each tube as it stands on the plate, and a sheet that tells a print service what to print and you how to
      finish and fit it. All files in one has the tubes where they are in your own axes.</p>
    ${language() === "en" ? nothing : html`<p class="source">Sheet, drawings and plots are in the page’s language; names in STL and 3MF and the heads of tables are in English, for programs.</p>`}
    <p class="unseen" role="status">${state.making ? say`Making the pack.` : ""}</p>
    ${sheet.words.cautions.length > 0
      ? html`<section class="cautions" aria-labelledby="cautions-title"><h3 id="cautions-title">Before you print and fill</h3>
          <ul>${sheet.words.cautions.map((caution) => html`<li>${caution}</li>`)}</ul></section>`
      : nothing}`;
}

/**
 * Whether the meshes are corrected by the coupon: a choice only where there is something to correct them by.
 * @param {Sheet} sheet
 * @param {FilesState} state
 */
function correction(sheet, state) {
  if (sheet.report?.fit.state !== "applied") return nothing;
  return html`<div class="flag">
    <input id="compensated" type="checkbox" aria-describedby="compensated-hint" .checked=${live(state.compensated)}
      @change=${(/** @type {Event} */ event) => state.setCompensated(/** @type {HTMLInputElement} */ (event.target).checked)}>
    <label for="compensated">Correct STL and 3MF by my coupon</label>
    <span class="source" id="compensated-hint">For your printer; leave it off for a print service, which corrects for its own.</span>
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {FilesState} state
 * @param {RunReport} run
 * @param {number} index
 */
function runFiles(sheet, state, run, index) {
  const stops = stopsOf(sheet, run.name);
  const id = `files-${index}`;
  const off = !run.made || !sheet.fresh;
  const warning = !run.made
    ? say`No file: this run cannot be made as it is stated.${stops[0] ? ` ${stops[0].message}` : ""}`
    : stops.length > 0 ? say`Do not print this yet: ${stops.map((stop) => stop.message).join(" ")}` : "";
  return html`<li>
    <span class="file-name" dir="auto" id="${id}-name">${run.name}</span>
    ${/** @type {const} */ (["stl", "3mf"]).map((kind) => html`<button type="button" ?disabled=${off} aria-describedby=${warning ? `${id}-warning` : nothing}
      @click=${() => state.save({ kind, run: run.name, deviation: state.deviation })}>${kind.toUpperCase()}<span class="unseen"> of ${run.name}</span></button>`)}
    ${PAPERS.map(([kind, words]) => html`<button type="button" ?disabled=${off} aria-describedby=${warning ? `${id}-warning` : nothing}
      @click=${() => state.save({ kind, run: run.name, ...(kind === "bend-table" ? asFed(sheet) : {}) })}>${words}<span class="unseen"> of ${run.name}</span></button>`)}
    ${run.pieces.length > 1 ? pieceFiles(state, run, off, warning ? `${id}-warning` : nothing) : nothing}
    ${warning ? html`<p class="note stop" id="${id}-warning">${mark("stop")}<span>${warning}</span></p>` : nothing}
    ${run.made ? askedOf(sheet, state.asked, run.name, `${id}-asked`) : nothing}
  </li>`;
}

/**
 * What is printed of a cut run: its own files are of it put together, or of all pieces in place.
 * @param {FilesState} state
 * @param {RunReport} run
 * @param {boolean} off
 * @param {unknown} describedBy
 */
function pieceFiles(state, run, off, describedBy) {
  return html`<div class="piece-files" role="group" aria-label="Pieces of ${run.name}">
    <p class="source">Printed in pieces: take these, or the pack. The STL above is the tube put together, the 3MF all its pieces in place.</p>
    ${run.pieces.map((_, at) => html`<span class="file-name">Piece ${at + 1} of ${run.pieces.length}</span>
      ${/** @type {const} */ (["stl", "3mf"]).map((kind) => html`<button type="button" ?disabled=${off} aria-describedby=${describedBy}
        @click=${() => state.save({ kind, run: run.name, piece: at + 1, deviation: state.deviation, stance: true })}>${kind.toUpperCase()}, standing<span class="unseen"> as piece ${at + 1} of ${run.name}</span></button>`)}`)}
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {FilesState} state
 */
function plotFiles(sheet, state) {
  return html`<div class="plot-files" role="group" aria-labelledby="plot-files-name"><span class="file-name" id="plot-files-name">Plots of all runs and the loop</span>
    ${PLOTS.map(([kind, words]) => html`<button type="button" ?disabled=${!sheet.fresh} @click=${() => state.save({ kind })}>${words} (.svg)<span
      class="unseen">: plot</span></button>`)}</div>`;
}

/**
 * The file of a bend table is told as the page tells it.
 * @param {Sheet} sheet
 */
function asFed({ papers: { feed } }) {
  return { flip: feed.flip, from: feed.fromEnd ? "end" : "start" };
}

/**
 * The stops that speak against printing a run.
 * @param {Sheet} sheet
 * @param {string} run
 * @returns {Finding[]}
 */
function stopsOf(sheet, run) {
  return sheet.report?.findings.filter((finding) => finding.severity === "stop" && finding.run === run) ?? [];
}
