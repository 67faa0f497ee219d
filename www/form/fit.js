// The fit coupon: how it is printed, what was read of it, and what the readings say.

import { html, nothing } from "../words/html.js";
import { newFit } from "../design/fresh.js";
import { numberIn } from "../design/typed.js";
import { valueAt } from "../design/pointer.js";
import { fitSays } from "../result/fit.js";
import { mark, sign } from "../words/marks.js";
import { short } from "../words/numbers.js";
import { addButton } from "./adder.js";
import { couponPicture, ringsOf } from "./coupon-picture.js";
import { numberField, row, textField } from "./field.js";
import { notesAt } from "./notes.js";
import { section } from "./section.js";
import { idOf } from "./sheet.js";
import { say, within } from "../words/say.js";

/** @import { CouponReport, FitOfRun } from "../engine/messages.js" */
/** @import { Reading } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

const PLACE = "/process/fit";
const LISTS = /** @type {const} */ (["outer", "bore", "length"]);
const TITLES = { outer: say`Outer diameters`, bore: say`Bores`, length: say`Lengths` };
const KEYS = /** @type {const} */ (["nominal", "measured"]);

/** @typedef {FitOfRun & { coupon: CouponReport }} WithCoupon */

/** @param {Sheet} sheet */
export function fitSection(sheet) {
  const body = html`${sheet.design.process.fit ? nothing : notesAt(sheet, PLACE)}
    ${care()} ${coupons(sheet)} ${sheet.design.process.fit ? readings(sheet) : start(sheet)}`;
  return section("fit", say`Fit coupon`, sheet.words.quantity(PLACE).hint, body);
}

function care() {
  return html`<p class="note care">${mark("care")}<span><b>Care:</b> uncured resin can cause a lasting allergy: gloves on, and wash and cure the
    coupon before you try it. Treat it as you will the tubes: the same supports, layers and curing, stood as their ends will stand, and
    sanded before you measure only if you will sand the tubes. Push ends in by hand, never by force.</span></p>`;
}

/**
 * The coupons of the runs; runs of the same tube and finish share one.
 * @param {Sheet} sheet
 * @returns {{ fit: WithCoupon, names: string[] }[]}
 */
function different(sheet) {
  /** @type {Map<string, { fit: WithCoupon, names: string[] }>} */
  const all = new Map();
  for (const fit of sheet.report?.fit.runs ?? []) {
    const run = sheet.design.runs.find((one) => one.name === fit.name);
    if (!run || !fit.coupon) continue;
    const { chamfer_deg, chamfer_length, edge_break } = run.ends;
    const key = JSON.stringify([fit.coupon, chamfer_deg, chamfer_length, edge_break]);
    const known = all.get(key);
    if (known) known.names.push(fit.name);
    else all.set(key, { fit: { ...fit, coupon: fit.coupon }, names: [fit.name] });
  }
  return [...all.values()];
}

/** @param {Sheet} sheet */
function coupons(sheet) {
  const all = different(sheet);
  if (all.length === 0) return html`<p class="nothing">Once there is a run, its coupon stands here.</p>`;
  return html`<ul class="coupons">${all.map(({ fit, names }, index) => coupon(sheet, fit, names, index))}</ul>`;
}

/**
 * @param {Sheet} sheet
 * @param {WithCoupon} fit
 * @param {string[]} names
 * @param {number} index
 */
function coupon(sheet, { name, coupon: shape }, names, index) {
  const middle = shape.sticks[shape.sticks.length - 1][1];
  const tube = `${short(middle.outer_mm)} / ${short(middle.bore_mm)} mm`;
  const others = names.length > 2 ? say` and ${names.length - 1} more` : names.length === 2 ? say` and ${names[1]}` : "";
  /** @type {(format: "3mf" | "stl", words: string) => unknown} */
  const button = (format, words) => html`<button type="button" id="coupon-${index}-${format}" ?disabled=${!sheet.fresh}
    @click=${() => sheet.act.save({ kind: "coupon", run: name, format })}>${words}<span class="unseen"> of the coupon for ${name}</span></button>`;
  return html`<li>
    <p><b>${tube}</b> <span class="source" dir="auto">for ${name}${others}</span></p>
    ${couponPicture(shape, `coupon-${index}`)}
    <p class="source" id="coupon-${index}-sizes">${sizes(shape)}</p>
    <p class="source">${shape.sticks.length} sticks, ${short(shape.length_mm)} mm long. Each end is an end of your tube in another size: count its rings
      to know which. The bore steps along with the outside.</p>
    <div class="adder">${button("3mf", say`Coupon (.3mf)`)} ${button("stl", say`One STL a stick (.zip)`)}</div>
  </li>`;
}

/**
 * How many sizes there are, from which to which, and how far apart: "7 sizes, 0.05 mm apart: outside 11.85 to 12.15 mm".
 * @param {CouponReport} shape
 */
function sizes({ sticks }) {
  const all = [...new Set(sticks.flat().map((end) => end.outer_mm))].sort((a, b) => a - b);
  const [least, most] = [all[0], all[all.length - 1]];
  return say`${all.length} sizes, ${short((most - least) / (all.length - 1))} mm apart: outside ${short(least)} to ${short(most)} mm.`;
}

/** @param {Sheet} sheet */
function start(sheet) {
  const begin = () => {
    const { material, printer } = sheet.design.process;
    const named = (/** @type {string | { name: string }} */ of) => (typeof of === "string" ? of : of.name);
    const [first] = different(sheet);
    sheet.act.set(PLACE, newFit(named(material), named(printer), first?.fit.coupon));
    sheet.act.goTo(first ? `${PLACE}/outer/0/measured` : `${PLACE}/material`);
  };
  return addButton("fit", say`Put in what you measured`, begin);
}

/** @param {Sheet} sheet */
function readings(sheet) {
  const remove = () => {
    sheet.act.set(PLACE, null);
    requestAnimationFrame(() => document.getElementById("add-fit")?.focus());
  };
  return html`<fieldset class="group fit-readings" id=${idOf(PLACE)}>
    <legend>What you measured</legend>
    ${notesAt(sheet, PLACE)}
    ${row(sheet, [textField(sheet, `${PLACE}/material`), textField(sheet, `${PLACE}/printer`)], "two")}
    ${LISTS.map((list) => table(sheet, list))}
    ${fitted(sheet)}
    ${fitSays(sheet)}
    <button type="button" class="add" id="fit-remove" @click=${remove}>${sign("remove")} Remove these readings</button>
  </fieldset>`;
}

/**
 * @param {Sheet} sheet
 * @param {typeof LISTS[number]} list
 */
function table(sheet, list) {
  const place = `${PLACE}/${list}`;
  const all = /** @type {Reading[]} */ (valueAt(sheet.design, place) ?? []);
  const words = sheet.words.quantity(`${place}/*/measured`);
  const add = () => {
    // One more of the same size is what is added most: the scatter comes of it.
    sheet.act.update(place, (/** @type {Reading[]} */ now) => [...now, { nominal: now.at(-1)?.nominal ?? "", measured: null }]);
    sheet.act.goTo(`${place}/${all.length}/${all.length > 0 ? "measured" : "nominal"}`);
  };
  return html`<div id=${idOf(place)}>
    ${all.length > 0 ? html`<table class="points readings">
      <caption>${TITLES[list]} <span class="unit">${words.unit}</span></caption>
      <thead><tr><th scope="col">In the file</th><th scope="col">Measured</th>${list === "length" ? nothing : html`<th scope="col">Rings</th>`}<td></td></tr></thead>
      <tbody>${all.map((reading, index) => readingRows(sheet, list, reading, index))}</tbody>
    </table>` : nothing}
    ${notesAt(sheet, place)}
    ${addButton(`fit-${list}`, say`Add a reading: ${within(TITLES[list])}`, add)}
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {typeof LISTS[number]} list
 * @param {Reading} reading
 * @param {number} index
 */
function readingRows(sheet, list, reading, index) {
  const place = `${PLACE}/${list}/${index}`;
  const notes = [...KEYS.map((key) => notesAt(sheet, `${place}/${key}`)), notesAt(sheet, place)].filter((note) => note !== nothing);
  const remove = () => {
    sheet.act.update(`${PLACE}/${list}`, (/** @type {Reading[]} */ all) => all.filter((_, at) => at !== index));
    requestAnimationFrame(() => {
      const near = [index, index - 1].map((at) => document.getElementById(`${idOf(`${PLACE}/${list}/${at}`)}-remove`));
      (near.find(Boolean) ?? document.getElementById(`add-fit-${list}`))?.focus();
    });
  };
  const spoken = say`${TITLES[list]}, reading ${index + 1}:`;
  const size = numberIn(reading.nominal);
  const rings = size === undefined || list === "length" ? undefined : ringsOf(sheet.report?.fit.runs ?? [], list, size);
  return html`<tr>
      <td>${numberField(sheet, `${place}/nominal`, { spoken }).body}</td>
      <td>${numberField(sheet, `${place}/measured`, { spoken, unknown: true, stands: say`not read` }).body}</td>
      ${list === "length" ? nothing : html`<td class="figure">${rings ?? ""}</td>`}
      <td><button type="button" class="quiet" id="${idOf(place)}-remove" @click=${remove}>
        ${sign("remove")}<span class="unseen">Remove reading ${index + 1} of ${within(TITLES[list])}</span></button></td>
    </tr>
    ${notes.length > 0 ? html`<tr><td colspan="4">${notes}</td></tr>` : nothing}`;
}

/** @param {Sheet} sheet */
function fitted(sheet) {
  const place = `${PLACE}/fitted`;
  const words = sheet.words.quantity(place);
  const add = () => {
    const [first] = sheet.design.runs;
    sheet.act.set(place, { outer_diameter: first?.tube.outer_diameter ?? "", measured: null });
    sheet.act.goTo(`${place}/measured`);
  };
  const remove = () => {
    sheet.act.set(place, null);
    requestAnimationFrame(() => document.getElementById("add-fitted")?.focus());
  };
  if (!sheet.design.process.fit?.fitted) return html`${notesAt(sheet, place)} ${addButton("fitted", say`One end fitted better than the stated size`, add)}`;
  return html`<fieldset class="point" id=${idOf(place)}>
    <legend>${words.label}</legend>
    <p class="source">${words.hint}</p>
    ${row(sheet, [numberField(sheet, `${place}/outer_diameter`), numberField(sheet, `${place}/measured`, { unknown: true, stands: say`not read` })], "two")}
    ${notesAt(sheet, place)}
    <button type="button" class="add" id="fitted-remove" @click=${remove}>${sign("remove")} The stated size fitted best</button>
  </fieldset>`;
}
