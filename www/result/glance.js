// The result at a glance: what each run comes to, and all of them together.

import { html, nothing } from "../vendor/lit-html.js";
import { fixed } from "../words/numbers.js";
import { bendTable } from "./bend-table.js";
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
    <div class="scroll" tabindex="0" role="region" aria-labelledby="glance-caption">
      <table class="figures" data-stale=${!sheet.fresh}>
        <caption class="unseen" id="glance-caption">What each run comes to</caption>
        <thead><tr>
          <th scope="col">Run</th>
          ${[["Length", "mm"], ["Material", "cm³"], ["Coolant", "mL"], ["Mass", "g"]].map(([name, unit]) =>
            html`<th scope="col" class="figure">${name} <span class="unit">${unit}</span></th>`)}
        </tr></thead>
        <tbody>${report.runs.map((run) => html`<tr>
          <th scope="row" dir="auto">${run.name}</th>${figures(run)}
        </tr>`)}</tbody>
        ${report.runs.length > 1
          ? html`<tfoot><tr><th scope="row">All runs made</th>${figures(report.totals)}</tr></tfoot>`
          : nothing}
      </table>
    </div>
    ${report.runs.map((run) => runDetail(sheet, report, run))}`;
}

/** @param {Pick<RunReport, "length_mm" | "material_mm3" | "bore_mm3" | "mass_g"> & { made?: boolean }} from */
function figures(from) {
  if (from.made === false) return html`<td colspan="4" class="unmade">cannot be made as it is stated</td>`;
  // 1000 mm3 are a cubic centimetre, which is a millilitre.
  const cubic = (/** @type {number | null} */ value) => (value === null ? null : value / 1000);
  return html`<td class="figure">${fixed(from.length_mm, 1)}</td><td class="figure">${fixed(cubic(from.material_mm3), 2)}</td>
    <td class="figure">${fixed(cubic(from.bore_mm3), 2)}</td><td class="figure">${fixed(from.mass_g, 1)}</td>`;
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
    <summary><span dir="auto">${run.name}</span>: bends</summary>
    ${selected || only ? html`${strip(run)} ${bendTable(run)} <p class="source">Outside size ${size} mm.</p>` : nothing}
  </details>`;
}
