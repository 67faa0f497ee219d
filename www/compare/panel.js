// The panel that tells what sets another design and this one apart.

import { html, nothing } from "../words/html.js";
import { ACCEPTED } from "../design/open.js";
import { fixed } from "../words/numbers.js";
import { changeWords, length, offset, signed, stationWords } from "./told.js";
import { say } from "../words/say.js";

/** @import { Change, Difference, PortDifference, RunDifference, ThingDifference } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { Vocabulary } from "../words/vocabulary.js" */
/** @import { Comparing } from "./comparing.js" */

/**
 * @param {Sheet} sheet
 * @param {Comparing} comparing
 */
export function comparePanel(sheet, comparing) {
  const { name, difference, trouble } = comparing;
  return html`
    ${name === ""
      ? html`<p class="about">Hold a saved design beside this one: a friend's of the same case, or your own from last week. Your design stays as it is.</p>`
      : html`<p class="about">From <b dir="auto">${name}</b> to the design here.</p>`}
    <div class="adder">
      <input hidden id="compare-file" type="file" accept=${ACCEPTED} aria-label="Design file to compare with"
        @change=${(/** @type {Event} */ event) => comparing.openFrom(/** @type {HTMLInputElement} */ (event.target))}>
      <button type="button" id="compare-choose" @click=${() => document.getElementById("compare-file")?.click()}>${name === "" ? say`Compare with a design file…` : say`Another file…`}</button>
      ${difference && difference.ports.some((port) => port.by_mm !== null && port.was === null)
        ? html`<button type="button" @click=${() => comparing.takePorts()}>Take its ports, keep my shape</button>`
        : nothing}
      ${name === "" ? nothing : html`<button type="button" @click=${() => { comparing.stop(); document.getElementById("compare-choose")?.focus(); }}>Stop comparing</button>`}
    </div>
    ${trouble ? html`<p class="trouble">${trouble}</p>` : nothing}
    ${difference ? told(sheet, difference) : nothing}`;
}

/**
 * @param {Sheet} sheet
 * @param {Difference} difference
 */
function told({ words }, difference) {
  if (difference.alike) return html`<p class="all-fine" id="compared">Nothing differs.</p>`;
  const { ports, runs, fittings, keep_outs, settings } = difference;
  return html`<div class="compared" id="compared">
    ${ports.length > 0 ? portsTable(words, ports) : nothing}
    ${runs.length > 0 ? runsTable(words, difference) : nothing}
    ${fittings.length > 0 ? things(words, say`Fittings that differ`, fittings) : nothing}
    ${keep_outs.length > 0 ? things(words, say`Keep-outs that differ`, keep_outs) : nothing}
    ${settings.length > 0 ? html`<h3>The rest</h3>${changeList(words, settings)}` : nothing}
  </div>`;
}

/**
 * @param {Vocabulary} words
 * @param {PortDifference[]} ports
 */
function portsTable(words, ports) {
  return html`<div class="scroll" tabindex="0" role="region" aria-labelledby="compared-ports">
    <table class="figures">
      <caption id="compared-ports">Ports that differ</caption>
      <thead><tr><th scope="col">Port</th><th scope="col" class="figure">Moved <span class="unit">mm</span></th>
        <th scope="col" class="figure">x, y, z <span class="unit">mm</span></th><th scope="col" class="figure">Turned <span class="unit">°</span></th></tr></thead>
      <tbody>${ports.map((port) => html`<tr><th scope="row">${named(port)} ${changeList(words, port.changes)}</th>
        <td class="figure">${port.moved_mm === null ? "–" : port.moved_mm > 0 ? length(port.moved_mm) : "0"}</td>
        <td class="figure">${port.by_mm && port.moved_mm ? offset(port.by_mm) : "–"}</td>
        <td class="figure">${port.turned_deg === null ? "–" : fixed(port.turned_deg, 1)}</td></tr>`)}</tbody>
    </table></div>`;
}

/**
 * @param {Vocabulary} words
 * @param {Difference} difference
 */
function runsTable(words, { runs, totals }) {
  /** @type {(run: Pick<RunDifference, "length_mm" | "mass_g">) => unknown} */
  const figures = ({ length_mm, mass_g }) => html`<td class="figure">${fixed(length_mm.before, 1)}</td>
    <td class="figure">${fixed(length_mm.after, 1)}</td><td class="figure">${signed(length_mm.change, 1)}</td>
    <td class="figure">${signed(mass_g.change, 1)}</td>`;
  return html`<div class="scroll" tabindex="0" role="region" aria-labelledby="compared-runs">
    <table class="figures">
      <caption id="compared-runs">Runs that differ</caption>
      <thead><tr><th scope="col">Run</th><th scope="col" class="figure">Length there <span class="unit">mm</span></th>
        <th scope="col" class="figure">Length here <span class="unit">mm</span></th><th scope="col" class="figure">Change <span class="unit">mm</span></th>
        <th scope="col" class="figure">Mass change <span class="unit">g</span></th></tr></thead>
      <tbody>${runs.map((run) => html`<tr><th scope="row">${named(run)} ${changeList(words, run.changes)}
        ${run.stations.length > 0 ? html`<ul class="changes">${run.stations.map((station) => html`<li>${stationWords(words, station)}</li>`)}</ul>` : nothing}</th>
        ${figures(run)}</tr>`)}</tbody>
      <tfoot><tr><th scope="row">All runs made</th>${figures(totals)}</tr></tfoot>
    </table></div>`;
}

/**
 * @param {Vocabulary} words
 * @param {string} title
 * @param {ThingDifference[]} list
 */
function things(words, title, list) {
  return html`<h3>${title}</h3><ul class="changes">${list.map((thing) => html`<li>${named(thing)} ${changeList(words, thing.changes)}</li>`)}</ul>`;
}

/** @param {ThingDifference} thing */
function named({ name, was, fate }) {
  const words = was !== null ? html`<span class="unit">was <span dir="auto">${was}</span></span>`
    : fate === "added" ? html`<span class="unit">only here</span>` : fate === "removed" ? html`<span class="unit">only there</span>` : nothing;
  return html`<b dir="auto">${name}</b> ${words}`;
}

/**
 * @param {Vocabulary} words
 * @param {Change[]} changes
 */
function changeList(words, changes) {
  if (changes.length === 0) return nothing;
  return html`<ul class="changes">${changes.map((change) => html`<li>${changeWords(words, change)}</li>`)}</ul>`;
}
