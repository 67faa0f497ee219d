// The ports: threaded holes, where they are and which way they face.

import { html } from "../words/html.js";
import { newPort } from "../design/fresh.js";
import { added } from "../design/lists.js";
import { measureButton } from "../measure/dialog.js";
import { addButton } from "./adder.js";
import { cards } from "./card.js";
import { directionGroup, sideOf } from "./direction.js";
import { choiceField, numberField, pointGroup, row, textField } from "./field.js";
import { notesAt } from "./notes.js";
import { section } from "./section.js";
import { listed } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { Port } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** @param {Sheet} sheet */
export function portsSection(sheet) {
  const body = html`${notesAt(sheet, "/ports")}
    ${cards(sheet, "ports", {
      one: say`port`,
      open: sheet.design.ports.length <= 12,
      short: (port) => say`${listed(port.at.map((part) => sheet.lengths.shown(part) || "?"))}, faces ${sideOf(port.facing)?.label ?? say`its own way`}`,
      body: (port, index, pointer) => portBody(sheet, port, index, pointer),
    })}
    ${addButton("ports", say`Add a port`, () => {
      sheet.act.change((design) => {
        sheet.act.goTo(`/ports/${design.ports.length}/name`);
        return added(design, "ports", newPort(design, sheet.words));
      });
    })}`;
  return section("ports", say`Ports`, html`The threaded holes that the tubes join, measured from one datum of your choice, z up. ${measureButton()}`, body);
}

/**
 * @param {Sheet} sheet
 * @param {Port} port
 * @param {number} index
 * @param {string} pointer
 */
function portBody(sheet, port, index, pointer) {
  return html`
    ${row(sheet, [
      textField(sheet, `${pointer}/name`, { take: (name) => sheet.act.rename("ports", index, name) }),
      choiceField(sheet, `${pointer}/fitting`, {
        value: port.fitting,
        blank: sheet.design.fittings.length > 0 ? say`Choose a fitting` : say`Add a fitting above first`,
        options: sheet.design.fittings.map(({ name }) => ({ value: name, label: name })),
        take: (fitting) => sheet.act.set(`${pointer}/fitting`, fitting),
      }),
    ], "two")}
    <div class="row at">
      ${pointGroup(sheet, `${pointer}/at`, { notes: false })} ${numberField(sheet, `${pointer}/measured_to`).body}
    </div>
    ${["at/0", "at/1", "at/2", "at", "measured_to"].map((key) => notesAt(sheet, `${pointer}/${key}`))}
    ${directionGroup(sheet, `${pointer}/facing`)}`;
}
