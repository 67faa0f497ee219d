// The fittings: what is screwed into the ports and takes the tube.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { usual, newFitting } from "../design/fresh.js";
import { added } from "../design/lists.js";
import { valueAt } from "../design/pointer.js";
import { measureButton } from "../measure/dialog.js";
import { addChooser } from "./adder.js";
import { cards } from "./card.js";
import { numberField, row, textField } from "./field.js";
import { notesAt } from "./notes.js";
import { section } from "./section.js";
import { idOf } from "./sheet.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "./sheet.js" */

/** @param {Sheet} sheet */
export function fittingsSection(sheet) {
  const body = html`${notesAt(sheet, "/fittings")}
    ${cards(sheet, "fittings", {
      one: say`fitting`,
      open: false,
      short: (fitting) => say`for ${sheet.lengths.shown(fitting.tube_diameter) || "?"} ${sheet.lengths.unit} tube${fitting.elbow ? say`, elbow` : ""}`,
      body: (_, index, pointer) => fittingBody(sheet, index, pointer),
    })}
    ${addChooser("fittings", say`Add a fitting`, [
      ...sheet.presets.fittings.map((preset, index) => ({ value: String(index), label: preset.label })),
      { value: "own", label: say`Measure yours` },
    ], (value) => {
      sheet.act.change((design) => {
        const fitting = newFitting(design, sheet.presets.fittings[Number(value)]?.fitting);
        sheet.act.goTo(`/fittings/${design.fittings.length}/name`);
        return added(design, "fittings", fitting);
      });
    })}`;
  return section("fittings", say`Fittings`, html`What is screwed into the ports. Measure your own: those shipped here are common sizes. ${measureButton()}`, body);
}

/**
 * @param {Sheet} sheet
 * @param {number} index
 * @param {string} pointer
 */
function fittingBody(sheet, index, pointer) {
  /** @param {string} key */
  const number = (key) => numberField(sheet, `${pointer}/${key}`);
  const elbow = valueAt(sheet.design, `${pointer}/elbow`) !== null;
  const seal = valueAt(sheet.design, `${pointer}/seal`) !== null;
  return html`
    ${row(sheet, [
      textField(sheet, `${pointer}/name`, { take: (name) => sheet.act.rename("fittings", index, name) }),
      number("tube_diameter"),
    ], "two")}
    ${straightOrElbow(sheet, pointer, elbow)}
    ${elbow
      ? html`<fieldset class="point" id=${idOf(`${pointer}/elbow`)}>
          <legend class="unseen">Elbow</legend>
          ${row(sheet, [number("elbow/rise"), number("elbow/reach"), number("elbow/angle_deg"), number("elbow/turn_deg")], "four")}
          ${notesAt(sheet, `${pointer}/elbow`)}
        </fieldset>`
      : notesAt(sheet, `${pointer}/elbow`)}
    ${row(sheet, elbow
      ? [number("socket_depth"), number("collar_diameter"), number("lead")]
      : [number("height"), number("socket_depth"), number("collar_diameter"), number("lead")], elbow ? "three" : "four")}
    ${elbow ? notesAt(sheet, `${pointer}/height`) : nothing}
    ${row(sheet, [numberField(sheet, `${pointer}/bore`, { unknown: true, stands: say`as the tube's` })], "two")}
    ${sealPart(sheet, pointer, seal)}`;
}

/**
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {boolean} elbow
 */
function straightOrElbow(sheet, pointer, elbow) {
  /** @param {string} key */
  const blank = (key) => usual(sheet.words, `/fittings/*/elbow/${key}`);
  const bent = () => ({ angle_deg: blank("angle_deg"), rise: blank("rise"), reach: blank("reach"), turn_deg: blank("turn_deg") });
  const name = idOf(`${pointer}/shape`);
  return html`<fieldset class="choice">
    <legend class="unseen">Body of the fitting</legend>
    <label><input type="radio" name=${name} value="straight" .checked=${live(!elbow)}
      @change=${() => sheet.act.set(`${pointer}/elbow`, null)}> Straight</label>
    <label><input type="radio" name=${name} value="elbow" .checked=${live(elbow)}
      @change=${() => sheet.act.set(`${pointer}/elbow`, bent())}> Elbow</label>
  </fieldset>`;
}

/**
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {boolean} seal
 */
function sealPart(sheet, pointer, seal) {
  const id = idOf(`${pointer}/seal`);
  return html`<fieldset class="choice" id=${id}>
    <legend class="unseen">O-ring that seals on the tube</legend>
    <label><input type="checkbox" .checked=${live(seal)}
      @change=${() => sheet.act.set(`${pointer}/seal`, seal ? null : { section: "", gland_diameter: "", gland_width: null })}>
      I know its O-ring and gland</label>
    ${seal
      ? row(sheet, [
          numberField(sheet, `${pointer}/seal/section`), numberField(sheet, `${pointer}/seal/gland_diameter`),
          numberField(sheet, `${pointer}/seal/gland_width`, { unknown: true }),
        ], "three")
      : nothing}
    ${notesAt(sheet, `${pointer}/seal`)}
  </fieldset>`;
}
