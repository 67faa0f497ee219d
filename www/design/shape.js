// Whether something read back from the browser's storage is built like a design, so that the form can show it.
// The engine judges what the values mean; this only keeps a damaged text from breaking the page.

/** @import { Design } from "./types.js" */

/** @typedef {(value: unknown) => boolean} Test */

/** @type {Test} */
const text = (value) => typeof value === "string";
/** @type {Test} */
const typed = (value) => typeof value === "string" || typeof value === "number";
/** @type {Test} */
const flag = (value) => typeof value === "boolean";

/** @type {(test: Test) => Test} */
const listOf = (test) => (value) => Array.isArray(value) && value.every(test);
/** @type {(test: Test) => Test} */
const three = (test) => (value) => Array.isArray(value) && value.length === 3 && value.every(test);
/** @type {(...tests: Test[]) => Test} */
const either = (...tests) => (value) => tests.some((test) => test(value));
/** @type {Test} */
const nothing = (value) => value === null;
/** @type {(test: Test) => Test} */
const perhaps = (test) => (value) => value === undefined || test(value);

/** @type {(keys: Record<string, Test>) => Test} */
const object = (keys) => (value) =>
  typeof value === "object" && value !== null && !Array.isArray(value) &&
  Object.keys(value).every((key) => Object.hasOwn(keys, key)) &&
  Object.entries(keys).every(([key, test]) => test(/** @type {Record<string, unknown>} */ (value)[key]));

const point = three(typed);
/** A figure that may be not known, and in designs of earlier pages not there. */
const known = perhaps(either(typed, nothing));
const material = object({
  name: text, way: perhaps(either(text, nothing)), density_g_per_cm3: typed, glass_c: known, semicrystalline: perhaps(flag),
  hdt_045_c: known, hdt_180_c: known, strength_mpa: known, modulus_mpa: known, elongation_percent: known,
  expansion_um_per_m_k: known, water_uptake_percent: known, across_layers: known, tight_from_mm: known,
  roughness_um: known, price_per_l: known, cautions: perhaps(text), source: perhaps(text),
  look: perhaps(either(nothing, object({ clarity: perhaps(either(text, nothing)), colour: perhaps(text) }))),
});
const printer = object({
  name: text, build_volume: point, least_wall: typed, tolerance: known, margin: perhaps(typed), layer_mm: known, spot_mm: known,
  overhang_deg: known, bore_deg: known, bridge_mm: known, seconds_per_layer: known, most_triangles: known, most_mb: known,
  source: perhaps(text),
});
const coolant = object({
  name: text, density_g_per_cm3: typed, base: perhaps(either(text, nothing)), glycol_percent: perhaps(typed),
  viscosity_mpa_s: known, source: perhaps(text),
});
const pump = object({ name: text, points: listOf(object({ flow_l_per_h: typed, head_m: typed })), source: perhaps(text) });
const part = object({ name: text, drop_kpa: typed, at_l_per_h: typed, volume_ml: typed });
const leakTest = object({
  volume_ml: known, start_kpa: typed, end_kpa: known, start_c: typed, end_c: typed, minutes: typed, air_kpa: typed,
  limit_kpa: typed, limit_minutes: typed,
});
const fitting = object({
  name: text, tube_diameter: typed, height: typed, socket_depth: typed, collar_diameter: typed, lead: typed, bore: known,
  elbow: either(nothing, object({ angle_deg: typed, rise: typed, reach: typed, turn_deg: typed })),
  seal: either(nothing, object({ section: typed, gland_diameter: typed, gland_width: known })),
});
const port = object({ name: text, at: point, facing: point, fitting: text, measured_to: typed });
const place = three(either(typed, object({ of: text, plus: typed })));
const station = either(
  object({ corner: place, bend_radius: perhaps(typed) }),
  object({ through: place }),
  object({
    coil: object({
      centre: place, axis: point, radius: typed, end_radius: perhaps(typed), pitch: typed, turns: typed,
      hand: perhaps(text), start_deg: typed,
    }),
  }),
);
const dress = object({
  diameter: perhaps(typed), end_diameter: perhaps(typed), blend: typed, lobes: typed, depth: typed, twist_deg_per_mm: typed,
});
const stance = perhaps(either(nothing, object({ up: point, turn_deg: perhaps(typed) })));
const run = object({
  name: text, from: text, to: text, tube: object({ outer_diameter: typed, bore: typed }), bend_radius: typed,
  fit_bends: perhaps(flag), route: listOf(station), dress: perhaps(either(nothing, dress)),
  ends: object({ chamfer_deg: typed, chamfer_length: typed, edge_break: typed, trim: typed, seat_mark: flag }),
  stance, cuts: perhaps(listOf(object({ at: typed, stance }))),
});
const keepOut = either(
  object({ name: text, box: object({ min: point, max: point }) }),
  object({ name: text, cylinder: object({ from: point, to: point, radius: typed }) }),
);
const readings = listOf(object({ nominal: typed, measured: perhaps(either(nothing, typed)) }));
const fit = object({
  material: text, printer: text, outer: readings, bore: readings, length: readings,
  fitted: perhaps(either(nothing, object({ outer_diameter: typed, measured: perhaps(either(nothing, typed)) }))),
});
const design = object({
  format: (value) => value === "tubewright-design", version: (value) => value === 1, name: text, notes: text,
  fittings: listOf(fitting), ports: listOf(port), runs: listOf(run), keep_outs: listOf(keepOut), clearance: typed,
  process: object({
    material: either(text, material), printer: either(text, printer),
    factors: perhaps(object({ warm: typed, lasting: typed, safety: typed })),
    fit: perhaps(either(nothing, fit)),
    joint: perhaps(object({ length: typed, clearance: typed, wall: typed, key_depth: typed, bond_mpa: typed })),
    service: perhaps(either(nothing, object({ price_per_cm3: known, setup: typed, minimum: typed, source: perhaps(text) }))),
  }),
  loop: object({
    flow_l_per_h: typed, coolant: either(text, coolant), cold_c: perhaps(typed), working_c: typed, fault_c: typed,
    pressure_kpa: typed, test_kpa: perhaps(typed), up: perhaps(point), heat_w: perhaps(typed),
    pump: perhaps(either(text, pump)), parts: perhaps(listOf(part)),
    leak_test: perhaps(either(nothing, leakTest)),
  }),
});

/**
 * Whether the form can show `value` as a design.
 * @param {unknown} value
 * @returns {value is Design}
 */
export function isDesignShaped(value) {
  return design(value);
}
