// Everything found about the design, worst first, each with a way to the place it is about.

import { html, nothing } from "../words/html.js";
import { upFrom, valueAt } from "../design/pointer.js";
import { kindOf } from "../design/stations.js";
import { findingBody } from "../form/notes.js";
import { isBlank } from "../form/sheet.js";
import { mark, SEVERITY, WORST_FIRST } from "../words/marks.js";
import { counted } from "../words/numbers.js";
import { kindWords } from "../words/stations.js";
import { say, within } from "../words/say.js";

/** @import { Design, Station } from "../design/types.js" */
/** @import { Finding, Problem } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */

// More lines than this bury the first; the rest are marked in the form all the same.
const MOST_SHOWN = 12;
const MOST_FOUND = 40;

/** What a thing without a name is called, by its list. */
const THINGS = /** @type {Record<string, string>} */ ({ fittings: say`fitting`, ports: say`port`, runs: say`run`, keep_outs: say`keep-out` });

/**
 * @param {Sheet} sheet
 * @param {Problem[]} problems
 * @param {Finding[]} findings
 */
export function findingsList(sheet, problems, findings) {
  if (problems.length > 0) return problemsList(sheet, problems);
  const sorted = WORST_FIRST.flatMap((severity) => findings.filter((finding) => finding.severity === severity));
  if (sorted.length === 0) {
    if (!sheet.report || sheet.report.runs.length === 0) return nothing;
    return html`<p class="all-fine">${mark("fine")} Nothing found against these runs.</p>`;
  }
  return html`<ul class="notes" data-stale=${!sheet.fresh}>${sorted.slice(0, MOST_FOUND).map((finding) => html`<li class="note ${finding.severity}">
    ${findingBody(sheet, finding, true)} ${goTo(sheet, finding.where)}</li>`)}</ul>
    ${sorted.length > MOST_FOUND ? html`<p class="source">And ${sorted.length - MOST_FOUND} more, marked in the form.</p>` : nothing}`;
}

/**
 * What keeps the design from being read: fields that are blank, a line for each card, and what has to be mended.
 * @param {Sheet} sheet
 * @param {Problem[]} problems
 */
function problemsList(sheet, problems) {
  const wrong = problems.filter((problem) => !isBlank(sheet.design, problem));
  /** @type {Map<string, string[]>} */
  const blanks = new Map();
  for (const { path } of problems.filter((problem) => isBlank(sheet.design, problem))) {
    const card = path.split("/").slice(0, 3).join("/");
    blanks.set(card, [...(blanks.get(card) ?? []), path]);
  }
  return html`<ul class="notes">
      ${wrong.slice(0, MOST_SHOWN).map((problem) => html`<li class="note mend">${mark("mend")}
        <div><p><b>${SEVERITY.mend}:</b> ${problem.message}</p></div>${goTo(sheet, problem.path)}</li>`)}
      ${[...blanks.values()].slice(0, MOST_SHOWN).map((paths) => html`<li class="note">${mark("note")}
        <div><p><b>To fill in:</b> ${counted(paths.length, "field")}.</p></div>${goTo(sheet, paths[0])}</li>`)}
    </ul>
    ${wrong.length > MOST_SHOWN ? html`<p class="source">And ${wrong.length - MOST_SHOWN} more, marked in the form.</p>` : nothing}`;
}

/**
 * How it stands in one line, for the eye and for screen readers.
 * @param {Design} design
 * @param {Problem[]} problems
 * @param {Finding[]} findings
 */
export function standing(design, problems, findings) {
  const runs = design.runs.length;
  if (problems.length > 0) {
    const blank = problems.filter((problem) => isBlank(design, problem)).length;
    const wrong = problems.length - blank;
    return say`${[blank && say`${counted(blank, "field")} to fill in`, wrong && say`${wrong} to mend`].filter(Boolean).join(", ")}, then the tubes follow.`;
  }
  const counts = WORST_FIRST.map((severity) => findings.filter((finding) => finding.severity === severity).length);
  const [stop, care, note] = counts;
  const words = [stop && counted(stop, "stop"), care && say`${care} to take care of`, note && counted(note, "note")].filter(Boolean);
  const made = runs === 0 ? say`No run yet` : counted(runs, "run");
  return words.length > 0 ? `${made}: ${words.join(", ")}.` : runs === 0 ? `${made}.` : runs === 1 ? say`${made}, nothing found against it.` : say`${made}, nothing found against them.`;
}

/**
 * @param {Sheet} sheet
 * @param {string} pointer
 */
function goTo(sheet, pointer) {
  return html`<button type="button" class="link" @click=${() => sheet.act.goTo(pointer)}>Go to ${placeWords(sheet, pointer)}</button>`;
}

/**
 * A place in words: "bend radius of pump to block".
 * @param {Sheet} sheet
 * @param {string} pointer
 */
function placeWords(sheet, pointer) {
  const [, list, index, ...rest] = pointer.split("/");
  if (list === "process" || list === "loop") return settingWords(sheet, pointer);
  const item = index === undefined ? undefined : /** @type {{ name?: string } | undefined} */ (valueAt(sheet.design, `/${list}/${index}`));
  const station = rest[0] === "route" && rest[1] !== undefined ? stationWords(sheet, pointer) : "";
  const label = rest.length > 0 && !station ? within(sheet.words.quantity(pointer).label) : station;
  const name = item?.name || (index !== undefined ? `${THINGS[list] ?? list} ${Number(index) + 1}` : "");
  if (label && name) return say`${label} of ${name}`;
  return name || (pointer ? within(sheet.words.quantity(pointer).label) : say`the design`);
}

/**
 * A place in what the tubes are made of or the loop in words: "material", "tensile modulus of own resin".
 * @param {Sheet} sheet
 * @param {string} pointer
 */
function settingWords(sheet, pointer) {
  const nameAt = (/** @type {string} */ place) => /** @type {{ name?: string } | null | undefined} */ (valueAt(sheet.design, place))?.name;
  const own = /\/\d+$/.test(pointer) ? nameAt(pointer) : undefined;
  if (own) return own;
  const { label } = sheet.words.quantity(pointer);
  const words = within(label, 1);
  // The last two are the setting's list of keys and the design itself, which has a name but holds everything.
  const around = upFrom(pointer).slice(1, -2).map(nameAt).find(Boolean);
  return around ? say`${words} of ${around}` : words;
}

/**
 * A station of a route in words: "coil 2".
 * @param {Sheet} sheet
 * @param {string} pointer of the station or of something in it
 */
function stationWords(sheet, pointer) {
  const place = pointer.split("/").slice(0, 5).join("/");
  const station = /** @type {Station | undefined} */ (valueAt(sheet.design, place));
  return station ? `${within(kindWords(sheet.words, kindOf(station)))} ${Number(place.split("/")[4]) + 1}` : "";
}
