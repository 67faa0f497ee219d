// How the material looks: for the picture alone, so it can be chosen for a shipped material too.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { valueAt } from "../design/pointer.js";
import { choiceField, row } from "./field.js";
import { notesAt } from "./notes.js";
import { say } from "../words/say.js";
import { idOf } from "./sheet.js";

/** @import { Look } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

const PLACE = "/process/material/look";
const CLARITIES = [["", say`As the preview draws it`], ["opaque", say`Opaque`], ["translucent", say`Translucent`], ["clear", say`Clear`]];

/** @param {Sheet} sheet */
export function lookFields(sheet) {
  // A material that is but named has no place for it.
  if (typeof valueAt(sheet.design, "/process/material") !== "object") return nothing;
  const look = /** @type {Look | null | undefined} */ (valueAt(sheet.design, PLACE));
  const colour = look?.colour ?? String(sheet.words.quantity(`${PLACE}/colour`).default ?? "");
  const clarity = choiceField(sheet, `${PLACE}/clarity`, {
    value: look?.clarity ?? (look ? "opaque" : ""),
    options: CLARITIES.map(([value, label]) => ({ value, label })),
    take: (value) => sheet.act.set(PLACE, value === "" ? null : { clarity: value, colour }),
  });
  return html`<div id=${idOf(PLACE)}>${row(sheet, look ? [clarity, colourField(sheet, colour)] : [clarity], "two")} ${notesAt(sheet, PLACE)}</div>`;
}

/**
 * @param {Sheet} sheet
 * @param {string} colour
 */
function colourField(sheet, colour) {
  const place = `${PLACE}/colour`;
  const id = idOf(place);
  const quantity = sheet.words.quantity(place);
  return {
    at: place,
    body: html`<div class="field">
      <label for=${id}>${quantity.label}</label>
      <input id=${id} type="color" aria-describedby="${id}-hint" .value=${live(colour)}
        @change=${(/** @type {Event} */ event) => sheet.act.set(place, /** @type {HTMLInputElement} */ (event.target).value)}>
      <span class="unseen" id="${id}-hint">${quantity.hint}</span>
    </div>`,
  };
}
