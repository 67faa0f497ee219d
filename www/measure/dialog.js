// How to measure, over the page, and the sheet to write it down on.

import { html } from "../words/html.js";
import { dialog, openDialog } from "../dialog.js";
import { LESSONS } from "./pictures.js";
import { say } from "../words/say.js";

/** @import { Measuring } from "./measuring.js" */

const ID = "measure";

/** @param {Measuring} measuring */
export function measureDialog(measuring) {
  return dialog(ID, say`How to measure`, html`
    <p class="source">Calipers, a rule and a torch are enough. Mains off and unplugged, coolant drained, before your hands are in the case; edges of sheet metal cut.</p>
    <ol class="lessons">${LESSONS.map(({ title, words, picture }) => html`<li>${picture}<div><h3>${title}</h3><p>${words}</p></div></li>`)}</ol>
    <p>Measure twice, at different times: what differs between the two is what you state under “Measured to”.</p>
    <div class="adder"><button type="button" class="main" @click=${() => measuring.print()}>Print a measuring sheet</button></div>`);
}

/** The button that opens it. */
export function measureButton() {
  return html`<button type="button" class="link how" aria-haspopup="dialog" @click=${() => openDialog(ID)}>How to measure</button>`;
}
