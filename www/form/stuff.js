// A material, printer, coolant or pump: one of the shipped ones, or with figures of the builder's own.

import { html, nothing } from "../words/html.js";
import { valueAt } from "../design/pointer.js";
import { alike } from "../words/presets.js";
import { facts } from "./facts.js";
import { longTextField, row, textField } from "./field.js";
import { isBad, notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { Stuff } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/** The own figures that a shipped thing took the place of, by their place, so that choosing them brings them back. @type {Map<string, Stuff>} */
const setAside = new Map();

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {Stuff[]} shipped
 * @param {{ main: string[], figures: (place: string) => unknown, said?: (preset: Stuff) => unknown }} how
 *   `main`: the keys of the figures that are shown at once; `figures`: the fields of own ones; `said`: what of a shipped
 *   one is told in another form than as a figure.
 */
export function stuff(sheet, place, shipped, how) {
  const value = /** @type {string | Stuff} */ (valueAt(sheet.design, place));
  const chosen = shipped.findIndex((one) => alike(one, value) || one.name === value);
  const own = typeof value === "object" && chosen < 0 ? value : undefined;
  const preset = shipped[chosen];
  const quantity = sheet.words.quantity(place);
  const id = own ? `${idOf(place)}-which` : idOf(place);
  const mine = own ?? setAside.get(place);
  const { problems, findings } = sheet.notes(place);
  const noted = problems.length + findings.length > 0;
  /** @param {Event} event */
  const take = (event) => {
    const choice = /** @type {HTMLSelectElement} */ (event.target).value;
    if (own) setAside.set(place, own);
    sheet.act.set(place, choice === "own" ? mine : structuredClone(shipped[Number(choice)]));
  };
  return html`<fieldset class="stuff" id=${own ? idOf(place) : nothing}>
    <legend class="unseen">${quantity.label}</legend>
    <div class="row ${preset ? "preset" : ""}">
      <div class="field">
        <label for=${id}>${quantity.label}</label>
        <select id=${id} aria-describedby="${noted ? `${idOf(place)}-notes ` : ""}${id}-hint"
          aria-invalid=${isBad(sheet, place) ? "true" : "false"} @change=${take}>
          ${shipped.map((one, at) => html`<option value=${at} .selected=${at === chosen}>${engineWord(one.name)}</option>`)}
          ${mine ? html`<option value="own" .selected=${own !== undefined}>${mine.name || say`no name yet`} (own figures)</option>` : nothing}
          ${chosen < 0 && !own ? html`<option value="" selected>${value} (not there)</option>` : nothing}
        </select>
        <span class="unseen" id="${id}-hint">${quantity.hint}</span>
      </div>
      ${preset
        ? html`<button type="button" id="${idOf(place)}-own" @click=${() => makeOwn(sheet, place, preset)}>Make it my own<span
            class="unseen">: ${quantity.label} with my figures</span></button>`
        : nothing}
    </div>
    ${notesAt(sheet, place)}
    ${preset && typeof value === "object" ? Object.keys(preset).map((key) => notesAt(sheet, `${place}/${key}`)) : nothing}
    ${own ? ownFigures(sheet, place, own, how.figures) : preset ? facts(sheet, place, preset, how.main, how.said?.(preset)) : nothing}
  </fieldset>`;
}

/**
 * A copy of a shipped thing whose figures can be typed over; where they come from is the builder's to say now.
 * @param {Sheet} sheet
 * @param {string} place
 * @param {Stuff} preset
 */
function makeOwn(sheet, place, preset) {
  const own = { ...structuredClone(preset), name: say`own ${engineWord(preset.name)}`, source: "" };
  sheet.cards.set(own, true);
  sheet.act.set(place, own);
  sheet.act.goTo(`${place}/name`);
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {Stuff} own
 * @param {(place: string) => unknown} figures
 */
function ownFigures(sheet, place, own, figures) {
  const { mend, stop, care, blank } = sheet.countUnder(place);
  const open = sheet.cards.isOpen(own, false) || mend + stop + care + blank > 0;
  /** @param {Event} event */
  const toggled = (event) => sheet.cards.set(own, /** @type {HTMLDetailsElement} */ (event.target).open);
  return html`${row(sheet, [textField(sheet, `${place}/name`)])}
    <details class="more own" ?open=${open} @toggle=${toggled}>
      <summary>Figures${own.source ? html`: <span class="source" dir="auto">from ${own.source.slice(0, 60)}</span>` : nothing}</summary>
      <div class="own-figures">${figures(place)} ${row(sheet, [longTextField(sheet, `${place}/source`, 2)])}</div>
    </details>`;
}
