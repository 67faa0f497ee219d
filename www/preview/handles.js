// The handles of the selected run: which is chosen, where a drag or a key takes it, and what is told of it. It writes the
// design as the form's fields do; the picture follows with the engine's answer.

import { cornerAdded, cornerBent, stationMoved } from "../design/route-edits.js";
import { Dragging } from "./drag.js";
import { cornerRefused, handleHint, noHandles, numbersOf, stepWords, told, tubeHint } from "./handle-words.js";
import { gripsOf, nearest, spotAt, straightAfter } from "./grips.js";
import { AXES, stepOf } from "./ways.js";
import { tidy } from "../design/typed.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { Grip, Spot } from "./grips.js" */
/** @import { Preview } from "./host.js" */
/** @import { Way } from "./ways.js" */

export class Handles {
  /** @type {App} */
  #app;
  /** @type {Preview} */
  #solid;
  /** @type {Way} */
  way = "plane";
  /** The axis whose key is held down. @type {Way | undefined} */
  #key;
  /** @type {{ run: string, kind: Grip["kind"], station: number } | undefined} */
  #chosen;
  /** What is under the pointer, in words. */
  #pointed = "";
  #drag;

  /**
   * @param {App} app
   * @param {Preview} solid
   */
  constructor(app, solid) {
    this.#app = app;
    this.#solid = solid;
    this.#drag = new Dragging(app, solid);
  }

  /** The way in force: that of a key that is held, else the chosen one. */
  get #way() {
    return this.#key ?? this.way;
  }

  /** The chosen handle as the picture has it. */
  #grip() {
    const chosen = this.#chosen;
    if (!chosen || chosen.run !== this.#app.selected) return undefined;
    return gripsOf(this.#solid).find((grip) => grip.kind === chosen.kind && grip.station === chosen.station);
  }

  /** How far one press of an arrow takes a handle. */
  get stride() {
    const { lengths } = this.#app;
    return `${lengths.shown(lengths.grid.press)} ${lengths.unit}`;
  }

  /** What the picture says: of the chosen handle, else of what is pointed at. */
  get shown() {
    return this.words || this.#pointed;
  }

  /** What the chosen handle is, where it is and what it comes to; nothing where none is chosen. */
  get words() {
    const grip = this.#grip();
    const run = this.#runIndex(this.#app.selected);
    if (!grip || run < 0) return "";
    return told(this.#app, run, grip, this.#drag.wanted);
  }

  /**
   * What a pointer at a place of the canvas would take hold of.
   * @param {number} x
   * @param {number} y
   * @param {string} [pointer] its type
   */
  gripAt(x, y, pointer = "mouse") {
    return nearest(gripsOf(this.#solid), x, y, pointer);
  }

  /**
   * What lies under the pointer, for its shape.
   * @param {number} x
   * @param {number} y
   * @returns {"handle" | "tube" | ""}
   */
  under(x, y) {
    const grip = this.gripAt(x, y);
    const spot = grip ? null : spotAt(this.#solid, x, y);
    const run = this.#runIndex(this.#app.selected);
    this.#point(grip && run >= 0 ? handleHint(this.#app.store.design, run, grip) : spot ? tubeHint(spot.run, this.#app.selected) : "");
    return grip ? "handle" : spot ? "tube" : "";
  }

  /** The pointer is nowhere. */
  left() {
    this.#point("");
  }

  /** @param {string} words */
  #point(words) {
    if (this.#pointed === words) return;
    this.#pointed = words;
    this.#app.redraw();
  }

  /**
   * Takes hold of a handle, if there is one.
   * @param {number} x
   * @param {number} y
   * @param {string} pointer its type
   * @returns {boolean} whether one was taken
   */
  press(x, y, pointer) {
    const grip = this.gripAt(x, y, pointer);
    const run = this.#runIndex(this.#app.selected);
    if (!grip || run < 0) return false;
    this.#choose(grip);
    this.#drag.start(grip, run, [x, y]);
    return true;
  }

  /**
   * @param {number} x
   * @param {number} y
   */
  move(x, y) {
    this.#drag.move([x, y], this.#way);
  }

  /** The drag is done. */
  release() {
    const { words } = this;
    if (this.#drag.end()) this.#say(words);
  }

  /**
   * Puts back what the drag changed.
   * @returns {boolean} whether there was one
   */
  cancel() {
    if (!this.#drag.cancel()) return false;
    this.refresh();
    this.#say(say`Put back. ${this.words}`);
    return true;
  }

  /** A new scene is shown, or another run selected: the chosen handle is marked where it is now. */
  refresh() {
    if (this.#drag.wanted) return;
    const grip = this.#grip();
    if (!grip) this.#solid.act((view) => view.letGo());
    else this.#solid.act((view) => view.hold(...grip.at, false));
  }

  /** The engine is ready for the next place. */
  answered() {
    this.#drag.write();
  }

  /**
   * Selects the tube under a pointer.
   * @param {number} x
   * @param {number} y
   */
  click(x, y) {
    const spot = spotAt(this.#solid, x, y);
    if (!spot) return;
    this.#app.select(spot.run);
    this.refresh();
  }

  /**
   * Adds a corner to the tube under a pointer.
   * @param {number} x
   * @param {number} y
   */
  doubleClick(x, y) {
    const spot = this.gripAt(x, y) ? null : spotAt(this.#solid, x, y);
    if (spot) this.#add(spot);
  }

  /** Adds a corner on the straight after the chosen handle, or on the longest. */
  addCorner() {
    if (!this.#selectAny()) return;
    const station = this.#grip()?.station;
    const spot = straightAfter(this.#solid, station);
    if (spot) this.#add(spot);
    else this.#say(cornerRefused());
  }

  /** @param {Spot} spot */
  #add({ run, corner }) {
    const index = this.#runIndex(run);
    if (index < 0) return;
    if (!corner) return this.#say(cornerRefused());
    const { store } = this.#app;
    this.#app.select(run);
    store.change(cornerAdded(store.design, index, corner), undefined, say`add a corner to “${run}”`);
    this.#chosen = { run, kind: "point", station: corner.before };
    this.#say(say`Corner ${corner.before + 1} of ${run} added.`);
  }

  /**
   * Chooses the next handle, or the one before.
   * @param {1 | -1} by
   */
  next(by) {
    if (!this.#selectAny()) return;
    const grips = gripsOf(this.#solid);
    if (grips.length === 0) return this.#say(noHandles(this.#app.selected));
    const now = grips.findIndex(({ kind, station }) => kind === this.#chosen?.kind && station === this.#chosen.station);
    const first = by > 0 ? 0 : grips.length - 1;
    this.#choose(grips[now < 0 || !this.#grip() ? first : (now + by + grips.length) % grips.length]);
    this.#say(this.words);
  }

  /** Chooses none. */
  letGo() {
    if (!this.#chosen) return false;
    this.#chosen = undefined;
    this.refresh();
    this.#app.redraw();
    return true;
  }

  /**
   * Moves the chosen handle by an arrow.
   * @param {readonly [number, number]} arrow to the right and up
   * @param {number} presses how many at once
   */
  nudge(arrow, presses) {
    if (!this.#grip()) this.next(1);
    const grip = this.#grip();
    const run = this.#runIndex(this.#app.selected);
    if (!grip || run < 0 || this.#drag.wanted) return;
    const { store } = this.#app;
    const place = `/runs/${run}/route/${grip.station} ${grip.kind}`;
    // Keys can be quicker than the engine: what counts is where the design has the handle.
    const now = numbersOf(store.design, run, grip);
    if (!now) return;
    const { grid } = this.#app.lengths;
    const far = presses * grid.press;
    if (grip.kind === "radius") {
      const radius = tidy(Math.max(grid.radius, now[0] + far * Math.sign(arrow[0] + arrow[1])));
      store.change(cornerBent(store.design, run, grip.station, radius), place, stepWords(store.design, run, grip));
    } else {
      const step = this.#solid.ask((view) => stepOf(view, this.#way, arrow));
      if (!step) return;
      const point = now.map((part, axis) => tidy(part + far * step[axis]));
      store.change(stationMoved(store.design, run, grip.station, point), place, stepWords(store.design, run, grip));
    }
    this.#say(this.words);
  }

  /**
   * A key went down or up: x, y and z are held to keep to an axis.
   * @param {string} key
   * @param {boolean} down
   */
  axisKey(key, down) {
    const axis = AXES.find((one) => one === key.toLowerCase());
    if (axis) this.#key = down ? axis : undefined;
    return axis !== undefined;
  }

  /** No key is held: the focus went elsewhere. */
  noKey() {
    this.#key = undefined;
  }

  /** @param {Grip} grip */
  #choose({ kind, station, at }) {
    const run = this.#app.selected;
    if (run === null) return;
    this.#chosen = { run, kind, station };
    this.#solid.act((view) => view.hold(...at, false));
    this.#app.redraw();
  }

  /** Whether a run is selected; where none is, the first one that there is becomes so. */
  #selectAny() {
    const { runs } = this.#app.store.design;
    if (this.#runIndex(this.#app.selected) < 0 && runs.length > 0) this.#app.select(runs[0].name);
    if (this.#app.selected === null) this.#say(noHandles(null));
    return this.#app.selected !== null;
  }

  /** @param {string | null} name */
  #runIndex(name) {
    return this.#app.store.design.runs.findIndex((run) => run.name === name);
  }

  /** @param {string} words */
  #say(words) {
    this.#app.spoken = words;
    this.#app.redraw();
  }
}
