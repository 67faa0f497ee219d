// Words outside markup in the chosen language. The English stands where it is used and is the key of the others.

import { wordsFor } from "./language.js";
import { keyOf } from "./segments.js";

/**
 * Say`Remove ${name}`: the words in the chosen language.
 * @param {TemplateStringsArray} strings
 * @param {unknown[]} values
 * @returns {string}
 */
export function say(strings, ...values) {
  if (!wordsFor) return String.raw({ raw: strings }, ...values);
  const { before, key, after } = keyOf(strings);
  return `${before}${filled(wordsFor(key) ?? key, values)}${after}`;
}

/**
 * A label as it stands within a sentence: English writes it small, a language with capital nouns as it is.
 * @param {string} label
 * @param {number} [letters] how many of its letters, so that a symbol in it keeps its capitals
 */
export function within(label, letters = label.length) {
  return wordsFor ? label : label.slice(0, letters).toLowerCase() + label.slice(letters);
}

/**
 * @param {string} words
 * @param {unknown[]} values
 */
function filled(words, values) {
  return words.replace(/\{(\d+)\}/g, (_, number) => String(values[Number(number)]));
}
