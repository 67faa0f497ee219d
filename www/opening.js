// Another design takes the place of this one: blank, a demo, a file, the one before. What was there is always kept.

import { keepPrevious } from "./design/keep.js";
import { blankDesign } from "./design/fresh.js";
import { designOf } from "./design/open.js";
import { isDesignShaped } from "./design/shape.js";
import { wordsWithPlace } from "./words/errors.js";

/** @import { Design } from "./design/types.js" */
/** @import { App } from "./app.js" */

export class Opening {
  /** @type {App} */
  #app;
  /** Whether a file is being held over the page. */
  dropping = false;

  /**
   * @param {App} app
   * @param {Design | undefined} previous the design that was replaced last
   */
  constructor(app, previous) {
    this.#app = app;
    this.previous = previous;
  }

  startBlank() {
    this.replace(blankDesign(this.#app.words));
    this.#app.show("/name");
  }

  /** @param {Design} design */
  async startDemo(design) {
    await this.#open(() => this.#app.link.ask("normalise", JSON.stringify(design)), "The demo");
  }

  /** @param {HTMLInputElement} input */
  async openFrom(input) {
    const [file] = input.files ?? [];
    if (file) await this.#openFile(file);
    // The same file can be chosen again after it was mended.
    input.value = "";
  }

  bringBack() {
    if (this.previous) this.replace(this.previous);
  }

  /**
   * Puts another design in the place of this one, which is kept.
   * @param {Design} next
   */
  replace(next) {
    const { store } = this.#app;
    this.previous = store.design;
    const failed = keepPrevious(this.previous);
    this.#app.say("previous", failed ? { kind: "trouble", text: failed } : undefined);
    closeMenu();
    this.#app.anotherDesign();
    store.change(next);
    this.#app.say("opening", undefined);
  }

  /** Takes files that are dropped anywhere on the page. */
  listenForDrops() {
    /** @param {DragEvent} event */
    const carriesFile = (event) => event.dataTransfer?.types.includes("Files") ?? false;
    /** @param {boolean} on */
    const show = (on) => {
      if (this.dropping === on) return;
      this.dropping = on;
      this.#app.redraw();
    };
    addEventListener("dragover", (event) => {
      if (!carriesFile(event)) return;
      event.preventDefault();
      show(true);
    });
    addEventListener("dragleave", (event) => {
      if (event.relatedTarget === null) show(false);
    });
    addEventListener("drop", (event) => {
      if (!carriesFile(event)) return;
      event.preventDefault();
      show(false);
      const [file] = event.dataTransfer?.files ?? [];
      if (file) void this.#openFile(file);
    });
  }

  /** @param {File} file */
  async #openFile(file) {
    await this.#open(() => designOf(file, this.#app.link), `“${file.name}”`);
  }

  /**
   * @param {() => Promise<string>} read gives the design's canonical text
   * @param {string} what
   */
  async #open(read, what) {
    this.#app.edits(+1);
    try {
      const design = JSON.parse(await read());
      if (!isDesignShaped(design)) throw new Error("it has parts that this page does not know.");
      this.replace(design);
    } catch (error) {
      closeMenu();
      const words = `${what} was not opened: ${wordsWithPlace(error)} Your design is as it was.`;
      this.#app.say("opening", { kind: "trouble", text: words });
    } finally {
      this.#app.edits(-1);
    }
  }
}

function closeMenu() {
  const menu = document.getElementById("start");
  if (menu?.matches(":popover-open")) menu.hidePopover();
}
