// All runs in one table: where each goes, what it is and comes to, and the worst that is found about it.

import { html, nothing } from "../words/html.js";
import { showTyped } from "../design/typed.js";
import { countedKind, mark, WORST_FIRST } from "../words/marks.js";
import { fixed } from "../words/numbers.js";
import { say } from "../words/say.js";
import { askable, whereFrom } from "./origin.js";

/** @import { Report, RunReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */

const FIGURES = ["length_mm", "material_mm3", "bore_mm3", "mass_g"];

/**
 * @param {Sheet} sheet
 * @param {Report} report
 */
export function runsTable(sheet, report) {
  return html`<div class="scroll" tabindex="0" role="region" aria-labelledby="runs-table-caption">
    <table class="figures runs-table" data-stale=${!sheet.fresh}>
      <caption class="unseen" id="runs-table-caption">All runs and what each comes to</caption>
      <thead><tr>
        <th scope="col">Run</th>
        ${FIGURES.map((key) => head(sheet, `/runs/*/${key}`))}
        <th scope="col" class="figure">Bends</th>
        <th scope="col">Found</th>
      </tr></thead>
      <tbody>${report.runs.map((run) => row(sheet, report, run))}</tbody>
      ${report.runs.length > 1
        ? html`<tfoot><tr><th scope="row">${askable(sheet, say`All runs made`, FIGURES.map((key) => `/totals/${key}`))}</th>${figures(report.totals)}
            <td class="figure">${report.runs.reduce((sum, run) => sum + bendsOf(run), 0)}</td><td></td></tr></tfoot>`
        : nothing}
    </table>
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {string} path
 */
function head(sheet, path) {
  const { label, unit } = sheet.words.result(path);
  return html`<th scope="col" class="figure">${label} <span class="unit">${unit === "mm³" ? "cm³" : unit}</span></th>`;
}

/**
 * @param {Sheet} sheet
 * @param {Report} report
 * @param {RunReport} run
 */
function row(sheet, report, run) {
  const stated = sheet.design.runs.find((one) => one.name === run.name);
  const selected = sheet.selected === run.name;
  return html`<tr data-selected=${selected}>
    <th scope="row">
      <span class="asked"><button type="button" class="link" dir="auto" aria-pressed=${selected} @click=${() => sheet.act.select(selected ? null : run.name)}>${run.name}</button>
        ${run.made ? whereFrom(sheet, [...FIGURES, "coolant_g"].map((key) => `/runs/${report.runs.indexOf(run)}/${key}`), run.name) : nothing}</span>
      ${stated
        ? html`<span class="way"><span dir="auto">${stated.from}</span> → <span dir="auto">${stated.to}</span></span>
            <span class="way">${showTyped(stated.tube.outer_diameter)} × ${showTyped(stated.tube.bore)} <span class="unit">${sheet.words.quantity("/runs/*/tube/bore").unit}</span></span>`
        : nothing}
    </th>
    ${run.made
      ? html`${figures(run)}<td class="figure">${bendsOf(run)}</td>`
      : html`<td colspan="5" class="unmade">cannot be made as it is stated</td>`}
    <td class="found">${worst(report, run.name)}</td>
  </tr>`;
}

/** @param {Pick<RunReport, "length_mm" | "material_mm3" | "bore_mm3" | "mass_g">} from */
function figures(from) {
  // 1000 mm3 are a cubic centimetre.
  const cubic = (/** @type {number | null} */ value) => (value === null ? null : value / 1000);
  return html`<td class="figure">${fixed(from.length_mm, 1)}</td><td class="figure">${fixed(cubic(from.material_mm3), 2)}</td>
    <td class="figure">${fixed(cubic(from.bore_mm3), 2)}</td><td class="figure">${fixed(from.mass_g, 1)}</td>`;
}

/** @param {RunReport} run */
function bendsOf(run) {
  return run.bend_table.filter((line) => line.kind !== "end").length;
}

/**
 * The worst kind of finding about a run, and how many of it there are.
 * @param {Report} report
 * @param {string} run
 */
function worst(report, run) {
  const about = report.findings.filter((finding) => finding.run === run);
  const severity = WORST_FIRST.find((kind) => about.some((finding) => finding.severity === kind));
  if (!severity) return html`${mark("fine")} <span class="unseen">nothing</span>`;
  const count = about.filter((finding) => finding.severity === severity).length;
  return html`${mark(severity)} ${countedKind(severity, count)}`;
}
