// The engine's QR code (ISO/IEC 18004) as a picture in the page.

import { html, svg } from "../words/html.js";

/** @typedef {{ size: number, path: string }} Code modules along a side, and the dark ones as a path, one unit a module */

// Modules of quiet zone that the standard asks for round the code.
const QUIET = 4;

/**
 * @param {string} text the engine's answer
 * @returns {Code | undefined} none where the text was too long for a code
 */
export function codeIn(text) {
  const { size, path } = JSON.parse(text);
  return size === null ? undefined : { size, path };
}

/** @param {Code} code */
export function codePicture({ size, path }) {
  const side = size + 2 * QUIET;
  // Cameras want dark on light, whatever the page's theme.
  return html`<svg class="code" viewBox="${-QUIET} ${-QUIET} ${side} ${side}" role="img" aria-label="The link as a QR code" shape-rendering="crispEdges">
    ${svg`<path class="code-paper" d="M${-QUIET} ${-QUIET}h${side}v${side}h${-side}z"/><path class="code-ink" d=${path}/>`}
  </svg>`;
}
