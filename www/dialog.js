// A dialog over the page: its frame, and how it is opened and closed.

import { html } from "./words/html.js";
import { sign } from "./words/marks.js";

/**
 * @param {string} id
 * @param {string} title
 * @param {unknown} body
 */
export function dialog(id, title, body) {
  /** @param {MouseEvent} event */
  const outside = (event) => {
    if (event.target === event.currentTarget) closeDialog(id);
  };
  return html`<dialog id=${id} class="dialog" aria-labelledby="${id}-title" @click=${outside}>
    <div class="dialog-body">
      <header>
        <h2 id="${id}-title" tabindex="-1" autofocus>${title}</h2>
        <button type="button" class="quiet" @click=${() => closeDialog(id)}>${sign("remove")}<span class="unseen">Close</span></button>
      </header>
      ${body}
    </div>
  </dialog>`;
}

/** @param {string} id */
export function openDialog(id) {
  const element = document.getElementById(id);
  if (element instanceof HTMLDialogElement && !element.open) element.showModal();
}

/** @param {string} id */
export function closeDialog(id) {
  const element = document.getElementById(id);
  if (element instanceof HTMLDialogElement) element.close();
}

/** @param {string} id */
export function isOpen(id) {
  const element = document.getElementById(id);
  return element instanceof HTMLDialogElement && element.open;
}
