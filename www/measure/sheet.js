// The measuring sheet for the printer: one port and one fitting worked, and lines for the builder's own. The example is
// invented.

import { html } from "../words/html.js";
import { LESSONS } from "./pictures.js";
import { say } from "../words/say.js";

const PORT = [say`Port`, say`x near`, say`x far`, "x", say`y near`, say`y far`, "y", say`z near`, say`z far`, "z", say`Faces`, say`Fitting`, "±"];
const FITTING = [say`Fitting`, say`For tube`, say`Height`, say`Socket`, say`Collar`, say`Ring section`, say`Gland`, say`Gland width`];
const WORKED_PORT = [say`pump out`, "31.2", "49.0", "40.1", "13.6", "31.4", "22.5", "", "", "61.0", "+z", say`straight 12`, "0.5"];
const WORKED_FITTING = [say`straight 12`, "12", "18.0", "10.0", "19.0", "2.0", "15.2", "2.7"];
const [PORTS, FITTINGS] = [12, 4];

/** The sheet, which the style sheet shows on paper alone. */
export function measureSheet() {
  return html`<div class="print-pages" aria-hidden="true"><div class="print-page a4-portrait measuring">
    <h2>Measuring sheet</h2>
    <p>All in millimetres, from one datum: ______________________________ (the corner you count from). x to the right, y away from you, z up. Mains off, unplugged, drained.</p>
    <div class="pictures">${LESSONS.map(({ title, picture }) => html`<figure>${picture}<figcaption>${title}</figcaption></figure>`)}</div>
    ${table(say`Ports`, PORT, WORKED_PORT, PORTS)} ${table(say`Fittings`, FITTING, WORKED_FITTING, FITTINGS)}
    <p>The lines in slanted type are worked examples. Near and far: from the wall to both edges of the hole, and between them the centre, (31.2 + 49.0) / 2 = 40.1. Along the way that a port faces there is one number, to its seat face. ±: by how much two measurements differ.</p>
  </div></div>`;
}

/**
 * @param {string} title
 * @param {string[]} head
 * @param {string[]} worked
 * @param {number} blank
 */
function table(title, head, worked, blank) {
  return html`<table><caption>${title}</caption>
    <thead><tr>${head.map((name) => html`<th>${name}</th>`)}</tr></thead>
    <tbody><tr class="worked">${worked.map((value) => html`<td>${value}</td>`)}</tr>
      ${Array.from({ length: blank }, () => html`<tr>${head.map(() => html`<td></td>`)}</tr>`)}</tbody></table>`;
}
