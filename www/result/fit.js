// What a coupon's readings say, and what the files are given for it.

import { html, nothing } from "../words/html.js";
import { mark } from "../words/marks.js";
import { linesTable } from "./lines.js";
import { say } from "../words/say.js";

/** @import { FitOfRun, FitReport, SizeOff } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { Line } from "./lines.js" */

/** @type {Record<FitReport["state"], { shape: import("../words/marks.js").Shape, words: string }>} */
const STATES = {
  none: { shape: "note", words: say`Nothing is measured yet.` },
  nothing: { shape: "note", words: say`Nothing is measured yet: the files have the stated sizes.` },
  other: { shape: "care", words: say`Kept, but not used: the coupon is of another printer or material. The files have the stated sizes.` },
  doubtful: { shape: "care", words: say`Not used until the marked reading is put right. The files have the stated sizes.` },
  applied: { shape: "fine", words: say`From now on the files make up for this. Results, drawing and preview show the tube as it will be.` },
};

/** @param {Sheet} sheet */
export function fitSays(sheet) {
  const fit = sheet.report?.fit;
  if (!fit || !sheet.fresh) return html`<p class="nothing">Once every reading is a number or left empty, what they say stands here.</p>`;
  const { shape, words } = STATES[fit.state];
  const all = lines(fit);
  return html`<p class="verdict" data-fit=${fit.state}>${mark(shape)} <span>${words}</span></p>
    ${all.length > 0 ? linesTable(sheet, "fit-lines", html`<span class="unseen">What the coupon says</span>`, all) : nothing}`;
}

/**
 * @param {FitReport} fit
 * @returns {Line[]}
 */
function lines(fit) {
  const { length } = fit;
  return [
    ...sizeLines("outer", fit.outer, fit.state === "applied" ? say`; seals are held to it` : ""), ...sizeLines("bore", fit.bore),
    ...(length ? [{ at: ["/fit/length/off_percent", "/fit/length/readings"], value: length.off_percent, decimals: 2, more: counted(length.readings) }] : []),
    ...differentFiles(fit.runs),
  ];
}

/**
 * @param {"outer" | "bore"} which
 * @param {SizeOff | null} size
 * @param {string} [further] what its scatter is used for
 * @returns {Line[]}
 */
function sizeLines(which, size, further = "") {
  if (!size) return [];
  const at = (/** @type {string} */ key) => `/fit/${which}/${key}`;
  return [
    { at: [at("off_mm"), at("readings")], value: size.off_mm, decimals: 3, more: counted(size.readings) },
    size.within_mm === null
      ? { at: [at("within_mm")], value: null, decimals: 3, more: say`three readings or more say it` }
      : { at: [at("within_mm"), at("deviation_mm")], value: size.within_mm, decimals: 3,
          more: say`of the corrected size, 19 times in 20${further}` },
  ];
}

/**
 * What the files are given, once for each tube that differs.
 * @param {FitOfRun[]} runs
 * @returns {Line[]}
 */
function differentFiles(runs) {
  /** @type {Line[]} */
  const all = [];
  const seen = new Set();
  runs.forEach(({ name, aim_mm, file_outer_mm, file_bore_mm }, index) => {
    const key = JSON.stringify([aim_mm, file_outer_mm, file_bore_mm]);
    if (aim_mm === null || seen.has(key)) return;
    seen.add(key);
    const at = (/** @type {string} */ what) => `/fit/runs/${index}/${what}`;
    all.push(
      { at: [at("aim_mm")], value: aim_mm, decimals: 3, more: name },
      { at: [at("file_outer_mm")], value: file_outer_mm, decimals: 3, more: name },
      { at: [at("file_bore_mm")], value: file_bore_mm, decimals: 3, more: name },
    );
  });
  return all;
}

/** @param {number} readings */
function counted(readings) {
  return readings === 1 ? say`from 1 reading` : say`mean of ${readings} readings`;
}
