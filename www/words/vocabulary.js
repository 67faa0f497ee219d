// The engine's table of words: what every quantity is called, its unit, range and hint. No label of a quantity is
// typed in the page; where the table lacks a row, the key's own words stand in.

/**
 * @typedef {{ key: string, label: string, unit: string, hint: string, min?: number | null, max?: number | null,
 *   min_open?: boolean, max_open?: boolean, step?: number | null, range?: string | null, default?: unknown, example?: number | null,
 *   kind?: string }} Quantity
 */
/**
 * @typedef {{ quantities: Record<string, Quantity>, findings?: Record<string, { title: string, meaning: string }>,
 *   severities?: Record<string, string>, cautions?: string[], first_fill?: [step: string, mind: string][], results?: Result[] }} Table
 */
/**
 * A number of the results: what it is called and where it comes from. `path` and the results among `inputs` are places
 * in the report, the other inputs places in the design, all with `*` for a position in a list.
 * @typedef {{ path: string, label: string, unit: string, formula: string, source: string, range: string, inputs: string[] }} Result
 */

/** @type {[suffix: string, unit: string][]} */
const UNITS = [
  ["_deg", "°"], ["_g_per_cm3", "g/cm³"], ["_l_per_h", "L/h"], ["_kpa", "kPa"], ["_mpa", "MPa"], ["_c", "°C"], ["_m", "m"], ["_ml", "mL"], ["_w", "W"],
];

export class Vocabulary {
  /** @type {Table} */
  #table;
  /** @type {Map<string, Quantity>} */
  #found = new Map();
  /** @type {Map<string, Result>} */
  #results;

  /** @param {Table} table */
  constructor(table) {
    this.#table = table;
    this.#results = new Map(table.results?.map((result) => [result.path, result]));
  }

  /**
   * The row of a quantity.
   * @param {string} pointer of a place in a design, or with `*` for a position in a list
   * @returns {Quantity}
   */
  quantity(pointer) {
    const key = anywhere(pointer);
    let found = this.#found.get(key);
    if (!found) {
      found = this.#table.quantities[key] ?? standIn(key);
      this.#found.set(key, found);
    }
    return found;
  }

  /**
   * The row of a number of the results.
   * @param {string} path of a place in a report, or with `*` for a position in a list
   * @returns {Result}
   */
  result(path) {
    const key = anywhere(path);
    const { label, unit } = standIn(key);
    return this.#results.get(key) ?? { path: key, label, unit, formula: "", source: "", range: "", inputs: [] };
  }

  /**
   * Whether a place is one of the results.
   * @param {string} path
   */
  isResult(path) {
    return this.#results.has(anywhere(path));
  }

  /**
   * What kind of finding a code is, in words.
   * @param {string} code
   */
  findingTitle(code) {
    return this.#table.findings?.[code]?.title ?? spaced(code);
  }

  /**
   * What a finding means for the builder.
   * @param {string} code
   */
  findingMeaning(code) {
    return this.#table.findings?.[code]?.meaning ?? "";
  }

  get cautions() {
    return this.#table.cautions ?? [];
  }

  /** The order of a first fill: each step, and what to mind at it, which may be empty. */
  get firstFill() {
    return this.#table.first_fill ?? [];
  }
}

/**
 * The range of a quantity in words; none where it is only the engine's guard against nonsense.
 * @param {Quantity} quantity
 */
export function rangeWords({ min, max, range }) {
  if (typeof min !== "number" || typeof max !== "number" || (min <= -1e6 && max >= 1e6)) return "";
  return range ?? "";
}

/**
 * @param {string} key
 * @returns {Quantity}
 */
function standIn(key) {
  const last = key.split("/").filter((part) => part !== "*").at(-1) ?? "";
  const suffix = UNITS.find(([end]) => last.endsWith(end));
  const label = spaced(suffix ? last.slice(0, -suffix[0].length) : last);
  return { key, label: label.charAt(0).toUpperCase() + label.slice(1), unit: suffix?.[1] ?? "", hint: "" };
}

/**
 * A place with `*` for every position in a list.
 * @param {string} place
 */
function anywhere(place) {
  return place.replace(/\/\d+(?=\/|$)/g, "/*");
}

/** @param {string} text */
function spaced(text) {
  return text.replaceAll(/[-_]/g, " ");
}
