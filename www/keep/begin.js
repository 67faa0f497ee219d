// Where the page begins: with the design that this tab worked on, or the one that was worked on last in any.

import { whole } from "../design/whole.js";
import { takeOver } from "./older.js";
import { ownDesign, readSlot } from "./slots.js";
import { stepsFrom } from "./steps.js";
import { say } from "../words/say.js";

/** @import { State } from "../design/store.js" */
/** @import { Vocabulary } from "../words/vocabulary.js" */
/** @import { Shelf } from "./shelf.js" */
/** @import { Steps } from "./steps.js" */

const CLOSED = say`This browser does not let the page keep anything, so save your design as a file before you leave.`;
const SET_ASIDE = say`A design kept from last time could not be read. It is set aside, unchanged: under “Designs” it can be saved as a file.`;

/**
 * @param {Shelf} shelf
 * @param {Vocabulary} words
 * @returns {{ state: State | undefined, steps: Steps | undefined, words: string }} `words`: what there is to say of it
 */
export function begun(shelf, words) {
  if (readSlot("") === undefined) return { state: undefined, steps: undefined, words: CLOSED };
  const older = takeOver(shelf);
  const before = shelf.damaged().length;
  for (const id of [ownDesign(), older.id, shelf.last]) {
    const state = id === undefined ? undefined : shelf.read(id);
    if (!state) continue;
    const now = { ...state, design: whole(state.design, words) };
    return { state: now, steps: stepsFrom(shelf.steps(now.id), now), words: said(older.setAside || shelf.damaged().length > before) };
  }
  return { state: undefined, steps: undefined, words: said(older.setAside || shelf.damaged().length > before) };
}

/** @param {boolean} setAside */
function said(setAside) {
  return setAside ? SET_ASIDE : "";
}
