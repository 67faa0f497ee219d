// Another design held beside this one: read from a file, never opened in its place.

import { designOf } from "../design/open.js";
import { wordsOf } from "../words/errors.js";
import { wordsWithPlace } from "../words/refusal.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { Difference } from "../engine/messages.js" */

export class Comparing {
  /** @type {App} */
  #app;
  /** The other design's text, as the engine wrote it out. */
  #text = "";
  /** What the other design is called here; empty while there is none. */
  name = "";
  /** @type {Difference | undefined} from the file to the design as it is here */
  difference;
  /** Why there is no difference to show. */
  trouble = "";

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  /** @param {HTMLInputElement} input */
  async openFrom(input) {
    const [file] = input.files ?? [];
    if (file) await this.#open(file);
    // The same file can be chosen again after it was changed.
    input.value = "";
  }

  /** Asks anew what differs; called whenever the design here has changed. */
  async refresh() {
    if (this.name === "") return;
    const { link, store, text } = this.#app;
    const [{ design }, other] = [store, this.#text];
    /** @type {Difference | undefined} */
    let found;
    let trouble = "";
    try {
      found = JSON.parse(await link.ask("difference", other, text));
    } catch (error) {
      trouble = wordsOf(error);
    }
    if (store.design !== design || this.#text !== other) return;
    [this.difference, this.trouble] = [found, trouble];
    this.#app.redraw();
  }

  /** Keeps this design's shape and takes the other one's measurements of its ports. */
  takePorts() {
    void this.#app.edits.edit({ edit: "ports", design: this.#text });
  }

  stop() {
    [this.#text, this.name, this.difference, this.trouble] = ["", "", undefined, ""];
    this.#app.redraw();
  }

  /** @param {File} file */
  async #open(file) {
    try {
      const text = await designOf(file, this.#app.link);
      [this.#text, this.name, this.difference, this.trouble] = [text, file.name, undefined, ""];
      await this.refresh();
      this.#app.say("compare", undefined);
    } catch (error) {
      this.#app.say("compare", { kind: "trouble", text: say`“${file.name}” cannot be compared: ${wordsWithPlace(error)} Your design is as it was.` });
    }
  }
}
