// The bend table of a run, and the convention that its rotations follow.

import { html } from "../vendor/lit-html.js";
import { fixed } from "../words/numbers.js";

/** @import { BendRow, RunReport } from "../engine/messages.js" */

/** @param {RunReport} run */
export function bendTable(run) {
  const bends = run.bend_table.slice(0, -1);
  const last = run.bend_table.at(-1);
  const heads = [["Straight", "mm"], ["Rotate", "°"], ["Bend", "°"], ["Radius", "mm"]];
  return html`<div class="scroll" tabindex="0" role="region" aria-label="Bend table of ${run.name}">
      <table class="figures bends">
        <caption class="unseen">Bend table of ${run.name}</caption>
        <thead><tr><th scope="col">Bend</th>
          ${heads.map(([name, unit]) => html`<th scope="col" class="figure">${name} <span class="unit">${unit}</span></th>`)}
        </tr></thead>
        <tbody>
          ${bends.map((bend, index) => bendRow(bend, index))}
          ${last
            ? html`<tr><th scope="row">end</th><td class="figure">${fixed(last.straight_mm, 2)}</td>
                <td class="figure">–</td><td class="figure">–</td><td class="figure">–</td></tr>`
            : ""}
        </tbody>
      </table>
    </div>
    <p class="source">Straight before each bend; rotation about the way the tube is fed, right-hand rule; bend is the angle turned through; radius is the centreline's. Bending machines differ in the sign of the rotation.</p>`;
}

/**
 * @param {BendRow} bend
 * @param {number} index
 */
function bendRow(bend, index) {
  return html`<tr><th scope="row">${index + 1}</th><td class="figure">${fixed(bend.straight_mm, 2)}</td>
    <td class="figure">${fixed(bend.rotation_deg, 2)}</td><td class="figure">${fixed(bend.angle_deg, 2)}</td>
    <td class="figure">${fixed(bend.radius_mm, 2)}</td></tr>`;
}
