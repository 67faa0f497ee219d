// What was thrown, in words.

/** @param {unknown} error */
export function wordsOf(error) {
  return error instanceof Error ? error.message : String(error);
}

/**
 * The same, and the place in the document that the engine refused.
 * @param {unknown} error
 */
export function wordsWithPlace(error) {
  const place = error instanceof Error && "path" in error && error.path ? ` (at ${error.path})` : "";
  return `${wordsOf(error)}${place}`;
}
