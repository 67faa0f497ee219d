// What all tubes cost: their material for who prints them, and what a print service asks for where one is stated.

import { html, nothing } from "../words/html.js";
import { linesTable } from "./lines.js";
import { missing } from "./missing.js";
import { say } from "../words/say.js";

/** @import { Report } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */

/**
 * @param {Sheet} sheet
 * @param {Report} report
 */
export function costLines(sheet, report) {
  const { cost, service_price } = report.totals;
  if (!report.runs.some((run) => run.made)) return nothing;
  const prices = sheet.design.process.service ?? null;
  const pieces = report.runs.reduce((sum, run) => sum + run.pieces.length, 0);
  const least = prices !== null && service_price === Number(prices.minimum);
  return linesTable(sheet, "cost-caption", say`What they cost, in your own money`, [
    {
      at: ["/totals/cost"], value: cost, decimals: 2,
      more: cost === null ? missing(sheet, "cost") : html`before supports and waste: how the tubes stand when they are printed tells those, and the pack's sheet`,
    },
    ...(prices === null ? [] : [{
      at: ["/totals/service_price"], value: service_price, decimals: 2,
      more: service_price === null ? missing(sheet, "service_price")
        : least ? html`the least order` : html`${pieces === 1 ? say`one piece` : html`${pieces} pieces`} in one order, before finishing, tax and shipping`,
    }]),
  ]);
}
