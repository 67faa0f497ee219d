// Where a new corner or point starts out: on the way that the tube is already on, towards the port it goes to, and
// tied to the ports, so that a new measurement carries it along. A starting point to type over, not a route search.

import { fixedFrom } from "./lists.js";
import { pointOf } from "./stations.js";
import { pointIn, tidy } from "./typed.js";

/** @import { Coordinate, Design, Port, Run, Station } from "./types.js" */
/** @import { Place } from "./stations.js" */

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
  if (last) return { corner: turned(design, pointOf(last), to) };
  return { corner: from ? outOf(from) : ["", "", ""] };
}

/**
 * A point to pass through at the end of a run's route: half way to the port it goes to.
 * @param {Design} design
 * @param {Run} run
 * @returns {Station}
 */
export function suggestedThrough(design, run) {
  const { here, there } = ends(design, run);
  if (!here || !there) return { through: ["", "", ""] };
  const ports = [run.from, run.to].map((name) => design.ports.find((port) => port.name === name));
  /** @type {(axis: number) => Coordinate} */
  const half = (axis) => tiedWhereEqual((here[axis] + there[axis]) / 2, axis, ports);
  return { through: [half(0), half(1), half(2)] };
}

/**
 * Where a run's route has got to, and where it is to arrive: a bend's length in front of its ports.
 * @param {Design} design
 * @param {Run} run
 */
export function ends(design, run) {
  const from = design.ports.find((port) => port.name === run.from);
  const to = design.ports.find((port) => port.name === run.to);
  const last = run.route.at(-1);
  return { here: last ? standsAt(design, pointOf(last)) : from && inFrontOf(from), there: to && inFrontOf(to) };
}

/**
 * The numbers that a station's point stands for, where all of them can be told.
 * @param {Design} design
 * @param {Place} point
 */
export function standsAt(design, point) {
  return pointIn(point.map((coordinate, axis) => worth(design, coordinate, axis)));
}

/** @param {Port} port */
function inFrontOf(port) {
  const [at, facing] = [pointIn(port.at), pointIn(port.facing)];
  const long = facing ? Math.hypot(...facing) : 0;
  if (!at || !facing || long === 0) return undefined;
  const [x, y, z] = at.map((part, axis) => part + (OUT * facing[axis]) / long);
  return /** @type {[number, number, number]} */ ([x, y, z]);
}

/**
 * A coordinate to half a millimetre, tied to the first of the ports that is exactly level with it.
 * @param {number} value
 * @param {number} axis
 * @param {(Port | undefined)[]} ports
 * @returns {Coordinate}
 */
export function tiedWhereEqual(value, axis, ports) {
  const level = ports.find((port) => port !== undefined && port.at[axis] === tidy(value));
  return level ? { of: level.name, plus: 0 } : Math.round(2 * value) / 2;
}

/**
 * @param {Port} port
 * @returns {Place}
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
 * @param {Place} last
 * @param {Port | undefined} to
 * @returns {Place}
 */
function turned(design, last, to) {
  const here = standsAt(design, last);
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
