// What the page and the engine's thread say to each other, and the shape of the engine's answers.

/** @typedef {{ path: string, message: string }} Problem */
/** @typedef {[number, number, number]} Xyz */
/**
 * @typedef {{ kind: "bend" | "coil" | "curve" | "end", straight_mm: number, rotation_deg: number, angle_deg: number,
 *   radius_mm: number, length_mm: number, station: number | null }} BendRow
 */
/**
 * @typedef {{ name: string, made: boolean, length_mm: number | null, material_mm3: number | null,
 *   bore_mm3: number | null, mass_g: number | null, cost: number | null, coolant_g?: number | null,
 *   bounds_mm: { min: Xyz, max: Xyz } | null, bend_table: BendRow[], points_mm: Xyz[],
 *   service: ServiceReport | null, pieces: PieceReport[] }} RunReport
 */
/**
 * What is printed of a run, and the joint at its end; null for the last.
 * @typedef {{ from_mm: number, to_mm: number, material_mm3: number, mass_g: number, bounds_mm: { min: Xyz, max: Xyz },
 *   joint: { number: number, seam_mm: number, length_mm: number, clearance_mm: number, collar_diameter_mm: number,
 *     shear_mpa: number | null, shear_allowed_mpa: number | null, hoop_mpa: number | null } | null }} PieceReport
 */
/** @typedef {{ nominal: number, likely: [number, number], worst: [number, number] }} Spread */
/**
 * @typedef {{ squeeze_percent: Spread, fill_percent: Spread | null, chamfer_drop_mm: number | null,
 *   chamfer_drop_needed_mm: number | null, best_outer_diameter: number }} SealReport
 */
/** @typedef {{ nominal: number, low: number, high: number }} Band */
/** @typedef {{ at_mm: Xyz, depth_mm: number, volume_mm3: number }} TrapReport */
/**
 * @typedef {{ pressure_kpa: number, hoop_mpa: number, bend_factor: number, allowed_mpa: number,
 *   factors: { name: string, times: number, source: string }[], utilisation: number, allowed_kpa: number }} StrengthReport
 */
/**
 * @typedef {{ flow_l_per_h: number, velocity_m_per_s: number, reynolds: number, regime: string,
 *   loss_kpa: Band, straights_kpa: number, bends_kpa: number, coils_kpa: number, curves_kpa: number,
 *   ends_kpa: number, joints_kpa: number }} FlowReport
 */
/**
 * A run in service; what does not follow from what is stated is null.
 * @typedef {{ heat: { limit_c: number | null, growth_mm: number | null }, strength: StrengthReport | null,
 *   seals: [SealReport | null, SealReport | null], flow: FlowReport | null, high_points: TrapReport[],
 *   low_points: TrapReport[] }} ServiceReport
 */
/**
 * A leak test with air, read.
 * @typedef {{ volume_ml: number, fall_kpa: number, by_temperature_kpa: number, by_leak_kpa: number, in_limit_time_kpa: number,
 *   rate_mbar_l_per_s: number, rate_sccm: number, per_kelvin_kpa: number, energy_j: [number, number], passes: boolean }} LeakReport
 */
/** @typedef {{ name: string, kind: "tube" | "part", loss_kpa: number, share_percent: number }} ShareReport */
/**
 * The loop as a whole; what does not follow from what is stated is null.
 * @typedef {{ coolant_ml: number,
 *   fluid: { density_kg_per_m3: number, viscosity_mpa_s: number, specific_heat_j_per_kg_k: number } | null,
 *   stated: { flow_l_per_h: number, loss_kpa: Band, head_kpa: number | null, reserve_kpa: number | null, rise_k: number | null } | null,
 *   operating: { flow_l_per_h: Band, pressure_kpa: number, rise_k: number | null } | null, no_operating: string | null,
 *   shares: ShareReport[], leak_test: LeakReport | null }} LoopReport
 */
/** @typedef {{ readings: number, off_mm: number, deviation_mm: number | null, within_mm: number | null }} SizeOff */
/** @typedef {{ rings: number, outer_mm: number, bore_mm: number }} CouponEnd */
/** @typedef {{ length_mm: number, sticks: [CouponEnd, CouponEnd][] }} CouponReport */
/**
 * What a run's files are given for how the printer prints; null where none is corrected.
 * @typedef {{ name: string, aim_mm: number | null, file_outer_mm: number | null, file_bore_mm: number | null, coupon: CouponReport | null }} FitOfRun
 */
/**
 * What a coupon's readings say.
 * @typedef {{ state: "none" | "nothing" | "other" | "doubtful" | "applied", outer: SizeOff | null, bore: SizeOff | null,
 *   length: { readings: number, off_percent: number } | null, runs: FitOfRun[] }} FitReport
 */
/** @typedef {{ op: string, path: string, value?: unknown }} PatchStep */
/**
 * @typedef {{ code: string, severity: "stop" | "care" | "note", run: string | null, where: string,
 *   at_mm: Xyz | null, message: string, value: number | null, limit: number | null, unit: string,
 *   source: string, fix: PatchStep[] | null }} Finding
 */
/**
 * @typedef {{ name: string, runs: RunReport[], findings: Finding[], loop: LoopReport, fit: FitReport,
 *   totals: { length_mm: number, material_mm3: number, bore_mm3: number, mass_g: number, cost: number | null,
 *     service_price: number | null } }} Report
 */
/**
 * @typedef {{ ports: { name: string, seat: Xyz, facing: Xyz, mouth: Xyz, out: Xyz }[],
 *   collars: { port: string, from: Xyz, to: Xyz, radius: number }[],
 *   keep_outs: { name: string, box?: { min: Xyz, max: Xyz }, cylinder?: { from: Xyz, to: Xyz, radius: number } }[],
 *   runs: { name: string, made: boolean, outer_diameter: number, bore: number, lobed: [number, number] | null,
 *     centreline: Xyz[], corners: Xyz[], stations: number[], turns: TurnDrawn[] }[],
 *   look?: { clarity: "opaque" | "translucent" | "clear", colour: string },
 *   bounds: { min: Xyz, max: Xyz } | null }} Scene
 */

/**
 * What of a centreline is no straight, between which of its points; `stations`: the first and last that it belongs to.
 * @typedef {{ kind: "bend" | "coil" | "curve", stations: [number, number] | null, points: [number, number],
 *   bend?: { radius: number, angle_deg: number, middle: Xyz, inward: Xyz } }} TurnDrawn
 */
/** @typedef {{ key: string, before: unknown, after: unknown }} Change one value, by its place in the later design */
/** @typedef {"added" | "removed" | "renamed" | "changed"} Fate */
/** @typedef {{ before: number | null, after: number | null, change: number | null }} Figure */
/** @typedef {{ name: string, was: string | null, fate: Fate, changes: Change[] }} ThingDifference */
/** @typedef {ThingDifference & { by_mm: Xyz | null, moved_mm: number | null, turned_deg: number | null }} PortDifference */
/**
 * @typedef {{ kind: "corner" | "through" | "coil", station: number | null, was: number | null, fate: Fate,
 *   by_mm: Xyz | null, moved_mm: number | null, followed: boolean, changes: Change[] }} StationDifference
 */
/** @typedef {ThingDifference & { length_mm: Figure, mass_g: Figure, stations: StationDifference[] }} RunDifference */
/**
 * @typedef {{ alike: boolean, settings: Change[], fittings: ThingDifference[], ports: PortDifference[],
 *   runs: RunDifference[], keep_outs: ThingDifference[], totals: { length_mm: Figure, mass_g: Figure } }} Difference
 */
/**
 * @typedef {{ edit: "copy" | "reverse", run: string } | { edit: "mirror", run: string, across: string, at: unknown }
 *   | { edit: "ports", design: string }} EditRequest
 */

/**
 * One combination of sizes and material, over all runs that are changed; what cannot be told is null.
 * @typedef {{ outer_diameter: number | null, bore: number | null, material: string | null, feasible: boolean, why: string[],
 *   wall_mm: number | null, fits: boolean | null, squeeze_percent: [number, number] | null, utilisation: number | null,
 *   allowed_kpa: number | null, heat_margin_k: number | null, loss_kpa: number | null, operating_l_per_h: number | null,
 *   coolant_ml: number | null, material_cm3: number | null, mass_g: number | null, cost: number | null,
 *   findings: { stop: number, care: number, note: number }, patch: PatchStep[] }} Variant
 */

/** @typedef {{ from_mm: number, to_mm: number, at_mm: Xyz, depth_mm: number, volume_mm3: number }} Pocket */
/**
 * A way to stand on the plate; what the printer says nothing about is null.
 * @typedef {{ up: Xyz, turn_deg: number, lift_mm: number, fits: boolean, slack_mm: number, box_mm: { min: Xyz, max: Xyz },
 *   height_mm: number, layers: number | null, hours: number | null, cups: Pocket[], cups_mm3: number, pools: Pocket[],
 *   pools_mm3: number, flat_mm: number, flats: { from_mm: number, to_mm: number, flattest_deg: number }[],
 *   bridged_mm: number, bridges: { from_mm: number, to_mm: number, width_mm: number }[],
 *   support_mm2: number, support_mm3: [number, number] | null, material_cost: [number, number] | null, bands_mm: [number, number], foot: [boolean, boolean],
 *   cost: { fit: number, cups: number, bore: number, bridges: number, bands: number, supports: number, foot: number, height: number,
 *     pools: number, total: number },
 *   why: ("size" | "cup" | "bore" | "bridge" | "band" | "support" | "foot" | "pool")[], path: { s_mm: number, at_mm: Xyz }[] }} Stance
 */
/**
 * @typedef {{ run: string, piece: number, pieces: number, from_mm: number, length_mm: number, outer_diameter: number,
 *   bore: number, way: string | null, volume_mm: Xyz,
 *   room_mm: Xyz, overhang_deg: number | null, bore_deg: number | null, bridge_mm: number | null, service_price: number | null, stances: Stance[], own: Stance | null,
 *   findings: Finding[] }} Stances
 */

/**
 * The fewest pieces that a run is cut into for the printer; without any, why.
 * @typedef {{ run: string, length_mm: number, pieces: number | null,
 *   cuts: { at_mm: number, earliest_mm: number, latest_mm: number }[], patch: PatchStep[],
 *   parts: { piece: number, from_mm: number, to_mm: number, material_mm3: number, mass_g: number, fits: boolean,
 *     slack_mm: number, box_mm: { min: Xyz, max: Xyz }, height_mm: number, up: Xyz, turn_deg: number, cups: number,
 *     support_mm2: number }[],
 *   why: string | null }} Cuts
 */

/**
 * All pieces on as few plates as they are found to take, and what is on none; `piece` counts from 1.
 * @typedef {{ volume_mm: Xyz, room_mm: Xyz, gap_mm: number,
 *   plates: { pieces: { run: string, piece: number, pieces: number, at_mm: [number, number], turned_deg: number, box_mm: Xyz }[],
 *     height_mm: number, layers: number | null, hours: number | null }[],
 *   left_out: { run: string, piece: number | null, why: string }[] }} Plates
 */

/**
 * A question that a print service asks of a file, with its answer.
 * @typedef {{ code: string, passes: boolean, value: number, limit: number | null, unit: string, message: string,
 *   source: string }} Asked
 */
/**
 * What is asked of the STL of a run, on the file's own bytes.
 * @typedef {{ run: string, piece: number | null, deviation_mm: number, triangles: number, bytes: number, passes: boolean, questions: Asked[] }} Inspection
 */

/** @typedef {{ kind: "start", module: WebAssembly.Module }} Start */
/** @typedef {{ kind: "design", edition: number, text: string, deviation: number }} DesignJob */
/** @typedef {{ kind: "call", id: number, call: "normalise" | "designIn" | "apply" | "edit" | "difference" | "variants" | "stances" | "cuts" | "plates" | "inspect" | "codeOf" | "exportFile" | "fileName", args: (string | Uint8Array | number)[] }} Call */
/** @typedef {Start | DesignJob | Call} Question */

/**
 * @typedef {{ kind: "ready", vocabulary: string, presets: string }
 *   | { kind: "problems", edition: number, problems: Problem[] }
 *   | { kind: "report", edition: number, report: Report }
 *   | { kind: "scene", edition: number, scene: string }
 *   | { kind: "mesh", edition: number, run: string, positions: Float32Array, indices: Uint32Array }
 *   | { kind: "sameMesh", edition: number, run: string }
 *   | { kind: "noMesh", edition: number, run: string, message: string }
 *   | { kind: "done", edition: number, milliseconds: number }
 *   | { kind: "result", id: number, value: string | Uint8Array }
 *   | { kind: "progress", id: number, share: number }
 *   | { kind: "refused", id: number, message: string, path: string }
 *   | { kind: "crash", edition: number, message: string }} Answer
 */
/** @typedef {Extract<Answer, { edition: number }>} Edition an answer about one edition of the design */

export {};
