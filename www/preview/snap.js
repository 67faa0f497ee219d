// What a handle that is dragged comes to rest on: the levels of the run's ports and other stations, whole millimetres.

import { kindOf, pointOf } from "../design/stations.js";
import { standsAt } from "../design/suggest.js";
import { pointIn, tidy } from "../design/typed.js";
import { say } from "../words/say.js";

/** @import { Design } from "../design/types.js" */

const NAMES = { corner: say`corner`, through: say`point`, coil: say`coil` };

/** @typedef {{ at: readonly number[], name: string }} Level a point whose coordinates are worth meeting */

/** How near a handle must come, CSS pixels. */
export const NEAR = 6;
// What is left where nothing is near, mm.
const FINEST = 0.1;

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
 * One coordinate brought to the nearest level within reach, else to a whole millimetre within reach, else to a tenth.
 * @param {number} value
 * @param {number} axis
 * @param {Level[]} levels
 * @param {number} reach mm that `NEAR` is along this axis
 * @returns {{ value: number, level: string | undefined }} `level`: what it is level with
 */
export function snapped(value, axis, levels, reach) {
  const off = (/** @type {Level} */ level) => Math.abs(level.at[axis] - value);
  const [level] = levels.filter((one) => off(one) <= reach).sort((one, other) => off(one) - off(other));
  if (level) return { value: level.at[axis], level: level.name };
  const whole = Math.round(value);
  return { value: Math.abs(whole - value) <= reach ? whole : tidy(Math.round(value / FINEST) * FINEST), level: undefined };
}

/**
 * A radius in halves of a millimetre, never below the first of them.
 * @param {number} radius
 */
export function snappedRadius(radius) {
  return Math.max(0.5, Math.round(2 * radius) / 2);
}
