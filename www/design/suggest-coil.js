// What a new coil starts out as: round a cylinder that the tubes keep clear of where there is one, else half way
// between its neighbours. It starts and ends where a straight tube from one neighbour and to the other would touch it.

import { pointOf } from "./stations.js";
import { ends, standsAt, tiedWhereEqual } from "./suggest.js";
import { numberIn, pointIn, tidy } from "./typed.js";

/** @import { Coil, CylinderKeepOut, Design, Run, Station } from "./types.js" */

/** @typedef {[number, number, number]} Xyz */
/** @typedef {{ centre: Xyz, axis: Xyz, radius: number, climb: number, room: number }} Bed where a coil starts, how far it is to climb along its axis and how far it can */

// Room between turns over the clearance, so that a rounded number is never the least that does, mm.
const SOME = 2;
// As many whole turns as make a coil of it; more are typed.
const MOST_TURNS = 2;

/**
 * A coil to add at the end of a run's route.
 * @param {Design} design
 * @param {Run} run
 * @returns {Station}
 */
export function suggestedCoil(design, run) {
  const outer = numberIn(run.tube.outer_diameter) ?? 12;
  const gap = numberIn(design.clearance) ?? 1;
  const pitch = Math.ceil(outer + gap + SOME);
  const { here, there } = ends(design, run);
  const beside = gap + outer / 2;
  const bed = here && there && (roundACylinder(design, here, there, beside) ?? between(run, outer, here, there));
  if (!bed) {
    return { coil: { centre: ["", "", ""], axis: [0, 0, 1], radius: "", pitch, turns: MOST_TURNS, hand: "right", start_deg: 0 } };
  }
  return { coil: wound(design, run, bed, pitch, here, there) };
}

/**
 * The cylinder nearest to where the tube has got to that no coil of the design is about yet; the coil starts level
 * with where the tube comes from and climbs towards where it goes.
 * @param {Design} design
 * @param {Xyz} here
 * @param {Xyz} there
 * @param {number} beside how far the tube's middle stays off a cylinder, mm
 * @returns {Bed | undefined}
 */
function roundACylinder(design, here, there, beside) {
  const coils = design.runs.flatMap((run) => run.route).filter((station) => "coil" in station).map((station) => standsAt(design, pointOf(station)));
  const beds = design.keep_outs.filter((keepOut) => "cylinder" in keepOut).flatMap((keepOut) => {
    const { cylinder } = /** @type {CylinderKeepOut} */ (keepOut);
    const [from, to, radius] = [pointIn(cylinder.from), pointIn(cylinder.to), numberIn(cylinder.radius)];
    const up = from && to && unit(less(to, from));
    if (!from || !to || !up || radius === undefined) return [];
    if (coils.some((centre) => centre && offAxis(centre, from, up) < radius)) return [];
    const climb = dot(less(there, here), up);
    const [long, above] = [apart(from, to), dot(less(here, from), up)];
    // Where there is nothing to climb, it goes where there is more of the cylinder.
    const upwards = climb === 0 ? above < long / 2 : climb > 0;
    const [foot, axis] = upwards ? [from, up] : [to, plus([0, 0, 0], up, -1)];
    const level = dot(less(here, foot), axis);
    const start = Math.max(beside, Math.min(level, long - beside));
    return [{ centre: plus(foot, axis, start), axis, radius: Math.ceil(2 * (radius + beside)) / 2, climb: Math.abs(climb), room: long - beside - start }];
  });
  return beds.sort((one, other) => apart(here, one.centre) - apart(here, other.centre))[0];
}

/**
 * @param {Run} run
 * @param {number} outer
 * @param {Xyz} here
 * @param {Xyz} there
 * @returns {Bed | undefined}
 */
function between(run, outer, here, there) {
  const way = less(there, here);
  const sizes = way.map(Math.abs);
  const climb = Math.max(...sizes);
  const along = sizes.indexOf(climb);
  const axis = /** @type {Xyz} */ ([0, 1, 2].map((part) => (part === along ? Math.sign(way[along]) : 0)));
  if (climb === 0) return undefined;
  const radius = Math.max(2 * outer, numberIn(run.bend_radius) ?? 0);
  // Half way across, and a third of the way along, so that there is room to lead in and out.
  const [middle, third] = [plus(here, way, 0.5), plus(here, way, 1 / 3)];
  const centre = /** @type {Xyz} */ (middle.map((part, at) => (at === along ? third[at] : part)));
  return { centre, axis, radius, climb: climb / 3, room: climb };
}

/**
 * @param {Design} design
 * @param {Run} run
 * @param {Bed} bed
 * @param {number} least pitch, mm
 * @param {Xyz} here
 * @param {Xyz} there
 * @returns {Coil}
 */
function wound(design, run, bed, least, here, there) {
  const [first, second] = across(bed.axis);
  // About the axis: how far a point is from it, and at which angle.
  const polar = (/** @type {Xyz} */ point) => {
    const arm = less(point, bed.centre);
    const [x, y] = [dot(arm, first), dot(arm, second)];
    return { far: Math.hypot(x, y), angle: Math.atan2(y, x) };
  };
  const touch = (/** @type {number} */ far) => Math.acos(Math.min(1, bed.radius / Math.max(far, bed.radius)));
  const [came, goes] = [polar(here), polar(there)];
  const start = came.angle + touch(came.far);
  const end = goes.angle - touch(goes.far);
  const part = Math.round(20 * ((((end - start) / (2 * Math.PI)) % 1) + 1)) / 20 % 1;
  const whole = (/** @type {number} */ climb) => Math.min(MOST_TURNS, Math.floor(climb / least - part));
  // As many turns as the climb takes; where there is next to none, one or two above it if there is room.
  const turns = Math.max(0.25, part + (whole(bed.climb) >= 1 ? whole(bed.climb) : Math.max(0, whole(bed.room))));
  const pitch = Math.max(least, Math.min(2 * least, Math.round((2 * bed.climb) / turns) / 2));
  const ports = [run.from, run.to].map((name) => design.ports.find((port) => port.name === name));
  const degrees = Math.round((start * 180) / Math.PI / 5) * 5;
  const [x, y, z] = bed.centre.map((value, axis) => tiedWhereEqual(value, axis, ports));
  return {
    centre: [x, y, z], axis: /** @type {Xyz} */ (bed.axis.map((part) => tidy(part) + 0)), radius: bed.radius, pitch, turns: tidy(turns),
    hand: "right", start_deg: degrees === 0 ? 0 : degrees,
  };
}

/**
 * The direction that a start angle counts from, and the one a quarter turn on: towards z, or x where the axis is z.
 * @param {Xyz} axis
 * @returns {[Xyz, Xyz]}
 */
function across(axis) {
  /** @type {Xyz} */
  const towards = Math.hypot(axis[0], axis[1]) < 0.0175 ? [1, 0, 0] : [0, 0, 1];
  const first = unit(plus(towards, axis, -dot(towards, axis))) ?? [1, 0, 0];
  const [a, b] = [axis, first];
  return [first, [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]];
}

/** @type {(a: Xyz, b: Xyz) => Xyz} */
const less = (a, b) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
/** @type {(a: Xyz, b: Xyz, by: number) => Xyz} */
const plus = (a, b, by) => [a[0] + b[0] * by, a[1] + b[1] * by, a[2] + b[2] * by];
/** @type {(a: Xyz, b: Xyz) => number} */
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
/** @type {(a: Xyz, b: Xyz) => number} */
const apart = (a, b) => Math.hypot(...less(a, b));
/** @type {(a: Xyz) => Xyz | undefined} */
const unit = (a) => (Math.hypot(...a) > 0 ? plus([0, 0, 0], a, 1 / Math.hypot(...a)) : undefined);
/** @type {(point: Xyz, on: Xyz, axis: Xyz) => number} */
const offAxis = (point, on, axis) => {
  const arm = less(point, on);
  return Math.hypot(...plus(arm, axis, -dot(arm, axis)));
};
