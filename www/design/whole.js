// A design that an earlier page kept, with what it did not know yet filled in as usual, so that the form has a place for
// every field. The engine takes the same values where a key is missing.

import { withValue } from "./pointer.js";

/** @import { Design, Factors, Joint, Point } from "./types.js" */
/** @import { Vocabulary } from "../words/vocabulary.js" */

const LOOP = /** @type {const} */ (["cold_c", "test_kpa", "heat_w", "pump"]);
/** @type {Point} */
const UP = [0, 0, 1];

/**
 * @param {Design} design
 * @param {Vocabulary} words
 * @returns {Design}
 */
export function whole(design, words) {
  let filled = design;
  /** @type {(place: string, value: unknown) => void} */
  const fill = (place, value) => {
    filled = withValue(filled, place, value);
  };
  if (!design.process.factors) fill("/process/factors", usualFactors(words));
  if (design.process.fit === undefined) fill("/process/fit", null);
  for (const key of LOOP) {
    const usual = words.quantity(`/loop/${key}`).default;
    if (design.loop[key] === undefined && usual !== undefined && usual !== null) fill(`/loop/${key}`, usual);
  }
  if (design.process.service === undefined) fill("/process/service", null);
  if (!design.process.joint) fill("/process/joint", usualJoint(words));
  for (const [index, run] of design.runs.entries()) if (!run.cuts) fill(`/runs/${index}/cuts`, []);
  if (!design.loop.up) fill("/loop/up", [...UP]);
  return filled;
}

/**
 * @param {Vocabulary} words
 * @returns {Joint}
 */
function usualJoint(words) {
  const [length, clearance, wall, key_depth, bond_mpa] = ["length", "clearance", "wall", "key_depth", "bond_mpa"].map((key) => Number(words.quantity(`/process/joint/${key}`).default));
  return { length, clearance, wall, key_depth, bond_mpa };
}

/**
 * @param {Vocabulary} words
 * @returns {Factors}
 */
function usualFactors(words) {
  const [warm, lasting, safety] = ["warm", "lasting", "safety"].map((key) => Number(words.quantity(`/process/factors/${key}`).default));
  return { warm, lasting, safety };
}
