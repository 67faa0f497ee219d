// What a handle that is dragged comes to rest on: the levels of the run's ports and other stations, round lengths.

import { kindOf, pointOf } from "../design/stations.js";
import { standsAt } from "../design/suggest.js";
import { pointIn, tidy } from "../design/typed.js";
import { say } from "../words/say.js";

/** @import { Design } from "../design/types.js" */

const NAMES = { corner: say`corner`, through: say`point`, coil: say`coil` };

/** @typedef {{ at: readonly number[], name: string }} Level a point whose coordinates are worth meeting */

/** How near a handle must come, CSS pixels. */
export const NEAR = 6;

/**
 * The points of a run that its other handles may come level with.
 * @param {Design} design
 * @param {number} run
 * @param {number} station the one that is moved
 * @returns {Level[]}
 */
export function levelsOf(design, run, station) {
  const { from, to, route } = design.runs[run];
  const ports = [from, to].map((name) => {
    const port = design.ports.find((one) => one.name === name);
    return { name, at: port && pointIn(port.at) };
  });
  const others = route.map((other, index) => ({ name: `${wordOf(other)} ${index + 1}`, at: standsAt(design, pointOf(other)) }));
  const all = [...ports, ...others.filter((_, index) => index !== station)];
  return all.flatMap(({ name, at }) => (at ? [{ name, at }] : []));
}

/**
 * What a station is called in a sentence.
 * @param {import("../design/types.js").Station} station
 */
export function wordOf(station) {
  return NAMES[kindOf(station)];
}

/**
 * One coordinate brought to the nearest level within reach, else to a round length within reach, else to a fine one.
 * @param {number} value
 * @param {number} axis
 * @param {Level[]} levels
 * @param {number} reach mm that `NEAR` is along this axis
 * @param {{ whole: number, fine: number }} grid mm
 * @returns {{ value: number, level: string | undefined }} `level`: what it is level with
 */
export function snapped(value, axis, levels, reach, grid) {
  const off = (/** @type {Level} */ level) => Math.abs(level.at[axis] - value);
  const [level] = levels.filter((one) => off(one) <= reach).sort((one, other) => off(one) - off(other));
  if (level) return { value: level.at[axis], level: level.name };
  const to = (/** @type {number} */ step) => tidy(Math.round(value / step) * step);
  const whole = to(grid.whole);
  return { value: Math.abs(whole - value) <= reach ? whole : to(grid.fine), level: undefined };
}

/**
 * A radius in whole steps, never below the first of them.
 * @param {number} radius
 * @param {number} step mm
 */
export function snappedRadius(radius, step) {
  return tidy(Math.max(1, Math.round(radius / step)) * step);
}
