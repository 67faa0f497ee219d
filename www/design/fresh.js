// New things for the design: a blank one, and a new fitting, port, run or keep-out with what is usual filled in and
// what only the builder can know left blank.

import { freshName } from "./lists.js";
import { numberIn, tidy } from "./typed.js";
import { whole } from "./whole.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { CouponReport } from "../engine/messages.js" */
/** @import { Design, Dress, Ends, Fit, Fitting, KeepOut, LeakTest, Part, Port, PrintService, Run, TubeSize, Typed } from "./types.js" */
/** @import { Vocabulary } from "../words/vocabulary.js" */

/**
 * A design with nothing in it but the usual values.
 * @param {Vocabulary} words
 * @returns {Design}
 */
export function blankDesign(words) {
  return whole({
    format: "tubewright-design",
    version: 1,
    name: "",
    notes: "",
    fittings: [],
    ports: [],
    runs: [],
    keep_outs: [],
    clearance: usual(words, "/clearance"),
    process: {
      material: String(usual(words, "/process/material")),
      printer: String(usual(words, "/process/printer")),
    },
    loop: {
      flow_l_per_h: usual(words, "/loop/flow_l_per_h"),
      coolant: String(usual(words, "/loop/coolant")),
      working_c: usual(words, "/loop/working_c"),
      fault_c: usual(words, "/loop/fault_c"),
      pressure_kpa: usual(words, "/loop/pressure_kpa"),
    },
  }, words);
}

/**
 * @param {Design} design
 * @param {Fitting} [preset]
 * @returns {Fitting}
 */
export function newFitting(design, preset) {
  if (preset) return { ...structuredClone(preset), name: freshName(design.fittings, engineWord(preset.name)) };
  return {
    name: freshName(design.fittings, say`fitting`),
    tube_diameter: "", height: "", socket_depth: "", collar_diameter: "", lead: "", bore: null, elbow: null, seal: null,
  };
}

/**
 * @param {Design} design
 * @param {Vocabulary} words
 * @returns {Port}
 */
export function newPort(design, words) {
  const fitting = design.ports.at(-1)?.fitting || design.fittings[0]?.name || "";
  return {
    name: freshName(design.ports, say`port`),
    at: ["", "", ""],
    facing: [0, 0, 1],
    fitting,
    measured_to: design.ports.at(-1)?.measured_to ?? usual(words, "/ports/*/measured_to"),
  };
}

/**
 * A run between the first two ports that no run uses yet.
 * @param {Design} design
 * @param {Vocabulary} words
 * @param {TubeSize[]} tubes the shipped sizes
 * @returns {Run}
 */
export function newRun(design, words, tubes) {
  const used = new Set(design.runs.flatMap((run) => [run.from, run.to]));
  const free = design.ports.filter((port) => !used.has(port.name));
  const [from, to] = free.length >= 2 ? [free[0].name, free[1].name] : [free[0]?.name ?? "", ""];
  const fitting = design.fittings.find((one) => one.name === free[0]?.fitting);
  const last = design.runs.at(-1);
  const outer = fitting?.tube_diameter ?? "";
  const tube = last && last.tube.outer_diameter === outer ? last.tube : { outer_diameter: outer, bore: usualBore(outer, tubes) };
  return {
    name: freshName(design.runs, from && to ? say`${from} to ${to}` : say`run`),
    from,
    to,
    tube: { ...tube },
    // Twice the outer diameter is the usual bend radius of printed tube; common practice, no source.
    bend_radius: typeof outer === "number" ? 2 * outer : "",
    fit_bends: words.quantity("/runs/*/fit_bends").default === true,
    route: [],
    dress: null,
    ends: usualEnds(words),
    cuts: [],
  };
}

/**
 * The bore of the shipped size of an outer diameter with the thickest wall, or one that leaves the usual wall where all
 * shipped ones are thinner than printed tube should be under pressure.
 * @param {Typed} outer
 * @param {TubeSize[]} tubes
 * @returns {Typed}
 */
function usualBore(outer, tubes) {
  if (typeof outer !== "number") return "";
  const bores = tubes.filter((tube) => tube.outer_diameter === outer).map((tube) => numberIn(tube.bore) ?? Infinity);
  const bore = Math.min(...bores);
  // Walls of 2 mm are usual and 1.5 mm the least under pressure, down to half the tube; common practice, no source.
  return outer - bore >= 3 ? bore : tidy(Math.max(outer - 4, outer / 2));
}

/**
 * A dress to start from: twisted lobes whose grooves leave the tube's own wall under them.
 * @param {Run} run
 * @param {Vocabulary} words
 * @returns {Dress}
 */
export function newDress(run, words) {
  /** @param {string} key */
  const such = (key) => words.quantity(`/runs/*/dress/${key}`).example ?? "";
  const [outer, depth] = [numberIn(run.tube.outer_diameter), numberIn(such("depth"))];
  /** @type {Dress} */
  const dress = {
    blend: usual(words, "/runs/*/dress/blend"), lobes: such("lobes"), depth: such("depth"), twist_deg_per_mm: such("twist_deg_per_mm"),
  };
  return outer === undefined || depth === undefined ? dress : { diameter: tidy(outer + 2 * depth), ...dress };
}

/**
 * @param {Design} design
 * @param {"box" | "cylinder"} shape
 * @returns {KeepOut}
 */
export function newKeepOut(design, shape) {
  const name = freshName(design.keep_outs, shape);
  if (shape === "box") return { name, box: { min: ["", "", ""], max: ["", "", ""] } };
  return { name, cylinder: { from: ["", "", ""], to: ["", "", ""], radius: "" } };
}

/**
 * Another part of the loop: a shipped one, or a blank one.
 * @param {Part[]} parts those there are
 * @param {Part} [preset]
 * @returns {Part}
 */
export function newPart(parts, preset) {
  if (!preset) return { name: freshName(parts, say`part`), drop_kpa: "", at_l_per_h: "", volume_ml: "" };
  const { name, drop_kpa, at_l_per_h, volume_ml } = preset;
  return { name: freshName(parts, engineWord(name)), drop_kpa, at_l_per_h, volume_ml };
}

/**
 * A leak test that is about to start: the usual readings and limit, and the pressure at its end left to be read.
 * @param {Vocabulary} words
 * @returns {LeakTest}
 */
export function newLeakTest(words) {
  /** @param {string} key */
  const such = (key) => usual(words, `/loop/leak_test/${key}`);
  return {
    volume_ml: null, start_kpa: such("start_kpa"), end_kpa: null, start_c: such("start_c"), end_c: such("end_c"),
    minutes: such("minutes"), air_kpa: such("air_kpa"), limit_kpa: such("limit_kpa"), limit_minutes: such("limit_minutes"),
  };
}

/**
 * A print service whose prices are about to be typed in.
 * @returns {PrintService}
 */
export function newPrintService() {
  return { price_per_cm3: null, setup: 0, minimum: 0, source: "" };
}

/**
 * Readings of a coupon that are about to be taken: every end's outer diameter, the bore of three ends, the length of two
 * sticks.
 * @param {string} material
 * @param {string} printer
 * @param {CouponReport} [coupon]
 * @returns {Fit}
 */
export function newFit(material, printer, coupon) {
  const unread = (/** @type {number} */ nominal) => ({ nominal, measured: null });
  const ends = coupon?.sticks.flat() ?? [];
  const bores = ends.length > 0 ? [ends[0], ends[Math.floor((ends.length - 1) / 2)], ends[ends.length - 2]] : [];
  return {
    material, printer, outer: ends.map((end) => unread(end.outer_mm)), bore: bores.map((end) => unread(end.bore_mm)),
    length: coupon ? [unread(coupon.length_mm), unread(coupon.length_mm)] : [], fitted: null,
  };
}

/**
 * @param {Vocabulary} words
 * @returns {Ends}
 */
function usualEnds(words) {
  const seat_mark = words.quantity("/runs/*/ends/seat_mark").default;
  return {
    chamfer_deg: usual(words, "/runs/*/ends/chamfer_deg"),
    chamfer_length: usual(words, "/runs/*/ends/chamfer_length"),
    edge_break: usual(words, "/runs/*/ends/edge_break"),
    trim: usual(words, "/runs/*/ends/trim"),
    seat_mark: seat_mark !== false,
  };
}

/**
 * The value that the engine takes where a key is missing; blank where there is none.
 * @param {Vocabulary} words
 * @param {string} key
 * @returns {Typed}
 */
export function usual(words, key) {
  const value = words.quantity(key).default;
  return typeof value === "number" || typeof value === "string" ? value : "";
}
