// What a request for a file that people read tells of the page's language: nothing in English, else the rows of what files say.

import { language, table } from "./language.js";

/** The kinds of file that are written in words. */
const WORDED = ["drawing", "loss-plot", "margins-plot", "stiffness-plot", "all", "pack"];

/** @typedef {{ language: string, decimal: string, quotes: readonly [string, string], words: Record<string, string> }} FileWords */

/** @type {FileWords | undefined} */
let words;

/**
 * A request for a file, in the page's language.
 * @template {{ kind: string }} R
 * @param {R} request
 * @returns {R & { words?: FileWords }}
 */
export function inLanguage(request) {
  if (!table || !WORDED.includes(request.kind)) return request;
  words ??= {
    language: language(), decimal: table.decimal, quotes: table.quotes,
    words: { ...Object.fromEntries(table.sentences), ...table.files },
  };
  return { ...request, words };
}
