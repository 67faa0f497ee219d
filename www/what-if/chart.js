// Two figures of all variants against each other: a mark for each, told apart by shape. A mark in focus marks its row.

import { html, nothing, svg } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { SHAPES } from "../words/marks.js";
import { counted, fixed } from "../words/numbers.js";
import { COLUMNS, headingOf, standOf } from "./columns.js";
import { scaleOf } from "./scale.js";
import { nameOf, takeId } from "./what-if.js";
import { say, within } from "../words/say.js";

/** @import { Vocabulary } from "../words/vocabulary.js" */
/** @import { Column } from "./columns.js" */
/** @import { Scale } from "./scale.js" */
/** @import { Row, WhatIf } from "./what-if.js" */

/** @typedef {{ row: Row, x: number, y: number }} Mark where its figures put it, as shares of the field from its lower left */
/** @typedef {{ column: Column, scale: Scale, words: { label: string, unit: string } }} Axis */

const FIGURES = COLUMNS.filter((column) => column.chart);
const STANDS = /** @type {const} */ ({ fine: say`can be made`, care: say`can be made, with care`, stop: say`stopped` });
const KEYS = /** @type {Record<string, number>} */ ({ ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1, Home: -Infinity, End: Infinity });

/**
 * @param {Vocabulary} words
 * @param {WhatIf} whatIf
 */
export function chart(words, whatIf) {
  const { rows, axes } = whatIf;
  const [across, up] = [axes.across, axes.up].map((key) => FIGURES.find((column) => column.key === key) ?? FIGURES[0]);
  const drawn = rows.filter((row) => across.by(row) !== null && up.by(row) !== null);
  return html`<figure class="variants-chart">
    <div class="axes">${axisChoice(words, whatIf, "up", up)} ${axisChoice(words, whatIf, "across", across)}</div>
    ${drawn.length > 0 ? field(words, whatIf, drawn, across, up) : html`<p class="nothing">No variant has both of these figures, so there is nothing to draw.</p>`}
    <figcaption>${drawn.length > 0 ? captionWords(words, drawn, [up, across]) : nothing}
      ${drawn.length < rows.length && drawn.length > 0 ? html`<span>Not drawn: ${counted(rows.length - drawn.length, "variant")} without both figures.</span>` : nothing}</figcaption>
  </figure>`;
}

/**
 * @param {Vocabulary} words
 * @param {WhatIf} whatIf
 * @param {"across" | "up"} axis
 * @param {Column} chosen
 */
function axisChoice(words, whatIf, axis, chosen) {
  const id = `what-if-${axis}`;
  return html`<div class="field">
    <label for=${id}>${axis === "up" ? say`Chart: upwards` : say`Across`}</label>
    <select id=${id} .value=${live(chosen.key)} @change=${(/** @type {Event} */ event) => whatIf.plot(axis, /** @type {HTMLSelectElement} */ (event.target).value)}>
      ${FIGURES.map(({ key }) => html`<option value=${key} ?selected=${key === chosen.key}>${axisWords(headingOf(words, key))}</option>`)}
    </select>
  </div>`;
}

/**
 * @param {Vocabulary} words
 * @param {WhatIf} whatIf
 * @param {Row[]} drawn
 * @param {Column} across
 * @param {Column} up
 */
function field(words, whatIf, drawn, across, up) {
  /** @type {(column: Column) => Axis} */
  const axis = (column) => ({ column, scale: scaleOf(drawn.map((row) => column.by(row) ?? 0)), words: headingOf(words, column.key) });
  const [x, y] = [axis(across), axis(up)];
  const marks = drawn.map((row) => ({ row, x: x.scale.at(across.by(row) ?? 0), y: y.scale.at(up.by(row) ?? 0) }));
  marks.sort((a, b) => a.x - b.x || b.y - a.y);
  const inFocus = marks.find(({ row }) => row.key === whatIf.marked) ?? marks.find(({ row }) => row.present) ?? marks[0];
  const name = say`${y.words.label} over ${lower(x.words.label)}: ${counted(marks.length, "variant")}. Arrow keys go from one to the next; Enter goes to its row.`;
  return html`<div class="spread-of">
      <svg class="ruled" role="group" aria-label=${name} @keydown=${(/** @type {KeyboardEvent} */ event) => step(event, whatIf, marks)}>
        <text class="up-words" x="-3em" y="-1.3em">${axisWords(y.words)}</text>
        ${y.scale.ticks.map((tick) => svg`<line class="rule" x1="0" x2="100%" y1=${percent(1 - y.scale.at(tick))} y2=${percent(1 - y.scale.at(tick))}/>
          <text class="tick" x="-8" y=${percent(1 - y.scale.at(tick))} dy="4" text-anchor="end">${fixed(tick, y.scale.decimals)}</text>`)}
        ${x.scale.ticks.map((tick) => svg`<line class="rule" y1="0" y2="100%" x1=${percent(x.scale.at(tick))} x2=${percent(x.scale.at(tick))}/>
          <text class="tick" x=${percent(x.scale.at(tick))} y="100%" dy="19" text-anchor="middle">${fixed(tick, x.scale.decimals)}</text>`)}
        <text class="across-words" x="100%" y="100%" dy="38" text-anchor="end">${axisWords(x.words)}</text>
        ${marks.map((mark) => dot(whatIf, mark, mark === inFocus, [y, x]))}
      </svg>
    </div>
    <ul class="key" aria-hidden="true">
      ${/** @type {const} */ (["fine", "care", "stop"]).map((stand) => html`<li><svg class="mark is-${stand}" viewBox="0 0 16 16" width="16" height="16">${SHAPES[stand]}</svg> ${STANDS[stand]}</li>`)}
      <li><svg class="mark" viewBox="-3 -3 22 22" width="20" height="20"><path class="bracket" d=${BRACKET}/></svg> as it is now</li>
    </ul>
    <p class="readout" aria-hidden="true">${whatIf.marked === inFocus.row.key ? told(inFocus.row, [y, x]) : say`Point at a mark or tab to it to read it; press it to find its row.`}</p>`;
}

// Corner brackets round a mark.
const BRACKET = "M3-2h-5v5M13-2h5v5M-2 13v5h5M18 13v5h-5";

/**
 * @param {WhatIf} whatIf
 * @param {Mark} mark
 * @param {boolean} inFocus the one that Tab reaches
 * @param {Axis[]} axes
 */
function dot(whatIf, { row, x, y }, inFocus, axes) {
  const marked = row.key === whatIf.marked;
  return svg`<svg class="place" x=${percent(x)} y=${percent(1 - y)}>
    <g class="dot mark is-${standOf(row)}" role="button" tabindex=${inFocus ? 0 : -1} data-key=${row.key} data-marked=${marked}
      aria-label="${told(row, axes)}" @focus=${() => whatIf.mark(row.key)} @pointerenter=${() => whatIf.mark(row.key)} @click=${() => showRow(row)}>
      <circle class="hit" r="12"/>
      <g transform="translate(-7 -7) scale(0.875)">${SHAPES[standOf(row)]}${row.present ? svg`<path class="bracket" d=${BRACKET}/>` : nothing}</g>
      ${marked ? svg`<circle class="halo" r="15"/>` : nothing}
    </g>
  </svg>`;
}

/**
 * @param {KeyboardEvent} event
 * @param {WhatIf} whatIf
 * @param {Mark[]} marks from left to right
 */
function step(event, whatIf, marks) {
  const at = marks.findIndex(({ row }) => row.key === /** @type {Element} */ (event.target).getAttribute("data-key"));
  if (at < 0) return;
  if (event.key === "Enter" || event.key === " ") {
    event.preventDefault();
    document.getElementById(takeId(marks[at].row))?.focus();
    return;
  }
  const by = KEYS[event.key];
  if (by === undefined) return;
  event.preventDefault();
  const next = marks[Math.min(Math.max(at + by, 0), marks.length - 1)].row;
  whatIf.mark(next.key);
  const plot = /** @type {Element} */ (event.currentTarget);
  /** @type {SVGElement | undefined} */ ([...plot.querySelectorAll("[data-key]")].find((one) => one.getAttribute("data-key") === next.key))?.focus({ preventScroll: true });
}

/** @param {Row} row */
function showRow(row) {
  document.getElementById(takeId(row))?.closest("tbody")?.scrollIntoView({ block: "nearest", inline: "nearest", behavior: "instant" });
}

/**
 * @param {Vocabulary} words
 * @param {Row[]} drawn
 * @param {Column[]} columns
 */
function captionWords(words, drawn, columns) {
  const made = drawn.filter((row) => row.feasible);
  const least = columns.map((column) => {
    const { label, unit } = headingOf(words, column.key);
    if (made.length === 0) return "";
    // Of equal ones the first is named, so that the words do not jump about.
    const best = made.reduce((one, other) => ((column.by(other) ?? Infinity) < (column.by(one) ?? Infinity) ? other : one));
    return say`Least ${lower(label)} of those that can be made: ${nameOf(best)}, ${column.show(best)}${unit ? ` ${unit}` : ""}. `;
  });
  return made.length > 0 ? least.join("") : say`None of these can be made.`;
}

/**
 * "14 × 10 mm, PETG, as it is now: cost 3.20, loss 1.20 kPa; can be made".
 * @param {Row} row
 * @param {Axis[]} axes
 */
function told(row, axes) {
  const figures = axes.map(({ column, words }) => `${lower(words.label)} ${column.show(row)}${words.unit ? ` ${words.unit}` : ""}`);
  return `${nameOf(row)}${row.present ? say`, as it is now` : ""}: ${figures.join(", ")}; ${STANDS[standOf(row)]}`;
}

/** @param {{ label: string, unit: string }} words */
function axisWords({ label, unit }) {
  return unit ? `${label}, ${unit}` : label;
}

/** @param {string} label */
function lower(label) {
  return within(label, 1);
}

/** @param {number} share */
function percent(share) {
  return `${(100 * share).toFixed(3)}%`;
}
