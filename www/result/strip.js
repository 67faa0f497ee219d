// A run laid out straight: its straights and bends end to end, to scale along its length.

import { html, svg } from "../words/html.js";
import { counted, fixed, short } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { RunReport } from "../engine/messages.js" */

/** @param {RunReport} run */
export function strip(run) {
  const length = run.length_mm ?? 0;
  if (length <= 0) return "";
  // Shares of the length as percentages of the drawing's width, so that the words keep their size.
  const scale = 100 / length;
  let at = 0;
  const parts = run.bend_table.map((row) => {
    const straight = row.straight_mm * scale;
    const arc = row.length_mm * scale;
    const from = at;
    at += straight + arc;
    return { from, straight, arc, angle: row.angle_deg };
  });
  const [bends, coils, curves] = /** @type {const} */ (["bend", "coil", "curve"]).map((kind) => run.bend_table.filter((row) => row.kind === kind).length);
  const counts = [bends && counted(bends, "bend"), coils && counted(coils, "coil"), curves && counted(curves, "curve")].filter(Boolean);
  const words = say`${run.name} laid out: ${fixed(length, 1)} mm with ${counts.join(", ") || say`no bend`}`;
  return html`<svg class="strip" role="img" aria-label=${words}>
    ${parts.map(({ from, straight, arc, angle }) => svg`
      <rect class="straight" x="${from}%" y="18" width="${straight}%" height="10"/>
      ${arc > 0 ? svg`<rect class="bend" x="${from + straight}%" y="15" width="${arc}%" height="16"/>` : ""}
      ${arc > 5 ? svg`<text x="${from + straight + arc / 2}%" y="11">${short(angle, 0)}°</text>` : ""}`)}
    <rect class="ends" x="0" y="12" width="1.5" height="22"/><rect class="ends" x="100%" y="12" width="1.5" height="22"/>
    <text x="50%" y="43">${fixed(length, 1)} mm</text>
  </svg>`;
}
