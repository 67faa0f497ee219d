// All pieces on as few plates as they take: the engine's answer about the design. It is asked only while its fold is open,
// one question at a time; the design as it is when an answer comes is asked about next.

import { wordsOf } from "../words/errors.js";

/** @import { App } from "../app.js" */
/** @import { Design } from "../design/types.js" */
/** @import { Plates } from "../engine/messages.js" */

export class Layout {
  /** @type {App} */
  #app;
  open = false;
  /** @type {Plates | undefined} */
  answer;
  trouble = "";
  asking = false;
  /** @type {Design | undefined} what the answer is about */
  #about;

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  /** Whether the answer is about the design as it is. */
  get fresh() {
    return this.#about !== undefined && this.#about === this.#app.store.design;
  }

  /** @param {boolean} open */
  unfold(open) {
    if (this.open === open) return;
    this.open = open;
    this.#app.redraw();
    void this.refresh();
  }

  /** The next design is another one. */
  anotherDesign() {
    [this.answer, this.#about, this.trouble] = [undefined, undefined, ""];
  }

  /** Asks anew where the answer is out of date; called whenever the engine has looked at the design. */
  async refresh() {
    const { link, store, text, problems, known } = this.#app;
    if (!this.open || this.asking || !known || problems.length > 0 || this.fresh) return;
    const { design } = store;
    this.asking = true;
    this.#app.redraw();
    try {
      [this.answer, this.trouble] = [/** @type {Plates} */ (JSON.parse(await link.ask("plates", text))), ""];
    } catch (error) {
      [this.answer, this.trouble] = [undefined, wordsOf(error)];
    } finally {
      this.asking = false;
    }
    this.#about = design;
    this.#app.redraw();
    // Whatever was changed in the meantime is asked about now.
    if (!this.fresh) void this.refresh();
  }
}
