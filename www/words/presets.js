// The shipped fittings, tubes, materials, printers, coolants and demo designs, as the engine hands them over.

/** @import { Design, Fitting, Material, Printer, TubeSize } from "../design/types.js" */

/**
 * @typedef {{ fittings: { label: string, source?: string, fitting: Fitting }[],
 *   tubes: { label: string, source?: string, tube: TubeSize }[], materials: Material[], printers: Printer[],
 *   coolants: Material[], demos: { label: string, about: string, design: Design }[] }} Presets
 */

/**
 * The presets out of the engine's text.
 * @param {string} text
 * @returns {Presets}
 */
export function readPresets(text) {
  return { fittings: [], tubes: [], materials: [], printers: [], coolants: [], demos: [], ...JSON.parse(text) };
}

/**
 * Whether two plain values say the same.
 * @param {unknown} one
 * @param {unknown} other
 * @returns {boolean}
 */
export function same(one, other) {
  if (typeof one !== "object" || typeof other !== "object" || !one || !other) return Object.is(one, other);
  const [a, b] = [/** @type {Record<string, unknown>} */ (one), /** @type {Record<string, unknown>} */ (other)];
  const keys = Object.keys(a);
  return keys.length === Object.keys(b).length && keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]));
}
