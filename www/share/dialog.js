// The dialog that gives the link.

import { html, nothing } from "../words/html.js";
import { dialog, openDialog } from "../dialog.js";
import { codePicture } from "./code.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */

const ID = "share";

/** @param {App} app */
export function openShare(app) {
  openDialog(ID);
  void app.sharing.make();
}

/** @param {App} app */
export function shareDialog({ sharing }) {
  const { link, code, words, copied } = sharing;
  return dialog(ID, say`Share this design`, html`
    <p>The link holds the whole design, every name and note in it too: who has the link can read them. Opening it sends nothing to a server, since
      everything after the # stays in the browser. It opens beside what your friend works on and replaces nothing.</p>
    ${link ? html`
      <label for="share-link">The link</label>
      <textarea id="share-link" readonly rows="3" .value=${link} @focus=${(/** @type {Event} */ event) => /** @type {HTMLTextAreaElement} */ (event.target).select()}></textarea>
      <div class="adder"><button type="button" class="main" @click=${() => sharing.copy()}>Copy the link</button></div>` : nothing}
    <p class="source" role="status">${[copied, words].filter(Boolean).join(" ") || say`Making the link…`}</p>
    ${code ? html`<p>For the phone at the bench, point its camera here:</p>${codePicture(code)}`
      : link && !link.startsWith("#") ? html`<p class="source">The design is too large for a QR code that a camera could read; send the link instead.</p>` : nothing}`);
}
