// What the engine says, in the page's language: the words of its tables, and the sentences that it fills.

import { decimalMark, table } from "./language.js";
import { Sentences } from "./sentences.js";

/** @import { Finding, Problem, Report } from "../engine/messages.js" */
/** @import { Table } from "./vocabulary.js" */
/** @import { Presets } from "./presets.js" */

// As many colons as a name is tried with.
const MOST_COLONS = 4;

/** @type {Sentences | undefined} */
let sentences;

/**
 * A word or sentence of the engine in the page's language. What the table has no row for stays as it is.
 * @param {string} text
 * @param {string} [kind] where the same English means another thing elsewhere
 * @returns {string}
 */
export function engineWord(text, kind) {
  if (!table || text === "") return text;
  return (kind === undefined ? undefined : rowOf(`${kind}:${text}`)) ?? rowOf(text) ?? told(text) ?? text;
}

/**
 * A message of the engine, which may begin with the name of what it is about.
 * @param {string} message
 */
export function engineMessage(message) {
  if (!table) return message;
  // A name can hold a colon itself, and so can a message: each is tried for the one between them, then the message as a whole.
  for (let from = afterColon(message, 0), tries = 0; from > 0 && tries < MOST_COLONS; from = afterColon(message, from), tries += 1) {
    const words = told(message.slice(from));
    if (words !== undefined) return message.slice(0, from) + words;
  }
  const words = told(message) ?? told(message.charAt(0).toLowerCase() + message.slice(1));
  return words === undefined ? message : words.charAt(0).toUpperCase() + words.slice(1);
}

/**
 * @template {Finding} F
 * @param {F[]} findings
 * @returns {F[]}
 */
export function findingsInWords(findings) {
  if (!table) return findings;
  return findings.map((finding) => ({ ...finding, message: engineMessage(finding.message), source: engineWord(finding.source) }));
}

/** @param {Problem[]} problems */
export function problemsInWords(problems) {
  if (!table) return problems;
  return problems.map((problem) => ({ ...problem, message: engineMessage(problem.message) }));
}

/** @param {Report} report */
export function reportInWords(report) {
  return table ? { ...report, findings: findingsInWords(report.findings) } : report;
}

/**
 * The vocabulary's words.
 * @param {Table} vocabulary
 * @returns {Table}
 */
export function vocabularyInWords(vocabulary) {
  if (!table) return vocabulary;
  const { quantities, findings = {}, cautions = [], first_fill = [], results = [] } = vocabulary;
  return {
    ...vocabulary,
    quantities: mapped(quantities, (one) => ({ ...one, label: engineWord(one.label), hint: engineWord(one.hint), range: one.range && engineWord(one.range) })),
    findings: mapped(findings, ({ title, meaning }) => ({ title: engineWord(title), meaning: engineWord(meaning) })),
    cautions: cautions.map((caution) => engineWord(caution)),
    first_fill: first_fill.map(([step, mind]) => [engineWord(step), engineWord(mind)]),
    results: results.map((one) => ({
      ...one, label: engineWord(one.label, "result"), formula: engineWord(one.formula), source: engineWord(one.source), range: engineWord(one.range),
    })),
  };
}

/**
 * The presets' words that only stand in the page. What goes into a design stays as it is.
 * @param {Presets} presets
 * @returns {Presets}
 */
export function presetsInWords(presets) {
  if (!table) return presets;
  return {
    ...presets,
    fittings: presets.fittings.map((one) => ({ ...one, label: engineWord(one.label) })),
    tubes: presets.tubes.map((one) => ({ ...one, label: engineWord(one.label) })),
    demos: presets.demos.map((one) => ({ ...one, label: engineWord(one.label), about: engineWord(one.about) })),
  };
}

/**
 * @param {string} key
 * @returns {string | undefined}
 */
function rowOf(key) {
  return table && Object.hasOwn(table.engine, key) ? table.engine[key] : undefined;
}

/**
 * Where the next colon of a text has ended; 0 where there is none.
 * @param {string} text
 * @param {number} from
 */
function afterColon(text, from) {
  const at = text.indexOf(": ", from);
  return at < 0 ? 0 : at + 2;
}

/** @param {string} text */
function told(text) {
  sentences ??= table && new Sentences(table.sentences, rowOf, numberInWords);
  return sentences?.of(text);
}

/**
 * A number as the engine writes it, with a point before decimals and commas between thousands.
 * @param {string} number
 */
function numberInWords(number) {
  if (decimalMark === ".") return number;
  return number.replace(/[.,]/g, (mark) => (mark === "," ? "." : decimalMark));
}

/**
 * @template T
 * @param {Record<string, T>} rows
 * @param {(row: T) => T} change
 * @returns {Record<string, T>}
 */
function mapped(rows, change) {
  return Object.fromEntries(Object.entries(rows).map(([key, row]) => [key, change(row)]));
}
