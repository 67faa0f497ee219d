// The shipped fittings, tubes, materials, printers, coolants, pumps, parts and demo designs, as the engine hands them over.

/** @import { Coolant, Design, Fitting, Material, Part, Printer, Pump, TubeSize } from "../design/types.js" */

/**
 * @typedef {{ fittings: { label: string, source?: string, fitting: Fitting }[],
 *   tubes: { label: string, source?: string, tube: TubeSize }[], materials: Material[], printers: Printer[],
 *   coolants: Coolant[], pumps: Pump[], parts: (Part & { source?: string })[],
 *   demos: { label: string, about: string, design: Design }[] }} Presets
 */

/**
 * The presets out of the engine's text.
 * @param {string} text
 * @returns {Presets}
 */
export function readPresets(text) {
  return { fittings: [], tubes: [], materials: [], printers: [], coolants: [], pumps: [], parts: [], demos: [], ...JSON.parse(text) };
}

/**
 * Whether two things are the same by their figures: a shipped resin comes in many colours.
 * @param {import("../design/types.js").Stuff} one
 * @param {unknown} other
 */
export function alike(one, other) {
  return typeof other === "object" && other !== null && same({ ...one, look: null }, { ...other, look: null });
}

/**
 * Whether two plain values say the same. A figure that is left out says as much as one that is null: not known.
 * @param {unknown} one
 * @param {unknown} other
 * @returns {boolean}
 */
export function same(one, other) {
  if (typeof one !== "object" || typeof other !== "object" || !one || !other) return Object.is(one, other);
  const [a, b] = [/** @type {Record<string, unknown>} */ (one), /** @type {Record<string, unknown>} */ (other)];
  return [...Object.keys(a), ...Object.keys(b)].every((key) => same(a[key] ?? null, b[key] ?? null));
}
