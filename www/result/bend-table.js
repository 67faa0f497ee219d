// The bend table of a run, and the convention that its rotations follow: which end is fed first, and which sign.

import { html } from "../words/html.js";
import { fixed } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { BendRow, RunReport } from "../engine/messages.js" */
/** @import { Feed, Papers } from "./papers.js" */

/** What is no plain bend. */
const KINDS = /** @type {Record<string, string>} */ ({ coil: say`coil`, curve: say`curve` });

/**
 * @param {RunReport} run
 * @param {Papers} papers
 * @param {{ from: string, to: string } | undefined} stated the run as the design has it
 */
export function bendTable(run, papers, stated) {
  const { feed } = papers;
  const rows = fed(run.bend_table, feed);
  const last = rows.at(-1);
  const heads = [[say`Straight`, "mm"], [say`Rotate`, "°"], [say`Bend`, "°"], [say`Radius`, "mm"]];
  return html`<div class="scroll" tabindex="0" role="region" aria-label="Bend table of ${run.name}">
      <table class="figures bends">
        <caption class="unseen">Bend table of ${run.name}</caption>
        <thead><tr><th scope="col">Bend</th>
          ${heads.map(([name, unit]) => html`<th scope="col" class="figure">${name} <span class="unit">${unit}</span></th>`)}
        </tr></thead>
        <tbody>
          ${rows.slice(0, -1).map((bend, index) => bendRow(bend, index))}
          ${last
            ? html`<tr><th scope="row">end</th><td class="figure">${fixed(last.straight_mm, 2)}</td>
                <td class="figure">–</td><td class="figure">–</td><td class="figure">–</td></tr>`
            : ""}
        </tbody>
      </table>
    </div>
    ${rows.length > 1 ? choices(papers, stated) : ""}
    <p class="source">Straight before each bend; rotation about the way the tube is fed, ${feed.flip ? say`against the` : say`by the`} right-hand rule; bend is the angle turned through; radius is the centreline's, of a coil or a curve the tightest. Bending machines differ in the sign of the rotation.</p>`;
}

/**
 * @param {Papers} papers
 * @param {{ from: string, to: string } | undefined} stated
 */
function choices(papers, stated) {
  const { feed } = papers;
  /** @type {(key: "flip" | "fromEnd") => (event: Event) => void} */
  const set = (key) => (event) => papers.setFeed({ ...feed, [key]: /** @type {HTMLInputElement} */ (event.target).checked });
  return html`<div class="feed">
    <label class="check"><input type="checkbox" .checked=${feed.fromEnd} @change=${set("fromEnd")}>
      <span>Fed from ${stated ? html`<span dir="auto">${stated.to}</span>` : say`the end`} first</span></label>
    <label class="check"><input type="checkbox" .checked=${feed.flip} @change=${set("flip")}> <span>Opposite sign of rotation</span></label>
  </div>`;
}

/**
 * @param {BendRow} bend
 * @param {number} index
 */
function bendRow(bend, index) {
  const kind = bend.kind && bend.kind !== "bend" ? ` ${KINDS[bend.kind] ?? bend.kind}` : "";
  return html`<tr><th scope="row">${index + 1}${kind}</th><td class="figure">${fixed(bend.straight_mm, 2)}</td>
    <td class="figure">${fixed(bend.rotation_deg, 2)}</td><td class="figure">${fixed(bend.angle_deg, 2)}</td>
    <td class="figure">${fixed(bend.radius_mm, 2)}</td></tr>`;
}

/**
 * The rows as fed from the other end or with the opposite sign. From the other end, feed direction and order of the
 * planes both turn round, so that rotations keep their sign.
 * @param {BendRow[]} rows
 * @param {Feed} feed
 */
export function fed(rows, { flip, fromEnd }) {
  const bends = rows.length - 1;
  const ordered = !fromEnd ? rows : rows.map((row, index) => {
    const bend = index < bends ? rows[bends - 1 - index] : row;
    const rotation_deg = index === 0 || index === bends ? 0 : rows[bends - index].rotation_deg;
    return { ...bend, straight_mm: rows[bends - index].straight_mm, rotation_deg };
  });
  if (!flip) return ordered;
  return ordered.map((row) => ({ ...row, rotation_deg: row.rotation_deg === 180 ? 180 : 0 - row.rotation_deg }));
}
