// How each tube stands on the printer's plate: what is looked at, and the engine's answer about it. It is asked only while
// its panel is open, one question at a time; the design as it is when an answer comes is asked about next.

import { withValue } from "../design/pointer.js";
import { wordsOf } from "../words/errors.js";
import { findingsInWords } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { Design } from "../design/types.js" */
/** @import { Stance, Stances } from "../engine/messages.js" */

/** @typedef {{ up: [number, number, number], turn_deg: number }} Stood a stance as the design states it */
/** @typedef {{ id: string, stance: Stance, stood: Stood, name: string, present: boolean, own: boolean }} Way */

// An answer that takes longer than this is announced, ms.
const NOTICEABLE = 500;

export class Plate {
  /** @type {App} */
  #app;
  open = false;
  /** @type {Stances | undefined} */
  answer;
  trouble = "";
  /** Whether the engine has been at it for so long that the page says so. */
  slow = false;
  /** The id of the way that is looked at; the chosen one where there is none. */
  looked = "";
  #run = "";
  /** Which piece of the run is looked at, from 1. */
  #piece = 1;
  /** @type {{ design: Design, run: string, piece: number } | undefined} what the answer is about */
  #about;
  #asking = false;

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  /** The run that is looked at: the one that was chosen, or the first that can be made. */
  get run() {
    const made = this.made;
    return made.includes(this.#run) ? this.#run : made[0];
  }

  /** The runs that can be made. */
  get made() {
    return this.#app.report?.runs.filter((run) => run.made).map((run) => run.name) ?? [];
  }

  /** How many pieces the run is printed in. */
  get pieces() {
    return this.#app.report?.runs.find(({ name }) => name === this.run)?.pieces.length ?? 1;
  }

  /** The piece that is looked at, from 1. */
  get piece() {
    return Math.min(this.#piece, Math.max(1, this.pieces));
  }

  /** Whether the answer is about the design, the run and the piece as they are. */
  get fresh() {
    const about = this.#about;
    return about !== undefined && about.design === this.#app.store.design && about.run === this.run && about.piece === this.piece;
  }

  /** The ways to stand, the chosen one among them. @returns {Way[]} */
  get ways() {
    const { answer } = this;
    if (!answer) return [];
    const found = answer.stances.map((stance, index) => ({ id: `way-${index}`, stance, stood: stated(stance), name: index === 0 ? say`Best found` : say`Way ${index + 1}`, present: false, own: false }));
    const { own } = answer;
    if (!own) return found.map((way, index) => ({ ...way, present: index === 0 }));
    const twin = found.find((way) => alike(way.stood, stated(own)));
    if (twin) return found.map((way) => (way === twin ? { ...way, present: true, own: true } : way));
    return [{ id: "way-own", stance: own, stood: stated(own), name: say`Your own`, present: true, own: true }, ...found];
  }

  /** The way that is drawn. */
  get shown() {
    const { ways } = this;
    return ways.find((way) => way.id === this.looked) ?? ways.find((way) => way.present) ?? ways[0];
  }

  /** @param {boolean} open */
  unfold(open) {
    if (this.open === open) return;
    this.open = open;
    this.#app.redraw();
    void this.refresh();
  }

  /** @param {string} run */
  choose(run) {
    [this.#run, this.#piece, this.looked] = [run, 1, ""];
    this.#app.redraw();
    void this.refresh();
  }

  /** @param {number} piece */
  choosePiece(piece) {
    [this.#piece, this.looked] = [piece, ""];
    this.#app.redraw();
    void this.refresh();
  }

  /** @param {string} id */
  look(id) {
    this.looked = id;
    this.#app.redraw();
  }

  /**
   * Makes a way the run's own, or leaves it to the best that is found.
   * @param {Way | undefined} way
   */
  stand(way) {
    const { store } = this.#app;
    const run = this.#about?.run;
    const index = store.design.runs.findIndex(({ name }) => name === run);
    if (index < 0 || !this.fresh) return;
    const piece = this.#about?.piece ?? 1;
    // A cut holds the stance of the piece that begins there. Each choice is a step of its own, however soon it follows another.
    const place = piece === 1 ? `/runs/${index}/stance` : `/runs/${index}/cuts/${piece - 2}/stance`;
    store.change(withValue(store.design, place, way ? way.stood : null));
    const { design } = store;
    this.looked = "";
    const what = this.pieces > 1 ? say`${run}, piece ${piece},` : run;
    const text = way ? say`${what} stands as “${way.name}” from now on.` : say`${what} stands as is found best from now on.`;
    this.#app.say("plate", { kind: "word", text, action: { label: say`Undo: as it stood before`, run: () => store.design === design && store.undo() } });
  }

  /** The next design is another one. */
  anotherDesign() {
    [this.#run, this.#piece, this.looked, this.answer, this.#about, this.trouble] = ["", 1, "", undefined, undefined, ""];
  }

  /** Asks anew where the answer is out of date; called whenever the engine has looked at the design. */
  async refresh() {
    const { link, store, text, problems, known } = this.#app;
    const [run, piece] = [this.run, this.piece];
    if (!this.open || this.#asking || !known || problems.length > 0 || this.fresh) return;
    if (run === undefined) {
      this.answer = undefined;
      return;
    }
    const { design } = store;
    this.#asking = true;
    const late = setTimeout(() => {
      this.slow = true;
      this.#app.redraw();
    }, NOTICEABLE);
    try {
      const answer = /** @type {Stances} */ (JSON.parse(await link.ask("stances", text, run, piece)));
      if (this.#about?.run !== run || this.#about.piece !== piece) this.looked = "";
      [this.answer, this.trouble] = [{ ...answer, findings: findingsInWords(answer.findings) }, ""];
    } catch (error) {
      [this.answer, this.trouble] = [undefined, wordsOf(error)];
    } finally {
      clearTimeout(late);
      [this.#asking, this.slow] = [false, false];
    }
    this.#about = { design, run, piece };
    this.#app.redraw();
    // Whatever was changed in the meantime is asked about now.
    if (!this.fresh) void this.refresh();
  }
}

/**
 * A stance as it is written into the design: six decimals of a direction are a thousandth of a millimetre on a metre.
 * @param {Stance} stance
 * @returns {Stood}
 */
function stated({ up, turn_deg }) {
  const short = (/** @type {number} */ value, /** @type {number} */ decimals) => Number(value.toFixed(decimals)) + 0;
  return { up: [short(up[0], 6), short(up[1], 6), short(up[2], 6)], turn_deg: short(turn_deg, 4) };
}

/**
 * Whether two stances are the same but for what writing them down rounds.
 * @param {Stood} one
 * @param {Stood} other
 */
function alike(one, other) {
  const turn = Math.abs(one.turn_deg - other.turn_deg) % 360;
  return one.up.every((part, axis) => Math.abs(part - other.up[axis]) < 1e-5) && Math.min(turn, 360 - turn) < 0.01;
}
