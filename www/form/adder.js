// Ways to add another thing to a list.

import { html } from "../words/html.js";
import { sign } from "../words/marks.js";

/**
 * A button that adds.
 * @param {string} id of the list it adds to
 * @param {string} label
 * @param {() => void} add
 */
export function addButton(id, label, add) {
  return html`<button type="button" class="add" id="add-${id}" @click=${add}>${sign("add")} ${label}</button>`;
}

/**
 * A choice of what to add, and a button that adds it: choosing alone changes nothing.
 * @param {string} id of the list it adds to
 * @param {string} label
 * @param {{ value: string, label: string }[]} options
 * @param {(value: string) => void} add
 */
export function addChooser(id, label, options, add) {
  const choose = () => {
    const select = /** @type {HTMLSelectElement | null} */ (document.getElementById(`choose-${id}`));
    if (select) add(select.value);
  };
  return html`<div class="adder">
    <label class="unseen" for="choose-${id}">${label}: which</label>
    <select id="choose-${id}">${options.map((option) => html`<option value=${option.value}>${option.label}</option>`)}</select>
    <button type="button" class="add" id="add-${id}" @click=${choose}>${sign("add")} ${label}</button>
  </div>`;
}
