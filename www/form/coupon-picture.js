// A coupon as it looks: its sticks one under the other, each end with its rings and its size.

import { svg, html } from "../words/html.js";
import { counted, short } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { CouponReport, FitOfRun } from "../engine/messages.js" */

// Of the picture, in its own units: a stick's length and thickness, and the room of a stick with its words.
const LONG = 300;
const THICK = 20;
const ROW = 46;
const EDGE = 10;
const RING = 8;
// Where the rings begin, and how long the chamfer is.
const RINGS_FROM = 62;
const CHAMFER = 9;

/**
 * @param {CouponReport} coupon
 * @param {string} id
 */
export function couponPicture(coupon, id) {
  const height = EDGE + coupon.sticks.length * ROW;
  const said = coupon.sticks.map((ends, index) => say`stick ${index + 1}: ${ends.map((end) => say`${short(end.outer_mm)} mm with ${counted(end.rings, "ring")}`).join(", ")}`);
  return html`<svg class="coupon" id="${id}-picture" viewBox="0 0 ${LONG + 2 * EDGE} ${height}" role="img" aria-label="The coupon, ${said.join("; ")}">
    ${coupon.sticks.map((ends, index) => svg`<g transform="translate(${EDGE} ${EDGE / 2 + index * ROW})">
      <path class="body" d=${outline()}></path>
      ${ends.map((end, side) => svg`${rings(end.rings, side === 1)}
        <text x=${side === 0 ? 2 : LONG - 2} y=${THICK + 15} text-anchor=${side === 0 ? "start" : "end"}>${short(end.outer_mm)} mm: ${counted(end.rings, "ring")}</text>`)}
    </g>`)}
  </svg>`;
}

/** A stick from the side, with its chamfers. */
function outline() {
  const [low, high, drop] = [0, THICK, 3];
  return `M0 ${drop} L${CHAMFER} ${low} H${LONG - CHAMFER} L${LONG} ${drop} V${high - drop} L${LONG - CHAMFER} ${high} H${CHAMFER} L0 ${high - drop} Z`;
}

/**
 * Rings in groups of five, from an end.
 * @param {number} count
 * @param {boolean} last
 */
function rings(count, last) {
  return Array.from({ length: count }, (_, ring) => {
    const from = RINGS_FROM + (ring + Math.floor(ring / 5)) * RING;
    const x = last ? LONG - from : from;
    return svg`<path class="ring" d="M${x} 0 V${THICK}"></path>`;
  });
}

/**
 * How many rings the end of that size has, where a coupon of the design has one.
 * @param {FitOfRun[]} runs
 * @param {"outer" | "bore"} list
 * @param {number} size
 */
export function ringsOf(runs, list, size) {
  const key = list === "outer" ? "outer_mm" : "bore_mm";
  const ends = runs.flatMap((run) => run.coupon?.sticks.flat() ?? []);
  return ends.find((end) => Math.abs(end[key] - size) < 1e-6)?.rings;
}
