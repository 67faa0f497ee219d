// What speaks for and against a way to stand, in plain words with its numbers.

import { counted, fixed, short } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { Stance, Stances } from "../engine/messages.js" */
/** @import { Shape } from "../words/marks.js" */

/** @typedef {{ kind: Shape, words: string }} Part */

/**
 * How much room it takes: "106 mm high, 130 × 20 mm on the plate".
 * @param {Stance} stance
 */
export function sizeWords({ box_mm: { min, max }, height_mm, layers, hours }) {
  const [wide, deep] = [max[0] - min[0], max[1] - min[1]];
  const time = layers === null ? "" : `; ${counted(layers, "layer")}${hours === null ? "" : say`, about ${hours < 1 ? `${fixed(hours * 60, 0)} min` : `${fixed(hours, 1)} h`}`}`;
  return say`${fixed(height_mm, 1)} mm high, ${fixed(wide, 1)} × ${fixed(deep, 1)} mm on the plate${time}`;
}

/**
 * @param {Stances} answer
 * @param {Stance} stance
 * @returns {Part[]}
 */
export function against(answer, stance) {
  const { way, overhang_deg, bore_deg, bridge_mm } = answer;
  const vat = way !== "powder" && way !== "filament";
  /** @type {(Part | undefined)[]} */
  const parts = [
    stance.fits
      ? { kind: "fine", words: say`fits, with ${short(Math.max(0, stance.slack_mm), 1)} mm to spare between the margins` }
      : { kind: "care", words: say`sticks out of the room by ${short(-stance.slack_mm, 2)} mm` },
    vat ? cups(stance) : undefined,
    bore_deg === null ? undefined : bore(stance, bore_deg),
    bridge_mm === null ? undefined : bridges(stance, bridge_mm),
    overhang_deg === null ? undefined : bands(stance),
    overhang_deg === null ? undefined : support(stance),
    way === "filament" && stance.cost.foot > 0 ? { kind: "note", words: say`neither end stands flat on the plate, so it needs a foot to stand on` } : undefined,
    stance.pools.length > 0 ? { kind: "note", words: say`keeps up to ${millilitres(stance.pools_mm3)} of resin when it comes out of the vat: turn it over to drain it` } : undefined,
  ];
  return parts.filter((part) => part !== undefined);
}

/**
 * @param {Stance} stance
 * @returns {Part}
 */
function cups({ cups: list, cups_mm3 }) {
  if (list.length === 0) return { kind: "fine", words: say`traps no resin` };
  return { kind: "care", words: say`traps ${millilitres(cups_mm3)} of resin in ${counted(list.length, "cup")}` };
}

/**
 * @param {Stance} stance
 * @param {number} least
 * @returns {Part}
 */
function bore({ flat_mm, flats }, least) {
  if (flat_mm <= 0) return { kind: "fine", words: say`no bore flatter than ${short(least, 1)}°` };
  const flattest = Math.min(...flats.map((span) => span.flattest_deg));
  const where = flats.length === 1 ? say`, from ${short(flats[0].from_mm, 0)} to ${short(flats[0].to_mm, 0)} mm along the tube` : say`, in ${flats.length} places`;
  return { kind: "care", words: say`${short(flat_mm, 1)} mm of bore flatter than ${short(least, 1)}°${where}; ${short(flattest, 0)}° at its flattest` };
}

/**
 * @param {Stance} stance
 * @param {number} most
 * @returns {Part}
 */
function bridges({ bridged_mm, bridges: parts }, most) {
  if (parts.length === 0) return { kind: "fine", words: say`no ceiling of the bore wider than the ${short(most, 1)} mm that it bridges` };
  const widest = Math.max(...parts.map((part) => part.width_mm));
  return { kind: "care", words: say`the ceiling of ${short(bridged_mm, 1)} mm of bore is wider than the ${short(most, 1)} mm that it bridges; ${short(widest, 1)} mm at its widest` };
}

/**
 * @param {Stance} stance
 * @returns {Part}
 */
function bands({ bands_mm: [start, end] }) {
  const at = [start > 0 && say`${short(start, 1)} mm at its start`, end > 0 && say`${short(end, 1)} mm at its end`].filter(Boolean).join(say` and `);
  return at ? { kind: "care", words: say`sealing bands need support: ${at}` } : { kind: "fine", words: say`sealing bands stay clear of support` };
}

/**
 * @param {Stance} stance
 * @returns {Part}
 */
function support({ support_mm2, support_mm3 }) {
  const volume = support_mm3 === null ? "" : say`: ${support_mm3.map((volume) => short(volume / 1000, 1)).join(say` to `)} cm³ of supports, roughly`;
  return support_mm2 > 0
    ? { kind: "note", words: say`about ${short(support_mm2 / 100, 1)} cm² of its outside needs support, beside what it stands on${volume}` }
    : { kind: "fine", words: say`no support but what it stands on` };
}

/** @param {number} mm3 */
function millilitres(mm3) {
  return `${short(mm3 / 1000, 2)} mL`;
}
