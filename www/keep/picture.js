// A design's small picture on the shelf: its tubes as lines, seen from a corner, kept as plain numbers.

import { html, nothing, svg } from "../words/html.js";

/** @import { Scene, Xyz } from "../engine/messages.js" */

const [WIDE, HIGH, EDGE] = [96, 72, 8];
// Enough for a tube of a few bends at this size.
const MOST_POINTS = 48;
const [LEAST_WIDTH, MOST_WIDTH] = [1.5, 9];

/** @typedef {{ width: number, points: number[] }} Line x and y in turn */

/**
 * @param {Scene} scene
 * @returns {string}
 */
export function pictureText(scene) {
  const runs = scene.runs.filter((run) => run.centreline.length > 1);
  const seen = runs.map((run) => thinned(run.centreline).map(fromCorner));
  const all = seen.flat();
  if (all.length === 0) return "[]";
  const [left, top] = [0, 1].map((axis) => Math.min(...all.map((point) => point[axis])));
  const [right, foot] = [0, 1].map((axis) => Math.max(...all.map((point) => point[axis])));
  const scale = Math.min((WIDE - 2 * EDGE) / Math.max(right - left, 1), (HIGH - 2 * EDGE) / Math.max(foot - top, 1));
  /** @type {(x: number, y: number) => [number, number]} */
  const placed = (x, y) => [
    Math.round(10 * (WIDE / 2 + scale * (x - (left + right) / 2))) / 10, Math.round(10 * (HIGH / 2 + scale * (y - (top + foot) / 2))) / 10,
  ];
  /** @type {Line[]} */
  const lines = seen.map((points, at) => ({
    width: Math.round(10 * Math.min(MOST_WIDTH, Math.max(LEAST_WIDTH, scale * runs[at].outer_diameter))) / 10,
    points: points.flatMap(([x, y]) => placed(x, y)),
  }));
  return JSON.stringify(lines);
}

/** @param {string | undefined} text */
export function picture(text) {
  return html`<svg class="thumb" viewBox="0 0 ${WIDE} ${HIGH}" width=${WIDE} height=${HIGH} aria-hidden="true">
    ${linesIn(text).map(({ width, points }) => {
      const path = pathOf(points);
      return svg`<path class="skin" d=${path} stroke-width=${width}/>${width > 3 ? svg`<path class="bore" d=${path} stroke-width=${0.5 * width}/>` : nothing}`;
    })}
  </svg>`;
}

/**
 * @param {string | undefined} text
 * @returns {Line[]}
 */
function linesIn(text) {
  try {
    const lines = JSON.parse(text ?? "[]");
    const isLine = (/** @type {any} */ line) => Number.isFinite(line?.width) && Array.isArray(line.points) && line.points.every(Number.isFinite);
    return Array.isArray(lines) ? lines.filter(isLine) : [];
  } catch {
    return [];
  }
}

/** @param {number[]} points */
function pathOf(points) {
  return points.map((part, at) => `${at === 0 ? "M" : at % 2 === 0 ? "L" : " "}${part}`).join("");
}

/**
 * x to the right and away, y to the left and away, z up: each axis as long as the others.
 * @param {Xyz} point
 * @returns {[number, number]}
 */
function fromCorner([x, y, z]) {
  return [(x - y) * Math.cos(Math.PI / 6), -(x + y) / 2 - z];
}

/** @param {Xyz[]} points */
function thinned(points) {
  const stride = Math.ceil(points.length / MOST_POINTS);
  return points.filter((_, at) => at % stride === 0 || at === points.length - 1);
}
