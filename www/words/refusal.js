// What was refused, in words, with its place in the document.

import { wordsOf } from "./errors.js";
import { say } from "./say.js";

/** @param {unknown} error */
export function wordsWithPlace(error) {
  return error instanceof Error && "path" in error && error.path ? say`${wordsOf(error)} (at ${error.path})` : wordsOf(error);
}
