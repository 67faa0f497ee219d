// The pieces of a cut run and the joints between them, in a table.

import { html, nothing } from "../words/html.js";
import { fixed } from "../words/numbers.js";
import { askable } from "./origin.js";

/** @import { RunReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */

/**
 * @param {Sheet} sheet
 * @param {RunReport} run
 */
export function piecesTable(sheet, run) {
  if (run.pieces.length < 2) return nothing;
  const index = sheet.report?.runs.indexOf(run) ?? 0;
  const of = (/** @type {string} */ key) => `/runs/${index}/pieces/0/${key}`;
  const head = (/** @type {string} */ key) => {
    const { label, unit } = sheet.words.result(of(key));
    return html`<th scope="col" class="number">${askable(sheet, label, of(key))}${unit ? html` <span class="unit">${unit}</span>` : nothing}</th>`;
  };
  return html`<div class="scroll" tabindex="0" role="region" aria-label="Pieces of ${run.name}"><table class="figures pieces">
    <caption>Printed in ${run.pieces.length} pieces<span class="unseen">: ${run.name}</span></caption>
    <thead><tr><th scope="col">Piece</th>${["from_mm", "to_mm", "mass_g", "joint/collar_diameter_mm", "joint/shear_mpa", "joint/shear_allowed_mpa"].map(head)}</tr></thead>
    <tbody>${run.pieces.map(({ from_mm, to_mm, mass_g, joint }, at) => html`<tr>
      <th scope="row">${at + 1}</th>
      ${[[from_mm, 1], [to_mm, 1], [mass_g, 1], [joint?.collar_diameter_mm, 1], [joint?.shear_mpa, 3], [joint?.shear_allowed_mpa, 2]].map(([value, decimals]) =>
        html`<td class="number">${fixed(/** @type {number | null | undefined} */ (value), Number(decimals))}</td>`)}
    </tr>`)}</tbody>
  </table></div>`;
}
