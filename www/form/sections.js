// The form from top to bottom, in the order that the work goes.

import { html, nothing } from "../vendor/lit-html.js";
import { longTextField, row, textField } from "./field.js";
import { fitSection } from "./fit.js";
import { fittingsSection } from "./fittings.js";
import { keepOutsSection } from "./keep-outs.js";
import { leakTestSection } from "./leak-test.js";
import { loopSection } from "./loop.js";
import { makingSection } from "./making.js";
import { notesAt } from "./notes.js";
import { portsSection } from "./ports.js";
import { runningSection } from "./running.js";
import { runsSection } from "./runs.js";
import { section } from "./section.js";

/** @import { Sheet } from "./sheet.js" */

/**
 * The whole form.
 * @param {Sheet} sheet
 */
export function form(sheet) {
  return html`
    ${section("about", "This design", nothing, html`${notesAt(sheet, "")}
      ${row(sheet, [textField(sheet, "/name")])}
      <details class="more"><summary>${sheet.words.quantity("/notes").label}${sheet.design.notes ? html`: <span class="source" dir="auto">${firstLine(sheet.design.notes)}</span>` : nothing}</summary>
        ${row(sheet, [longTextField(sheet, "/notes")])}</details>`)}
    ${fittingsSection(sheet)} ${portsSection(sheet)} ${runsSection(sheet)} ${keepOutsSection(sheet)}
    ${makingSection(sheet)} ${fitSection(sheet)} ${runningSection(sheet)} ${loopSection(sheet)} ${leakTestSection(sheet)}`;
}

/** @param {string} text */
function firstLine(text) {
  const [line] = text.split("\n");
  return line.length > 60 ? `${line.slice(0, 60)}…` : line;
}
