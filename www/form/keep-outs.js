// What is in the way: boxes and cylinders, and how far the tubes stay clear of everything.

import { html } from "../words/html.js";
import { newKeepOut } from "../design/fresh.js";
import { added } from "../design/lists.js";
import { addButton } from "./adder.js";
import { cards } from "./card.js";
import { numberField, pointGroup, row, textField } from "./field.js";
import { notesAt } from "./notes.js";
import { section } from "./section.js";
import { idOf } from "./sheet.js";
import { say } from "../words/say.js";

/** @import { KeepOut } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** @param {Sheet} sheet */
export function keepOutsSection(sheet) {
  /** @param {"box" | "cylinder"} shape */
  const add = (shape) => {
    sheet.act.change((design) => {
      sheet.act.goTo(`/keep_outs/${design.keep_outs.length}/name`);
      return added(design, "keep_outs", newKeepOut(design, shape));
    });
  };
  const body = html`
    ${row(sheet, [numberField(sheet, "/clearance")], "two")} ${notesAt(sheet, "/keep_outs")}
    ${cards(sheet, "keep_outs", {
      one: say`keep-out`,
      open: false,
      short: (keepOut) => ("box" in keepOut ? say`box` : say`cylinder`),
      body: (keepOut, _, pointer) => keepOutBody(sheet, keepOut, pointer),
    })}
    <div class="adder">
      ${addButton("keep_outs", say`Add a box`, () => add("box"))} ${addButton("keep_outs-cylinder", say`Add a cylinder`, () => add("cylinder"))}
    </div>`;
  return section("keep-outs", say`Keep clear of`, say`Parts that the tubes must pass by with room to spare.`, body);
}

/**
 * @param {Sheet} sheet
 * @param {KeepOut} keepOut
 * @param {string} pointer
 */
function keepOutBody(sheet, keepOut, pointer) {
  const name = row(sheet, [textField(sheet, `${pointer}/name`)]);
  if ("box" in keepOut) {
    return html`${name}<div id=${idOf(`${pointer}/box`)}>
      ${pointGroup(sheet, `${pointer}/box/min`)} ${pointGroup(sheet, `${pointer}/box/max`)} ${notesAt(sheet, `${pointer}/box`)}
    </div>`;
  }
  const place = `${pointer}/cylinder`;
  return html`${name}<div id=${idOf(place)}>
    ${pointGroup(sheet, `${place}/from`)} ${pointGroup(sheet, `${place}/to`)}
    ${row(sheet, [numberField(sheet, `${place}/radius`)], "two")} ${notesAt(sheet, place)}
  </div>`;
}
