// A run in service, line by line: what it is, what it may be, and what is left between them. What does not follow from
// what is stated says which figure is missing.

import { html, nothing } from "../words/html.js";
import { numberIn, showTyped } from "../design/typed.js";
import { counted, fixed, short } from "../words/numbers.js";
import { linesTable } from "./lines.js";
import { missing } from "./missing.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { FlowReport, RunReport, SealReport, ServiceReport, Spread, StrengthReport, TrapReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { Run } from "../design/types.js" */
/** @import { Line } from "./lines.js" */

/**
 * @param {Sheet} sheet
 * @param {RunReport} run
 */
export function inService(sheet, run) {
  const { service } = run;
  const stated = sheet.design.runs.find((one) => one.name === run.name);
  if (!service || !stated) return nothing;
  const index = sheet.report?.runs.indexOf(run) ?? 0;
  const place = `/runs/${index}/service`;
  const lines = [
    ...heat(sheet, place, service), ...strength(sheet, place, service.strength), ...seals(sheet, place, service, stated),
    ...flow(sheet, place, service.flow), ...traps(place, service),
  ];
  return html`${linesTable(sheet, `service-${index}`, html`In service<span class="unseen">: ${run.name}</span>`, lines)}
  ${service.strength ? allowance(sheet, place, service.strength) : nothing}`;
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {ServiceReport} service
 * @returns {Line[]}
 */
function heat(sheet, place, { heat: { limit_c, growth_mm } }) {
  const { cold_c, working_c, fault_c } = sheet.design.loop;
  const hottest = Math.max(numberIn(working_c) ?? -Infinity, numberIn(fault_c) ?? -Infinity);
  return [
    { at: [`${place}/heat/limit_c`], value: Number.isFinite(hottest) ? hottest : null, limit: limit_c, decimals: 0,
      more: limit_c === null ? missing(sheet, "heat") : undefined },
    { at: [`${place}/heat/growth_mm`], value: growth_mm, decimals: 2,
      more: growth_mm === null ? missing(sheet, "growth") : say`from ${showTyped(cold_c)} to ${showTyped(fault_c)} °C` },
  ];
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {StrengthReport | null} strength
 * @returns {Line[]}
 */
function strength(sheet, place, strength) {
  const of = (/** @type {string} */ key) => `${place}/strength/${key}`;
  const words = (/** @type {string} */ key) => sheet.words.result(of(key));
  if (!strength) return [{ at: [of("pressure_kpa")], value: null, decimals: 0, more: missing(sheet, "strength") }];
  const { pressure_kpa, allowed_kpa, hoop_mpa, bend_factor, utilisation } = strength;
  const bent = bend_factor > 1 ? `, ${fixed(bend_factor, 2)} ${words("bend_factor").label}` : "";
  return [
    { at: [of("pressure_kpa"), of("allowed_kpa")], value: pressure_kpa, limit: allowed_kpa, decimals: 0 },
    { at: ["utilisation", "hoop_mpa", "bend_factor", "allowed_mpa"].map(of), value: utilisation * 100, unit: "%", limit: 100, decimals: 0,
      more: `${fixed(hoop_mpa, 2)} ${words("hoop_mpa").unit} ${words("hoop_mpa").label}${bent}` },
  ];
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {ServiceReport} service
 * @param {Run} stated
 * @returns {Line[]}
 */
function seals(sheet, place, service, stated) {
  return [stated.from, stated.to].map((port, end) => {
    const seal = service.seals[end];
    const of = (/** @type {string} */ key) => `${place}/seals/${end}/${key}`;
    const label = say`${sheet.words.result(of("squeeze_percent")).label} at ${port}`;
    if (!seal) return { at: [of("squeeze_percent")], label, value: null, decimals: 0, more: missing(sheet, "seal", port) };
    const keys = /** @type {const} */ (["squeeze_percent", "fill_percent", "chamfer_drop_mm", "chamfer_drop_needed_mm", "best_outer_diameter"]);
    return { at: keys.filter((key) => seal[key] !== null).map(of), label, value: seal.squeeze_percent.nominal, decimals: 0, more: aboutSeal(sheet, of, seal) };
  });
}

/**
 * @param {Sheet} sheet
 * @param {(key: string) => string} of
 * @param {SealReport} seal
 */
function aboutSeal(sheet, of, { squeeze_percent, fill_percent, chamfer_drop_mm, chamfer_drop_needed_mm, best_outer_diameter }) {
  /** @type {(key: string, value: number, decimals: number) => string} */
  const told = (key, value, decimals) => `${sheet.words.result(of(key)).label} ${fixed(value, decimals)} ${sheet.words.result(of(key)).unit}`;
  const parts = [
    `${spread(squeeze_percent)}; ${told("best_outer_diameter", best_outer_diameter, 2)}`,
    fill_percent ? `${told("fill_percent", fill_percent.nominal, 0)}, ${spread(fill_percent)}` : "",
    chamfer_drop_mm !== null && chamfer_drop_needed_mm !== null
      ? `${told("chamfer_drop_mm", chamfer_drop_mm, 2)}, ${told("chamfer_drop_needed_mm", chamfer_drop_needed_mm, 2)}` : "",
  ];
  return parts.filter(Boolean).map((part) => html`<span class="part-line">${part}</span>`);
}

/** @param {Spread} spread */
function spread({ likely, worst }) {
  const range = (/** @type {[number, number]} */ [low, high]) => say`${fixed(low, 0)} to ${fixed(high, 0)}`;
  return say`likely ${range(likely)}, at worst ${range(worst)}`;
}

/** What a loss is made of. */
const KINDS = /** @type {const} */ (["straights_kpa", "bends_kpa", "coils_kpa", "curves_kpa", "ends_kpa", "joints_kpa"]);

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {FlowReport | null} flow
 * @returns {Line[]}
 */
function flow(sheet, place, flow) {
  const of = (/** @type {string} */ key) => `${place}/flow/${key}`;
  if (!flow) return [{ at: [of("loss_kpa")], value: null, decimals: 2, more: missing(sheet, "flow") }];
  const { loss_kpa, flow_l_per_h, velocity_m_per_s, reynolds, regime } = flow;
  const kinds = KINDS.filter((key) => flow[key] > 0);
  const parts = kinds.length > 1 ? `; ${kinds.map((key) => `${sheet.words.result(of(key)).label} ${fixed(flow[key], 2)}`).join(", ")}` : "";
  return [
    { at: ["loss_kpa", "flow_l_per_h", ...kinds].map(of), value: loss_kpa.nominal, decimals: 2,
      more: say`${fixed(loss_kpa.low, 2)} to ${fixed(loss_kpa.high, 2)} at ${short(flow_l_per_h)} ${sheet.words.result(of("flow_l_per_h")).unit}${parts}` },
    { at: ["velocity_m_per_s", "reynolds"].map(of), value: velocity_m_per_s, decimals: 2,
      more: `${engineWord(regime)}, ${sheet.words.result(of("reynolds")).label} ${short(reynolds, 0)}` },
  ];
}

/**
 * @param {string} place
 * @param {ServiceReport} service
 * @returns {Line[]}
 */
function traps(place, { high_points, low_points }) {
  return [trapped(`${place}/high_points`, high_points), trapped(`${place}/low_points`, low_points)];
}

/**
 * @param {string} at
 * @param {TrapReport[]} all
 * @returns {Line}
 */
function trapped(at, all) {
  if (all.length === 0) return { at: [at], value: 0, decimals: 1, more: say`nowhere` };
  const deepest = Math.max(...all.map((trap) => trap.depth_mm));
  const volume = all.reduce((sum, trap) => sum + trap.volume_mm3 / 1000, 0);
  return { at: [at], value: volume, decimals: 1, more: say`at ${counted(all.length, "place")}, up to ${fixed(deepest, 0)} mm deep` };
}

/**
 * How the allowed stress comes of the material's strength.
 * @param {Sheet} sheet
 * @param {string} place
 * @param {StrengthReport} strength
 */
function allowance(sheet, place, { factors, allowed_mpa }) {
  const { label, unit } = sheet.words.result(`${place}/strength/allowed_mpa`);
  const taken = factors.reduce((product, factor) => product * factor.times, 1);
  return html`<details class="more"><summary>${label}: ${fixed(allowed_mpa, 2)} ${unit}</summary>
    <ul class="allowance">
      <li>${sheet.words.quantity("/process/material/strength_mpa").label}: ${fixed(allowed_mpa / taken, 1)} ${unit}</li>
      ${factors.map((factor) => html`<li>${engineWord(factor.name)}: × ${short(factor.times, 3)} <span class="source">${engineWord(factor.source)}</span></li>`)}
    </ul></details>`;
}
