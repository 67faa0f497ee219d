// Markup in the chosen language: lit-html's own tags, given the words of the language in place of a template's English.

import * as lit from "../vendor/lit-html.js";
import { wordsFor } from "./language.js";
import { reworded } from "./segments.js";

export { noChange, nothing, render } from "../vendor/lit-html.js";

/** Each template in the chosen language, by its English. @type {WeakMap<TemplateStringsArray, { strings: TemplateStringsArray, order: number[] }>} */
const made = new WeakMap();

/**
 * @param {TemplateStringsArray} strings
 * @param {unknown[]} values
 */
export function html(strings, ...values) {
  const { strings: said, order } = inWords(strings);
  return lit.html(said, ...(order ? order.map((hole) => values[hole]) : values));
}

/**
 * @param {TemplateStringsArray} strings
 * @param {unknown[]} values
 */
export function svg(strings, ...values) {
  const { strings: said, order } = inWords(strings);
  return lit.svg(said, ...(order ? order.map((hole) => values[hole]) : values));
}

/**
 * @param {TemplateStringsArray} strings
 * @returns {{ strings: TemplateStringsArray, order?: number[] }}
 */
function inWords(strings) {
  if (!wordsFor) return { strings };
  let found = made.get(strings);
  if (!found) {
    const { strings: said, order } = reworded(strings, (key) => wordsFor?.(key));
    // lit-html takes only what has a tagged template's two faces.
    found = { strings: Object.assign(said, { raw: said }), order };
    made.set(strings, found);
  }
  return found;
}
