// Edits of a run's route that a handle in the preview makes: a station moved, a corner bent otherwise or added.

import { changed } from "./lists.js";
import { withValue } from "./pointer.js";
import { withCoordinates } from "./stations.js";
import { worth } from "./suggest.js";
import { numberIn, tidy } from "./typed.js";

/** @import { Coordinate, CornerStation, Design, Station } from "./types.js" */
/** @import { Xyz } from "../engine/messages.js" */

// Nearer than this a corner is level with a port, mm: what reckoning leaves of equal coordinates.
const LEVEL = 1e-6;

/**
 * A station moved to a point. A coordinate that counts from a port goes on counting from it.
 * @param {Design} design
 * @param {number} run
 * @param {number} station
 * @param {readonly number[]} point
 * @returns {Design}
 */
export function stationMoved(design, run, station, point) {
  const before = design.runs[run].route[station];
  const next = withCoordinates(before, (coordinate, axis) => coordinateAt(design, coordinate, axis, point[axis]));
  return withValue(design, `/runs/${run}/route/${station}`, next);
}

/**
 * @param {Design} design
 * @param {Coordinate} coordinate
 * @param {number} axis
 * @param {number} value
 * @returns {Coordinate}
 */
function coordinateAt(design, coordinate, axis, value) {
  const now = numberIn(worth(design, coordinate, axis));
  if (now === undefined || now === tidy(value)) return coordinate;
  if (typeof coordinate !== "object") return tidy(value);
  return { ...coordinate, plus: tidy(value - now + Number(coordinate.plus)) };
}

/**
 * A corner with a bend radius of its own.
 * @param {Design} design
 * @param {number} run
 * @param {number} station
 * @param {number} radius mm
 * @returns {Design}
 */
export function cornerBent(design, run, station, radius) {
  const corner = /** @type {CornerStation} */ (design.runs[run].route[station]);
  return withValue(design, `/runs/${run}/route/${station}`, changed(corner, { bend_radius: tidy(radius) }));
}

/**
 * A corner added on a straight: at the whole millimetre of the axis that the straight follows most, and tied to the
 * run's ports where it is level with them across it, so that a new measurement carries it along.
 * @param {Design} design
 * @param {number} run
 * @param {{ at: Xyz, direction: Xyz, before: number }} place `before`: how many stations come before it
 * @returns {Design}
 */
export function cornerAdded(design, run, { at, direction, before }) {
  const { route, from, to } = design.runs[run];
  const steep = direction.map(Math.abs);
  const most = steep.indexOf(Math.max(...steep));
  const slide = (Math.round(at[most]) - at[most]) / direction[most];
  const ports = [from, to].map((name) => design.ports.find((port) => port.name === name));
  /** @type {(axis: number) => Coordinate} */
  const coordinate = (axis) => {
    const value = at[axis] + slide * direction[axis];
    const level = axis === most ? undefined : ports.find((port) => {
      const stands = numberIn(port?.at[axis]);
      return stands !== undefined && Math.abs(stands - value) < LEVEL;
    });
    return level ? { of: level.name, plus: 0 } : Number(value.toFixed(3));
  };
  /** @type {Station} */
  const corner = { corner: [coordinate(0), coordinate(1), coordinate(2)] };
  return withValue(design, `/runs/${run}/route`, [...route.slice(0, before), corner, ...route.slice(before)]);
}
