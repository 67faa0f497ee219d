// Keeping the work in the browser: the design at every change, the one before it when another takes its place, and a
// saved state that cannot be read, set aside and never deleted. Storage may be full, forbidden or missing; then the
// page says so and works on.

import { isDesignShaped } from "./shape.js";

/** @import { Design } from "./types.js" */

const DESIGN = "tubewright.design.1";
const PREVIOUS = "tubewright.previous.1";
const DAMAGED = "tubewright.damaged";

/** @typedef {{ design?: Design, previous?: Design, words?: string }} Kept */

/**
 * What was kept last time.
 * @returns {Kept}
 */
export function readKept() {
  let text, before;
  try {
    text = localStorage.getItem(DESIGN);
    before = localStorage.getItem(PREVIOUS);
  } catch {
    return { words: "This browser does not let the page keep anything, so save your design as a file before you leave." };
  }
  const previous = before === null ? undefined : parsed(before);
  if (text === null) return { previous };
  const design = parsed(text);
  if (design) return { design, previous };
  return { previous, words: setAside(text) };
}

/**
 * Keeps the design. Gives words where that failed.
 * @param {Design} design
 * @returns {string | undefined}
 */
export function keepDesign(design) {
  return written(DESIGN, JSON.stringify(design));
}

/**
 * Keeps the design that another one is taking the place of.
 * @param {Design | undefined} design
 * @returns {string | undefined}
 */
export function keepPrevious(design) {
  return written(PREVIOUS, design === undefined ? undefined : JSON.stringify(design));
}

/**
 * Calls back with the design that another tab of this page has just kept.
 * @param {(design: Design) => void} listener
 */
export function onOtherTab(listener) {
  addEventListener("storage", (event) => {
    if (event.key !== DESIGN || event.newValue === null) return;
    const design = parsed(event.newValue);
    if (design) listener(design);
  });
}

/**
 * @param {string} text
 * @returns {Design | undefined}
 */
function parsed(text) {
  try {
    const value = JSON.parse(text);
    return isDesignShaped(value) ? value : undefined;
  } catch {
    return undefined;
  }
}

/**
 * @param {string} text
 * @returns {string} words
 */
function setAside(text) {
  const key = `${DAMAGED}.${new Date().toISOString()}`;
  const failed = written(key, text);
  if (failed) return "The design kept from last time could not be read. It is left where it was until you change something here.";
  return `The design kept from last time could not be read. It is set aside, unchanged, in this browser's storage under “${key}”.`;
}

/**
 * @param {string} key
 * @param {string | undefined} text
 * @returns {string | undefined}
 */
function written(key, text) {
  try {
    if (text === undefined) localStorage.removeItem(key);
    else localStorage.setItem(key, text);
    return undefined;
  } catch {
    return "The browser's storage is full or closed to this page: your last changes are not kept if you leave. Save the design as a file.";
  }
}
