// The first fill and the leak test with air: what is read, what the reading says, and the order that it goes in.

import { html } from "../words/html.js";
import { newLeakTest } from "../design/fresh.js";
import { leakReading } from "../result/leak.js";
import { sign } from "../words/marks.js";
import { addButton } from "./adder.js";
import { numberField, row } from "./field.js";
import { careWithAir, firstFill } from "./first-fill.js";
import { notesAt } from "./notes.js";
import { section } from "./section.js";
import { idOf } from "./sheet.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "./sheet.js" */

const PLACE = "/loop/leak_test";

/** @param {Sheet} sheet */
export function leakTestSection(sheet) {
  const started = sheet.design.loop.leak_test ?? null;
  const start = () => {
    sheet.act.set(PLACE, newLeakTest(sheet.words));
    sheet.act.goTo(`${PLACE}/start_kpa`);
  };
  const body = html`${careWithAir()} ${started ? readings(sheet) : addButton("leak-test", say`Start a leak test with air`, start)} ${firstFill(sheet)}`;
  return section("leak-test", say`First fill and leak test`, say`Before any coolant goes in: does the loop keep air?`, body);
}

/** @param {Sheet} sheet */
function readings(sheet) {
  /** @type {(key: string, how?: Parameters<typeof numberField>[2]) => import("./field.js").Field} */
  const number = (key, how) => numberField(sheet, `${PLACE}/${key}`, how);
  const remove = () => {
    sheet.act.set(PLACE, null);
    requestAnimationFrame(() => document.getElementById("add-leak-test")?.focus());
  };
  return html`<fieldset class="group leak-test" id=${idOf(PLACE)}>
    <legend>${sheet.words.quantity(PLACE).label}</legend>
    <p class="source">${sheet.words.quantity(PLACE).hint}</p>
    ${notesAt(sheet, PLACE)}
    ${row(sheet, [number("start_kpa"), number("start_c")], "two")}
    ${row(sheet, [number("end_kpa", { unknown: true, stands: say`not read yet` }), number("end_c")], "two")}
    ${row(sheet, [number("minutes"), number("air_kpa")], "two")}
    ${row(sheet, [number("limit_kpa"), number("limit_minutes")], "two")}
    ${row(sheet, [number("volume_ml", { unknown: true, stands: say`the whole loop's` })], "two")}
    ${leakReading(sheet)}
    <button type="button" class="add" id="leak-test-remove" @click=${remove}>${sign("remove")} Remove this test</button>
  </fieldset>`;
}
