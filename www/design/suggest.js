// Where a new corner starts out: on the line that the tube is already on, turned towards the port it goes to, and
// tied to the ports, so that a new measurement carries it along. A starting point to type over, not a route search.

import { fixedFrom } from "./lists.js";
import { pointIn, tidy } from "./typed.js";

/** @import { Coordinate, Design, Port, Run, Station } from "./types.js" */

// How far out of the first port the first corner starts, mm: past a usual fitting, its lead and a usual bend.
const OUT = 60;

/**
 * A corner to add at the end of a run's route.
 * @param {Design} design
 * @param {Run} run
 * @returns {Station}
 */
export function suggestedCorner(design, run) {
  const from = design.ports.find((port) => port.name === run.from);
  const to = design.ports.find((port) => port.name === run.to);
  const last = run.route.at(-1);
  if (last) return { corner: turned(design, last.corner, to) };
  return { corner: from ? outOf(from) : ["", "", ""] };
}

/**
 * @param {Port} port
 * @returns {[Coordinate, Coordinate, Coordinate]}
 */
function outOf(port) {
  const facing = pointIn(port.facing);
  const at = pointIn(port.at);
  const axis = facing ? facing.findIndex((part) => part !== 0) : -1;
  const square = facing !== undefined && facing.filter((part) => part !== 0).length === 1;
  if (!facing || !at || !square) return ["", "", ""];
  /** @type {(index: number) => Coordinate} */
  const along = (index) =>
    index === axis ? tidy(at[index] + OUT * Math.sign(facing[index])) : { of: port.name, plus: 0 };
  return [along(0), along(1), along(2)];
}

/**
 * The last corner, moved level with the port it goes to along the axis where it is furthest from it.
 * @param {Design} design
 * @param {[Coordinate, Coordinate, Coordinate]} last
 * @param {Port | undefined} to
 * @returns {[Coordinate, Coordinate, Coordinate]}
 */
function turned(design, last, to) {
  const here = pointIn(last.map((coordinate, axis) => worth(design, coordinate, axis)));
  const there = to && pointIn(to.at);
  if (!here || !there || !to) return [...last];
  const gaps = here.map((part, axis) => Math.abs(part - there[axis]));
  const furthest = gaps.indexOf(Math.max(...gaps));
  /** @type {(axis: number) => Coordinate} */
  const next = (axis) => (axis === furthest ? { of: to.name, plus: 0 } : last[axis]);
  return [next(0), next(1), next(2)];
}

/**
 * The number that a coordinate stands for, tied or not; blank where it cannot be told yet.
 * @param {Design} design
 * @param {Coordinate} coordinate
 * @param {number} axis
 * @returns {number | string}
 */
export function worth(design, coordinate, axis) {
  if (typeof coordinate !== "object") return coordinate;
  const port = design.ports.find((one) => one.name === coordinate.of);
  return fixedFrom(coordinate.plus, port?.at[axis]);
}
