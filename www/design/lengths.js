// The unit that lengths are typed and shown in. The design holds millimetres whatever it is.

import { showTyped, tidy } from "./typed.js";
import { readSlot, writeSlot } from "../keep/slots.js";

const SLOT = "tubewright.lengths";
/** Decimals that an inch is shown with: finer than any print. */
const DECIMALS = 4;

/** @typedef {"mm" | "in"} LengthUnit */

export class Lengths {
  /** @type {LengthUnit} */
  unit = readSlot(SLOT) === "in" ? "in" : "mm";

  /** @param {LengthUnit} unit */
  choose(unit) {
    this.unit = unit;
    // A choice that is not kept is no loss worth words.
    writeSlot(SLOT, unit);
  }

  /** One of the unit, mm. */
  get size() {
    return this.unit === "in" ? 25.4 : 1;
  }

  /**
   * A value of the design as a field shows it.
   * @param {unknown} value mm, or what was typed and is no number
   */
  shown(value) {
    return typeof value === "number" && this.unit === "in" ? showTyped(Number((value / 25.4).toFixed(DECIMALS))) : showTyped(value);
  }

  /**
   * What an arrow key goes by, mm.
   * @param {number} step in millimetres
   */
  step(step) {
    return this.unit === "in" ? tidy((step >= 0.1 ? 0.01 : 0.001) * 25.4) : step;
  }
}
