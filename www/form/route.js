// A run's route: its corners in order, each coordinate a number or tied to a port's.

import { html, nothing } from "../vendor/lit-html.js";
import { live } from "../vendor/directives/live.js";
import { repeat } from "../vendor/directives/repeat.js";
import { identityOf } from "../design/identity.js";
import { moved } from "../design/lists.js";
import { valueAt, withValue } from "../design/pointer.js";
import { suggestedCorner, worth } from "../design/suggest.js";
import { numberIn, showTyped, tidy } from "../design/typed.js";
import { sign } from "../words/marks.js";
import { addButton } from "./adder.js";
import { numberField, unitMark } from "./field.js";
import { isBad, notesAt } from "./notes.js";
import { idOf } from "./sheet.js";

/** @import { Coordinate, Design, Run, Station } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {string} pointer of the run
 */
export function route(sheet, run, pointer) {
  const place = `${pointer}/route`;
  /** @param {(stations: Station[]) => Station[]} edit */
  const become = (edit) => sheet.act.update(place, edit);
  return html`<fieldset class="route" id=${idOf(place)}>
    <legend>Route</legend>
    <p class="station end">From <b dir="auto">${run.from || "a port"}</b></p>
    ${notesAt(sheet, place)}
    <ol class="stations">
      ${repeat(run.route, identityOf, (station, index) => corner(sheet, run, station, index, pointer, become))}
    </ol>
    ${addButton(idOf(place), "Add a corner", () => {
      sheet.act.change((design) => {
        const now = /** @type {Run} */ (valueAt(design, pointer));
        sheet.act.goTo(`${place}/${now.route.length}/corner/0`);
        return withValue(design, place, [...now.route, suggestedCorner(design, now)]);
      });
    })}
    <p class="station end">To <b dir="auto">${run.to || "a port"}</b></p>
  </fieldset>`;
}

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {Station} station
 * @param {number} index
 * @param {string} pointer
 * @param {(edit: (stations: Station[]) => Station[]) => void} become
 */
function corner(sheet, run, station, index, pointer, become) {
  const place = `${pointer}/route/${index}`;
  const name = `corner ${index + 1} of ${run.name}`;
  const last = run.route.length - 1;
  const remove = () => {
    become((stations) => stations.filter((_, at) => at !== index));
    requestAnimationFrame(() => {
      const next = document.getElementById(`${idOf(place)}-remove`) ?? document.getElementById(`add-${idOf(`${pointer}/route`)}`);
      next?.focus();
    });
  };
  const { unit } = sheet.words.quantity(`${place}/corner/0`);
  const axes = /** @type {const} */ (["x", "y", "z"]);
  return html`<li class="station" id=${idOf(place)}>
    <fieldset id="${idOf(place)}-corner">
      <legend>Corner ${index + 1}${unitMark(sheet.words.quantity(`${place}/corner/0`))}</legend>
      <div class="row corner">
        ${axes.map((axis, at) => coordinate(sheet, station.corner[at], at, axis, `${place}/corner/${at}`))}
        ${numberField(sheet, `${place}/bend_radius`, { optional: true, unit: false, stands: showTyped(run.bend_radius) }).body}
        <div class="tools">
          ${last > 0
            ? html`<button type="button" class="quiet" aria-disabled=${index === 0} @click=${() => become((stations) => moved(stations, index, -1))}>
                ${sign("up")}<span class="unseen">Move ${name} earlier</span></button>
              <button type="button" class="quiet" aria-disabled=${index === last} @click=${() => become((stations) => moved(stations, index, 1))}>
                ${sign("down")}<span class="unseen">Move ${name} later</span></button>`
            : nothing}
          <button type="button" class="quiet" id="${idOf(place)}-remove" @click=${remove}>
            ${sign("remove")}<span class="unseen">Remove ${name}</span></button>
        </div>
      </div>
      ${axes.map((_, at) => html`${notesAt(sheet, `${place}/corner/${at}/plus`)} ${notesAt(sheet, `${place}/corner/${at}/of`)}
        ${notesAt(sheet, `${place}/corner/${at}`)}`)}
      ${notesAt(sheet, `${place}/bend_radius`)} ${notesAt(sheet, `${place}/corner`)} ${notesAt(sheet, place)}
    </fieldset>
    <span class="unseen">All in ${unit}.</span>
  </li>`;
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
    ? numberField(sheet, `${place}/plus`, { label: `${label} from port`, unit: false })
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
    ${stands === undefined ? nothing : html`<output class="stands">= ${showTyped(stands) || "?"}</output>`}
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
