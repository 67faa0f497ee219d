// The loop as a whole: what it costs at the stated flow, what the pump drives through it, and who takes what of it.

import { html, nothing } from "../words/html.js";
import { showTyped } from "../design/typed.js";
import { mark } from "../words/marks.js";
import { fixed, short } from "../words/numbers.js";
import { linesTable } from "./lines.js";
import { missing } from "./missing.js";
import { askable } from "./origin.js";
import { engineWord } from "../words/engine-words.js";
import { say, within } from "../words/say.js";

/** @import { Band, LoopReport, ShareReport } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { Line } from "./lines.js" */

const LOOP = "/loop";
const STATED = `${LOOP}/stated`;
const OPERATING = `${LOOP}/operating`;
const FLUID = `${LOOP}/fluid`;

const KINDS = /** @type {Record<string, string>} */ ({ tube: say`tube`, part: say`part` });

/** @param {Sheet} sheet */
export function loopPanel(sheet) {
  const loop = sheet.report?.loop;
  if (!sheet.report || !loop || !sheet.report.runs.some((run) => run.made)) {
    return html`<p class="nothing">Once a run is made, what the pump drives through the loop stands here.</p>`;
  }
  return html`
    ${linesTable(sheet, "loop-lines", html`<span class="unseen">The loop as a whole</span>`, lines(sheet, loop))}
    ${loop.no_operating ? html`<p class="note stop">${mark("stop")}<span>The pump drives no steady flow: ${engineWord(loop.no_operating)}</span></p>` : nothing}
    ${loop.shares.length > 0 ? shares(sheet, loop) : nothing}
    ${(sheet.design.loop.parts ?? []).length === 0 ? onlyTubes(sheet) : nothing}`;
}

/**
 * @param {Sheet} sheet
 * @param {LoopReport} loop
 * @returns {Line[]}
 */
function lines(sheet, { coolant_ml, fluid, stated, operating }) {
  /** @type {Line[]} */
  const volume = [{ at: [`${LOOP}/coolant_ml`], value: coolant_ml, decimals: 0 }];
  if (!stated) return [...volume, { at: [`${STATED}/loss_kpa`], value: null, decimals: 2, more: missing(sheet, "flow") }];
  const { flow_l_per_h, loss_kpa, head_kpa, reserve_kpa, rise_k } = stated;
  return [
    ...volume, ...(fluid ? [ofFluid(sheet, fluid)] : []),
    { at: [`${STATED}/loss_kpa`, `${STATED}/flow_l_per_h`], value: loss_kpa.nominal, decimals: 2, more: say`${bandWords(loss_kpa, 2)} at ${short(flow_l_per_h)} ${unitOf(sheet, `${STATED}/flow_l_per_h`)}`.trim() },
    reserve(sheet, head_kpa, reserve_kpa),
    { at: [`${STATED}/rise_k`], value: rise_k, decimals: 1, more: rise_k === null ? say`cannot be told without a flow` : say`at the stated flow` },
    ...(operating ? driven(sheet, operating) : []),
  ];
}

/**
 * @param {Sheet} sheet
 * @param {NonNullable<LoopReport["fluid"]>} fluid
 * @returns {Line}
 */
function ofFluid(sheet, { viscosity_mpa_s, density_kg_per_m3, specific_heat_j_per_kg_k }) {
  /** @type {(key: string, value: number) => string} */
  const told = (key, value) => `${within(sheet.words.result(`${FLUID}/${key}`).label)} ${fixed(value, 0)} ${unitOf(sheet, `${FLUID}/${key}`)}`;
  return {
    at: ["viscosity_mpa_s", "density_kg_per_m3", "specific_heat_j_per_kg_k"].map((key) => `${FLUID}/${key}`), value: viscosity_mpa_s, decimals: 3,
    more: say`at ${showTyped(sheet.design.loop.working_c)} °C; ${told("density_kg_per_m3", density_kg_per_m3)}, ${told("specific_heat_j_per_kg_k", specific_heat_j_per_kg_k)}`,
  };
}

/**
 * @param {Sheet} sheet
 * @param {number | null} head
 * @param {number | null} left
 * @returns {Line}
 */
function reserve(sheet, head, left) {
  const at = [`${STATED}/reserve_kpa`, `${STATED}/head_kpa`];
  if (left === null || head === null) return { at, value: null, decimals: 1, more: html`${mark("stop")} none: the stated flow is beyond the pump's last point` };
  const { label, unit } = sheet.words.result(at[1]);
  return { at, value: left, decimals: 1, more: html`${left < 0 ? html`${mark("stop")} the pump does not drive the stated flow; ` : nothing}${within(label)} ${fixed(head, 1)} ${unit}` };
}

/**
 * @param {Sheet} sheet
 * @param {NonNullable<LoopReport["operating"]>} operating
 * @returns {Line[]}
 */
function driven(sheet, { flow_l_per_h, pressure_kpa, rise_k }) {
  /** @type {(key: string, value: number, decimals: number) => string} */
  const told = (key, value, decimals) => `${sheet.words.result(`${OPERATING}/${key}`).label} ${fixed(value, decimals)} ${unitOf(sheet, `${OPERATING}/${key}`)}`;
  const rise = rise_k === null ? "" : `, ${told("rise_k", rise_k, 1)}`;
  return [{
    at: ["flow_l_per_h", "pressure_kpa", "rise_k"].map((key) => `${OPERATING}/${key}`), value: flow_l_per_h.nominal, decimals: 0,
    more: `${[bandWords(flow_l_per_h, 0), told("pressure_kpa", pressure_kpa, 1)].filter(Boolean).join("; ")}${rise}`,
  }];
}

/**
 * A band in words; none where its ends are shown as the same.
 * @param {Band} band
 * @param {number} decimals
 */
function bandWords({ low, high }, decimals) {
  const [from, to] = [fixed(low, decimals), fixed(high, decimals)];
  return from === to ? "" : say`${from} to ${to}`;
}

/**
 * @param {Sheet} sheet
 * @param {string} path
 */
function unitOf(sheet, path) {
  return sheet.words.result(path).unit;
}

/**
 * @param {Sheet} sheet
 * @param {LoopReport} loop
 */
function shares(sheet, loop) {
  const flow = loop.operating ? say`at the flow that the pump drives` : say`at the stated flow`;
  const [loss, share] = [`${LOOP}/shares/*/loss_kpa`, `${LOOP}/shares/*/share_percent`];
  // All of them come of the same: one button asks for the table.
  const asked = [{ path: loss, value: loop.shares.map((one) => one.loss_kpa) }, { path: share, value: loop.shares.map((one) => one.share_percent) }];
  return html`<div class="scroll" tabindex="0" role="region" aria-labelledby="shares-caption">
    <table class="figures shares" data-stale=${!sheet.fresh}>
      <caption id="shares-caption">${askable(sheet, say`What each takes, ${flow}`, asked)}</caption>
      <thead><tr><th scope="col">Tube or part</th><th scope="col" class="figure">Loss <span class="unit">${unitOf(sheet, loss)}</span></th>
        <th scope="col" class="figure">Share <span class="unit">${unitOf(sheet, share)}</span></th><td></td></tr></thead>
      <tbody>${loop.shares.map(shareRow)}</tbody>
    </table>
  </div>`;
}

/** @param {ShareReport} share */
function shareRow({ name, kind, loss_kpa, share_percent }) {
  const height = kind === "tube" ? 6 : 10;
  return html`<tr><th scope="row"><span dir="auto">${name}</span> <span class="unit">${KINDS[kind] ?? kind}</span></th>
    <td class="figure">${fixed(loss_kpa, 2)}</td><td class="figure">${fixed(share_percent, 1)}</td>
    <td class="bar"><svg aria-hidden="true" class="share is-${kind}"><rect class="whole" width="100%" height="14"/><rect class="taken" y="${7 - height / 2}" width="${Math.min(100, share_percent)}%" height=${height}/></svg></td></tr>`;
}

/** @param {Sheet} sheet */
function onlyTubes(sheet) {
  return html`<p class="note">${mark("note")}<span>Only the tubes are counted, so that the pump seems to drive more than it will:
    <button type="button" class="link" @click=${() => sheet.act.goTo("/loop/parts")}>add your blocks and radiators</button>.</span></p>`;
}
