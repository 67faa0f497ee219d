// The table of variants. What cannot be made stands there like the rest, with its mark, and says why in the line under it.

import { html, nothing } from "../words/html.js";
import { guard } from "../vendor/directives/guard.js";
import { repeat } from "../vendor/directives/repeat.js";
import { whereFrom } from "../result/origin.js";
import { mark } from "../words/marks.js";
import { counted } from "../words/numbers.js";
import { COLUMNS, headingOf, sizeWords, sorted, standOf, TUBE } from "./columns.js";
import { nameOf, takeId } from "./what-if.js";
import { engineMessage, engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "../form/sheet.js" */
/** @import { Row, WhatIf } from "./what-if.js" */

/** How each mark is read out. */
const SPOKEN = /** @type {const} */ ({ fine: say`Can be made`, care: say`Can be made, with care`, stop: say`Stopped` });

/**
 * @param {Sheet} sheet
 * @param {WhatIf} whatIf
 */
export function variantsTable(sheet, whatIf) {
  const { rows, order } = whatIf;
  // Where all are of one material, naming it in every row says nothing.
  const several = new Set(rows.map((row) => row.material)).size > 1;
  return html`<div class="scroll variants" tabindex="0" role="region" aria-labelledby="variants-caption">
    <table class="figures">
      <caption class="unseen" id="variants-caption">All variants and what each comes to</caption>
      <thead><tr>
        ${heading(sheet, whatIf, TUBE)}
        <td></td>
        ${COLUMNS.map(({ key }) => heading(sheet, whatIf, key))}
      </tr></thead>
      ${repeat(sorted(rows, order), (row) => row.key, (row) => guard([row, several, row.key === whatIf.marked], () => variant(whatIf, row, several)))}
    </table>
  </div>`;
}

/**
 * A column's head: pressing its name puts the rows in its order, and its numbers can be asked where they come from.
 * @param {Sheet} sheet
 * @param {WhatIf} whatIf
 * @param {string} key
 */
function heading(sheet, whatIf, key) {
  const { label, unit } = headingOf(sheet.words, key);
  const path = `/variants/*/${key}`;
  /** @type {Record<string, unknown>} */
  const present = { ...whatIf.rows.find((row) => row.present) };
  const { order } = whatIf;
  const now = order.key !== key ? nothing : order.down ? "descending" : "ascending";
  return html`<th scope="col" class=${key === TUBE || key === "findings" ? "" : "figure"} aria-sort=${now}>
    <div class="head"><button type="button" class="sort" id="sort-${key}" @click=${() => whatIf.sort(key)}>
      <span>${label}${unit ? html` <span class="unit">${unit}</span>` : nothing}</span> <svg class="sign order" viewBox="0 0 10 16" width="10" height="16" aria-hidden="true"><path class="up" d="M2 6l3-3 3 3"/><path class="down" d="M2 10l3 3 3-3"/></svg>
    </button>${sheet.words.isResult(path) ? whereFrom(sheet, { path, value: present[key] }) : nothing}</div></th>`;
}

/**
 * A variant: its line of figures, and where it is stopped the line that says why.
 * @param {WhatIf} whatIf
 * @param {Row} row
 * @param {boolean} several whether there are several materials
 */
function variant(whatIf, row, several) {
  const stand = standOf(row);
  const stopped = row.why.length > 0;
  const id = takeId(row);
  // What cannot even be a design has no wall, and cannot be made one.
  const can = !row.present && row.wall_mm !== null;
  const take = () => void (can && whatIf.adopt(row));
  return html`<tbody class="is-${stand} ${stopped ? "says-why" : ""}" data-key=${row.key} data-present=${row.present} data-marked=${row.key === whatIf.marked}
      @focusin=${() => whatIf.mark(row.key)} @pointerenter=${() => whatIf.mark(row.key)}>
    <tr>
      <th scope="rowgroup" rowspan=${stopped ? 2 : 1}>
        <span class="size">${mark(stand)}<span class="unseen">${SPOKEN[stand]}: </span> <span class="number">${sizeWords(row)}</span></span>
        ${several && row.material ? html`<span class="of" dir="auto">${engineWord(row.material)}</span>` : nothing}
        ${row.present ? html`<span class="now">as it is now</span>` : nothing}
      </th>
      <td class="takes"><button type="button" class="take" id=${id} aria-disabled=${!can} aria-describedby=${stopped ? `${id}-why` : nothing} @click=${take}>Take over<span class="unseen"> ${nameOf(row)}</span></button></td>
      ${COLUMNS.map(({ key, show }) => html`<td class=${key === "findings" ? "found" : "figure"} data-figure=${key}>${show(row)}</td>`)}
    </tr>
    ${stopped ? html`<tr class="why"><td colspan=${COLUMNS.length + 1}><div class="reasons" id="${id}-why">${reasons(row)}</div></td></tr>` : nothing}
  </tbody>`;
}

/** @param {Row} row */
function reasons({ why, findings }) {
  const [first, ...more] = why;
  const untold = findings.stop - why.length;
  return html`<p><b>Stopped:</b> ${engineMessage(first)}</p>
    ${more.length > 0
      ? html`<details class="more"><summary>And ${counted(findings.stop - 1, "more reason")}</summary>
          <ul class="changes">${more.map((words) => html`<li>${engineMessage(words)}</li>`)}${untold > 0 ? html`<li>${counted(untold, "further one")}, told in full once it is taken over.</li>` : nothing}</ul></details>`
      : nothing}`;
}
