// What the page has to say once: a file that was refused, a store that is full, an engine that was restarted.

import { html, nothing } from "./words/html.js";
import { sign } from "./words/marks.js";

/** `share`: how much of what it is about is done, 0 to 1. @typedef {{ kind: "trouble" | "word", text: string, share?: number, action?: { label: string, run: () => void } }} Notice */

export class Notices {
  /** @type {Map<string, Notice>} */
  #notices = new Map();
  /** @type {() => void} */
  #changed;

  /** @param {() => void} changed */
  constructor(changed) {
    this.#changed = changed;
  }

  /**
   * Says something until it is put away or the same subject has other news.
   * @param {string} subject
   * @param {Notice | undefined} notice
   */
  say(subject, notice) {
    if (notice) this.#notices.set(subject, notice);
    else if (!this.#notices.delete(subject)) return;
    this.#changed();
  }

  render() {
    return html`<div class="notices" role="status" aria-label="News">
      ${[...this.#notices].map(([subject, { kind, text, share, action }]) => html`<div class="notice ${kind}">
        <p>${text}</p>
        ${share === undefined ? nothing : html`<progress max="1" .value=${share} aria-label=${text}></progress>`}
        ${action ? html`<button type="button" @click=${() => { this.say(subject, undefined); action.run(); }}>${action.label}</button>` : nothing}
        <button type="button" class="quiet" @click=${() => this.say(subject, undefined)}>${sign("remove")}<span class="unseen">Put this message away</span></button>
      </div>`)}
    </div>`;
  }
}
