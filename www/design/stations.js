// The stations of a route: which kind each is, the point it is about, and a change of kind that keeps the point.

import { carryIdentity, identityOf } from "./identity.js";

/** @import { Coil, Coordinate, Station, Typed } from "./types.js" */

/** @typedef {[Coordinate, Coordinate, Coordinate]} Place */
/** @typedef {"corner" | "through" | "coil"} Kind */

/** @type {Kind[]} */
export const KINDS = ["corner", "through", "coil"];

// What a station had as another kind, so that passing through the kinds by key loses nothing of it.
/** @type {Map<number, { bend_radius?: Typed, coil?: Coil }>} */
const had = new Map();

/**
 * @param {Station} station
 * @returns {Kind}
 */
export function kindOf(station) {
  return "coil" in station ? "coil" : "through" in station ? "through" : "corner";
}

/**
 * The key of the point that a station is about, below the station: its place in the form and in pointers.
 * @param {Kind} kind
 */
export function pointKey(kind) {
  return kind === "coil" ? "coil/centre" : kind;
}

/**
 * The point that a station is about: the corner, the point passed through, the coil's centre.
 * @param {Station} station
 * @returns {Place}
 */
export function pointOf(station) {
  return "coil" in station ? station.coil.centre : "through" in station ? station.through : station.corner;
}

/**
 * The station with its point's coordinates each put through `edit`.
 * @param {Station} station
 * @param {(coordinate: Coordinate, axis: number) => Coordinate} edit
 * @returns {Station}
 */
export function withCoordinates(station, edit) {
  const [x, y, z] = pointOf(station);
  /** @type {Place} */
  const point = [edit(x, 0), edit(y, 1), edit(z, 2)];
  const next = "coil" in station ? { coil: sameAs(station.coil, { ...station.coil, centre: point }) }
    : "through" in station ? { through: point } : { ...station, corner: point };
  return sameAs(station, next);
}

/**
 * The same station as another kind, about the same point.
 * @param {Station} station
 * @param {Kind} kind
 * @param {() => Coil} freshCoil what a coil is where this station never was one
 * @returns {Station}
 */
export function asKind(station, kind, freshCoil) {
  if (kindOf(station) === kind) return station;
  const identity = identityOf(station);
  const before = had.get(identity) ?? {};
  if ("coil" in station) before.coil = station.coil;
  if ("corner" in station) before.bend_radius = station.bend_radius;
  had.set(identity, before);

  const point = pointOf(station);
  /** @type {Station} */
  let next = { through: point };
  if (kind === "coil") next = { coil: { ...(before.coil ?? freshCoil()), centre: point } };
  if (kind === "corner") {
    next = { corner: point };
    if (before.bend_radius !== undefined) next.bend_radius = before.bend_radius;
  }
  return sameAs(station, next);
}

/**
 * @template {object} T
 * @param {object} original
 * @param {T} copy
 */
function sameAs(original, copy) {
  carryIdentity(original, copy);
  return copy;
}
