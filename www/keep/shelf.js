// Several designs in the browser's storage, each in a slot of its own with its date. Two tabs that work on one design
// never write over each other: the second to write finds that the slot is not as it left it, and goes on as a copy.

import { changesBetween } from "../design/change.js";
import { isDesignShaped } from "../design/shape.js";
import { emptySlot, freshWord, KEPT, readSlot, slotsAfter, writeSlot } from "./slots.js";

/** @import { Design } from "../design/types.js" */
/** @import { State } from "../design/store.js" */
/** @import { Failure } from "./slots.js" */

const STEPS = "tubewright.steps.1.";
const PICTURE = "tubewright.picture.1.";
const DAMAGED = "tubewright.damaged.";
const LAST = "tubewright.last";

/** @typedef {{ stamp: string, changed: string, untouched: boolean, design: Design }} Entry */
/** @typedef {{ id: string, name: string, runs: number, changed: string, untouched: boolean, picture: string | undefined }} Listed */
/** @typedef {{ failed?: Failure, copy?: string }} Outcome `copy`: another tab had changed the design, so this one's is kept there */
/** @typedef {{ id: string, slots: [slot: string, text: string][] }} Removed */

export class Shelf {
  /** What each design's slot held when this tab read or wrote it last. @type {Map<string, string>} */
  #stamps = new Map();

  /** The design that was worked on last, in any tab. */
  get last() {
    return readSlot(LAST) ?? undefined;
  }

  /**
   * What a slot holds; one that cannot be read is set aside.
   * @param {string} id
   * @returns {State | undefined}
   */
  read(id) {
    const text = readSlot(KEPT + id);
    if (typeof text !== "string") return undefined;
    const entry = entryIn(text);
    if (!entry) {
      this.setAside(text);
      emptySlot(KEPT + id);
      return undefined;
    }
    this.#stamps.set(id, entry.stamp);
    return { id, design: entry.design, untouched: entry.untouched };
  }

  /**
   * Keeps a state. Steps are given up before a design is.
   * @param {State} state
   * @returns {Outcome}
   */
  keep(state) {
    const foreign = this.#isTaken(state);
    const id = foreign ? freshWord() : state.id;
    const own = freshWord();
    /** @type {Entry} */
    const entry = { stamp: own, changed: new Date().toISOString(), untouched: state.untouched, design: state.design };
    const text = JSON.stringify(entry);
    let failed = writeSlot(KEPT + id, text);
    if (failed === "full") {
      emptySlot(STEPS + id);
      failed = writeSlot(KEPT + id, text);
    }
    if (failed) return { failed };
    this.#stamps.set(id, own);
    writeSlot(LAST, id);
    return foreign ? { copy: id } : {};
  }

  /**
   * Whether another tab has put something else into a state's slot.
   * @param {State} state
   */
  #isTaken({ id, design }) {
    const [text, own] = [readSlot(KEPT + id) ?? "", this.#stamps.get(id)];
    // At most keys the slot is as this tab left it, which its first words say.
    if (own !== undefined && text.startsWith(`{"stamp":"${own}"`)) return false;
    const there = entryIn(text);
    // A step back to a design that this tab has not looked at since it was reloaded finds it as it was left.
    return there !== undefined && there.stamp !== own && changesBetween(there.design, design).length > 0;
  }

  /** Every design that is kept, the last changed first. @returns {Listed[]} */
  list() {
    const entries = slotsAfter(KEPT).flatMap((id) => {
      const entry = entryIn(readSlot(KEPT + id) ?? "");
      if (!entry) return [];
      const { design, changed, untouched } = entry;
      return [{ id, name: design.name, runs: design.runs.length, changed, untouched, picture: readSlot(PICTURE + id) ?? undefined }];
    });
    return entries.sort((a, b) => b.changed.localeCompare(a.changed));
  }

  /**
   * Takes a design off the shelf, and gives what puts it back.
   * @param {string} id
   * @returns {Removed}
   */
  remove(id) {
    /** @type {[string, string][]} */
    const slots = [];
    for (const slot of [KEPT + id, STEPS + id, PICTURE + id]) {
      const text = readSlot(slot);
      if (typeof text === "string") slots.push([slot, text]);
      emptySlot(slot);
    }
    this.#stamps.delete(id);
    return { id, slots };
  }

  /**
   * @param {Removed} removed
   * @returns {Failure | undefined}
   */
  putBack(removed) {
    return removed.slots.map(([slot, text]) => writeSlot(slot, text)).find(Boolean);
  }

  /**
   * A text that cannot be read goes where nothing is ever deleted.
   * @param {string} text
   * @returns {Failure | undefined}
   */
  setAside(text) {
    return writeSlot(`${DAMAGED}${new Date().toISOString()}`, text);
  }

  /** What was set aside, by when. @returns {{ when: string, text: string }[]} */
  damaged() {
    return slotsAfter(DAMAGED).map((when) => ({ when, text: readSlot(DAMAGED + when) ?? "" }));
  }

  /**
   * @param {string} id
   * @returns {string | undefined} the text of its steps
   */
  steps(id) {
    return readSlot(STEPS + id) ?? undefined;
  }

  /**
   * Steps that find no room are let go.
   * @param {string} id
   * @param {string} text
   */
  keepSteps(id, text) {
    if (writeSlot(STEPS + id, text)) emptySlot(STEPS + id);
  }

  /**
   * @param {string} id
   * @param {string} picture a data address
   */
  keepPicture(id, picture) {
    if (writeSlot(PICTURE + id, picture)) emptySlot(PICTURE + id);
  }

  /**
   * Calls back when another tab keeps a design or takes one away.
   * @param {(id: string) => void} listener
   */
  onOtherTab(listener) {
    addEventListener("storage", ({ key }) => {
      if (key?.startsWith(KEPT)) listener(key.slice(KEPT.length));
    });
  }

  /**
   * Whether a design has no slot yet.
   * @param {string} id
   */
  isNew(id) {
    return readSlot(KEPT + id) === null;
  }

  /**
   * Whether a design is kept as it was started, and not by another tab.
   * @param {string} id
   */
  isUntouched(id) {
    const entry = entryIn(readSlot(KEPT + id) ?? "");
    return entry !== undefined && entry.untouched && entry.stamp === this.#stamps.get(id);
  }

  /**
   * Whether a slot holds something that this tab neither read nor wrote.
   * @param {string} id
   */
  isForeign(id) {
    const entry = entryIn(readSlot(KEPT + id) ?? "");
    return entry !== undefined && entry.stamp !== this.#stamps.get(id);
  }
}

/**
 * @param {string} text
 * @returns {Entry | undefined}
 */
function entryIn(text) {
  try {
    const value = JSON.parse(text);
    const { stamp, changed, design } = value;
    return typeof stamp === "string" && typeof changed === "string" && isDesignShaped(design) ? { ...value, untouched: value.untouched === true } : undefined;
  } catch {
    return undefined;
  }
}
