// The steps back and forth as a text, so that they outlast a reload: each as what it changed. The nearest to the present
// are kept, as many as have room.

import { changed, changesBetween } from "../design/change.js";
import { isDesignShaped } from "../design/shape.js";
import { MOST_STEPS_BACK } from "../design/store.js";

/** @import { Change } from "../design/change.js" */
/** @import { State, Step } from "../design/store.js" */

// Of the few million characters that a browser gives a page.
const MOST_TEXT = 300_000;

/** @typedef {{ name?: string, id: string, untouched: boolean, changes: Change[] }} Written `id` and `untouched` of the state that it leads to */
/** @typedef {{ past: Step[], future: Step[] }} Steps */

/**
 * @param {Steps} steps
 * @returns {string}
 */
export function stepsText({ past, future }) {
  let room = MOST_TEXT;
  /**
   * @param {Step[]} steps the nearest last
   * @param {"before" | "after"} to
   */
  const written = (steps, to) => {
    /** @type {string[]} */
    const texts = [];
    for (const step of steps.toReversed()) {
      /** @type {Written} */
      const one = { name: step.name, id: step[to].id, untouched: step[to].untouched, changes: changesBetween(step.before.design, step.after.design) };
      const text = JSON.stringify(one);
      room -= text.length;
      if (room < 0) break;
      texts.push(text);
    }
    return `[${texts.join(",")}]`;
  };
  return `{"past":${written(past, "before")},"future":${written(future, "after")}}`;
}

/**
 * The steps around a state, or none where the text holds none that lead to designs.
 * @param {string | undefined} text
 * @param {State} now
 * @returns {Steps}
 */
export function stepsFrom(text, now) {
  if (text === undefined) return { past: [], future: [] };
  try {
    const { past, future } = JSON.parse(text);
    return { past: unrolled(past, now, "back"), future: unrolled(future, now, "forth") };
  } catch {
    return { past: [], future: [] };
  }
}

/**
 * @param {Written[]} written the nearest first
 * @param {State} now
 * @param {"back" | "forth"} way
 * @returns {Step[]} the nearest last
 */
function unrolled(written, now, way) {
  /** @type {Step[]} */
  const steps = [];
  let state = now;
  for (const { name, id, untouched, changes } of written.slice(0, MOST_STEPS_BACK)) {
    const design = changed(state.design, changes, way);
    if (!isDesignShaped(design) || typeof id !== "string") break;
    const there = { id, design, untouched: untouched === true };
    steps.push(way === "back" ? { before: there, after: state, name } : { before: state, after: there, name });
    state = there;
  }
  return steps.reverse();
}
