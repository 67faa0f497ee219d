// The figures of a variant: how each is read, shown and sorted. Their labels and units are the engine's.

import { html } from "../words/html.js";
import { countedKind, mark, WORST_FIRST } from "../words/marks.js";
import { fixed, short } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { Variant } from "../engine/messages.js" */
/** @import { Vocabulary } from "../words/vocabulary.js" */

/**
 * `by`: what rows are sorted by, nothing where it is not known; `chart`: whether it can be an axis.
 * @typedef {{ key: string, by: (row: Variant) => number | null, show: (row: Variant) => unknown, chart: boolean }} Column
 */

/** @type {(key: NumberKey, decimals: number) => Column} */
const figure = (key, decimals) => ({ key, by: (row) => row[key], show: (row) => fixed(row[key], decimals), chart: true });
/** @typedef {"wall_mm" | "utilisation" | "allowed_kpa" | "heat_margin_k" | "loss_kpa" | "operating_l_per_h" | "coolant_ml" | "material_cm3" | "mass_g" | "cost"} NumberKey */

/** @type {readonly Column[]} */
export const COLUMNS = [
  { key: "fits", by: (row) => (row.fits === null ? null : Number(row.fits)), show: (row) => (row.fits === null ? "–" : row.fits ? say`yes` : say`no`), chart: false },
  figure("wall_mm", 2),
  { key: "squeeze_percent", by: (row) => row.squeeze_percent?.[0] ?? null, show: ({ squeeze_percent }) => spread(squeeze_percent), chart: false },
  figure("utilisation", 3),
  figure("allowed_kpa", 0),
  figure("heat_margin_k", 0),
  figure("loss_kpa", 2),
  figure("operating_l_per_h", 0),
  figure("coolant_ml", 1),
  figure("material_cm3", 2),
  figure("mass_g", 1),
  figure("cost", 2),
  { key: "findings", by: severity, show: found, chart: false },
];

/** What rows are sorted by to begin with: the size, as the engine has them. */
export const TUBE = "tube";

/** Headings of what is no single figure of the engine's. */
const OWN = /** @type {Record<string, { label: string, unit: string }>} */ ({
  [TUBE]: { label: say`Tube`, unit: "mm" },
  findings: { label: say`Found`, unit: "" },
});

/**
 * What a column is called, and its unit.
 * @param {Vocabulary} words
 * @param {string} key
 */
export function headingOf(words, key) {
  return OWN[key] ?? words.result(`/variants/*/${key}`);
}

/**
 * The rows in order; what is not known comes last whichever way round.
 * @template {Variant} Row
 * @param {readonly Row[]} rows
 * @param {{ key: string, down: boolean }} order
 */
export function sorted(rows, { key, down }) {
  const by = COLUMNS.find((column) => column.key === key)?.by;
  const turn = down ? -1 : 1;
  if (!by) return down ? rows.toReversed() : [...rows];
  return rows.toSorted((one, other) => {
    const [a, b] = [by(one), by(other)];
    if (a === null || b === null) return Number(a === null) - Number(b === null);
    return turn * (a - b);
  });
}

/**
 * A variant's tube in short: "14 × 10"; a size that differs from run to run has none.
 * @param {Variant} row
 */
export function sizeWords({ outer_diameter, bore }) {
  if (outer_diameter === null && bore === null) return say`each its own`;
  return `${outer_diameter === null ? say`each` : short(outer_diameter)} × ${bore === null ? say`each` : short(bore)}`;
}

/** How a variant stands: what the marks in the table and in the chart tell apart. @param {Variant} row */
export function standOf(row) {
  return row.feasible ? (row.findings.care > 0 ? "care" : "fine") : "stop";
}

/** @param {Variant} row */
function severity({ findings: { stop, care, note } }) {
  return stop * 1e8 + care * 1e4 + note;
}

/** @param {Variant} row */
function found({ findings }) {
  const kinds = WORST_FIRST.filter((kind) => findings[kind] > 0);
  if (kinds.length === 0) return html`${mark("fine")} nothing`;
  return kinds.map((kind) => html`<span class="count">${mark(kind)} ${countedKind(kind, findings[kind])}</span> `);
}

/** @param {[number, number] | null} range */
function spread(range) {
  if (range === null) return "–";
  const [least, most] = range.map((value) => fixed(value, 1));
  return least === most ? least : say`${least} to ${most}`;
}
