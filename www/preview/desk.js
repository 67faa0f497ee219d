// What the page holds of the preview: the solid view, the drawing that can stand in for it, and the scene of both.

import { standing } from "../result/findings.js";
import { described } from "./described.js";
import { Handles } from "./handles.js";
import { Preview } from "./host.js";
import { savePicture } from "./picture.js";
import { printWith } from "./printing.js";

/** @import { App } from "../app.js" */
/** @import { Scene } from "../engine/messages.js" */
/** @import { PreviewState } from "./panel.js" */

export class PreviewDesk {
  /** @type {App} */
  #app;
  /** @type {string | undefined} */
  #text;
  /** @type {{ text: string, scene: Scene } | undefined} */
  #read;
  /** Whether the drawing was chosen. */
  #drawn = false;
  /** Why there is no solid view, if there is none. @type {string | undefined} */
  #trouble;

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
    this.solid = new Preview((trouble) => {
      this.#trouble = trouble;
      app.redraw();
    }, app.redraw);
    this.handles = new Handles(app, this.solid);
    printWith(this.solid, () => ({ scene: this.#scene(), words: this.state().words, selected: app.selected }));
  }

  /**
   * Takes a scene, and which runs it has tubes of.
   * @param {string} scene the engine's text
   * @param {string[]} made
   */
  take(scene, made) {
    if (this.#text !== scene) this.solid.setScene(scene);
    this.#text = scene;
    this.solid.keepOnly(made);
    this.handles.refresh();
  }

  /** @returns {PreviewState} */
  state() {
    const { problems, report, findings, selected, store, redraw } = this.#app;
    const drawn = this.#drawn || this.#trouble !== undefined;
    return {
      preview: this.solid,
      handles: this.handles,
      scene: drawn ? this.#scene() : undefined,
      drawn,
      trouble: this.#trouble,
      words: described(this.solid.description) || standing(store.design, problems, findings),
      stale: problems.length > 0 && report !== undefined,
      selected,
      runs: store.design.runs.map(({ name }) => name),
      savePicture: () => void savePicture(this.#app),
      setDrawn: (choice) => {
        this.#drawn = choice;
        redraw();
      },
      redraw,
    };
  }

  /** The scene, read only for the drawing and only once. */
  #scene() {
    if (this.#text === undefined) return undefined;
    if (this.#read?.text !== this.#text) this.#read = { text: this.#text, scene: JSON.parse(this.#text) };
    return this.#read.scene;
  }
}
