// A number of the report in words, of whatever kind it is: one number, a number with its band or its spread, two ends.

import { valueAt } from "../design/pointer.js";
import { listed, short } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { TrapReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */

/**
 * The number at a place of the report, with its unit.
 * @param {Sheet} sheet
 * @param {string} path
 * @param {unknown} [value] where it is not the report's
 */
export function figureAt(sheet, path, value = valueAt(sheet.report, path)) {
  return figureWords(value, sheet.words.result(path).unit);
}

/**
 * @param {unknown} value
 * @param {string} unit
 * @returns {string}
 */
export function figureWords(value, unit) {
  // A thousand cubic millimetres are a cubic centimetre, which is what a person can picture.
  const [scale, shown] = unit === "mm³" ? [1e-3, "cm³"] : [1, unit];
  const words = numberWords(value, scale);
  return words !== UNKNOWN && shown ? `${words} ${shown}` : words;
}

const UNKNOWN = say`not known`;

/**
 * @param {unknown} value
 * @param {number} scale
 * @returns {string}
 */
function numberWords(value, scale) {
  const told = (/** @type {number} */ one) => significant(one * scale);
  if (typeof value === "number") return told(value);
  if (typeof value === "boolean") return value ? say`yes` : say`no`;
  if (typeof value === "string") return value || say`to fill in`;
  if (Array.isArray(value)) return listWords(value, told);
  if (typeof value !== "object" || value === null) return UNKNOWN;
  const { nominal, low, high, worst } = /** @type {{ nominal?: number, low?: number, high?: number, worst?: [number, number] }} */ (value);
  if (nominal === undefined) return UNKNOWN;
  const [from, to] = worst ?? [low, high];
  const around = from === undefined || to === undefined ? "" : say` (${told(from)} to ${told(to)})`;
  return `${told(nominal)}${around}`;
}

/**
 * @param {unknown[]} values
 * @param {(one: number) => string} told
 */
function listWords(values, told) {
  const numbers = values.filter((one) => typeof one === "number");
  if (numbers.length === values.length && numbers.length === 2) return say`${told(numbers[0])} to ${told(numbers[1])}`;
  if (numbers.length === values.length && numbers.length > 0) return listed(numbers.map(told));
  // Places that keep air or coolant: what they hold together, mL.
  const traps = /** @type {TrapReport[]} */ (values);
  return told(traps.reduce((sum, trap) => sum + (trap?.volume_mm3 ?? 0) / 1000, 0));
}

/**
 * So many digits, and at least one decimal of a number that has more.
 * @param {number} value
 * @param {number} [digits]
 */
export function significant(value, digits = 4) {
  return short(value, Math.max(1, decimalsFor(value, digits)));
}

/**
 * How many decimals show so many digits of a number.
 * @param {number} value
 * @param {number} digits
 */
export function decimalsFor(value, digits) {
  if (value === 0 || !Number.isFinite(value)) return 0;
  return Math.min(9, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value)))));
}
