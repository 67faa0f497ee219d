// Places in the design as JSON Pointers (RFC 6901), and edits that leave the old design as it was.

import { carryIdentity } from "./identity.js";

/**
 * The keys of a pointer, unescaped.
 * @param {string} pointer
 * @returns {string[]}
 */
export function keysOf(pointer) {
  if (pointer === "") return [];
  return pointer.slice(1).split("/").map((key) => key.replaceAll("~1", "/").replaceAll("~0", "~"));
}

/**
 * What a design holds at a pointer; `undefined` where there is nothing.
 * @param {unknown} whole
 * @param {string} pointer
 * @returns {unknown}
 */
export function valueAt(whole, pointer) {
  let value = whole;
  for (const key of keysOf(pointer)) {
    if (typeof value !== "object" || value === null) return undefined;
    value = Object.hasOwn(value, key) ? /** @type {Record<string, unknown>} */ (value)[key] : undefined;
  }
  return value;
}

/**
 * A copy of `whole` with `value` at `pointer`; everything off the path is shared. `undefined` takes the key away.
 * @template T
 * @param {T} whole
 * @param {string} pointer
 * @param {unknown} value
 * @returns {T}
 */
export function withValue(whole, pointer, value) {
  return /** @type {T} */ (placed(whole, keysOf(pointer), value));
}

/**
 * @param {unknown} whole
 * @param {string[]} keys
 * @param {unknown} value
 * @returns {unknown}
 */
function placed(whole, keys, value) {
  if (keys.length === 0) return value;
  if (typeof whole !== "object" || whole === null) throw new TypeError(`nothing to hold the key ${keys[0]}`);
  const copy = Array.isArray(whole) ? [...whole] : { ...whole };
  carryIdentity(whole, copy);
  const [key, ...rest] = keys;
  const holder = /** @type {Record<string, unknown>} */ (copy);
  const inner = placed(holder[key], rest, value);
  if (inner === undefined) delete holder[key];
  else holder[key] = inner;
  return copy;
}

/**
 * The pointers from a place up to the whole design, the place itself first.
 * @param {string} pointer
 * @returns {string[]}
 */
export function upFrom(pointer) {
  const places = [];
  let place = pointer;
  while (place !== "") {
    places.push(place);
    place = place.slice(0, place.lastIndexOf("/"));
  }
  places.push("");
  return places;
}
