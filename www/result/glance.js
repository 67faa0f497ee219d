// The result at a glance: what each run comes to, and all of them together.

import { html, nothing } from "../words/html.js";
import { fixed } from "../words/numbers.js";
import { bendTable } from "./bend-table.js";
import { costLines } from "./cost.js";
import { drawingPanel } from "./drawing.js";
import { runsTable } from "./runs-table.js";
import { piecesTable } from "./pieces.js";
import { inService } from "./service.js";
import { strip } from "./strip.js";

/** @import { Report, RunReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */

/** @param {Sheet} sheet */
export function glance(sheet) {
  const { report } = sheet;
  if (!report || report.runs.length === 0) {
    return html`<p class="nothing">No run yet. Once two ports and a run between them are stated, its length, volumes and mass stand here.</p>`;
  }
  return html`
    ${runsTable(sheet, report)} ${costLines(sheet, report)}
    ${report.runs.map((run) => runDetail(sheet, report, run))}`;
}

/**
 * @param {Sheet} sheet
 * @param {Report} report
 * @param {RunReport} run
 */
function runDetail(sheet, report, run) {
  if (!run.made) return nothing;
  const only = report.runs.length === 1;
  const selected = sheet.selected === run.name;
  const size = run.bounds_mm?.max.map((high, axis) => fixed(high - (run.bounds_mm?.min[axis] ?? 0), 1)).join(" × ");
  /** @param {Event} event */
  const toggled = (event) => {
    const open = /** @type {HTMLDetailsElement} */ (event.target).open;
    if (open !== selected) sheet.act.select(open ? run.name : null);
  };
  return html`<details class="run-detail" ?open=${selected || only} @toggle=${only ? nothing : toggled}>
    <summary><span dir="auto">${run.name}</span>: in service, bends and drawing</summary>
    ${selected || only ? html`${strip(run)} ${piecesTable(sheet, run)} ${inService(sheet, run)} ${bendTable(run, sheet.papers, sheet.design.runs.find((one) => one.name === run.name))}
      <p class="source">Outside size ${size} mm.</p> ${drawingPanel(sheet.papers, run)}` : nothing}
  </details>`;
}
