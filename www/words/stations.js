// What the kinds of stations are called, in the form and in the words about a place: as the engine's table has them.

/** @import { Kind } from "../design/stations.js" */
/** @import { Vocabulary } from "./vocabulary.js" */

/**
 * @param {Vocabulary} words
 * @param {Kind} kind
 */
export function kindWords(words, kind) {
  return words.quantity(`/runs/*/route/*/${kind}`).label;
}
