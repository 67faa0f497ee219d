// The loop that the tubes are part of: the pump that drives it, the heat it carries, and what else the coolant passes.

import { html, nothing } from "../words/html.js";
import { numberField, row } from "./field.js";
import { partsList } from "./parts.js";
import { pumpPart } from "./pump.js";
import { section } from "./section.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "./sheet.js" */

/** @param {Sheet} sheet */
export function loopSection(sheet) {
  if (sheet.design.loop.pump === undefined) return nothing;
  const body = html`${pumpPart(sheet)} ${row(sheet, [numberField(sheet, "/loop/heat_w")], "two")} ${partsList(sheet)}`;
  return section("loop", say`The loop`, say`What drives the coolant, the heat that it carries, and what else it passes beside the tubes.`, body);
}
