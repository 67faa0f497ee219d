// A station's point: each coordinate a number, or tied to a port's.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { valueAt, withValue } from "../design/pointer.js";
import { worth } from "../design/suggest.js";
import { numberIn, tidy } from "../design/typed.js";
import { numberField } from "./field.js";
import { isBad, notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { say } from "../words/say.js";

/** @import { Coordinate, Design } from "../design/types.js" */
/** @import { Place } from "../design/stations.js" */
/** @import { Sheet } from "./sheet.js" */

const AXES = /** @type {const} */ (["x", "y", "z"]);

/**
 * The three coordinates of a point, to stand side by side.
 * @param {Sheet} sheet
 * @param {Place} point
 * @param {string} place
 */
export function coordinates(sheet, point, place) {
  return AXES.map((axis, at) => coordinate(sheet, point[at], at, axis, `${place}/${at}`));
}

/**
 * What was found about the coordinates and the point.
 * @param {Sheet} sheet
 * @param {string} place
 */
export function coordinateNotes(sheet, place) {
  return html`${AXES.map((_, at) => ["plus", "of"].map((key) => notesAt(sheet, `${place}/${at}/${key}`)).concat(notesAt(sheet, `${place}/${at}`)))}
    ${notesAt(sheet, place)}`;
}

/**
 * One coordinate: its number, and under it what the number counts from.
 * @param {Sheet} sheet
 * @param {Coordinate} value
 * @param {number} axis
 * @param {string} label
 * @param {string} place
 */
function coordinate(sheet, value, axis, label, place) {
  const tied = typeof value === "object";
  const field = tied
    ? numberField(sheet, `${place}/plus`, { label: say`${label} from port`, unit: false })
    : numberField(sheet, place, { label, unit: false });
  const stands = tied ? worth(sheet.design, value, axis) : undefined;
  const id = `${idOf(place)}-of`;
  /** @param {Event} event */
  const take = (event) => {
    const port = /** @type {HTMLSelectElement} */ (event.target).value;
    sheet.act.change((design) => {
      const now = /** @type {Coordinate} */ (valueAt(design, place));
      return withValue(design, place, port === "" ? worth(design, now, axis) : tiedTo(design, now, axis, port));
    });
  };
  const known = !tied || sheet.design.ports.some((port) => port.name === value.of);
  return html`<div class="coordinate">
    ${field.body}
    <label class="unseen" for=${id}>${label} counts from</label>
    <select id=${id} class="tie" .value=${live(tied ? value.of : "")} @change=${take}
      aria-invalid=${isBad(sheet, `${place}/of`) ? "true" : "false"}>
      <option value="" ?selected=${!tied}>the datum</option>
      ${sheet.design.ports.map(({ name }) => html`<option value=${name} ?selected=${tied && value.of === name}>${name}</option>`)}
      ${known ? nothing : html`<option value=${tied ? value.of : ""} selected>${tied ? value.of : ""} (not there)</option>`}
    </select>
    ${stands === undefined ? nothing : html`<output class="stands">= ${sheet.lengths.shown(stands) || "?"}</output>`}
  </div>`;
}

/**
 * The coordinate where it is, counted from a port.
 * @param {Design} design
 * @param {Coordinate} value
 * @param {number} axis
 * @param {string} port
 * @returns {Coordinate}
 */
function tiedTo(design, value, axis, port) {
  const here = numberIn(worth(design, value, axis));
  const base = numberIn(design.ports.find((one) => one.name === port)?.at[axis]);
  return { of: port, plus: here === undefined || base === undefined ? 0 : tidy(here - base) };
}
