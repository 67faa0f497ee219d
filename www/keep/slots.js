// The browser's storage, by named slots: what was written is there again next time, or the page says why not. It may be
// full, forbidden or missing; nothing here throws.

/** Each design's slot begins so. */
export const KEPT = "tubewright.kept.1.";

/**
 * Why something could not be kept. `full`: there is no room; else storage is closed to the page.
 * @typedef {"full" | "closed"} Failure
 */

/**
 * @param {string} slot
 * @returns {string | null | undefined} null where the slot is empty, none where storage is closed to the page
 */
export function readSlot(slot) {
  try {
    return localStorage.getItem(slot);
  } catch {
    return undefined;
  }
}

/**
 * @param {string} slot
 * @param {string} text
 * @returns {Failure | undefined}
 */
export function writeSlot(slot, text) {
  try {
    localStorage.setItem(slot, text);
    return undefined;
  } catch (error) {
    return error instanceof DOMException && error.name === "QuotaExceededError" ? "full" : "closed";
  }
}

/** @param {string} slot */
export function emptySlot(slot) {
  try {
    localStorage.removeItem(slot);
  } catch {
    // Where nothing can be read nothing is there.
  }
}

/**
 * The slots whose names begin so, without that beginning.
 * @param {string} start
 */
export function slotsAfter(start) {
  try {
    return Object.keys(localStorage).filter((slot) => slot.startsWith(start)).map((slot) => slot.slice(start.length)).sort();
  } catch {
    return [];
  }
}

/** A word that no other tab comes to use. */
export function freshWord() {
  return [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** What this tab was working on, through a reload. */
export function ownDesign() {
  try {
    return sessionStorage.getItem(OWN) ?? undefined;
  } catch {
    return undefined;
  }
}

/** @param {string} id */
export function setOwnDesign(id) {
  try {
    sessionStorage.setItem(OWN, id);
  } catch {
    // A tab that cannot tell takes up what was worked on last.
  }
}
const OWN = "tubewright.own";
