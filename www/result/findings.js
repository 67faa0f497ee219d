// Everything found about the design, worst first, each with a way to the place it is about.

import { html, nothing } from "../vendor/lit-html.js";
import { valueAt } from "../design/pointer.js";
import { findingBody } from "../form/notes.js";
import { mark, SEVERITY } from "../words/marks.js";
import { counted } from "../words/numbers.js";

/** @import { Finding, Problem } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */

const WORST_FIRST = /** @type {const} */ (["stop", "care", "note"]);

/**
 * @param {Sheet} sheet
 * @param {Problem[]} problems
 * @param {Finding[]} findings
 */
export function findingsList(sheet, problems, findings) {
  if (problems.length > 0) {
    return html`<ul class="notes">${problems.slice(0, 12).map((problem) => html`<li class="note mend">${mark("mend")}
      <div><p><b>${SEVERITY.mend}:</b> ${problem.message}</p>${goTo(sheet, problem.path)}</div></li>`)}</ul>
      ${problems.length > 12 ? html`<p class="source">And ${problems.length - 12} more, marked in the form.</p>` : nothing}`;
  }
  const sorted = WORST_FIRST.flatMap((severity) => findings.filter((finding) => finding.severity === severity));
  if (sorted.length === 0) {
    if (!sheet.report || sheet.report.runs.length === 0) return nothing;
    return html`<p class="all-fine">${mark("fine")} Nothing found against these runs.</p>`;
  }
  return html`<ul class="notes" data-stale=${!sheet.fresh}>${sorted.map((finding) => html`<li class="note ${finding.severity}">
    ${findingBody(sheet, finding)} ${goTo(sheet, finding.where)}</li>`)}</ul>`;
}

/**
 * How it stands in one line, for the eye and for screen readers.
 * @param {Problem[]} problems
 * @param {Finding[]} findings
 * @param {number} runs
 */
export function standing(problems, findings, runs) {
  if (problems.length > 0) return `${counted(problems.length, "field")} to mend before the tubes can follow.`;
  const counts = WORST_FIRST.map((severity) => findings.filter((finding) => finding.severity === severity).length);
  const [stop, care, note] = counts;
  const words = [stop && counted(stop, "stop"), care && `${care} to take care of`, note && counted(note, "note")].filter(Boolean);
  const made = runs === 0 ? "No run yet" : counted(runs, "run");
  return words.length > 0 ? `${made}: ${words.join(", ")}.` : runs === 0 ? `${made}.` : `${made}, nothing found against ${runs === 1 ? "it" : "them"}.`;
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
  const item = index === undefined ? undefined : /** @type {{ name?: string } | undefined} */ (valueAt(sheet.design, `/${list}/${index}`));
  const corner = rest[0] === "route" && rest[1] !== undefined ? `corner ${Number(rest[1]) + 1}` : "";
  const label = rest.length > 0 && !corner ? sheet.words.quantity(pointer).label.toLowerCase() : corner;
  const name = item?.name || (index !== undefined ? `${list.replace("_", "-").replace(/s$/, "")} ${Number(index) + 1}` : "");
  if (label && name) return `${label} of ${name}`;
  return name || (pointer ? sheet.words.quantity(pointer).label.toLowerCase() : "the design");
}
