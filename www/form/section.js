// A section of the page.

import { html, nothing } from "../words/html.js";

/**
 * A section with its heading drawn as a dimension line.
 * @param {string} id
 * @param {string} title
 * @param {unknown} about what it is for, in a sentence
 * @param {unknown} body
 */
export function section(id, title, about, body) {
  return html`<section class="part" id=${id} aria-labelledby="${id}-title" tabindex="-1">
    <h2 class="dimension" id="${id}-title"><span>${title}</span></h2>
    ${about === nothing ? nothing : html`<p class="about">${about}</p>`} ${body}
  </section>`;
}
