// "Where does this come from?": a button beside a number of the results, and the dialog that answers it.

import { html, nothing } from "../words/html.js";
import { closeDialog, dialog, openDialog } from "../dialog.js";
import { sign } from "../words/marks.js";
import { figureAt } from "./figure.js";
import { inputsOf, nameAround } from "./inputs.js";
import { say } from "../words/say.js";

/** @import { Sheet } from "../form/sheet.js" */
/** @import { Input } from "./inputs.js" */

/**
 * A result asked about: its place in the report, with the positions of the run and the end that are meant, and its value
 * where that is not in the report.
 * @typedef {string | { path: string, value: unknown }} Asked
 */
/** @typedef {{ asked: Asked[], label: string }} Question */

const ID = "where-from";
/** What is asked now, the last step last: from one result the way leads on to those it is made of. @type {Question[]} */
let trail = [];

/**
 * A small button that asks where one number comes from, or all numbers of a row.
 * @param {Sheet} sheet
 * @param {Asked | Asked[]} asked
 * @param {string} [label] what they are called together; otherwise as the first is
 */
export function whereFrom(sheet, asked, label) {
  const all = Array.isArray(asked) ? asked : [asked];
  const name = label ?? sheet.words.result(pathOf(all[0])).label;
  const ask = () => {
    trail = [{ asked: all, label: name }];
    sheet.act.redraw();
    // The answer stands in the next frame.
    requestAnimationFrame(() => openDialog(ID));
  };
  return html`<button type="button" class="quiet where" aria-haspopup="dialog" @click=${ask}>
    ${sign("ask")}<span class="unseen">Where does ${name} come from?</span></button>`;
}

/**
 * A label with the button at its end, where it stays beside the last word when the label takes more than one line.
 * @param {Sheet} sheet
 * @param {string} label
 * @param {Asked | Asked[]} asked
 */
export function askable(sheet, label, asked) {
  const last = label.lastIndexOf(" ") + 1;
  return html`${label.slice(0, last)}<span class="asked">${label.slice(last)} ${whereFrom(sheet, asked, label)}</span>`;
}

/**
 * The dialog, once on the page.
 * @param {Sheet} sheet
 */
export function originDialog(sheet) {
  const question = trail.at(-1);
  const of = question ? nameAround(sheet.report, pathOf(question.asked[0])) : "";
  return dialog(ID, question ? say`Where does ${question.label} come from?` : say`Where does it come from?`, question ? html`
    ${of && of !== question.label ? html`<p class="source" dir="auto">${of}</p>` : nothing}
    ${trail.length > 1 ? html`<button type="button" class="link" @click=${() => step(sheet, trail.slice(0, -1))}>Back to ${trail[trail.length - 2].label}</button>` : nothing}
    ${question.asked.length === 1 ? answer(sheet, question.asked[0]) : question.asked.map((one, at) => folded(sheet, one, at))}` : nothing);
}

/**
 * One of several: all but the first are folded.
 * @param {Sheet} sheet
 * @param {Asked} asked
 * @param {number} at
 */
function folded(sheet, asked, at) {
  return html`<details name="${ID}" ?open=${at === 0}><summary>${headline(sheet, asked)}</summary>${facts(sheet, pathOf(asked))}</details>`;
}

/**
 * @param {Sheet} sheet
 * @param {Asked} asked
 */
function answer(sheet, asked) {
  return html`<p class="headline">${headline(sheet, asked)}</p>${facts(sheet, pathOf(asked))}`;
}

/**
 * @param {Sheet} sheet
 * @param {Asked} asked
 */
function headline(sheet, asked) {
  const path = pathOf(asked);
  const { label } = sheet.words.result(path);
  const value = typeof asked === "string" ? figureAt(sheet, path) : figureAt(sheet, path, asked.value);
  return html`${label.charAt(0).toUpperCase()}${label.slice(1)}: <b class="figure">${value}</b>`;
}

/**
 * @param {Sheet} sheet
 * @param {string} path
 */
function facts(sheet, path) {
  const { formula, source, range } = sheet.words.result(path);
  const inputs = inputsOf(sheet, path);
  return html`<dl>
    <div><dt>Formula</dt><dd>${formula}</dd></div>
    <div><dt>Source</dt><dd>${source}</dd></div>
    <div><dt>Holds</dt><dd>${range}</dd></div>
    ${inputs.length > 0
      ? html`<div><dt>Made of</dt><dd><ul>${inputs.map((input) => html`<li>${way(sheet, input)} <span class="figure">${input.value}</span></li>`)}</ul></dd></div>`
      : nothing}
  </dl>`;
}

/**
 * To a field of the form, or on to the result that goes in.
 * @param {Sheet} sheet
 * @param {Input} input
 */
function way(sheet, { place, isResult, label, of }) {
  const name = html`${label}${of ? html` <span dir="auto">of ${of}</span>` : nothing}`;
  const go = () => {
    if (isResult) return step(sheet, [...trail, { asked: [place], label }]);
    closeDialog(ID);
    sheet.act.goTo(place);
  };
  return html`<button type="button" class="link" @click=${go}>${name}<span class="unseen">${isResult ? say`: where it comes from` : say`: go to its field`}</span></button>`;
}

/**
 * @param {Sheet} sheet
 * @param {Question[]} next
 */
function step(sheet, next) {
  trail = next;
  sheet.act.redraw();
  requestAnimationFrame(() => document.getElementById(`${ID}-title`)?.focus());
}

/** @param {Asked} asked */
function pathOf(asked) {
  return typeof asked === "string" ? asked : asked.path;
}
