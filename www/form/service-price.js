// What a print service asks for, where one prints the tubes: its prices as its offer has them.

import { html } from "../words/html.js";
import { newPrintService } from "../design/fresh.js";
import { sign } from "../words/marks.js";
import { addButton } from "./adder.js";
import { numberField, row, textField } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "./sheet.js" */

const PLACE = "/process/service";

/** @param {Sheet} sheet */
export function servicePrices(sheet) {
  if (sheet.design.process.service) return prices(sheet);
  const add = () => {
    sheet.act.set(PLACE, newPrintService());
    sheet.act.goTo(`${PLACE}/price_per_cm3`);
  };
  return html`${notesAt(sheet, PLACE)} ${addButton("print-service", say`Add a print service's prices`, add)}`;
}

/** @param {Sheet} sheet */
function prices(sheet) {
  const { label, hint } = sheet.words.quantity(PLACE);
  const remove = () => {
    sheet.act.set(PLACE, null);
    requestAnimationFrame(() => document.getElementById("add-print-service")?.focus());
  };
  return html`<fieldset class="group" id=${idOf(PLACE)}>
    <legend>${label}</legend>
    <p class="source">${hint}</p>
    ${notesAt(sheet, PLACE)}
    ${row(sheet, [numberField(sheet, `${PLACE}/price_per_cm3`, { unknown: true }), numberField(sheet, `${PLACE}/setup`), numberField(sheet, `${PLACE}/minimum`)], "three")}
    ${row(sheet, [textField(sheet, `${PLACE}/source`)])}
    <button type="button" class="add" id="print-service-remove" @click=${remove}>${sign("remove")} Remove these prices</button>
  </fieldset>`;
}
