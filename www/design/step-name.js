// What a step did, in words, from the designs before and after it: "add the port pump out", "bend radius of pump to block".

import { changesBetween } from "./change.js";
import { keysOf, valueAt } from "./pointer.js";
import { say, within } from "../words/say.js";

/** @import { Design } from "./types.js" */
/** @import { Vocabulary } from "../words/vocabulary.js" */

/** What a thing of each list is called, and several. */
const THINGS = {
  fittings: [say`fitting`, say`fittings`], ports: [say`port`, say`ports`], runs: [say`run`, say`runs`], keep_outs: [say`keep-out`, say`keep-outs`],
};
/** @typedef {keyof typeof THINGS} Listed */
// Names are shown on buttons.
const LONGEST = 40;

/**
 * @param {Design} before
 * @param {Design} after
 * @param {Vocabulary} words
 */
export function stepName(before, after, words) {
  for (const list of /** @type {Listed[]} */ (Object.keys(THINGS))) {
    const name = ofList(before[list], after[list], THINGS[list]);
    if (name !== undefined) return name;
  }
  const changes = changesBetween(before, after);
  if (changes.length === 0) return say`a change back`;
  const renamed = changes.find(({ at }) => /^\/(fittings|ports|runs|keep_outs)\/\d+\/name$/.test(at));
  if (renamed) return say`name ${shown(renamed.is)}`;
  const [{ at }] = changes;
  const place = placeOf(before, after, at, words);
  const elsewhere = new Set(changes.map((one) => keysOf(one.at).slice(0, 2).join("/"))).size - 1;
  return elsewhere > 0 ? say`${place} and more` : place;
}

/**
 * Something was added to a list, taken away or moved in it.
 * @param {{ name: string }[]} before
 * @param {{ name: string }[]} after
 * @param {string[]} what one of the list is called, and several
 */
function ofList(before, after, [thing, things]) {
  if (before === after) return undefined;
  const [old, now] = [before, after].map((list) => list.map(({ name }) => name));
  /** @type {(one: string[], other: string[]) => string | undefined} */
  const extra = (one, other) => one.find((name) => !other.includes(name)) ?? one.at(-1);
  if (now.length === old.length + 1) return say`add the ${thing} ${shown(extra(now, old))}`;
  if (now.length === old.length - 1) return say`remove the ${thing} ${shown(extra(old, now))}`;
  if (now.length !== old.length) return say`the ${things}`;
  const permuted = now.some((name, at) => name !== old[at]) && [...now].sort().join("\n") === [...old].sort().join("\n");
  return permuted ? say`order of the ${things}` : undefined;
}

/**
 * @param {Design} before
 * @param {Design} after
 * @param {string} at
 * @param {Vocabulary} words
 */
function placeOf(before, after, at, words) {
  const [list, index] = keysOf(at);
  const thing = /** @type {{ name?: unknown } | undefined} */ (valueAt(after, `/${list}/${index}`) ?? valueAt(before, `/${list}/${index}`));
  const what = labelOf(after, at, words);
  if (list === "name") return say`the design's name`;
  return list in THINGS && thing ? say`${what} of ${shown(thing.name)}` : what;
}

/**
 * The quantity's label, and of a point which of its three.
 * @param {Design} design
 * @param {string} at
 * @param {Vocabulary} words
 */
function labelOf(design, at, words) {
  const label = words.quantity(at).label;
  const plain = /^[A-Z][a-z]/.test(label) ? within(label, 1) : label;
  const [around, last] = [at.slice(0, at.lastIndexOf("/")), at.slice(at.lastIndexOf("/") + 1)];
  const list = valueAt(design, around);
  const axis = Array.isArray(list) && list.length === 3 ? ["x", "y", "z"][Number(last)] : undefined;
  return axis ? `${plain} ${axis}` : plain;
}

/** @param {unknown} name */
function shown(name) {
  const text = String(name ?? "").trim();
  if (text === "") return say`without a name`;
  return `“${text.length > LONGEST ? `${text.slice(0, LONGEST - 1)}…` : text}”`;
}
