// What would come of other sizes and materials: what is asked, and the engine's answer to it. It is asked only while its
// panel is open, one question at a time; the design and the lists as they are when an answer comes are asked about next.

import { wordsOf } from "../words/errors.js";
import { alike } from "../words/presets.js";
import { sizeWords, TUBE } from "./columns.js";
import { readSizes } from "./sizes.js";
import { suggested } from "./suggest.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { Design } from "../design/types.js" */
/** @import { Variant } from "../engine/messages.js" */

/** @typedef {"outer_diameters" | "bores"} SizeList */
/** @typedef {{ outer_diameters: number[], bores: number[], materials: string[], run: string | null }} Request */
/** @typedef {Variant & { key: string, present: boolean }} Row `key` is the same for the same variant in any table */

const LISTS = /** @type {const} */ (["outer_diameters", "bores"]);

export class WhatIf {
  /** @type {App} */
  #app;
  open = false;
  /** What was typed into each list; nothing as long as it follows the design. @type {Record<SizeList, string | undefined>} */
  #typed = { outer_diameters: undefined, bores: undefined };
  /** @type {Set<string>} */
  materials = new Set();
  /** @type {string | null} the run that is changed; all where there is none */
  run = null;
  /** @type {readonly Row[]} */
  rows = [];
  /** Why there is no new table, and which list it is about. @type {{ list: SizeList | "", words: string }} */
  trouble = { list: "", words: "" };
  order = { key: TUBE, down: false };
  axes = { across: "loss_kpa", up: "cost" };
  /** The row that is looked at, in the table and in the chart. */
  marked = "";
  /** @type {Design | undefined} the design that the rows are about */
  #about;
  #asked = "";
  #asking = false;
  /** @type {Design | undefined} the design as a variant that was taken over left it */
  #adopted;

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  /** Whether the rows are about the design and the lists as they are. */
  get fresh() {
    return this.#about === this.#app.store.design && this.#readable && this.#asked === JSON.stringify(this.#request());
  }

  /** Whether an answer is on its way. */
  get waiting() {
    return !this.fresh && this.#readable && this.#app.problems.length === 0;
  }

  /**
   * What a list's field shows.
   * @param {SizeList} list
   */
  text(list) {
    return this.#typed[list] ?? suggested(this.#runs(), list);
  }

  /**
   * What is wrong with a list: as it was typed, or as the engine found it.
   * @param {SizeList} list
   */
  error(list) {
    return readSizes(this.text(list)).error || (this.trouble.list === list ? this.trouble.words : "");
  }

  /**
   * @param {SizeList} list
   * @param {string} text
   */
  type(list, text) {
    this.#typed[list] = text;
    this.#change();
  }

  /** @param {string | null} run */
  only(run) {
    this.run = run;
    this.#change();
  }

  /**
   * @param {string} material
   * @param {boolean} on
   */
  tick(material, on) {
    if (on) this.materials.add(material);
    else this.materials.delete(material);
    this.#change();
  }

  /** The lists as they were suggested, of the design as it is. */
  startOver() {
    this.#forget();
    this.#change();
  }

  /** @param {boolean} open */
  unfold(open) {
    if (this.open === open) return;
    this.open = open;
    this.#app.redraw();
    void this.refresh();
  }

  /** @param {string} key a second time turns the order round */
  sort(key) {
    this.order = { key, down: this.order.key === key && !this.order.down };
    this.#app.redraw();
  }

  /**
   * @param {"across" | "up"} axis
   * @param {string} key
   */
  plot(axis, key) {
    this.axes = { ...this.axes, [axis]: key };
    this.#app.redraw();
  }

  /** @param {string} key */
  mark(key) {
    if (this.marked === key) return;
    this.marked = key;
    this.#app.redraw();
  }

  /** The next design is another one: the lists follow it. */
  anotherDesign() {
    [this.run, this.rows, this.marked, this.#about, this.trouble] = [null, [], "", undefined, { list: "", words: "" }];
    this.#forget();
  }

  /** The design was changed: what was said about taking a variant over holds no longer. */
  designChanged() {
    if (this.#adopted === undefined || this.#adopted === this.#app.store.design) return;
    this.#adopted = undefined;
    this.#app.say("what-if", undefined);
  }

  /** Asks for the table anew where it is out of date; called whenever the engine has looked at the design. */
  async refresh() {
    const { link, store, text, problems, known } = this.#app;
    // A design that is not known to be whole would be refused, and the table lost with it.
    if (!this.open || this.#asking || !known || problems.length > 0 || store.design.runs.length === 0) return;
    if (this.run !== null && !store.design.runs.some((run) => run.name === this.run)) this.run = null;
    if (this.fresh || !this.#readable) return;
    const [{ design }, request] = [store, this.#request()];
    const asked = JSON.stringify(request);
    this.#asking = true;
    try {
      /** @type {(request: object) => Promise<Variant[]>} */
      const rows = async (one) => JSON.parse(await link.ask("variants", text, JSON.stringify(one))).rows;
      const [found, [now]] = await Promise.all([rows(request), rows({ run: request.run })]);
      const shipped = this.#app.presets.materials;
      const isSame = (/** @type {Variant} */ row) => request.materials.length === 0
        || shipped.some((material) => material.name === row.material && alike(material, design.process.material)) || design.process.material === row.material;
      this.rows = told(request, found, now, isSame);
      [this.#about, this.#asked, this.trouble] = [design, asked, { list: "", words: "" }];
    } catch (error) {
      const path = error instanceof Error && "path" in error ? String(error.path) : "";
      const list = LISTS.find((one) => path.startsWith(`/${one}`)) ?? "";
      this.trouble = { list, words: wordsOf(error) };
      // A refusal is an answer: the same is not asked again.
      [this.#about, this.#asked] = [design, asked];
      this.rows = [];
    } finally {
      this.#asking = false;
    }
    this.#app.redraw();
    // Whatever was changed in the meantime is asked about now.
    if (!this.fresh) void this.refresh();
  }

  /**
   * Makes a variant the design, by the row's own change to it.
   * @param {Row} row
   */
  async adopt(row) {
    const { link, store } = this.#app;
    const { design } = store;
    if (row.present) return;
    if (!this.fresh) {
      this.#app.say("what-if", { kind: "trouble", text: say`${nameOf(row)} was not taken over: the table is still of what was there before. ${this.waiting ? say`Press again once it is worked out anew.` : say`Mend first what is marked.`}` });
      return;
    }
    // The table stays the one that was chosen from, though the lists would follow the design.
    for (const list of LISTS) this.#typed[list] = this.text(list);
    try {
      const next = JSON.parse(await link.ask("apply", JSON.stringify(design), JSON.stringify(row.patch)));
      // A key typed while the change was under way wins: the row was about the design before it.
      if (store.design !== design) return;
      this.marked = row.key;
      this.#adopted = next;
      store.adopt(next);
      const undo = () => {
        if (store.design !== next) return;
        store.undo();
        document.getElementById(takeId(row))?.focus();
      };
      const where = this.run === null ? "" : say` for ${this.run}`;
      this.#app.say("what-if", { kind: "word", text: say`Taken over${where}: ${nameOf(row)}.`, action: { label: say`Undo: as it was before`, run: undo } });
    } catch (error) {
      this.#app.say("what-if", { kind: "trouble", text: say`The variant was not taken over: ${wordsOf(error)}` });
    }
  }

  #forget() {
    this.#typed = { outer_diameters: undefined, bores: undefined };
    this.materials.clear();
  }

  #change() {
    if (this.trouble.words !== "") this.#about = undefined;
    this.trouble = { list: "", words: "" };
    this.#app.redraw();
    void this.refresh();
  }

  #runs() {
    const { runs } = this.#app.store.design;
    return this.run === null ? runs : runs.filter((run) => run.name === this.run);
  }

  /** @returns {Request} */
  #request() {
    const sizes = (/** @type {SizeList} */ list) => readSizes(this.text(list)).sizes.toSorted((a, b) => a - b);
    const shipped = this.#app.presets.materials.map((material) => material.name);
    return { outer_diameters: sizes("outer_diameters"), bores: sizes("bores"), materials: shipped.filter((name) => this.materials.has(name)), run: this.run };
  }

  /** Whether both lists can be read. */
  get #readable() {
    return LISTS.every((list) => readSizes(this.text(list)).error === "");
  }
}

/**
 * A variant in words: "14 × 10 mm, PETG".
 * @param {Variant} row
 */
export function nameOf(row) {
  return `${sizeWords(row)} mm${row.material ? `, ${engineWord(row.material)}` : ""}`;
}

/**
 * The id of the button that takes a row over.
 * @param {Row} row
 */
export function takeId(row) {
  return `take-${row.key.replaceAll(/[^\w.]+/g, "-")}`;
}

/**
 * The engine's rows, the present design's marked among them, or put before them where it is none of them.
 * @param {Request} request
 * @param {Variant[]} found
 * @param {Variant} now
 * @param {(row: Variant) => boolean} isSameMaterial
 * @returns {Row[]}
 */
function told(request, found, now, isSameMaterial) {
  const key = (/** @type {Variant} */ row) => `${row.outer_diameter} ${row.bore} ${row.material ?? ""}`;
  // Sizes that differ from run to run stay so only where none was asked for.
  const keeps = (/** @type {"outer_diameter" | "bore"} */ size, /** @type {Variant} */ row) =>
    request[`${size}s`].length === 0 || row[size] === now[size];
  const rows = found.map((row) => ({ ...row, key: key(row), present: keeps("outer_diameter", row) && keeps("bore", row) && isSameMaterial(row) }));
  return rows.some((row) => row.present) ? rows : [{ ...now, key: `${key(now)} now`, present: true }, ...rows];
}
