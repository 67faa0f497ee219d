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

  /** What handles come to rest on and go by, mm: round values of the unit, finer ones, those of radii; one press. */
  get grid() {
    return this.unit === "in" ? { whole: tidy(0.05 * 25.4), fine: tidy(0.005 * 25.4), radius: tidy(0.025 * 25.4), press: tidy(0.05 * 25.4) }
      : { whole: 1, fine: 0.1, radius: 0.5, press: 1 };
  }

  /**
   * What an arrow key goes by, mm.
   * @param {number} step in millimetres
   */
  step(step) {
    return this.unit === "in" ? tidy((step >= 0.1 ? 0.01 : 0.001) * 25.4) : step;
  }
}
