// The designs that this browser keeps: opened, copied, removed, saved all at once and taken back.

import { html, nothing } from "../words/html.js";
import { repeat } from "../vendor/directives/repeat.js";
import { closeDialog, dialog, openDialog } from "../dialog.js";
import { counted } from "../words/numbers.js";
import { shown } from "./keeping.js";
import { picture } from "./picture.js";
import { locale } from "../words/language.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { Listed } from "./shelf.js" */

const ID = "designs";

/** @param {App} app */
export function openDesigns(app) {
  app.keeping.list();
  openDialog(ID);
}

/** @param {App} app */
export function designsDialog(app) {
  const { keeping, store } = app;
  const { damaged, listed } = keeping;
  return dialog(ID, say`Designs in this browser`, html`
    <p class="source">They are kept on this machine, in this browser, and sent nowhere. Who clears the browser's data clears them, so save them all in one file now and then.</p>
    <ul class="shelf">${repeat(listed, ({ id }) => id, (entry) => row(app, entry, entry.id === store.state.id))}</ul>
    <div class="adder">
      <button type="button" ?disabled=${listed.length === 0} @click=${() => keeping.saveAll()}>Save all in one file</button>
      <button type="button" @click=${() => document.getElementById("take-file")?.click()}>Take designs from a file…</button>
      <input class="unseen" id="take-file" type="file" accept=".json,application/json" tabindex="-1" aria-label="File of designs to take"
        @change=${(/** @type {Event} */ event) => void app.opening.openFrom(/** @type {HTMLInputElement} */ (event.target))}>
    </div>
    ${damaged.length > 0 ? html`<h3>Set aside</h3>
      <p class="source">What was kept here and could not be read. It is never deleted; as a file it may be mended by hand.</p>
      <ul class="shelf">${damaged.map((one) => html`<li><div><p class="short">${dateWords(one.when)}</p></div>
        <button type="button" @click=${() => keeping.saveDamaged(one)}>Save it as a file<span class="unseen"> what was set aside ${dateWords(one.when)}</span></button></li>`)}</ul>` : nothing}`);
}

/**
 * @param {App} app
 * @param {Listed} entry
 * @param {boolean} present
 */
function row(app, entry, present) {
  const { id, name, runs, changed } = entry;
  const title = shown(name);
  const open = () => {
    closeDialog(ID);
    app.keeping.open(id);
  };
  return html`<li aria-current=${present ? "true" : nothing}>
    ${picture(entry.picture)}
    <div><p class="title" dir="auto">${title}</p><p class="short">${counted(runs, "run")}, changed ${dateWords(changed)}${entry.untouched ? say`, as it was started` : ""}</p></div>
    <div class="group">
      ${present ? html`<span class="badge">On the page</span>` : html`<button type="button" @click=${open}>Open<span class="unseen"> ${title}</span></button>`}
      <button type="button" @click=${() => app.keeping.copy(id)}>Copy<span class="unseen"> ${title}</span></button>
      ${present ? nothing : html`<button type="button" @click=${() => { app.keeping.remove(entry); document.getElementById(`${ID}-title`)?.focus(); }}>Remove<span class="unseen"> ${title}</span></button>`}
    </div>
  </li>`;
}

/** @param {string} when ISO 8601 */
function dateWords(when) {
  const date = new Date(when);
  return Number.isNaN(date.getTime()) ? say`at a time that is not known` : date.toLocaleString(locale(), { dateStyle: "medium", timeStyle: "short" });
}
