// A difference in words: values with the labels and units that the form has them by.

import { fixed, listed, short } from "../words/numbers.js";
import { kindWords } from "../words/stations.js";
import { say } from "../words/say.js";

/** @import { Change, StationDifference, Xyz } from "../engine/messages.js" */
/** @import { Vocabulary } from "../words/vocabulary.js" */

const FATES = /** @type {Record<string, string>} */ ({ added: say`added`, removed: say`removed` });

/**
 * One value that differs: "Bend radius 16 mm → 18 mm".
 * @param {Vocabulary} words
 * @param {Change} change
 */
export function changeWords(words, { key, before, after }) {
  const { label, unit } = words.quantity(key);
  const axis = /\/([012])$/.exec(key);
  const name = axis ? `${label} ${"xyz"[Number(axis[1])]}` : label;
  return `${name}: ${valueWords(before, unit)} → ${valueWords(after, unit)}`;
}

/**
 * What became of a station: "Corner 2 moved 5 mm: 3, −4, 0, with its port".
 * @param {Vocabulary} words
 * @param {StationDifference} station
 */
export function stationWords(words, { kind, station, was, fate, by_mm, moved_mm, followed, changes }) {
  const name = `${kindWords(words, kind)} ${(station ?? was ?? 0) + 1}`;
  if (fate !== "changed") return `${name}: ${FATES[fate] ?? fate}`;
  const moved = moved_mm && by_mm ? [say`moved ${length(moved_mm)} mm (${offset(by_mm)})${followed ? say`, with its port` : ""}`] : [];
  const parts = [...moved, ...changes.map((change) => changeWords(words, change))];
  return `${name}: ${parts.join("; ") || say`another kind`}`;
}

/**
 * A move along the three axes, each with its sign.
 * @param {Xyz} by
 */
export function offset(by) {
  return listed(by.map((part) => signed(part, 2)));
}

/**
 * A number with its sign; nothing but 0 where it rounds to that.
 * @param {number | null} value
 * @param {number} decimals
 */
export function signed(value, decimals) {
  const text = fixed(value, decimals);
  if (value === null || Number(value.toFixed(decimals)) === 0) return value === null ? text : "0";
  return value > 0 ? `+${text}` : text;
}

/**
 * A length that is not nothing: never shown as 0.
 * @param {number} value
 */
export function length(value) {
  return value < 0.01 ? say`under 0.01` : short(value, 2);
}

/**
 * @param {unknown} value
 * @param {string} unit
 */
function valueWords(value, unit) {
  if (typeof value === "number") return `${short(value)}${unit === "°" || unit === "" ? unit : ` ${unit}`}`;
  if (typeof value === "boolean") return value ? say`yes` : say`no`;
  if (typeof value === "string") return `“${value.length > 60 ? `${value.slice(0, 60)}…` : value}”`;
  return "–";
}
