// The runs: each one tube, from one port to another.

import { html, nothing } from "../words/html.js";
import { newRun } from "../design/fresh.js";
import { added } from "../design/lists.js";
import { numberIn, showTyped } from "../design/typed.js";
import { fixed, short } from "../words/numbers.js";
import { same } from "../words/presets.js";
import { addButton } from "./adder.js";
import { cards } from "./card.js";
import { dressPart } from "./dress.js";
import { choiceField, flagField, numberField, row, textField } from "./field.js";
import { notesAt } from "./notes.js";
import { route } from "./route.js";
import { piecesPart } from "./pieces.js";
import { runEdits } from "./run-edits.js";
import { section } from "./section.js";
import { idOf } from "./sheet.js";
import { stancePart } from "./stance.js";
import { say } from "../words/say.js";

/** @import { Run } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** @param {Sheet} sheet */
export function runsSection(sheet) {
  const body = html`${notesAt(sheet, "/runs")}
    ${cards(sheet, "runs", {
      one: say`run`,
      open: sheet.design.runs.length <= 4,
      short: (run) => shortOf(sheet, run),
      body: (run, index, pointer) => runBody(sheet, run, index, pointer),
    })}
    ${addButton("runs", say`Add a run`, () => {
      sheet.act.change((design) => {
        sheet.act.goTo(`/runs/${design.runs.length}/name`);
        return added(design, "runs", newRun(design, sheet.words, sheet.presets.tubes.map((preset) => preset.tube)));
      });
    })}`;
  return section("runs", say`Runs`, say`One tube each. With nothing on its route a run takes the shortest way that its bend radius allows.`, body);
}

/**
 * @param {Sheet} sheet
 * @param {Run} run
 */
function shortOf(sheet, run) {
  const made = sheet.report?.runs.find((one) => one.name === run.name);
  const size = `${showTyped(run.tube.outer_diameter) || "?"} × ${showTyped(run.tube.bore) || "?"}`;
  return made?.length_mm ? say`${size}, ${fixed(made.length_mm, 1)} mm long` : size;
}

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {number} index
 * @param {string} pointer
 */
function runBody(sheet, run, index, pointer) {
  return html`
    ${row(sheet, [textField(sheet, `${pointer}/name`, { take: (name) => sheet.act.rename("runs", index, name) })])}
    ${row(sheet, [portChoice(sheet, `${pointer}/from`, run.from), portChoice(sheet, `${pointer}/to`, run.to)], "two")}
    ${tubeSize(sheet, run, pointer)}
    ${route(sheet, run, pointer)}
    ${dressPart(sheet, run, pointer)} ${ends(sheet, pointer)} ${stancePart(sheet, run, pointer)} ${piecesPart(sheet, run, index)} ${runEdits(sheet, run, index)}`;
}

/**
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {string} value
 */
function portChoice(sheet, pointer, value) {
  return choiceField(sheet, pointer, {
    value,
    blank: sheet.design.ports.length > 0 ? say`Choose a port` : say`Add a port above first`,
    options: sheet.design.ports.map(({ name }) => ({ value: name, label: name })),
    take: (port) => sheet.act.set(pointer, port),
  });
}

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {string} pointer
 */
function tubeSize(sheet, run, pointer) {
  const place = `${pointer}/tube`;
  const { tubes } = sheet.presets;
  const chosen = tubes.findIndex((preset) => same(preset.tube, run.tube));
  const [outer, bore] = [numberIn(run.tube.outer_diameter), numberIn(run.tube.bore)];
  const wall = outer !== undefined && bore !== undefined && outer > bore ? short((outer - bore) / 2) : undefined;
  const id = `${idOf(place)}-preset`;
  /** @param {Event} event */
  const take = (event) => {
    const preset = tubes[Number(/** @type {HTMLSelectElement} */ (event.target).value)];
    if (preset) sheet.act.set(place, { ...preset.tube });
  };
  return html`<fieldset class="point" id=${idOf(place)}>
    <legend>Tube${wall ? html` <span class="unit">wall ${wall} mm</span>` : nothing}</legend>
    <div class="row four tube">
      <div class="field">
        <label for=${id}>Size</label>
        <select id=${id} @change=${take}>
          ${tubes.map((preset, at) => html`<option value=${at} ?selected=${at === chosen} .selected=${at === chosen}>${preset.label}</option>`)}
          <option value="own" ?selected=${chosen < 0} .selected=${chosen < 0}>Own size</option>
        </select>
      </div>
      ${numberField(sheet, `${place}/outer_diameter`).body} ${numberField(sheet, `${place}/bore`).body}
      ${numberField(sheet, `${pointer}/bend_radius`).body}
    </div>
    ${["/outer_diameter", "/bore", ""].map((key) => notesAt(sheet, place + key))} ${notesAt(sheet, `${pointer}/bend_radius`)}
    ${row(sheet, [flagField(sheet, `${pointer}/fit_bends`)])}
  </fieldset>`;
}

/**
 * @param {Sheet} sheet
 * @param {string} pointer
 */
function ends(sheet, pointer) {
  const place = `${pointer}/ends`;
  const count = sheet.countUnder(place);
  const noted = count.mend + count.stop + count.care > 0;
  /** @param {string} key */
  const number = (key) => numberField(sheet, `${place}/${key}`);
  return html`<details class="more" id=${idOf(place)} ?open=${noted}>
    <summary>Tube ends</summary>
    ${row(sheet, [number("chamfer_deg"), number("chamfer_length"), number("edge_break"), number("trim")], "four")}
    ${row(sheet, [flagField(sheet, `${place}/seat_mark`)])}
    ${notesAt(sheet, place)}
  </details>`;
}
