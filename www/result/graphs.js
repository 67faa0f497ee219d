// The plots that are looked at: drawn by the engine for the width that the page has for them, and drawn again when that
// or the design changes. A plot of an overtaken design stays until the next one is there.

import { pictureOf } from "../engine/trusted.js";
import { wordsOf } from "../words/errors.js";
import { inLanguage } from "../words/files.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */

/** What the engine calls each, and what it is of in short. */
export const PLOTS = /** @type {const} */ ([["loss-plot", say`Loss`], ["margins-plot", say`Margins`], ["stiffness-plot", say`Heat`]]);

/** @typedef {(typeof PLOTS)[number][0]} PlotKind */
/** @typedef {{ picture: SVGSVGElement, title: string, told: string, edition: number }} Plot */
/** @typedef {{ plot: Plot | undefined, trouble: string, stale: boolean }} Shown */

/** The widths that the engine draws for, CSS pixels. */
const [NARROWEST, WIDEST] = [280, 1600];

export class Graphs {
  /** @type {Map<PlotKind, Plot>} */ #plots = new Map();
  /** @type {Map<PlotKind, string>} */ #troubles = new Map();
  #width = 0;
  #asked = "";
  #busy = false;
  /** @type {Element | undefined} */ #room;
  #sizes = new ResizeObserver(([entry]) => this.#resized(entry.contentRect.width));

  /** @param {App} app */
  constructor(app) {
    this.app = app;
  }

  /** Takes the element that the plots stand in: they are as wide as it is. */
  stand = (/** @type {Element | undefined} */ room) => {
    if (room === this.#room) return;
    this.#sizes.disconnect();
    this.#room = room;
    if (room) this.#sizes.observe(room);
  };

  /**
   * A plot as far as it is drawn, asking for all of them where they are not of the design as it is.
   * @param {PlotKind} kind
   * @returns {Shown}
   */
  shown(kind) {
    this.#ask();
    const plot = this.#plots.get(kind);
    return { plot, trouble: this.#troubles.get(kind) ?? "", stale: !this.app.fresh || plot?.edition !== this.app.link.edition };
  }

  /** One round at a time: while one is drawn the design may move on by many keys, and only the last of them is drawn next. */
  #ask() {
    const { link, settled, text } = this.app;
    const wanted = `${link.edition} ${this.#width}`;
    if (!settled || this.app.problems.length > 0 || this.#width === 0 || this.#busy || this.#asked === wanted) return;
    this.#asked = wanted;
    void this.#draw(text, link.edition, this.#width);
  }

  /**
   * @param {string} text
   * @param {number} edition
   * @param {number} width
   */
  async #draw(text, edition, width) {
    this.#busy = true;
    for (const [kind] of PLOTS) {
      // A newer design is waiting: it is drawn instead.
      if (edition !== this.app.link.edition) break;
      try {
        const picture = pictureOf(await this.app.link.ask("exportFile", text, JSON.stringify(inLanguage({ kind, width }))));
        const words = (/** @type {string} */ name) => picture.querySelector(name)?.textContent ?? "";
        this.#plots.set(kind, { picture, title: words("title"), told: words("desc"), edition });
        this.#troubles.delete(kind);
      } catch (error) {
        this.#plots.delete(kind);
        this.#troubles.set(kind, wordsOf(error));
      }
    }
    this.#busy = false;
    this.app.redraw();
  }

  /** @param {number} width */
  #resized(width) {
    if (width === 0) return;
    const next = Math.min(WIDEST, Math.max(NARROWEST, Math.floor(width)));
    if (next === this.#width) return;
    this.#width = next;
    this.app.redraw();
  }
}
