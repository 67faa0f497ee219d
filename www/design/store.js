// The page's state: which design is worked on, what it says, and the steps that led there. Everything on the page is a
// function of this.

import { carryIdentities } from "./identity.js";
import { withValue } from "./pointer.js";

/** @import { Design } from "./types.js" */

export const MOST_STEPS_BACK = 200;
// Keystrokes in one field that follow each other this closely are one step back, ms.
const ONE_STEP = 1500;

/**
 * A design at one moment. `id`: where it is kept. `untouched`: it is as it was started from a demo or blank, so that there
 * is nothing in it to lose.
 * @typedef {{ id: string, design: Design, untouched: boolean }} State
 */
/**
 * A way from one state to the next. `name`: what it did, where the two designs do not tell.
 * @typedef {{ before: State, after: State, name: string | undefined }} Step
 */

export class Store {
  /** @type {State} */
  #state;
  /** @type {Step[]} */
  #past = [];
  /** @type {Step[]} the next one last */
  #future = [];
  /** @type {{ place: string, time: number } | undefined} */
  #last;
  /** Where a drag is under way, however long it rests. @type {string | undefined} */
  #held;
  /** @type {Set<() => void>} */
  #listeners = new Set();

  /**
   * @param {State} state
   * @param {{ past: Step[], future: Step[] }} [steps]
   */
  constructor(state, steps = { past: [], future: [] }) {
    this.#state = state;
    [this.#past, this.#future] = [steps.past, steps.future];
  }

  get design() {
    return this.#state.design;
  }

  get state() {
    return this.#state;
  }

  /** The steps back, the oldest first, and those forward, the next one last. */
  get steps() {
    return { past: this.#past, future: this.#future };
  }

  /** The step that undo takes back. */
  get lastStep() {
    return this.#past.at(-1);
  }

  /** The step that redo takes again. */
  get nextStep() {
    return this.#future.at(-1);
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
    this.change(withValue(this.design, pointer, value), pointer);
  }

  /**
   * Makes `next` the design.
   * @param {Design} next
   * @param {string} [place] where it was edited, if in one field
   * @param {string} [name] what the step is called
   */
  change(next, place, name) {
    if (next === this.design) return;
    const now = performance.now();
    const soon = this.#last !== undefined && (place === this.#held || now - this.#last.time < ONE_STEP);
    const follows = place !== undefined && this.#last?.place === place && soon;
    const before = follows ? this.#past.pop()?.before ?? this.#state : this.#state;
    this.#last = place === undefined ? undefined : { place, time: now };
    this.#step({ before, after: { id: this.#state.id, design: next, untouched: false }, name });
  }

  /**
   * Begins a drag: its changes at `place` are one step, however long it takes.
   * @param {string} place one that no other drag has
   * @returns {{ end: () => void, cancel: () => void }} `cancel` puts back design and steps as they were
   */
  drag(place) {
    const [state, past, future] = [this.#state, [...this.#past], [...this.#future]];
    this.#held = place;
    const end = () => {
      this.#held = undefined;
    };
    const cancel = () => {
      end();
      if (this.#state !== state) this.resume(state, { past, future });
    };
    return { end, cancel };
  }

  /**
   * Takes over the same design as the engine wrote it out, with some of it changed.
   * @param {Design} next
   * @param {string} [name] what the step is called
   */
  adopt(next, name) {
    carryIdentities(this.design, next);
    this.change(next, undefined, name);
  }

  /**
   * Another design takes this one's place, as a step that can be undone.
   * @param {State} next
   * @param {string} name
   */
  begin(next, name) {
    this.#last = undefined;
    this.#step({ before: this.#state, after: next, name });
  }

  /**
   * Another design takes this one's place, with its own steps.
   * @param {State} next
   * @param {{ past: Step[], future: Step[] }} steps
   */
  resume(next, steps) {
    [this.#past, this.#future, this.#last] = [steps.past, steps.future, undefined];
    this.#become(next);
  }

  /**
   * What is worked on is kept elsewhere from now on, and all its steps with it.
   * @param {string} id
   */
  moveTo(id) {
    const from = this.#state.id;
    /** @type {(state: State) => State} */
    const moved = (state) => (state.id === from ? { ...state, id } : state);
    for (const step of [...this.#past, ...this.#future]) [step.before, step.after] = [moved(step.before), moved(step.after)];
    this.#state = moved(this.#state);
  }

  undo() {
    const step = this.#past.pop();
    if (!step) return;
    this.#future.push(step);
    this.#last = undefined;
    this.#become(step.before);
  }

  redo() {
    const step = this.#future.pop();
    if (!step) return;
    this.#past.push(step);
    this.#last = undefined;
    this.#become(step.after);
  }

  /** @param {Step} step */
  #step(step) {
    this.#past.push(step);
    if (this.#past.length > MOST_STEPS_BACK) this.#past.shift();
    this.#future = [];
    this.#become(step.after);
  }

  /** @param {State} next */
  #become(next) {
    this.#state = next;
    for (const listener of this.#listeners) listener();
  }
}
