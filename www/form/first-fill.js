// The usual order of a first fill and leak test, with its cautions.

import { html } from "../words/html.js";
import { mark } from "../words/marks.js";

/** @import { Sheet } from "./sheet.js" */

/** What can hurt, where it is seen before anything is begun. */
export function careWithAir() {
  return html`<p class="note care">${mark("care")}<span><b>Care:</b> mains unplugged, eye protection on, half a bar (50 kPa) of air at most,
    by a hand pump or a regulator with a relief valve; never a compressor directly.</span></p>`;
}

/** @param {Sheet} sheet */
export function firstFill(sheet) {
  return html`<details class="more first-fill">
    <summary>The usual order of a first fill and leak test</summary>
    <ol>${sheet.words.firstFill.map(([step, mind]) => html`<li>${step}${mind ? html` <span class="mind-step">${mark("care")} <b>Care:</b> ${mind}</span>` : ""}</li>`)}</ol>
    <p class="source">Common practice, no source. Local codes, the data sheets of your parts and licensed practice go first.</p>
  </details>`;
}
