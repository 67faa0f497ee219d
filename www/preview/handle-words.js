// What is told of a handle: where it is, what it is level with, the straights beside it. For the eye and for the ear.

import { pointOf } from "../design/stations.js";
import { standsAt } from "../design/suggest.js";
import { numberIn } from "../design/typed.js";
import { fixed, listed } from "../words/numbers.js";
import { say, within } from "../words/say.js";
import { wordOf } from "./snap.js";
import { AXES } from "./ways.js";

/** @import { App } from "../app.js" */
/** @import { Design } from "../design/types.js" */
/** @import { Grip } from "./grips.js" */
/** @import { Target } from "./drag.js" */

/**
 * A handle's numbers as the design has them: its three coordinates, or its one radius; nothing where they are no numbers.
 * @param {Design} design
 * @param {number} run
 * @param {Grip} grip
 * @returns {number[] | undefined}
 */
export function numbersOf(design, run, { kind, station, slide }) {
  const stated = design.runs[run]?.route[station];
  if (!stated) return undefined;
  if (kind === "point") return standsAt(design, pointOf(stated));
  if (!("corner" in stated)) return undefined;
  // Bends that are made to fit may be less than what is stated.
  const radius = numberIn(stated.bend_radius) ?? numberIn(design.runs[run].bend_radius) ?? slide?.radius;
  return radius === undefined ? undefined : [radius];
}

/**
 * @param {App} app
 * @param {number} run
 * @param {Grip} grip
 * @param {Target | undefined} target where it is being dragged
 */
export function told(app, run, grip, target) {
  const { design } = app.store;
  const name = nameOf(design, run, grip);
  const numbers = target ? (target.radius === undefined ? target.at : [target.radius]) : numbersOf(design, run, grip);
  if (!numbers) return `${name}.`;
  const { lengths } = app;
  const shown = numbers.map((number) => lengths.shown(number));
  if (grip.kind === "radius") return `${name}: ${shown[0]} ${lengths.unit}.`;
  const level = (target?.levels ?? []).flatMap((other, axis) => (other === undefined ? [] : [say`${AXES[axis]} level with ${other}`]));
  return [
    `${name}: ${listed(AXES.map((axis, at) => `${axis} ${shown[at]}`))} ${lengths.unit}`,
    ...(level.length > 0 ? [level.join(", ")] : []),
    straights(app, run, grip.station),
  ].filter(Boolean).map((words) => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`).join(" ");
}

/**
 * How much straight tube there is before and after a corner, as the engine last told.
 * @param {App} app
 * @param {number} run
 * @param {number} station
 */
function straights({ report, problems, store, lengths }, run, station) {
  const rows = report?.runs.find((one) => one.name === store.design.runs[run].name)?.bend_table ?? [];
  const at = rows.findIndex((row) => row.kind === "bend" && row.station === station);
  if (problems.length > 0 || at < 0 || at + 1 >= rows.length) return "";
  const [before, after] = [rows[at], rows[at + 1]].map(({ straight_mm }) =>
    lengths.unit === "mm" ? fixed(straight_mm, 1) : lengths.shown(straight_mm));
  return say`straight ${before} ${lengths.unit} before and ${after} ${lengths.unit} after`;
}

/**
 * @param {Design} design
 * @param {number} run
 * @param {Grip} grip
 */
function nameOf(design, run, { kind, station }) {
  const stated = design.runs[run].route[station];
  const place = say`${stated ? wordOf(stated) : say`corner`} ${station + 1} of ${design.runs[run].name}`;
  return kind === "radius" ? say`Bend radius at ${place}` : `${place.charAt(0).toUpperCase()}${place.slice(1)}`;
}

/**
 * What a step that moves a handle is called.
 * @param {Design} design
 * @param {number} run
 * @param {Grip} grip
 */
export function stepWords(design, run, grip) {
  const name = nameOf(design, run, grip);
  return grip.kind === "point" ? say`move ${within(name, 1)}` : within(name, 1);
}

/**
 * What a pointer on a handle is told.
 * @param {Design} design
 * @param {number} run
 * @param {Grip} grip
 */
export function handleHint(design, run, grip) {
  const name = nameOf(design, run, grip);
  return grip.kind === "point" ? say`${name}: drag to move it.` : say`${name}: drag to change it.`;
}

/**
 * What a pointer on a tube is told.
 * @param {string} run
 * @param {string | null} selected
 */
export function tubeHint(run, selected) {
  return run === selected ? say`${run}: double-click to add a corner.` : say`${run}: click to select it, double-click to add a corner.`;
}

export function cornerRefused() {
  return say`A corner can be added to a straight or a bend, not to a coil or a smooth curve.`;
}

/** @param {string | null} run */
export function noHandles(run) {
  return run === null ? say`There is no run yet.` : say`${run} has no corners yet. Put one there.`;
}
