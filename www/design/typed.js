// What a person types into a number's field, and what the design keeps of it.

import { decimalMark } from "../words/language.js";
import { sumOf } from "./sum.js";

// Digits, at most one decimal mark, perhaps an exponent: nothing that a script might call a number and a person not.
const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/**
 * The number that a text says, or the text itself where it says none. A decimal comma and a typographic minus are
 * taken for what they mean; two marks at once ("1,234.5") could mean two things and stay a text. A small sum
 * ("120/2 + 6.5") is reckoned, and a length may carry its unit ("1/4 in").
 * @param {string} text
 * @param {number} [unit] what a number without a unit counts, mm, where the text is to say a length
 * @returns {number | string}
 */
export function readTyped(text, unit) {
  const plain = readNumber(text);
  if (plain !== undefined) return unit === undefined || unit === 1 ? plain : tidy(plain * unit);
  const sum = sumOf(text, unit);
  return sum === undefined ? text : tidy(sum);
}

/**
 * Whether a text says a number by a sum or with a unit, so that it is worth showing what it comes to.
 * @param {string} text
 * @param {number} [unit]
 */
export function isSum(text, unit) {
  return readNumber(text) === undefined && sumOf(text, unit) !== undefined;
}

/**
 * The plain number that a text says, without reckoning.
 * @param {string} text
 * @returns {number | undefined}
 */
export function readNumber(text) {
  let plain = text.trim().replace(/^[\u2212\u2013]/, "-").replace(/([eE])[\u2212\u2013]/, "$1-");
  if (!plain.includes(".") && plain.split(",").length === 2) plain = plain.replace(",", ".");
  if (!NUMBER.test(plain)) return undefined;
  const value = Number(plain);
  return Number.isFinite(value) ? value + 0 : undefined;
}

/**
 * The text that a field shows for a value of the design.
 * @param {unknown} value
 * @returns {string}
 */
export function showTyped(value) {
  if (typeof value === "number") return String(value).replace(".", decimalMark);
  return value === undefined || value === null ? "" : String(value);
}

/**
 * Whether a field that reads `text` already says `value`, so that re-rendering must leave it as the person typed it.
 * @param {string} text
 * @param {unknown} value
 * @param {number} [unit]
 */
export function alreadySays(text, value, unit) {
  if (value === undefined || value === null) return text === "";
  return Object.is(readTyped(text, unit), value) || text === value;
}

/**
 * The value as a number, or nothing where it is none yet.
 * @param {unknown} value
 * @returns {number | undefined}
 */
export function numberIn(value) {
  return typeof value === "number" ? value : undefined;
}

/**
 * Three values as a point, or nothing where one of them is no number yet.
 * @param {readonly unknown[]} values
 * @returns {[number, number, number] | undefined}
 */
export function pointIn(values) {
  const [x, y, z] = values.map(numberIn);
  return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
}

/**
 * A number without the noise of binary fractions that adding and taking away leaves behind.
 * @param {number} value
 */
export function tidy(value) {
  return Number(value.toFixed(9));
}
