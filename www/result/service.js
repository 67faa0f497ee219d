// A run in service, line by line: what it is, what it may be, and what is left between them. What does not follow from
// what is stated says which figure is missing.

import { html, nothing } from "../vendor/lit-html.js";
import { numberIn, showTyped } from "../design/typed.js";
import { mark } from "../words/marks.js";
import { counted, fixed, short } from "../words/numbers.js";
import { serviceWords } from "../words/results.js";
import { missing } from "./missing.js";

/** @import { FlowReport, RunReport, SealReport, ServiceReport, StrengthReport, TrapReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { Run } from "../design/types.js" */

/**
 * A line: `key` names the result; `value` and `limit` are in its unit, to so many decimals; `more` says what it comes of.
 * @typedef {{ key: string, label?: string, value: number | null, limit?: number | null, decimals: number, more?: unknown }} Line
 */

/**
 * @param {Sheet} sheet
 * @param {RunReport} run
 */
export function inService(sheet, run) {
  const { service } = run;
  const stated = sheet.design.runs.find((one) => one.name === run.name);
  if (!service || !stated) return nothing;
  const lines = [...heat(sheet, service), ...strength(sheet, service.strength), ...seals(sheet, service, stated), ...flow(sheet, service.flow), ...traps(service)];
  const id = `service-${sheet.report?.runs.indexOf(run)}`;
  return html`<div class="scroll" tabindex="0" role="region" aria-labelledby=${id}>
    <table class="figures service" data-stale=${!sheet.fresh}>
      <caption id=${id}>In service<span class="unseen">: ${run.name}</span></caption>
      <thead class="unseen"><tr><th scope="col">What</th><th scope="col">Is</th><th scope="col">May be, and what is left</th></tr></thead>
      <tbody>${lines.map(lineRow)}</tbody>
    </table>
  </div>
  ${service.strength ? allowance(sheet, service.strength) : nothing}`;
}

/** @param {Line} line */
function lineRow({ key, label, value, limit, decimals, more }) {
  const words = serviceWords(key);
  const head = html`<th scope="row">${label ?? words.label}</th>`;
  if (value === null) return html`<tr data-result=${key}>${head}<td colspan="2" class="unknown">${more}</td></tr>`;
  const unit = words.unit ? html` <span class="unit">${words.unit}</span>` : nothing;
  return html`<tr data-result=${key}>${head}<td class="figure">${fixed(value, decimals)}${unit}</td>
    <td class="against">${typeof limit === "number" ? against(value, limit, decimals, words.unit) : nothing}
      ${more ? html`<span class="source">${more}</span>` : nothing}</td></tr>`;
}

/**
 * "of 70 °C: 10 K left".
 * @param {number} value
 * @param {number} limit
 * @param {number} decimals
 * @param {string} unit
 */
function against(value, limit, decimals, unit) {
  const left = limit - value;
  // A difference of temperatures is in kelvin.
  const margin = html`<b>${fixed(Math.abs(left), decimals)}\u00a0${unit === "°C" ? "K" : unit}</b>`;
  return html`<span>may be ${fixed(limit, decimals)}\u00a0${unit}: ${left < 0 ? html`${mark("stop")} ${margin} too much` : html`${margin} left`}</span>`;
}

/**
 * @param {Sheet} sheet
 * @param {ServiceReport} service
 * @returns {Line[]}
 */
function heat(sheet, { heat: { limit_c, growth_mm } }) {
  const { cold_c, working_c, fault_c } = sheet.design.loop;
  const hottest = Math.max(numberIn(working_c) ?? -Infinity, numberIn(fault_c) ?? -Infinity);
  return [
    { key: "heat/limit_c", value: Number.isFinite(hottest) ? hottest : null, limit: limit_c, decimals: 0,
      more: limit_c === null ? missing(sheet, "heat") : undefined },
    { key: "heat/growth_mm", value: growth_mm, decimals: 2,
      more: growth_mm === null ? missing(sheet, "growth") : `from ${showTyped(cold_c)} to ${showTyped(fault_c)} °C` },
  ];
}

/**
 * @param {Sheet} sheet
 * @param {StrengthReport | null} strength
 * @returns {Line[]}
 */
function strength(sheet, strength) {
  if (!strength) return [{ key: "strength/allowed_kpa", value: null, decimals: 0, more: missing(sheet, "strength") }];
  const { pressure_kpa, allowed_kpa, hoop_mpa, bend_factor, allowed_mpa, utilisation } = strength;
  const [hoop, bend] = [serviceWords("strength/hoop_mpa"), serviceWords("strength/bend_factor")];
  return [
    { key: "strength/allowed_kpa", value: pressure_kpa, limit: allowed_kpa, decimals: 0 },
    { key: "strength/utilisation", value: hoop_mpa * bend_factor, limit: allowed_mpa, decimals: 2,
      more: `${short(utilisation * 100, 0)} % used: ${fixed(hoop_mpa, 2)} ${hoop.unit} ${hoop.label}${bend_factor > 1 ? `, ${fixed(bend_factor, 2)} ${bend.label}` : ""}` },
  ];
}

/**
 * @param {Sheet} sheet
 * @param {ServiceReport} service
 * @param {Run} stated
 * @returns {Line[]}
 */
function seals(sheet, service, stated) {
  return [stated.from, stated.to].map((port, end) => {
    const seal = service.seals[end];
    const label = `${serviceWords("seals/*/squeeze_percent").label} at ${port}`;
    if (!seal) return { key: "seals/*/squeeze_percent", label, value: null, decimals: 0, more: missing(sheet, "seal", port) };
    return { key: "seals/*/squeeze_percent", label, value: seal.squeeze_percent.nominal, decimals: 0, more: spread(seal) };
  });
}

/** @param {SealReport} seal */
function spread({ squeeze_percent: { likely, worst }, best_outer_diameter }) {
  const best = serviceWords("seals/*/best_outer_diameter");
  const range = (/** @type {[number, number]} */ [low, high]) => `${fixed(low, 0)} to ${fixed(high, 0)}`;
  return `likely ${range(likely)}, at worst ${range(worst)}; ${best.label} ${fixed(best_outer_diameter, 2)} ${best.unit}`;
}

/**
 * @param {Sheet} sheet
 * @param {FlowReport | null} flow
 * @returns {Line[]}
 */
function flow(sheet, flow) {
  if (!flow) return [{ key: "flow/loss_kpa", value: null, decimals: 2, more: missing(sheet, "flow") }];
  const { loss_kpa, flow_l_per_h, velocity_m_per_s, reynolds, regime } = flow;
  const kinds = /** @type {const} */ (["straights_kpa", "bends_kpa", "coils_kpa", "curves_kpa"]).filter((key) => flow[key] > 0);
  const parts = kinds.length > 1 ? `; ${kinds.map((key) => `${serviceWords(`flow/${key}`).label} ${fixed(flow[key], 2)}`).join(", ")}` : "";
  return [
    { key: "flow/loss_kpa", value: loss_kpa.nominal, decimals: 2,
      more: `${fixed(loss_kpa.low, 2)} to ${fixed(loss_kpa.high, 2)} at ${short(flow_l_per_h)} ${sheet.words.quantity("/loop/flow_l_per_h").unit}${parts}` },
    { key: "flow/velocity_m_per_s", value: velocity_m_per_s, decimals: 2, more: `${regime}, ${serviceWords("flow/reynolds").label} ${short(reynolds, 0)}` },
  ];
}

/**
 * @param {ServiceReport} service
 * @returns {Line[]}
 */
function traps({ high_points, low_points }) {
  return [trapped("high_points", high_points), trapped("low_points", low_points)];
}

/**
 * @param {string} key
 * @param {TrapReport[]} all
 * @returns {Line}
 */
function trapped(key, all) {
  if (all.length === 0) return { key, value: 0, decimals: 1, more: "nowhere" };
  const deepest = Math.max(...all.map((trap) => trap.depth_mm));
  const volume = all.reduce((sum, trap) => sum + trap.volume_mm3 / 1000, 0);
  return { key, value: volume, decimals: 1, more: `at ${counted(all.length, "place")}, up to ${fixed(deepest, 0)} mm deep` };
}

/**
 * How the allowed stress comes of the material's strength.
 * @param {Sheet} sheet
 * @param {StrengthReport} strength
 */
function allowance(sheet, { factors, allowed_mpa }) {
  const { label, unit } = serviceWords("strength/factors");
  const taken = factors.reduce((product, factor) => product * factor.times, 1);
  return html`<details class="more"><summary>${label}: ${fixed(allowed_mpa, 2)} ${unit}</summary>
    <ul class="allowance">
      <li>${sheet.words.quantity("/process/material/strength_mpa").label}: ${fixed(allowed_mpa / taken, 1)} ${unit}</li>
      ${factors.map((factor) => html`<li>${factor.name}: × ${short(factor.times, 3)} <span class="source">${factor.source}</span></li>`)}
    </ul></details>`;
}
