// What the numbers in the preview stand for: the runs in the design's order, told apart without colour.

import { html, nothing } from "../words/html.js";

// More of them would leave no room for the picture.
const MOST = 12;

/** @param {string[]} runs */
export function runsKey(runs) {
  if (runs.length < 2) return nothing;
  const more = runs.length - MOST;
  return html`<ol class="runs-key" aria-label="Numbers in the preview">
    ${runs.slice(0, MOST).map((name, index) => html`<li><b aria-hidden="true">${index + 1}</b> <span dir="auto">${name}</span></li>`)}
    ${more > 0 ? html`<li>and ${more} more in the order of the form</li>` : nothing}
  </ol>`;
}
