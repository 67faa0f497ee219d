// A new name for a port or a fitting carries everything that refers to it, while it is being typed.

import { identityOf } from "./identity.js";
import { changed } from "./lists.js";
import { withValue } from "./pointer.js";
import { withCoordinates } from "./stations.js";

/** @import { Coordinate, Design, ListName, Run } from "./types.js" */

// The last name under which a thing could be told from its neighbours. While a name is empty or the same as another's,
// references stay with this one, so that typing through such a name never hands them to the neighbour.
/** @type {Map<number, string>} */
const referredTo = new Map();

/**
 * The design with item `index` of `list` called `name`.
 * @param {Design} design
 * @param {ListName} list
 * @param {number} index
 * @param {string} name
 * @returns {Design}
 */
export function renamed(design, list, index, name) {
  const item = design[list][index];
  const others = design[list].filter((_, at) => at !== index).map((other) => other.name);
  const next = withValue(design, `/${list}/${index}/name`, name);
  if (list !== "ports" && list !== "fittings") return next;

  const identity = identityOf(item);
  const old = referredTo.get(identity) ?? item.name;
  if (name === "" || others.includes(name)) {
    if (!referredTo.has(identity) && !others.includes(item.name)) referredTo.set(identity, item.name);
    return next;
  }
  referredTo.delete(identity);
  if (old === "" || others.includes(old)) return next;
  return list === "ports" ? carryPort(next, old, name) : carryFitting(next, old, name);
}

/**
 * @param {Design} design
 * @param {string} old
 * @param {string} name
 */
function carryFitting(design, old, name) {
  const ports = design.ports.map((port) => (port.fitting === old ? changed(port, { fitting: name }) : port));
  return withValue(design, "/ports", ports);
}

/**
 * @param {Design} design
 * @param {string} old
 * @param {string} name
 */
function carryPort(design, old, name) {
  /** @type {(coordinate: Coordinate) => Coordinate} */
  const tied = (coordinate) =>
    typeof coordinate === "object" && coordinate.of === old ? changed(coordinate, { of: name }) : coordinate;
  /** @type {(run: Run) => Run} */
  const run = (given) =>
    changed(given, {
      from: given.from === old ? name : given.from,
      to: given.to === old ? name : given.to,
      route: given.route.map((station) => withCoordinates(station, tied)),
    });
  return withValue(design, "/runs", design.runs.map(run));
}
