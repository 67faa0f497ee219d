// The shape of the design document as the page holds it. Where the engine wants a number the page may hold a text:
// what was typed so far, kept as it is, so that neither a reload nor a re-render loses a half-typed value.

/** @typedef {number | string} Typed a number, or the text that is not one yet */
/** @typedef {[Typed, Typed, Typed]} Point */
/** @typedef {{ of: string, plus: Typed }} Tied */
/** @typedef {Typed | Tied} Coordinate */
/** @typedef {{ angle_deg: Typed, rise: Typed, reach: Typed, turn_deg: Typed }} Elbow */
/** @typedef {{ section: Typed, gland_diameter: Typed, gland_width?: Typed | null }} Seal */
/**
 * @typedef {{ name: string, tube_diameter: Typed, height: Typed, socket_depth: Typed, collar_diameter: Typed,
 *   lead: Typed, bore?: Typed | null, elbow: Elbow | null, seal: Seal | null }} Fitting
 */
/** @typedef {{ name: string, at: Point, facing: Point, fitting: string, measured_to: Typed }} Port */
/**
 * @typedef {{ centre: [Coordinate, Coordinate, Coordinate], axis: Point, radius: Typed, end_radius?: Typed,
 *   pitch: Typed, turns: Typed, hand?: string, start_deg: Typed }} Coil
 */
/** @typedef {{ corner: [Coordinate, Coordinate, Coordinate], bend_radius?: Typed }} CornerStation */
/** @typedef {{ through: [Coordinate, Coordinate, Coordinate] }} ThroughStation */
/** @typedef {{ coil: Coil }} CoilStation */
/** @typedef {CornerStation | ThroughStation | CoilStation} Station */
/**
 * @typedef {{ diameter?: Typed, end_diameter?: Typed, blend: Typed, lobes: Typed, depth: Typed,
 *   twist_deg_per_mm: Typed }} Dress
 */
/** @typedef {{ outer_diameter: Typed, bore: Typed }} TubeSize */
/**
 * @typedef {{ chamfer_deg: Typed, chamfer_length: Typed, edge_break: Typed, trim: Typed, seat_mark: boolean }} Ends
 */
/**
 * @typedef {{ name: string, from: string, to: string, tube: TubeSize, bend_radius: Typed,
 *   fit_bends?: boolean, route: Station[], dress?: Dress | null, ends: Ends,
 *   stance?: Stance | null, cuts?: Cut[] }} Run
 */
/** @typedef {{ at: Typed, stance?: Stance | null }} Cut where a run is cut, and how the piece that begins there stands */
/** @typedef {{ up: Point, turn_deg?: Typed }} Stance how a tube stands on the printer's plate */
/** @typedef {{ name: string, box: { min: Point, max: Point } }} BoxKeepOut */
/** @typedef {{ name: string, cylinder: { from: Point, to: Point, radius: Typed } }} CylinderKeepOut */
/** @typedef {BoxKeepOut | CylinderKeepOut} KeepOut */
/** @typedef {{ clarity?: string | null, colour?: string }} Look how a material looks, for pictures alone */
/** @typedef {Typed | null} Known a figure, or none where it is not known */
/**
 * @typedef {{ name: string, way?: string | null, density_g_per_cm3: Typed, glass_c?: Known, semicrystalline?: boolean,
 *   hdt_045_c?: Known, hdt_180_c?: Known, strength_mpa?: Known, modulus_mpa?: Known, elongation_percent?: Known,
 *   expansion_um_per_m_k?: Known, water_uptake_percent?: Known, across_layers?: Known, tight_from_mm?: Known,
 *   roughness_um?: Known, price_per_l?: Known, look?: Look | null, cautions?: string, source?: string }} Material
 */
/** @typedef {{ warm: Typed, lasting: Typed, safety: Typed }} Factors what strength is lessened by */
/** @typedef {{ length: Typed, clearance: Typed, wall: Typed, key_depth: Typed, bond_mpa: Typed }} Joint how pieces are joined */
/**
 * What a print service asks for, in the builder's own money.
 * @typedef {{ price_per_cm3?: Known, setup: Typed, minimum: Typed, source?: string }} PrintService
 */
/** @typedef {{ nominal: Typed, measured?: Known }} Reading a size in the file, and as calipers read it */
/** @typedef {{ outer_diameter: Typed, measured?: Known }} Fitted the end of a coupon that fitted best */
/**
 * What was read of a fit coupon.
 * @typedef {{ material: string, printer: string, outer: Reading[], bore: Reading[], length: Reading[], fitted?: Fitted | null }} Fit
 */
/**
 * @typedef {{ name: string, build_volume: Point, least_wall: Typed, tolerance?: Known, margin?: Typed, layer_mm?: Known,
 *   spot_mm?: Known, overhang_deg?: Known, bore_deg?: Known, bridge_mm?: Known, seconds_per_layer?: Known,
 *   most_triangles?: Known, most_mb?: Known, source?: string }} Printer
 */
/**
 * @typedef {{ name: string, density_g_per_cm3: Typed, base?: string | null, glycol_percent?: Typed,
 *   viscosity_mpa_s?: Known, source?: string }} Coolant
 */
/** @typedef {{ flow_l_per_h: Typed, head_m: Typed }} PumpPoint */
/** @typedef {{ name: string, points: PumpPoint[], source?: string }} Pump */
/** @typedef {{ name: string, drop_kpa: Typed, at_l_per_h: Typed, volume_ml: Typed }} Part what else the coolant passes */
/**
 * What was read at a leak test with air.
 * @typedef {{ volume_ml: Known, start_kpa: Typed, end_kpa: Known, start_c: Typed, end_c: Typed, minutes: Typed,
 *   air_kpa: Typed, limit_kpa: Typed, limit_minutes: Typed }} LeakTest
 */
/** @typedef {Material | Printer | Coolant | Pump} Stuff what a preset can stand for */
/**
 * @typedef {{ flow_l_per_h: Typed, coolant: string | Coolant, cold_c?: Typed, working_c: Typed, fault_c: Typed,
 *   pressure_kpa: Typed, test_kpa?: Typed, up?: Point, heat_w?: Typed, pump?: string | Pump, parts?: Part[], leak_test?: LeakTest | null }} Loop
 *   What is optional was not there in designs of earlier pages; `whole` fills it in.
 */
/**
 * @typedef {{ format: string, version: number, name: string, notes: string, fittings: Fitting[], ports: Port[],
 *   runs: Run[], keep_outs: KeepOut[], clearance: Typed,
 *   process: { material: string | Material, printer: string | Printer, factors?: Factors, fit?: Fit | null,
 *     joint?: Joint, service?: PrintService | null }, loop: Loop }} Design
 */

/** @typedef {"fittings" | "ports" | "runs" | "keep_outs"} ListName */

export {};
