// Another design takes the place of this one: blank, a demo, a file, a link. What was there stays on the shelf.

import { closeDialog } from "./dialog.js";
import { blankDesign } from "./design/fresh.js";
import { designOf, MOST_BYTES } from "./design/open.js";
import { isDesignShaped } from "./design/shape.js";
import { isSet } from "./keep/set.js";
import { counted } from "./words/numbers.js";
import { wordsWithPlace } from "./words/refusal.js";
import { textIn } from "./share/fragment.js";
import { say } from "./words/say.js";

/** @import { Design } from "./design/types.js" */
/** @import { App } from "./app.js" */

export class Opening {
  /** @type {App} */
  #app;
  /** Whether a file is being held over the page. */
  dropping = false;

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  startBlank() {
    this.#begin(blankDesign(this.#app.words), say`start from a blank design`, true);
    this.#app.show("/name");
  }

  /**
   * @param {Design} design
   * @param {string} label
   */
  async startDemo(design, label) {
    await this.#open(() => this.#app.link.ask("normalise", JSON.stringify(design)), say`The demo`, say`open the demo “${label}”`, true);
  }

  /** @param {HTMLInputElement} input */
  async openFrom(input) {
    const [file] = input.files ?? [];
    if (file) await this.#openFile(file);
    // The same file can be chosen again after it was mended.
    input.value = "";
  }

  listen() {
    this.#listenForDrops();
    addEventListener("hashchange", () => void this.openLink());
    void this.openLink();
  }

  /** Opens the design that the page's address holds, if any, and takes it out of the address. */
  async openLink() {
    const fragment = location.hash;
    if (!fragment.startsWith("#design=")) return;
    // Read once: a reload must not open it again over what was made of it.
    history.replaceState(null, "", location.href.split("#")[0]);
    const read = async () => {
      const text = await textIn(fragment);
      if (text === undefined) throw new Error(say`the link is not whole. Ask for it again, or for the design as a file.`);
      return this.#app.link.ask("normalise", text);
    };
    await this.#open(read, say`The linked design`, say`open a linked design`, false);
  }

  /**
   * @param {Design} design
   * @param {string} name of the step
   * @param {boolean} untouched
   */
  #begin(design, name, untouched) {
    closeMenu();
    this.#app.keeping.begin(design, name, untouched);
    this.#app.say("opening", undefined);
  }

  /** Takes files that are dropped anywhere on the page. */
  #listenForDrops() {
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
    const { keeping } = this.#app;
    if (/\.json$/i.test(file.name) && file.size <= MOST_BYTES && await isSet(file)) {
      const taken = await keeping.takeAll(await file.text());
      const { taken: count = 0, refused = [] } = taken ?? {};
      const words = [count === 1 ? say`${counted(count, "design")} of “${file.name}” is under “Designs” now.` : say`${counted(count, "design")} of “${file.name}” are under “Designs” now.`, ...refused.map((one) => say`Not taken: ${one}`)];
      this.#app.say("opening", { kind: refused.length > 0 ? "trouble" : "word", text: words.join(" ") });
      return keeping.list();
    }
    await this.#open(() => designOf(file, this.#app.link), `“${file.name}”`, say`open “${file.name}”`, false);
  }

  /**
   * @param {() => Promise<string>} read gives the design's canonical text
   * @param {string} what
   * @param {string} name of the step
   * @param {boolean} untouched
   */
  async #open(read, what, name, untouched) {
    this.#app.edits.count(+1);
    try {
      const design = JSON.parse(await read());
      if (!isDesignShaped(design)) throw new Error(say`it has parts that this page does not know.`);
      this.#begin(design, name, untouched);
    } catch (error) {
      closeMenu();
      const words = say`${what} was not opened: ${wordsWithPlace(error)} Your design is as it was.`;
      this.#app.say("opening", { kind: "trouble", text: words });
    } finally {
      this.#app.edits.count(-1);
    }
  }
}

function closeMenu() {
  const menu = document.getElementById("start");
  if (menu?.matches(":popover-open")) menu.hidePopover();
  closeDialog("designs");
}
