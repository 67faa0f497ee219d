// The page's state: the design, and the designs before it. Everything on the page is a function of this.

import { carryIdentities } from "./identity.js";
import { withValue } from "./pointer.js";

/** @import { Design } from "./types.js" */

const MOST_STEPS_BACK = 200;
// Keystrokes in one field that follow each other this closely are one step back, ms.
const ONE_STEP = 1500;

export class Store {
  /** @type {Design} */
  #design;
  /** @type {Design[]} */
  #past = [];
  /** @type {Design[]} */
  #future = [];
  /** @type {{ place: string, time: number } | undefined} */
  #last;
  /** @type {Set<() => void>} */
  #listeners = new Set();

  /** @param {Design} design */
  constructor(design) {
    this.#design = design;
  }

  get design() {
    return this.#design;
  }

  get canUndo() {
    return this.#past.length > 0;
  }

  get canRedo() {
    return this.#future.length > 0;
  }

  /**
   * Calls back after every change.
   * @param {() => void} listener
   */
  onChange(listener) {
    this.#listeners.add(listener);
  }

  /**
   * Puts one value at a place; keystrokes at the same place make one step back.
   * @param {string} pointer
   * @param {unknown} value `undefined` takes the key away
   */
  set(pointer, value) {
    this.change(withValue(this.#design, pointer, value), pointer);
  }

  /**
   * Makes `next` the design.
   * @param {Design} next
   * @param {string} [place] where it was edited, if in one field
   */
  change(next, place) {
    if (next === this.#design) return;
    const now = performance.now();
    const follows = place !== undefined && this.#last?.place === place && now - this.#last.time < ONE_STEP;
    if (!follows) {
      this.#past.push(this.#design);
      if (this.#past.length > MOST_STEPS_BACK) this.#past.shift();
    }
    this.#last = place === undefined ? undefined : { place, time: now };
    this.#future = [];
    this.#become(next);
  }

  /**
   * Takes over the same design as the engine wrote it out, with some of it changed.
   * @param {Design} next
   */
  adopt(next) {
    carryIdentities(this.#design, next);
    this.change(next);
  }

  undo() {
    const before = this.#past.pop();
    if (!before) return;
    this.#future.push(this.#design);
    this.#last = undefined;
    this.#become(before);
  }

  redo() {
    const after = this.#future.pop();
    if (!after) return;
    this.#past.push(this.#design);
    this.#last = undefined;
    this.#become(after);
  }

  /** @param {Design} next */
  #become(next) {
    this.#design = next;
    for (const listener of this.#listeners) listener();
  }
}
