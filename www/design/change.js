// What sets two designs apart, place by place, small enough to be kept: the value before and the value after.

import { withValue } from "./pointer.js";

/**
 * One place that changed. A side that is missing had nothing there.
 * @typedef {{ at: string, was?: unknown, is?: unknown }} Change
 */

/**
 * Every place at which two values differ, as deep as both are objects, or lists of one length.
 * @param {unknown} before
 * @param {unknown} after
 * @returns {Change[]}
 */
export function changesBetween(before, after) {
  /** @type {Change[]} */
  const changes = [];
  collect(before, after, "", changes);
  return changes;
}

/**
 * `after` from `before`, or with `back` the other way round.
 * @template T
 * @param {T} whole
 * @param {Change[]} changes
 * @param {"forth" | "back"} way
 * @returns {T}
 */
export function changed(whole, changes, way) {
  return changes.reduce((one, change) => withValue(one, change.at, way === "forth" ? change.is : change.was), whole);
}

/**
 * @param {unknown} before
 * @param {unknown} after
 * @param {string} at
 * @param {Change[]} changes
 */
function collect(before, after, at, changes) {
  if (Object.is(before, after)) return;
  if (!isHolder(before) || !isHolder(after) || Array.isArray(before) !== Array.isArray(after)
    || (Array.isArray(before) && Array.isArray(after) && before.length !== after.length)) {
    changes.push({ at, ...(before === undefined ? {} : { was: before }), ...(after === undefined ? {} : { is: after }) });
    return;
  }
  for (const key of new Set([...Object.keys(before), ...Object.keys(after)])) {
    collect(before[key], after[key], `${at}/${key.replaceAll("~", "~0").replaceAll("/", "~1")}`, changes);
  }
}

/**
 * @param {unknown} value
 * @returns {value is Record<string, unknown>}
 */
function isHolder(value) {
  return typeof value === "object" && value !== null;
}
