// What is looked at of each run's papers: the drawing, fetched from the engine when it is opened, and from which end and
// with which sign the bend table is told. The drawing of an overtaken design stays until the next one is there.

import { wordsOf } from "../words/errors.js";
import { inLanguage } from "../words/files.js";

/** @import { App } from "../app.js" */

/**
 * A drawing, taken apart: the sheet's size, what is on it, and the A4 tiles that it is cut into.
 * @typedef {{ run: string, width: number, height: number, inner: string, tiles: Tile[], scale: string }} Sheet
 */
/** @typedef {{ name: string, x: number, y: number, width: number, height: number }} Tile a window on the sheet, mm */
/** @typedef {{ flip: boolean, fromEnd: boolean }} Feed how a bend table is told */

export class Papers {
  /** @type {Feed} */ feed = { flip: false, fromEnd: false };
  /** Whether the drawing is shown as large as it is printed. */
  trueSize = false;
  /** @type {{ sheet: Sheet, tiled: boolean } | undefined} */ printing;
  /** @type {string | null} */ #open = null;
  /** @type {Sheet | undefined} */ #sheet;
  #trouble = "";
  #asked = "";
  #busy = false;

  /** @param {App} app */
  constructor(app) {
    this.app = app;
  }

  /** @param {string} run */
  isOpen(run) {
    return this.#open === run;
  }

  /**
   * Opens the drawing of a run, or closes it.
   * @param {string} run
   * @param {boolean} open
   */
  open(run, open) {
    if (this.isOpen(run) === open) return;
    this.#open = open ? run : null;
    this.app.redraw();
  }

  /** @param {Feed} feed */
  setFeed(feed) {
    this.feed = feed;
    this.app.redraw();
  }

  /** @param {boolean} trueSize */
  setTrueSize(trueSize) {
    this.trueSize = trueSize;
    this.app.redraw();
  }

  /**
   * The drawing of a run as far as it is known, asking for it where it is not that of the design as it is.
   * @param {string} run
   * @returns {{ sheet: Sheet | undefined, trouble: string }}
   */
  drawing(run) {
    const { link, text, fresh } = this.app;
    const wanted = `${link.edition} ${run}`;
    // One at a time: while one is drawn the design may move on by many keys, and only the last of them is drawn next.
    if (fresh && !this.#busy && this.#asked !== wanted) {
      this.#asked = wanted;
      void this.#fetch(run, text);
    }
    return { sheet: this.#sheet?.run === run ? this.#sheet : undefined, trouble: this.#trouble };
  }

  /**
   * @param {string} run
   * @param {string} text
   */
  async #fetch(run, text) {
    this.#busy = true;
    try {
      const bytes = await this.app.link.ask("exportFile", text, JSON.stringify(inLanguage({ kind: "drawing", run })));
      this.#sheet = readSheet(run, new TextDecoder().decode(bytes));
      this.#trouble = "";
    } catch (error) {
      this.#sheet = undefined;
      this.#trouble = wordsOf(error);
    }
    this.#busy = false;
    this.app.redraw();
  }

  /**
   * Prints a drawing at true size: the whole sheet, or its A4 tiles, one a page.
   * @param {Sheet} sheet
   * @param {boolean} tiled
   */
  print(sheet, tiled) {
    this.printing = { sheet, tiled };
    this.app.redraw();
    addEventListener("afterprint", () => {
      this.printing = undefined;
      this.app.redraw();
    }, { once: true });
    // The pages stand two frames later.
    requestAnimationFrame(() => requestAnimationFrame(() => print()));
  }
}

/**
 * Reads what the engine drew: its own text, whose form is known.
 * @param {string} run
 * @param {string} text
 * @returns {Sheet}
 */
export function readSheet(run, text) {
  const [head = ""] = /<svg\b[^>]*>/.exec(text) ?? [];
  const value = (/** @type {string} */ name) => new RegExp(`\\b${name}="([^"]*)"`).exec(head)?.[1] ?? "";
  const [, , width = 0, height = 0] = value("viewBox").split(" ").map(Number);
  // The title is told beside the picture, and the rule for the printer is for the file alone.
  const inner = text.slice(text.indexOf(head) + head.length, text.lastIndexOf("</svg>")).replace(/^\s*<title>[^<]*<\/title>\s*<style>[^<]*<\/style>/, "");
  return { run, width, height, inner, tiles: tilesOf(value("data-tiles"), Number(value("data-overlap"))), scale: value("data-scale") };
}

/**
 * @param {string} told columns, rows, window and first corner
 * @param {number} overlap
 * @returns {Tile[]}
 */
function tilesOf(told, overlap) {
  if (!told) return [];
  const [columns = 0, rows = 0, width = 0, height = 0, left = 0, top = 0] = told.split(" ").map(Number);
  return Array.from({ length: columns * rows }, (_, index) => {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    const name = `${String.fromCharCode(65 + (row % 26))}${column + 1}`;
    return { name, x: left + column * (width - overlap), y: top + row * (height - overlap), width, height };
  });
}
