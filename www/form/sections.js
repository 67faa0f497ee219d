// The form from top to bottom, in the order that the work goes.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
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
import { say } from "../words/say.js";

/** @import { Sheet } from "./sheet.js" */

/**
 * The whole form.
 * @param {Sheet} sheet
 */
export function form(sheet) {
  return html`
    ${section("about", say`This design`, nothing, html`${notesAt(sheet, "")}
      ${row(sheet, [textField(sheet, "/name")])} ${lengthUnit(sheet)}
      <details class="more"><summary>${sheet.words.quantity("/notes").label}${sheet.design.notes ? html`: <span class="source" dir="auto">${firstLine(sheet.design.notes)}</span>` : nothing}</summary>
        ${row(sheet, [longTextField(sheet, "/notes")])}</details>`)}
    ${fittingsSection(sheet)} ${portsSection(sheet)} ${runsSection(sheet)} ${keepOutsSection(sheet)}
    ${makingSection(sheet)} ${fitSection(sheet)} ${runningSection(sheet)} ${loopSection(sheet)} ${leakTestSection(sheet)}`;
}

/**
 * What lengths are typed in.
 * @param {Sheet} sheet
 */
function lengthUnit({ lengths, act }) {
  const choose = (/** @type {"mm" | "in"} */ unit) => {
    lengths.choose(unit);
    act.redraw();
  };
  return html`<fieldset class="choice lengths" aria-describedby="lengths-about">
    <legend>Lengths are typed in</legend>
    ${/** @type {const} */ ([["mm", say`millimetres`], ["in", say`inches`]]).map(([unit, name]) => html`<label>
      <input type="radio" name="lengths" .checked=${live(lengths.unit === unit)} @change=${() => choose(unit)}> ${name}</label>`)}
    <p class="source" id="lengths-about">A field takes sums too, and a unit: 120/2 + 6.5, or 1 1/2 in.${lengths.unit === "in" ? say` Results, drawings and files stay in millimetres, as print services expect.` : ""}</p>
  </fieldset>`;
}

/** @param {string} text */
function firstLine(text) {
  const [line] = text.split("\n");
  return line.length > 60 ? `${line.slice(0, 60)}…` : line;
}
