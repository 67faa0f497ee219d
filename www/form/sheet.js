// What every part of the form is given: the design, the words for it, what was found about it, and what can be done.

import { upFrom, valueAt } from "../design/pointer.js";

/** @import { Design, ListName } from "../design/types.js" */
/** @import { Finding, Problem, Report } from "../engine/messages.js" */
/** @import { Presets } from "../words/presets.js" */
/** @import { Vocabulary } from "../words/vocabulary.js" */

/**
 * What the form can do. A person can be quicker than the next frame, so what an edit starts from is the design as it
 * is when the edit is made, never the one that was drawn last: `change` and `update` hand it over.
 * @typedef {{ set: (pointer: string, value: unknown) => void, change: (edit: (design: Design) => Design) => void,
 *   update: (pointer: string, edit: (value: any) => unknown) => void, rename: (list: ListName, index: number, name: string) => void, applyFix: (finding: Finding) => void, cut: (run: string) => void,
 *   edit: (request: import("../engine/messages.js").EditRequest, goTo?: string) => void,
 *   save: (request: import("../result/files.js").FileRequest) => void, goTo: (pointer: string) => void, select: (run: string | null) => void, redraw: () => void }} Actions
 */
/** @typedef {{ problems: Problem[], findings: Finding[] }} Notes */
/** @typedef {{ stop: number, care: number, note: number, mend: number, blank: number }} Count */
/**
 * @typedef {{ design: Design, words: Vocabulary, presets: Presets, report: Report | undefined, fresh: boolean,
 *   lengths: import("../design/lengths.js").Lengths, sums: import("./sums.js").Sums,
 *   cards: import("./cards.js").Cards, selected: string | null, papers: import("../result/papers.js").Papers, act: Actions, notes: (pointer: string) => Notes,
 *   countUnder: (pointer: string) => Count }} Sheet
 *   `fresh`: whether the report is about the design as it is now, so that its fixes can be applied.
 */

const NONE = /** @type {Notes} */ ({ problems: [], findings: [] });
/** @type {Count} */
const NO_COUNT = { stop: 0, care: 0, note: 0, mend: 0, blank: 0 };

/**
 * Puts every problem and finding where the form can show it: its own place, or the nearest one around it.
 * @param {Design} design
 * @param {Problem[]} problems
 * @param {Finding[]} findings
 */
export function placed(design, problems, findings) {
  /** @type {Map<string, Notes>} */
  const places = new Map();
  /** @param {string} pointer */
  const at = (pointer) => {
    const place = upFrom(pointer).find((one) => isShown(design, one)) ?? "";
    let notes = places.get(place);
    if (!notes) places.set(place, (notes = { problems: [], findings: [] }));
    return notes;
  };
  for (const problem of problems) at(problem.path).problems.push(problem);
  for (const finding of findings) at(finding.where).findings.push(finding);
  const counts = countsOf(design, places);
  return {
    /** @param {string} pointer */
    notes: (pointer) => places.get(pointer) ?? NONE,
    /** @param {string} pointer */
    countUnder: (pointer) => counts.get(pointer) ?? NO_COUNT,
  };
}

/**
 * How many of each kind there are at each place and inside it.
 * @param {Design} design
 * @param {Map<string, Notes>} places
 */
function countsOf(design, places) {
  /** @type {Map<string, Count>} */
  const counts = new Map();
  for (const [place, { problems, findings }] of places) {
    for (const around of upFrom(place)) {
      let count = counts.get(around);
      if (!count) counts.set(around, (count = { ...NO_COUNT }));
      count[valueAt(design, place) === "" ? "blank" : "mend"] += problems.length;
      for (const finding of findings) count[finding.severity] += 1;
    }
  }
  return counts;
}

/**
 * Whether the form has a place for what is at a pointer.
 * @param {Design} design
 * @param {string} pointer
 */
function isShown(design, pointer) {
  if (pointer === "/format" || pointer === "/version") return false;
  return valueAt(design, pointer) !== undefined;
}

/**
 * Whether a problem is only that a field is still blank: nothing is wrong yet, something is missing.
 * @param {Design} design
 * @param {Problem} problem
 */
export function isBlank(design, problem) {
  return problem.path !== "/name" && valueAt(design, problem.path) === "";
}

/**
 * The id of the element that shows a place.
 * @param {string} pointer
 */
export function idOf(pointer) {
  return `at${pointer.replaceAll("/", "-")}`;
}
