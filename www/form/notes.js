// What was found about one place of the design, shown beside it.

import { html, nothing } from "../words/html.js";
import { valueAt } from "../design/pointer.js";
import { mark, SEVERITY } from "../words/marks.js";
import { short } from "../words/numbers.js";
import { idOf, isBlank } from "./sheet.js";
import { say, within } from "../words/say.js";

/** @import { Finding, PatchStep } from "../engine/messages.js" */
/** @import { Sheet } from "./sheet.js" */

/**
 * The notes at a place; nothing where there are none. A field that is only blank says so itself.
 * @param {Sheet} sheet
 * @param {string} pointer
 */
export function notesAt(sheet, pointer) {
  const { problems, findings } = sheet.notes(pointer);
  if (problems.length + findings.length === 0 || isOnlyBlank(sheet, pointer)) return nothing;
  return html`<ul class="notes" id="${idOf(pointer)}-notes">
    ${problems.map(
      (problem) => html`<li class="note mend">${mark("mend")}<p><b>${SEVERITY.mend}:</b> ${problem.message}</p></li>`,
    )}
    ${findings.map((finding) => html`<li class="note ${finding.severity}">${findingBody(sheet, finding)}</li>`)}
  </ul>`;
}

/**
 * Whether a field is blank and that is all there is to say about it.
 * @param {Sheet} sheet
 * @param {string} pointer
 */
export function isOnlyBlank(sheet, pointer) {
  const { problems } = sheet.notes(pointer);
  return problems.length > 0 && problems.every((problem) => problem.path === pointer && isBlank(sheet.design, problem));
}

/**
 * Whether what is at a place cannot stay as it is.
 * @param {Sheet} sheet
 * @param {string} pointer
 */
export function isBad(sheet, pointer) {
  const { problems, findings } = sheet.notes(pointer);
  return (problems.length > 0 && !isOnlyBlank(sheet, pointer)) || findings.some((finding) => finding.severity === "stop");
}

/**
 * A finding in words: how bad, what, where the limit comes from, and a button that mends it.
 * @param {Sheet} sheet
 * @param {Finding} finding
 * @param {boolean} [inFull] with what it means and where its limit comes from
 */
export function findingBody(sheet, finding, inFull = false) {
  const { severity, message, source, fix } = finding;
  const meaning = sheet.words.findingMeaning(finding.code);
  return html`${mark(severity)}
    <div>
      <p><b>${SEVERITY[severity]}:</b> ${message}</p>
      ${inFull && meaning ? html`<p class="source">${meaning}${source ? say` Limit from: ${source}.` : ""}</p>` : nothing}
      ${fix && fix.length > 0
        ? html`<button type="button" class="fix" ?disabled=${!sheet.fresh} @click=${() => sheet.act.applyFix(finding)}>
            Apply this fix<span class="fix-words">: ${fixWords(sheet, fix)}</span>
          </button>`
        : nothing}
    </div>`;
}

/**
 * What a fix does to the design, in words.
 * @param {Sheet} sheet
 * @param {PatchStep[]} fix
 */
function fixWords(sheet, fix) {
  return fix.map((step) => stepWords(sheet, step)).join("; ");
}

/**
 * @param {Sheet} sheet
 * @param {PatchStep} step
 */
function stepWords(sheet, { op, path, value }) {
  const { label, unit } = sheet.words.quantity(path);
  const thing = path.replace(/^\/(\w+)\/(\d+).*$/, (_, list, index) => {
    const item = /** @type {{ name?: string } | undefined} */ (valueAt(sheet.design, `/${list}/${index}`));
    return item?.name ? say` of ${item.name}` : "";
  });
  const what = `${within(label)}${thing.startsWith("/") ? "" : thing}`;
  if (op === "remove") return say`take away the ${what}`;
  // In a list "add" puts a further item in; on a key it says what the key shall be.
  if (op === "add" && typeof value === "object") return say`add the ${what}`;
  if (typeof value === "number") return say`make the ${what} ${`${short(value)}${unit === "°" ? "°" : unit ? ` ${unit}` : ""}`}`;
  return typeof value === "string" ? say`make the ${what} ${value}` : say`make the ${what}`;
}
