// In which way a handle moves: along an axis of the datum, or in the plane of two of them that faces the eye most.

/** @import { View } from "../engine.js" */
/** @import { Xyz } from "../engine/messages.js" */

/** @typedef {"plane" | "x" | "y" | "z"} Way */

/** The names of the datum's axes. */
export const AXES = /** @type {const} */ (["x", "y", "z"]);
/** What can be chosen. @type {Way[]} */
export const WAYS = ["plane", ...AXES];

/** @type {Xyz[]} */
const UNITS = [[1, 0, 0], [0, 1, 0], [0, 0, 1]];

/**
 * How the picture lies to the datum.
 * @param {View} view
 */
function pictureOf(view) {
  const axes = view.axes();
  return { right: axes.slice(0, 3), up: axes.slice(3, 6), toward: axes.slice(6, 9) };
}

/**
 * The axes along which a handle moves: the one that was chosen, or those of the plane that faces the eye most.
 * @param {View} view
 * @param {Way} way
 * @returns {number[]}
 */
export function movingAxes(view, way) {
  if (way !== "plane") return [AXES.indexOf(way)];
  const facing = [...pictureOf(view).toward].map(Math.abs);
  const normal = facing.indexOf(Math.max(...facing));
  return [0, 1, 2].filter((axis) => axis !== normal);
}

/**
 * Where a point is taken by a place of the picture; none where its way is seen edge on.
 * @param {View} view
 * @param {Way} way
 * @param {Xyz} from
 * @param {readonly [number, number]} place
 * @returns {Xyz | undefined}
 */
export function taken(view, way, from, [x, y]) {
  const axes = movingAxes(view, way);
  const [left] = [0, 1, 2].filter((axis) => !axes.includes(axis));
  const point = axes.length === 1 ? view.onLine(x, y, Float64Array.from(from), Float64Array.from(UNITS[axes[0]]))
    : view.onPlane(x, y, Float64Array.from(from), Float64Array.from(UNITS[left]));
  return point.length === 3 ? /** @type {Xyz} */ ([...point]) : undefined;
}

/**
 * How many CSS pixels a millimetre along an axis is in the picture.
 * @param {View} view
 * @param {number} axis
 */
export function seenLength(view, axis) {
  const { right, up } = pictureOf(view);
  return view.scale() * Math.hypot(right[axis], up[axis]);
}

/**
 * The step of the datum that an arrow key stands for: the axis that it is nearest to in the picture.
 * @param {View} view
 * @param {Way} way
 * @param {readonly [number, number]} arrow to the right and up
 * @returns {Xyz}
 */
export function stepOf(view, way, [across, upward]) {
  const { right, up } = pictureOf(view);
  const axes = movingAxes(view, way);
  // The two axes of a plane share the two pairs of arrows out: to the sides goes what runs more to the sides.
  const sideways = axes.reduce((best, axis) => (Math.abs(right[axis]) > Math.abs(right[best]) ? axis : best));
  const axis = axes.length === 1 || across !== 0 ? sideways : axes[0] + axes[1] - sideways;
  const along = across * right[axis] + upward * up[axis];
  // Square to the arrow, to the right and up are more.
  const sign = Math.sign(Math.abs(along) > 1e-3 ? along : across + upward);
  return /** @type {Xyz} */ (UNITS[axis].map((part) => part * sign));
}
