// What the page does so that no work is lost: every change goes onto the shelf with its steps, and another design never
// takes the place of this one without this one staying there.

import { isOpen } from "../dialog.js";
import { isDesignShaped } from "../design/shape.js";
import { whole } from "../design/whole.js";
import { download } from "../result/download.js";
import { pictureText } from "./picture.js";
import { designsIn, setName, setText } from "./set.js";
import { freshWord, setOwnDesign } from "./slots.js";
import { stepsFrom, stepsText } from "./steps.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { Design } from "../design/types.js" */
/** @import { Listed, Shelf } from "./shelf.js" */
/** @import { Failure } from "./slots.js" */

// Steps and picture are written when typing rests, ms.
const REST = 500;

/** What a full or closed store means, and the way out. @type {Record<Failure, string>} */
const FAILED = {
  full: say`The browser's storage is full: your last changes are not kept if you leave. Save the design as a file, or remove designs that you no longer need under “Designs”.`,
  closed: say`The browser does not let this page keep anything: your last changes are not kept if you leave. Save the design as a file.`,
};

export class Keeping {
  /** @type {App} */
  #app;
  /** @type {Shelf} */
  #shelf;
  #rest = 0;
  #id = "";
  /** @type {Failure | undefined} why the last change was not kept */
  #trouble;
  /** @type {string | undefined} the engine's text of the design's scene: read only when its picture is kept */
  #scene;
  /** @type {Listed[]} what the dialog lists */
  listed = [];
  /** @type {{ when: string, text: string }[]} and what was set aside */
  damaged = [];

  /**
   * @param {App} app
   * @param {Shelf} shelf
   */
  constructor(app, shelf) {
    this.#app = app;
    this.#shelf = shelf;
  }

  start() {
    const { state } = this.#app.store;
    this.#id = state.id;
    setOwnDesign(state.id);
    // What was read from the shelf is there already, and writing it again would look to other tabs like a change.
    if (this.#shelf.isNew(state.id)) this.#keep();
    this.#shelf.onOtherTab((id) => this.#changedElsewhere(id));
    addEventListener("pagehide", () => this.#settle());
  }

  /** The design was changed, or another one took its place. */
  changed() {
    const { store } = this.#app;
    if (store.state.id !== this.#id) this.#left(this.#id);
    this.#id = store.state.id;
    this.#keep();
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#settle(), REST);
  }

  /** @param {string} scene the engine's text, of the design as it is */
  seen(scene) {
    this.#scene = scene;
  }

  /** The dialog is about to be looked at. */
  list() {
    this.#settle();
    [this.listed, this.damaged] = [this.#shelf.list(), this.#shelf.damaged()];
    this.#app.redraw();
  }

  /**
   * Another design takes this one's place, as a step back that undo knows by its name.
   * @param {Design} design
   * @param {string} name
   * @param {boolean} untouched there is nothing in it that the person made
   */
  begin(design, name, untouched) {
    this.#settle();
    this.#app.anotherDesign();
    this.#app.store.begin({ id: freshWord(), design: whole(design, this.#app.words), untouched }, name);
  }

  /**
   * Opens a design of the shelf, with its own steps.
   * @param {string} id
   */
  open(id) {
    if (id === this.#app.store.state.id) return;
    this.#settle();
    const state = this.#shelf.read(id);
    if (!state) {
      this.#app.say("keeping", { kind: "trouble", text: say`That design is no longer there, or could not be read. What could not be read is set aside under “Designs”, never deleted.` });
      return this.list();
    }
    const now = { ...state, design: whole(state.design, this.#app.words) };
    this.#app.say("keeping", undefined);
    this.#app.anotherDesign();
    this.#app.store.resume(now, stepsFrom(this.#shelf.steps(id), now));
  }

  /** @param {string} id */
  copy(id) {
    const state = this.#shelf.read(id);
    if (!state) return this.list();
    const failed = this.#shelf.keep({ id: freshWord(), design: { ...state.design, name: say`${state.design.name} (copy)`.trim() }, untouched: false }).failed;
    this.#failed(failed);
    this.list();
  }

  /** @param {Listed} entry */
  remove({ id, name }) {
    const removed = this.#shelf.remove(id);
    const back = () => {
      this.#failed(this.#shelf.putBack(removed));
      this.list();
    };
    this.#app.say("removed", { kind: "word", text: say`${shown(name)} was removed from this browser.`, action: { label: say`Put it back`, run: back } });
    this.list();
  }

  /** Every design of the shelf, in one file. */
  saveAll() {
    this.#settle();
    const designs = this.#shelf.list().toReversed().flatMap(({ id }) => this.#shelf.read(id)?.design ?? []);
    download(setText(designs), setName());
  }

  /**
   * Takes the designs of a file of many onto the shelf. Gives none where the text is no such file.
   * @param {string} text
   * @returns {Promise<{ taken: number, refused: string[] } | undefined>}
   */
  async takeAll(text) {
    const designs = designsIn(text);
    if (!designs) return undefined;
    let taken = 0;
    /** @type {string[]} */
    const refused = [];
    for (const [at, design] of designs.entries()) {
      try {
        const read = JSON.parse(await this.#app.link.ask("normalise", JSON.stringify(design)));
        if (!isDesignShaped(read)) throw new Error(say`it has parts that this page does not know.`);
        const { failed } = this.#shelf.keep({ id: freshWord(), design: read, untouched: false });
        if (failed) throw new Error(FAILED[failed]);
        taken += 1;
      } catch (error) {
        refused.push(`${shown(String(design?.name ?? say`number ${at + 1}`))}: ${error instanceof Error ? error.message : error}`);
      }
    }
    return { taken, refused };
  }

  /** @param {{ when: string, text: string }} damaged */
  saveDamaged({ when, text }) {
    download(new TextEncoder().encode(text), `set-aside-${when.replaceAll(/[^\w-]+/g, "-")}.json`);
  }

  #keep() {
    const { store } = this.#app;
    const { failed, copy } = this.#shelf.keep(store.state);
    this.#failed(failed);
    if (copy === undefined) return;
    store.moveTo(copy);
    this.#id = copy;
    setOwnDesign(copy);
    this.#app.say("elsewhere", {
      kind: "word", text: say`Another tab changed this design as well. Nothing was overwritten: this tab goes on with a copy of its own, and both stand under “Designs”.`,
    });
  }

  /** Whether the design as it is would be there after the page is loaded anew. */
  get isKept() {
    return this.#trouble === undefined;
  }

  /** @param {Failure | undefined} failed */
  #failed(failed) {
    this.#trouble = failed;
    this.#app.say("storage", failed ? { kind: "trouble", text: FAILED[failed] } : undefined);
  }

  /** Writes what can wait. */
  #settle() {
    clearTimeout(this.#rest);
    const { id } = this.#app.store.state;
    this.#shelf.keepSteps(id, stepsText(this.#app.store.steps));
    if (this.#scene && this.#app.settled) this.#shelf.keepPicture(id, pictureText(JSON.parse(this.#scene)));
  }

  /**
   * Another design is worked on now. One in which there is nothing to lose leaves the shelf.
   * @param {string} id
   */
  #left(id) {
    setOwnDesign(this.#app.store.state.id);
    this.#scene = undefined;
    if (this.#shelf.isUntouched(id)) this.#shelf.remove(id);
  }

  /** @param {string} id */
  #changedElsewhere(id) {
    const { store } = this.#app;
    if (isOpen("designs")) this.list();
    if (id !== store.state.id || !this.#shelf.isForeign(id)) return;
    this.#app.say("elsewhere", {
      kind: "trouble",
      text: say`This design was just changed in another tab. What you change here from now on is kept as a copy beside it.`,
      action: { label: say`Show the other tab's`, run: () => this.#takeOther(id) },
    });
  }

  /** @param {string} id */
  #takeOther(id) {
    const state = this.#shelf.read(id);
    if (state) this.#app.store.adopt(whole(state.design, this.#app.words), say`what another tab changed`);
  }
}

/** @param {string} name */
export function shown(name) {
  return name.trim() === "" ? say`A design without a name` : `“${name}”`;
}
