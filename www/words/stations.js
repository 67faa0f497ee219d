// What the kinds of stations are called, in the form and in the words about a place.

/** @import { Kind } from "../design/stations.js" */

const WORDS = /** @type {const} */ ({ corner: "Corner", through: "Point", coil: "Coil" });

/** @param {Kind} kind */
export function kindWords(kind) {
  return WORDS[kind];
}
