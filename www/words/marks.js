// The page's small marks. Each severity has its own shape, so that colour is never what tells them apart.

import { svg, html } from "./html.js";
import { counted } from "./numbers.js";
import { say } from "./say.js";

/** The marks by what they say, 16 by 16, to be drawn in an own picture. */
export const SHAPES = {
  stop: svg`<path d="M5 1h6l4 4v6l-4 4H5l-4-4V5z"/><path class="cut" d="M4.5 8h7"/>`,
  care: svg`<path d="M8 1.2 15.2 14.6H.8z"/><path class="cut" d="M8 6v4.2M8 12v1.2"/>`,
  note: svg`<circle cx="8" cy="8" r="7"/><path class="cut" d="M8 7v5M8 4.2v1.2"/>`,
  mend: svg`<path d="M2 2h12v12H2z"/><path class="cut" d="M5 5l6 6M11 5l-6 6"/>`,
  fine: svg`<circle cx="8" cy="8" r="7"/><path class="cut" d="M4.6 8.4l2.4 2.4 4.6-5.2"/>`,
};

const LINES = {
  up: svg`<path d="M8 13V3M4 7l4-4 4 4"/>`,
  down: svg`<path d="M8 3v10M4 9l4 4 4-4"/>`,
  left: svg`<path d="M13 8H3M7 4L3 8l4 4"/>`,
  right: svg`<path d="M3 8h10M9 4l4 4-4 4"/>`,
  remove: svg`<path d="M3.5 3.5l9 9M12.5 3.5l-9 9"/>`,
  add: svg`<path d="M8 2.5v11M2.5 8h11"/>`,
  less: svg`<path d="M2.5 8h11"/>`,
  ask: svg`<path d="M5 5.6a3 3 0 1 1 4.4 2.6c-.9.5-1.4 1-1.4 2M8 12.4v1.4"/>`,
  open: svg`<path d="M3.5 6l4.5 4.5L12.5 6"/>`,
  shut: svg`<path d="M6 3.5L10.5 8 6 12.5"/>`,
};

/** @typedef {keyof typeof SHAPES} Shape */
/** @typedef {keyof typeof LINES} Line */

/**
 * A filled mark that says how bad something is; a word always stands beside it.
 * @param {Shape} shape
 */
export function mark(shape) {
  return html`<svg class="mark is-${shape}" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">${SHAPES[shape]}</svg>`;
}

/**
 * A line drawing on a button; the button carries the name.
 * @param {Line} line
 */
export function sign(line) {
  return html`<svg class="sign" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">${LINES[line]}</svg>`;
}

/** How each severity is called on the page. */
export const SEVERITY = /** @type {const} */ ({ stop: say`Stop`, care: say`Care`, note: say`Note`, mend: say`Mend` });

/**
 * How many findings of a kind: "1 stop", "2 care".
 * @param {keyof typeof SEVERITY} kind
 * @param {number} count
 */
export function countedKind(kind, count) {
  if (kind === "stop") return counted(count, "stop");
  if (kind === "note") return counted(count, "note");
  return kind === "care" ? counted(count, "care", "care") : counted(count, "mend", "mend");
}

/** What findings are, the worst first. */
export const WORST_FIRST = /** @type {const} */ (["stop", "care", "note"]);
