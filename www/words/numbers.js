// Numbers as the page shows them: in English with a decimal point, as in the files, else with the mark of the language.

import { decimalMark, locale, pluralFor, wordsFor } from "./language.js";

/**
 * A number with so many decimals; a dash where there is none.
 * @param {number | null | undefined} value
 * @param {number} decimals
 */
export function fixed(value, decimals) {
  if (value === null || value === undefined || !Number.isFinite(value)) return "–";
  const text = value.toFixed(decimals);
  // A rounded-away minus would say "-0.0".
  return written(/^-0(\.0*)?$/.test(text) ? text.slice(1) : text);
}

/**
 * A number with at most so many decimals, and no more than it needs.
 * @param {number} value
 * @param {number} [most]
 */
export function short(value, most = 3) {
  return written(String(Number(value.toFixed(most))));
}

/**
 * A point in short.
 * @param {readonly number[]} point
 */
export function pointWords(point) {
  return listed(point.map((part) => short(part, 1)));
}

/**
 * Numbers side by side: a mark between them that cannot be taken for one before decimals.
 * @param {readonly string[]} numbers
 */
export function listed(numbers) {
  return numbers.join(decimalMark === "," ? "; " : ", ");
}

/**
 * How many of something: "1 stop", "3 notes". A language's row of "stop|stops" has a word for each of its plural forms.
 * @param {number} count
 * @param {string} one
 * @param {string} [many]
 */
export function counted(count, one, many = `${one}s`) {
  const forms = wordsFor?.(`${one}|${many}`)?.split("|");
  if (!forms) return `${count} ${count === 1 ? one : many}`;
  return `${count} ${forms[Math.min(pluralFor(count), forms.length - 1)]}`;
}

/**
 * A whole number with its thousands set apart.
 * @param {number} value
 */
export function grouped(value) {
  return value.toLocaleString(locale());
}

/**
 * A number's text as the language writes it.
 * @param {string} text with a decimal point
 */
export function written(text) {
  return minus(text.replace(".", decimalMark));
}

/** @param {string} text */
function minus(text) {
  return text.replace("-", "\u2212");
}
