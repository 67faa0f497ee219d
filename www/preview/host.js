// The solid preview's host: gives the view its arrays, draws only when something changed and at most once a frame,
// and gets through the loss of the graphics context.

import { wordsOf } from "../words/errors.js";
import { say } from "../words/say.js";

/** @import { View } from "../engine.js" */

/** @typedef {{ positions: Float32Array, indices: Uint32Array }} Mesh */

// How long a lost context may take to come back before the drawing stands in, ms.
const PATIENCE = 4000;
// What taking in tubes may cost of one frame, ms.
const A_FRAMES_SHARE = 6;

export class Preview {
  /** @type {(words: string | undefined) => void} */
  #onTrouble;
  /** @type {() => void} */
  #onSquares;
  /** How wide the finest squares of the paper behind the tubes are, mm; 0 where there are none. */
  squares = 0;
  /** @type {HTMLCanvasElement | undefined} */
  #canvas;
  /** @type {View | undefined} */
  #view;
  #frame = 0;
  #lost = 0;
  #first = true;
  /** @type {string | undefined} */
  #scene;
  /** @type {[width: number, height: number]} */
  #size = [0, 0];
  // Tubes wait here for their turn: so many a frame as take no time that a keystroke would notice.
  /** @type {Map<string, Mesh>} */
  #waiting = new Map();
  /** @type {Set<string>} */
  #shown = new Set();
  /** @type {"light" | "dark"} */
  #theme = "light";
  #section = false;
  /** Whether the coolant is shown; where it was not chosen the material decides. @type {boolean | undefined} */
  #coolant;
  /** @type {string | null} */
  #selected = null;

  /**
   * @param {(words: string | undefined) => void} onTrouble called with words where the preview is lost, with none where it is back
   * @param {() => void} onSquares called where the paper's squares have another width
   */
  constructor(onTrouble, onSquares) {
    this.#onTrouble = onTrouble;
    this.#onSquares = onSquares;
  }

  /** What the view shows, in plain words. */
  get description() {
    return this.#try((view) => view.description()) ?? "";
  }

  get section() {
    return this.#section;
  }

  get theme() {
    return this.#theme;
  }

  /** Whether the coolant is seen. */
  get coolant() {
    return this.#try((view) => view.showsCoolant()) ?? false;
  }

  /**
   * Takes the canvas that will be drawn on.
   * @param {HTMLCanvasElement} canvas
   */
  attach(canvas) {
    if (this.#canvas) return;
    this.#canvas = canvas;
    this.#watchContext(canvas);
  }

  /**
   * Starts to draw: once the form stands, since making a view takes a while. What came before is taken up.
   * @param {(canvas: HTMLCanvasElement) => View} make may throw where there is no WebGL2
   */
  open(make) {
    const canvas = this.#canvas;
    if (!canvas || this.#view) return;
    try {
      this.#view = make(canvas);
    } catch (error) {
      this.#onTrouble(say`The solid preview cannot be drawn: ${wordsOf(error)}. The drawing stands in for it.`);
      return;
    }
    const scene = this.#scene;
    this.#change((view) => {
      view.setTheme(this.#theme);
      view.setSection(this.#section);
      view.setCoolant(this.#coolant);
      view.setSelected(this.#selected ?? undefined);
      if (scene !== undefined) view.setScene(scene);
    });
    this.#watchSize(canvas);
    // Fitted once it has its size.
    this.#first = true;
    if (scene !== undefined) requestAnimationFrame(() => this.#fitFirst());
  }

  /** @param {HTMLCanvasElement} canvas */
  #watchContext(canvas) {
    canvas.addEventListener("webglcontextlost", (event) => {
      event.preventDefault();
      this.#try((view) => view.lost());
      this.#lost = setTimeout(() => this.#onTrouble(say`The graphics were lost and have not come back, so the drawing is shown.`), PATIENCE);
    });
    canvas.addEventListener("webglcontextrestored", () => {
      clearTimeout(this.#lost);
      this.#lost = 0;
      this.#try((view) => view.restored());
      this.#onTrouble(undefined);
      this.redraw();
    });
  }

  /** @param {string} scene the engine's text */
  setScene(scene) {
    this.#scene = scene;
    this.#change((view) => view.setScene(scene));
  }

  /**
   * @param {string} run
   * @param {Mesh} mesh
   */
  setTube(run, mesh) {
    this.#waiting.set(run, mesh);
    this.#shown.add(run);
    this.redraw();
  }

  /**
   * Takes away the tubes of runs that are not among `runs`, and fits the view to the first design there is.
   * @param {string[]} runs
   */
  keepOnly(runs) {
    for (const run of [...this.#shown].filter((one) => !runs.includes(one))) {
      this.#shown.delete(run);
      this.#waiting.delete(run);
      this.#change((view) => view.dropTube(run));
    }
    this.#fitFirst();
  }

  #fitFirst() {
    if (!this.#first || !this.#view) return;
    this.#first = false;
    this.#change((view) => view.fit());
  }

  /** Another design is coming: the view is fitted to it. */
  fitNext() {
    this.#first = true;
  }

  /** @param {"light" | "dark"} theme */
  setTheme(theme) {
    this.#theme = theme;
    this.#change((view) => view.setTheme(theme));
  }

  /** @param {string | null} run */
  setSelected(run) {
    if (this.#selected === run) return;
    this.#selected = run;
    this.#change((view) => view.setSelected(run ?? undefined));
  }

  /** @param {boolean} on */
  setSection(on) {
    this.#section = on;
    this.#change((view) => view.setSection(on));
  }

  /** @param {boolean} on */
  setCoolant(on) {
    this.#coolant = on;
    this.#change((view) => view.setCoolant(on));
  }

  /**
   * Draws what is seen so many times as large, and lets `take` have the canvas while that stands on it; nobody sees it.
   * @param {number} times
   * @param {(canvas: HTMLCanvasElement) => void} take
   * @param {"light" | "dark"} [theme] in other colours than are seen
   * @returns {boolean} whether it could be drawn
   */
  large(times, take, theme = this.#theme) {
    const [canvas, view] = [this.#canvas, this.#view];
    if (!canvas || !view || this.#lost !== 0 || this.#size[0] === 0) return false;
    for (const [run, mesh] of this.#waiting) this.#try((it) => it.setTube(run, mesh.positions, mesh.indices));
    this.#waiting.clear();
    let done = false;
    // A context that was lost this moment is no reason to let the view go: the browser may give it back.
    try {
      view.setTheme(theme);
      view.drawLarge(times, () => {
        take(canvas);
        done = true;
      });
    } catch {
      done = false;
    }
    this.#change((it) => it.setTheme(this.#theme));
    return done;
  }

  /**
   * Turns, moves or zooms the view.
   * @param {(view: View) => void} change
   */
  act(change) {
    this.#change(change);
  }

  /**
   * Asks the view something.
   * @template T
   * @param {(view: View) => T} question
   * @returns {T | undefined} nothing where there is no view
   */
  ask(question) {
    return this.#try(question);
  }

  /** Draws in the next frame. */
  redraw() {
    if (this.#frame === 0 && this.#view) this.#frame = requestAnimationFrame(() => this.#draw());
  }

  #draw() {
    this.#frame = 0;
    if (this.#lost !== 0) return;
    const began = performance.now();
    for (const [run, mesh] of this.#waiting) {
      if (performance.now() - began > A_FRAMES_SHARE) break;
      this.#waiting.delete(run);
      this.#try((view) => view.setTube(run, mesh.positions, mesh.indices));
    }
    this.#try((view) => {
      if (view.needsDraw() && this.#size[0] > 0) view.draw();
      const squares = view.gridStep();
      if (squares === this.squares) return;
      this.squares = squares;
      this.#onSquares();
    });
    if (this.#waiting.size > 0) this.redraw();
  }

  /** @param {(view: View) => void} change */
  #change(change) {
    this.#try(change);
    this.redraw();
  }

  /**
   * Calls the view. A view that has given way is let go, and the drawing stands in.
   * @template T
   * @param {(view: View) => T} call
   * @returns {T | undefined}
   */
  #try(call) {
    if (!this.#view) return undefined;
    try {
      return call(this.#view);
    } catch (error) {
      this.#view = undefined;
      this.#onTrouble(say`The solid preview stopped (${wordsOf(error)}), so the drawing is shown.`);
      return undefined;
    }
  }

  /** @param {HTMLCanvasElement} canvas */
  #watchSize(canvas) {
    const observer = new ResizeObserver(([entry]) => {
      const device = entry.devicePixelContentBoxSize?.[0];
      const [box] = entry.contentBoxSize;
      const ratio = globalThis.devicePixelRatio || 1;
      const width = device?.inlineSize ?? Math.round(box.inlineSize * ratio);
      const height = device?.blockSize ?? Math.round(box.blockSize * ratio);
      if (width === this.#size[0] && height === this.#size[1]) return;
      this.#size = [width, height];
      this.#try((view) => {
        view.resize(width, height, ratio);
        // A new size clears the canvas, so it is drawn in the same task.
        if (width > 0 && height > 0 && this.#lost === 0) view.draw();
      });
    });
    try {
      observer.observe(canvas, { box: "device-pixel-content-box" });
    } catch {
      observer.observe(canvas);
    }
  }
}
