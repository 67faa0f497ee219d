// Adding, removing and reordering in the design's lists. Each gives a new design; what referred to a thing that is
// gone is either made whole again (a tied coordinate becomes the number it was) or left for the form to ask about.

import { carryIdentity } from "./identity.js";
import { withValue } from "./pointer.js";
import { withCoordinates } from "./stations.js";
import { numberIn, tidy } from "./typed.js";

/** @import { Design, ListName, Port, Station } from "./types.js" */

/**
 * @template {ListName} L
 * @param {Design} design
 * @param {L} list
 * @param {Design[L][number]} item
 * @returns {Design}
 */
export function added(design, list, item) {
  return withValue(design, `/${list}`, [...design[list], item]);
}

/**
 * @param {Design} design
 * @param {ListName} list
 * @param {number} index
 * @returns {Design}
 */
export function removed(design, list, index) {
  const without = withValue(design, `/${list}`, design[list].filter((_, at) => at !== index));
  const gone = design[list][index];
  const twin = design[list].some((other, at) => at !== index && other.name === gone.name);
  if (twin) return without;
  if (list === "fittings") return forgetFitting(without, gone.name);
  if (list === "ports") return forgetPort(without, /** @type {Port} */ (gone));
  return without;
}

/**
 * @template T
 * @param {T[]} list
 * @param {number} index
 * @param {number} by -1 up, 1 down
 * @returns {T[]}
 */
export function moved(list, index, by) {
  const to = index + by;
  if (to < 0 || to >= list.length) return list;
  const copy = [...list];
  [copy[index], copy[to]] = [copy[to], copy[index]];
  return copy;
}

/**
 * A name that no item of the list has yet: "port 3".
 * @param {{ name: string }[]} list
 * @param {string} stem
 */
export function freshName(list, stem) {
  const taken = new Set(list.map((item) => item.name));
  if (!taken.has(stem) && !/^(port|run|fitting|box|cylinder|part)$/.test(stem)) return stem;
  let number = list.length + 1;
  while (taken.has(`${stem} ${number}`)) number += 1;
  return `${stem} ${number}`;
}

/**
 * @param {Design} design
 * @param {string} name
 * @returns {Design}
 */
function forgetFitting(design, name) {
  const ports = design.ports.map((port) => (port.fitting === name ? changed(port, { fitting: "" }) : port));
  return withValue(design, "/ports", ports);
}

/**
 * @param {Design} design
 * @param {Port} port
 * @returns {Design}
 */
function forgetPort(design, port) {
  const runs = design.runs.map((run) =>
    changed(run, {
      from: run.from === port.name ? "" : run.from,
      to: run.to === port.name ? "" : run.to,
      route: run.route.map((station) => untied(station, port)),
    }),
  );
  return withValue(design, "/runs", runs);
}

/**
 * @param {Station} station
 * @param {Port} port
 * @returns {Station}
 */
function untied(station, port) {
  return withCoordinates(station, (coordinate, axis) =>
    typeof coordinate === "object" && coordinate.of === port.name ? fixedFrom(coordinate.plus, port.at[axis]) : coordinate);
}

/**
 * The number a tied coordinate stood for; blank where it cannot be told yet.
 * @param {unknown} plus
 * @param {unknown} base
 * @returns {number | string}
 */
export function fixedFrom(plus, base) {
  const [offset, from] = [numberIn(plus), numberIn(base)];
  return offset === undefined || from === undefined ? "" : tidy(from + offset);
}

/**
 * A copy of a thing with some keys changed, standing for the same thing.
 * @template {object} T
 * @param {T} thing
 * @param {Partial<T>} keys
 * @returns {T}
 */
export function changed(thing, keys) {
  const copy = { ...thing, ...keys };
  carryIdentity(thing, copy);
  return copy;
}
