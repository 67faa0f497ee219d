// A handle that is dragged: where the pointer takes it, and what of that is written into the design. However long it
// takes it is one step back, and it can be put back whole.

import { cornerBent, stationMoved } from "../design/route-edits.js";
import { numbersOf, stepWords } from "./handle-words.js";
import { levelsOf, NEAR, snapped, snappedRadius } from "./snap.js";
import { movingAxes, seenLength, taken } from "./ways.js";

/** @import { App } from "../app.js" */
/** @import { View } from "../engine.js" */
/** @import { Xyz } from "../engine/messages.js" */
/** @import { Grip } from "./grips.js" */
/** @import { Preview } from "./host.js" */
/** @import { Way } from "./ways.js" */

/** @typedef {{ at: Xyz, radius?: number, levels: (string | undefined)[] }} Target `levels`: what each coordinate is level with */
/**
 * `off`: from the handle's place in the picture to the pointer's. `wanted`: where it is taken.
 * @typedef {{ grip: Grip, run: number, off: [number, number], from: readonly [number, number], place: string,
 *   wanted: Target | undefined, step: { end: () => void, cancel: () => void } }} Drag
 */

// How far a pointer may wander before a press is a drag, CSS pixels.
const STILL = 3;
// An answer that takes longer than this does not hold the next one up, ms.
const LATEST = 150;

export class Dragging {
  /** @type {App} */
  #app;
  /** @type {Preview} */
  #solid;
  /** @type {Drag | undefined} */
  #drag;
  #count = 0;
  #written = 0;

  /**
   * @param {App} app
   * @param {Preview} solid
   */
  constructor(app, solid) {
    this.#app = app;
    this.#solid = solid;
  }

  /** Where the handle is taken; nothing until it has been moved. */
  get wanted() {
    return this.#drag?.wanted;
  }

  /**
   * @param {Grip} grip
   * @param {number} run
   * @param {readonly [number, number]} from CSS pixels from the canvas's top left
   */
  start(grip, run, from) {
    this.#count += 1;
    const place = `/runs/${run}/route/${grip.station} drag ${this.#count}`;
    const off = /** @type {[number, number]} */ ([from[0] - grip.seen[0], from[1] - grip.seen[1]]);
    this.#drag = { grip, run, off, from, place, wanted: undefined, step: this.#app.store.drag(place) };
  }

  /**
   * @param {readonly [number, number]} to
   * @param {Way} way
   */
  move([x, y], way) {
    const drag = this.#drag;
    if (!drag || (!drag.wanted && Math.hypot(x - drag.from[0], y - drag.from[1]) < STILL)) return;
    const target = this.#solid.ask((view) => this.#target(view, drag, way, [x - drag.off[0], y - drag.off[1]]));
    if (!target) return;
    drag.wanted = target;
    this.#solid.act((view) => view.hold(...target.at, true));
    // One answer at a time, so that each is seen: a design that overtook the last one would leave the picture standing.
    if (this.#app.settled || performance.now() - this.#written > LATEST) this.write();
    this.#app.redraw();
  }

  /** Writes where the handle is taken, if the design does not say it yet. */
  write() {
    const { store } = this.#app;
    if (!this.#drag?.wanted) return;
    const { grip, run, wanted, place } = this.#drag;
    // The picture may be of an earlier design, that had another station there.
    if (!numbersOf(store.design, run, grip)) return;
    const next = wanted.radius === undefined ? stationMoved(store.design, run, grip.station, wanted.at)
      : cornerBent(store.design, run, grip.station, wanted.radius);
    if (JSON.stringify(next.runs[run].route) === JSON.stringify(store.design.runs[run].route)) return;
    this.#written = performance.now();
    store.change(next, place, stepWords(next, run, grip));
  }

  /**
   * Ends it; what it wrote is one step.
   * @returns {boolean} whether there was one
   */
  end() {
    const drag = this.#drag;
    this.write();
    this.#drag = undefined;
    drag?.step.end();
    const at = drag?.wanted?.at;
    if (at) this.#solid.act((view) => view.hold(...at, false));
    return drag !== undefined;
  }

  /**
   * Ends it and puts back design and steps.
   * @returns {boolean} whether there was one
   */
  cancel() {
    const drag = this.#drag;
    this.#drag = undefined;
    drag?.step.cancel();
    return drag !== undefined;
  }

  /**
   * @param {View} view
   * @param {Drag} drag
   * @param {Way} way
   * @param {readonly [number, number]} seen
   * @returns {Target | undefined}
   */
  #target(view, { grip, run }, way, seen) {
    const { grid } = this.#app.lengths;
    if (grip.slide) return bentTo(view, grip.slide, seen, grid.radius);
    const free = taken(view, way, grip.at, seen);
    if (!free) return undefined;
    const levels = levelsOf(this.#app.store.design, run, grip.station);
    const axes = movingAxes(view, way);
    const parts = free.map((value, axis) => (axes.includes(axis) ? snapped(value, axis, levels, NEAR / seenLength(view, axis), grid)
      : { value: grip.at[axis], level: undefined }));
    return { at: /** @type {Xyz} */ (parts.map(({ value }) => value)), levels: parts.map(({ level }) => level) };
  }
}

/**
 * The bend whose middle is where the pointer takes it: on the line from the apex to the centre.
 * @param {View} view
 * @param {import("./grips.js").Slide} slide
 * @param {readonly [number, number]} seen
 * @param {number} step of the radius, mm
 * @returns {Target | undefined}
 */
function bentTo(view, { apex, inward, factor }, [x, y], step) {
  const point = view.onLine(x, y, Float64Array.from(apex), Float64Array.from(inward));
  if (point.length !== 3) return undefined;
  const far = inward.reduce((sum, part, axis) => sum + part * (point[axis] - apex[axis]), 0);
  const radius = snappedRadius(far / factor, step);
  return { at: /** @type {Xyz} */ (apex.map((part, axis) => part + inward[axis] * factor * radius)), radius, levels: [] };
}
