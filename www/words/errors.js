// What was thrown, in words.

/** @param {unknown} error */
export function wordsOf(error) {
  return error instanceof Error ? error.message : String(error);
}
