// The form's fields. Each is a function of a place in the design: its value, its words and what was found about it.

import { html, nothing, noChange } from "../words/html.js";
import { Directive, directive } from "../vendor/directive.js";
import { live } from "../vendor/directives/live.js";
import { valueAt } from "../design/pointer.js";
import { alreadySays, isSum, readTyped, showTyped, tidy } from "../design/typed.js";
import { rangeWords } from "../words/vocabulary.js";
import { isBad, isOnlyBlank, notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { say } from "../words/say.js";

/** @import { TemplateResult } from "../vendor/lit-html.js" */
/** @import { Sheet } from "./sheet.js" */
/** @import { Quantity } from "../words/vocabulary.js" */

/**
 * A field and the place whose notes belong under the row it stands in.
 * @typedef {{ at: string, body: TemplateResult }} Field
 */

/**
 * Fields side by side, and under them at full width whatever was found about any of them.
 * @param {Sheet} sheet
 * @param {Field[]} fields
 * @param {string} [kind] how the row is laid out
 */
export function row(sheet, fields, kind = "") {
  return html`<div class="row ${kind}">${fields.map((field) => field.body)}</div>
    ${fields.map((field) => notesAt(sheet, field.at))}`;
}

/**
 * A number. What is typed stays as typed while the field has the focus.
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {{ label?: string, key?: string, spoken?: string, optional?: boolean, unknown?: boolean, unit?: boolean,
 *   stands?: string }} [how]
 *   `label` stands in for the table's, `spoken` goes before it for screen readers, `key` names the row of the table,
 *   `optional` takes the key away where the field is empty, `unknown` says that the figure is not known where it is,
 *   `unit: false` where the legend has it,
 *   `stands`: what an empty field stands for.
 * @returns {Field}
 */
export function numberField(sheet, pointer, how = {}) {
  const quantity = sheet.words.quantity(how.key ?? pointer);
  const value = valueAt(sheet.design, pointer);
  const unit = quantity.unit === "mm" ? sheet.lengths.size : undefined;
  const shown = (/** @type {unknown} */ one) => (unit === undefined ? showTyped(one) : sheet.lengths.shown(one));
  /** @param {Event} event */
  const take = (event) => {
    const text = /** @type {HTMLInputElement} */ (event.target).value;
    const empty = (how.optional || how.unknown) && text.trim() === "";
    const read = readTyped(text, unit);
    sheet.sums.typed(pointer, isSum(text, unit) ? `= ${shown(read)}${unit === undefined ? "" : ` ${sheet.lengths.unit}`}` : "");
    sheet.act.set(pointer, empty ? (how.unknown ? null : undefined) : read);
  };
  /** @param {KeyboardEvent} event */
  const nudge = (event) => {
    const input = /** @type {HTMLInputElement} */ (event.target);
    const step = quantity.step && unit !== undefined ? sheet.lengths.step(quantity.step) : quantity.step;
    const next = nudged(event, readTyped(input.value, unit), { ...quantity, step });
    if (next === undefined) return;
    event.preventDefault();
    sheet.act.set(pointer, next);
    input.value = shown(next);
  };
  return framed(sheet, pointer, quantity, how, (marks) => html`<input
    id=${marks.id} type="text" inputmode="decimal" autocomplete="off" spellcheck="false" class="number"
    placeholder=${how.stands ?? (how.unknown ? say`not known` : nothing)} aria-describedby=${marks.describedBy} aria-invalid=${marks.invalid}
    .value=${typed(value, shown, unit)} @input=${take} @change=${sheet.act.redraw} @blur=${() => sheet.sums.left(pointer)} @keydown=${nudge}>
    ${sheet.sums.at(pointer) ? html`<output class="stands">${sheet.sums.at(pointer)}</output>` : nothing}`);
}

/**
 * A line of text.
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {{ label?: string, take?: (text: string) => void }} [how]
 * @returns {Field}
 */
export function textField(sheet, pointer, how = {}) {
  const value = showTyped(valueAt(sheet.design, pointer));
  /** @param {Event} event */
  const take = (event) => {
    const text = /** @type {HTMLInputElement} */ (event.target).value;
    if (how.take) how.take(text);
    else sheet.act.set(pointer, text);
  };
  return framed(sheet, pointer, sheet.words.quantity(pointer), how, (marks) => html`<input
    id=${marks.id} type="text" autocomplete="off" spellcheck="false" dir="auto"
    aria-describedby=${marks.describedBy} aria-invalid=${marks.invalid} .value=${live(value)} @input=${take}>`);
}

/**
 * Several lines of text.
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {number} [lines] how many are seen at once
 * @returns {Field}
 */
export function longTextField(sheet, pointer, lines = 3) {
  /** @param {Event} event */
  const take = (event) => sheet.act.set(pointer, /** @type {HTMLTextAreaElement} */ (event.target).value);
  return framed(sheet, pointer, sheet.words.quantity(pointer), {}, (marks) => html`<textarea
    id=${marks.id} rows=${lines} dir="auto" aria-describedby=${marks.describedBy} aria-invalid=${marks.invalid}
    .value=${live(showTyped(valueAt(sheet.design, pointer)))} @input=${take}></textarea>`);
}

/**
 * One of several names. A name that is none of them is shown as it is, so that nothing is changed unasked.
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {{ label?: string, spoken?: string, value: string, blank?: string,
 *   options: { value: string, label: string }[], take: (value: string) => void }} how
 *   `blank`: what an empty choice says.
 * @returns {Field}
 */
export function choiceField(sheet, pointer, how) {
  const known = how.options.some((option) => option.value === how.value);
  const options = known || how.value === "" ? how.options : [...how.options, { value: how.value, label: say`${how.value} (not there)` }];
  return framed(sheet, pointer, sheet.words.quantity(pointer), how, (marks) => html`<select
    id=${marks.id} aria-describedby=${marks.describedBy} aria-invalid=${marks.invalid} .value=${live(how.value)}
    @change=${(/** @type {Event} */ event) => how.take(/** @type {HTMLSelectElement} */ (event.target).value)}>
    ${how.blank !== undefined && how.value === "" ? html`<option value="" selected>${how.blank}</option>` : nothing}
    ${options.map((option) => html`<option value=${option.value} ?selected=${option.value === how.value}>${option.label}</option>`)}
  </select>`);
}

/**
 * Yes or no.
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {{ label?: string, value?: boolean, take?: (on: boolean) => void }} [how]
 * @returns {Field}
 */
export function flagField(sheet, pointer, how = {}) {
  const quantity = sheet.words.quantity(pointer);
  const id = idOf(pointer);
  const on = how.value ?? valueAt(sheet.design, pointer) === true;
  const take = how.take ?? ((value) => sheet.act.set(pointer, value));
  return {
    at: pointer,
    body: html`<div class="flag">
      <input id=${id} type="checkbox" aria-describedby="${id}-hint" .checked=${live(on)}
        @change=${(/** @type {Event} */ event) => take(/** @type {HTMLInputElement} */ (event.target).checked)}>
      <label for=${id}>${how.label ?? quantity.label}</label>
      <span class="unseen" id="${id}-hint">${quantity.hint}</span>
    </div>`,
  };
}

/**
 * A point: three numbers under one legend.
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {{ notes: boolean }} [how] `notes: false` where they are shown elsewhere
 */
export function pointGroup(sheet, pointer, { notes } = { notes: true }) {
  const quantity = sheet.words.quantity(`${pointer}/*`);
  const axes = ["x", "y", "z"].map((axis, index) => numberField(sheet, `${pointer}/${index}`, { label: axis, unit: false }));
  return html`<fieldset class="point" id=${idOf(pointer)}>
    <legend>${quantity.label}${unitMark(sheet, quantity)}</legend>
    ${notes ? html`${row(sheet, axes, "three")} ${notesAt(sheet, pointer)}` : html`<div class="row three">${axes.map((axis) => axis.body)}</div>`}
  </fieldset>`;
}

/**
 * The unit beside a label.
 * @param {Sheet} sheet
 * @param {Quantity} quantity
 */
export function unitMark(sheet, quantity) {
  if (quantity.unit === "mm") return html` <span class="unit">${sheet.lengths.unit}</span>`;
  return quantity.unit ? html` <span class="unit">${quantity.unit}</span>` : nothing;
}

/**
 * A control with its label, hint and marks.
 * @param {Sheet} sheet
 * @param {string} pointer
 * @param {Quantity} quantity
 * @param {{ label?: string, spoken?: string, unit?: boolean }} how
 * @param {(marks: { id: string, describedBy: string, invalid: "true" | "false" }) => TemplateResult} control
 * @returns {Field}
 */
function framed(sheet, pointer, quantity, how, control) {
  const id = idOf(pointer);
  const { problems, findings } = sheet.notes(pointer);
  const noted = problems.length + findings.length > 0;
  const hint = [quantity.hint, rangeHint(quantity)].filter(Boolean).join(" ");
  return {
    at: pointer,
    body: html`<div class="field">
      <label for=${id}>${how.spoken ? html`<span class="unseen">${how.spoken} </span>` : nothing}${how.label ??
      quantity.label}${how.unit === false ? nothing : unitMark(sheet, quantity)}</label>
      ${control({ id, describedBy: noted ? `${id}-notes ${id}-hint` : `${id}-hint`, invalid: isBad(sheet, pointer) ? "true" : "false" })}
      ${isOnlyBlank(sheet, pointer) ? html`<span class="needed" id="${id}-notes">To fill in</span>` : nothing}
      <span class="unseen" id="${id}-hint">${hint}</span>
    </div>`,
  };
}

/** @param {Quantity} quantity */
function rangeHint(quantity) {
  const words = rangeWords(quantity);
  return words ? say`Can be ${words}.` : "";
}

/**
 * What an arrow key makes of a number: a step up or down, ten with shift.
 * @param {KeyboardEvent} event
 * @param {unknown} value
 * @param {Quantity} quantity
 */
function nudged(event, value, quantity) {
  const way = event.key === "ArrowUp" ? 1 : event.key === "ArrowDown" ? -1 : 0;
  if (way === 0 || event.altKey || event.ctrlKey || event.metaKey || typeof value !== "number" || !quantity.step) return undefined;
  const next = tidy(value + way * quantity.step * (event.shiftKey ? 10 : 1));
  const low = typeof quantity.min === "number" && (quantity.min_open ? next <= quantity.min : next < quantity.min);
  const high = typeof quantity.max === "number" && next > quantity.max;
  return low || high ? undefined : next;
}

/** Sets a field's text unless the person in it has already typed the same value their own way. */
class TypedValue extends Directive {
  /**
   * @param {unknown} value
   * @param {(value: unknown) => string} shown
   * @param {number | undefined} _unit
   */
  render(value, shown, _unit) {
    return shown(value);
  }

  /**
   * @override
   * @param {import("../vendor/directive.js").PropertyPart} part
   * @param {[unknown, (value: unknown) => string, number | undefined]} values
   */
  update(part, [value, shown, unit]) {
    const input = /** @type {HTMLInputElement} */ (part.element);
    const text = shown(value);
    const theirs = input.ownerDocument.activeElement === input && alreadySays(input.value, value, unit);
    if (!theirs && input.value !== text) input.value = text;
    return noChange;
  }
}
const typed = directive(TypedValue);
