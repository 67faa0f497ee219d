// What an earlier page kept: one design and the one before it, taken onto the shelf.

import { isDesignShaped } from "../design/shape.js";
import { emptySlot, freshWord, readSlot } from "./slots.js";

/** @import { Shelf } from "./shelf.js" */

const DESIGN = "tubewright.design.1";
const PREVIOUS = "tubewright.previous.1";

/**
 * @param {Shelf} shelf
 * @returns {{ id?: string, setAside: boolean }} the design that was worked on; whether something could not be read
 */
export function takeOver(shelf) {
  /** @type {{ id?: string, setAside: boolean }} */
  const taken = { setAside: false };
  for (const slot of [PREVIOUS, DESIGN]) {
    const text = readSlot(slot);
    if (typeof text !== "string") continue;
    const design = designIn(text);
    if (design) {
      const id = freshWord();
      if (shelf.keep({ id, design, untouched: false }).failed) continue;
      if (slot === DESIGN) taken.id = id;
    } else {
      if (shelf.setAside(text)) continue;
      taken.setAside = true;
    }
    emptySlot(slot);
  }
  return taken;
}

/** @param {string} text */
function designIn(text) {
  try {
    const value = JSON.parse(text);
    return isDesignShaped(value) ? value : undefined;
  } catch {
    return undefined;
  }
}
