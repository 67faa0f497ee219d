// A card: one thing of a list, with its name, what it comes to in short, and buttons to move and remove it.

import { html, nothing } from "../words/html.js";
import { repeat } from "../vendor/directives/repeat.js";
import { identityOf } from "../design/identity.js";
import { moved, removed } from "../design/lists.js";
import { countedKind, mark, sign } from "../words/marks.js";
import { say } from "../words/say.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";

/** @import { ListName } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/**
 * The cards of one of the design's lists.
 * @template {ListName} L
 * @param {Sheet} sheet
 * @param {L} list
 * @param {{ one: string, open: boolean, short: (item: import("../design/types.js").Design[L][number]) => unknown,
 *   body: (item: import("../design/types.js").Design[L][number], index: number, pointer: string) => unknown }} how
 *   `one`: what a thing of the list is called.
 */
export function cards(sheet, list, how) {
  /** @typedef {import("../design/types.js").Design[L][number]} Item */
  const items = /** @type {Item[]} */ (sheet.design[list]);
  const body = (/** @type {Item} */ item, /** @type {number} */ index) => {
    const pointer = `/${list}/${index}`;
    const open = sheet.cards.isOpen(item, how.open);
    return html`<section class="card" id=${idOf(pointer)} aria-labelledby="${idOf(pointer)}-title" data-list=${list}
      data-selected=${list === "runs" && item.name === sheet.selected}>
      <header>
        <button type="button" class="quiet fold" aria-expanded=${open} aria-controls="${idOf(pointer)}-body"
          @click=${() => { sheet.cards.set(item, !open); sheet.act.redraw(); }}>
          ${sign(open ? "open" : "shut")}
          <span class="unseen">${open ? say`Fold ${how.one} ${item.name}` : say`Unfold ${how.one} ${item.name}`}</span>
        </button>
        <h3 id="${idOf(pointer)}-title" dir="auto">${item.name || say`${how.one} ${index + 1}, not named yet`}</h3>
        <p class="short">${how.short(item)} ${open ? nothing : badges(sheet, pointer)}</p>
        ${moveButtons(sheet, list, index, `${how.one} ${item.name}`)}
        <button type="button" class="quiet" id="${idOf(pointer)}-remove"
          @click=${() => { sheet.act.change((design) => removed(design, list, index)); focusAfterRemoval(list, index); }}>
          ${sign("remove")}<span class="unseen">Remove ${how.one} ${item.name}</span>
        </button>
      </header>
      <div class="card-body" id="${idOf(pointer)}-body" ?hidden=${!open}>
        ${open ? html`${notesAt(sheet, pointer)} ${how.body(item, index, pointer)}` : nothing}
      </div>
    </section>`;
  };
  return html`${repeat(items, identityOf, body)}`;
}

/**
 * @param {Sheet} sheet
 * @param {ListName} list
 * @param {number} index
 * @param {string} what
 */
function moveButtons(sheet, list, index, what) {
  const length = sheet.design[list].length;
  if (length < 2) return nothing;
  /** @param {number} by */
  const move = (by) => sheet.act.update(`/${list}`, (items) => moved(items, index, by));
  return html`<button type="button" class="quiet" aria-disabled=${index === 0} @click=${() => move(-1)}>
      ${sign("up")}<span class="unseen">Move ${what} up</span></button>
    <button type="button" class="quiet" aria-disabled=${index === length - 1} @click=${() => move(1)}>
      ${sign("down")}<span class="unseen">Move ${what} down</span></button>`;
}

/**
 * How many things were found inside a folded card.
 * @param {Sheet} sheet
 * @param {string} pointer
 */
function badges(sheet, pointer) {
  const count = sheet.countUnder(pointer);
  const blank = count.blank > 0 ? html`<span class="badge">${count.blank} to fill in</span> ` : nothing;
  const marks = /** @type {const} */ (["mend", "stop", "care"]).filter((kind) => count[kind] > 0).map(
    (kind) => html`<span class="badge ${kind}">${mark(kind)} ${countedKind(kind, count[kind])}</span> `,
  );
  return html`${blank}${marks}`;
}

/**
 * The focus goes to the next thing's remove button, the one before it, or the section's way to add another.
 * @param {ListName} list
 * @param {number} index
 */
function focusAfterRemoval(list, index) {
  requestAnimationFrame(() => {
    const near = [index, index - 1].map((at) => document.getElementById(`${idOf(`/${list}/${at}`)}-remove`));
    (near.find(Boolean) ?? document.getElementById(`add-${list}`))?.focus();
  });
}
