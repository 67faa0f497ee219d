// One station of a route: what kind it is, its point, what else that kind has, and buttons to move and remove it.

import { html, nothing } from "../words/html.js";
import { live } from "../vendor/directives/live.js";
import { moved } from "../design/lists.js";
import { withValue } from "../design/pointer.js";
import { asKind, kindOf, KINDS, pointKey, pointOf } from "../design/stations.js";
import { suggestedCoil } from "../design/suggest-coil.js";
import { sign } from "../words/marks.js";
import { kindWords } from "../words/stations.js";
import { coilFields } from "./coil.js";
import { coordinateNotes, coordinates } from "./coordinate.js";
import { numberField, unitMark } from "./field.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { say, within } from "../words/say.js";

/** @import { CoilStation, Run, Station } from "../design/types.js" */
/** @import { Kind } from "../design/stations.js" */
/** @import { Sheet } from "./sheet.js" */

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {Station} station
 * @param {number} index
 * @param {string} pointer of the run
 */
export function stationItem(sheet, run, station, index, pointer) {
  const place = `${pointer}/route/${index}`;
  const kind = kindOf(station);
  const point = `${place}/${pointKey(kind)}`;
  const quantity = sheet.words.quantity(`${point}/0`);
  const title = `${kindWords(sheet.words, kind)} ${index + 1}`;
  /** @type {(event: Event) => void} */
  const become = (event) => {
    const chosen = /** @type {Kind} */ (/** @type {HTMLSelectElement} */ (event.target).value);
    sheet.act.change((design) => {
      const before = design.runs[Number(pointer.split("/").at(-1))];
      const others = { ...before, route: before.route.slice(0, index) };
      const next = asKind(before.route[index], chosen, () => /** @type {CoilStation} */ (suggestedCoil(design, others)).coil);
      return withValue(design, place, next);
    });
  };
  return html`<li class="station is-${kind}" id=${idOf(place)}>
    <fieldset>
      <legend class="unseen">${title}${unitMark(sheet, quantity)}</legend>
      <div class="station-head">
        <span class="number" aria-hidden="true">${index + 1}</span>
        <label class="kind"><span class="unseen">What station ${index + 1} is</span>
          <select @change=${become} .value=${live(kind)}>
            ${KINDS.map((one) => html`<option value=${one} ?selected=${one === kind}>${kindWords(sheet.words, one)}</option>`)}
          </select></label>
        <span class="unit" aria-hidden="true">${kind === "coil" ? within(quantity.label) : nothing}${unitMark(sheet, quantity)}</span>
        ${tools(sheet, run, say`${within(title)} of ${run.name}`, index, pointer)}
      </div>
      <div class="row ${kind === "corner" ? "corner" : "three"}" id=${idOf(point)}>
        ${coordinates(sheet, pointOf(station), point)}
        ${kind === "corner"
          ? numberField(sheet, `${place}/bend_radius`, { optional: true, unit: false, stands: sheet.lengths.shown(run.bend_radius) }).body
          : nothing}
      </div>
      ${coordinateNotes(sheet, point)} ${kind === "corner" ? notesAt(sheet, `${place}/bend_radius`) : nothing}
      ${"coil" in station ? coilFields(sheet, station.coil, `${place}/coil`) : nothing}
      ${notesAt(sheet, place)}
    </fieldset>
  </li>`;
}

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {string} name what a screen reader calls the station
 * @param {number} index
 * @param {string} pointer of the run
 */
function tools(sheet, run, name, index, pointer) {
  const list = `${pointer}/route`;
  const last = run.route.length - 1;
  const id = `${idOf(`${list}/${index}`)}-remove`;
  /** @param {(stations: Station[]) => Station[]} edit */
  const become = (edit) => sheet.act.update(list, edit);
  const remove = () => {
    become((stations) => stations.filter((_, at) => at !== index));
    requestAnimationFrame(() => (document.getElementById(id) ?? document.getElementById(`add-${idOf(list)}`))?.focus());
  };
  /** @param {number} by */
  const move = (by) => become((stations) => moved(stations, index, by));
  return html`<div class="tools">
    ${last > 0
      ? html`<button type="button" class="quiet" aria-disabled=${index === 0} @click=${() => move(-1)}>
          ${sign("up")}<span class="unseen">Move ${name} earlier</span></button>
        <button type="button" class="quiet" aria-disabled=${index === last} @click=${() => move(1)}>
          ${sign("down")}<span class="unseen">Move ${name} later</span></button>`
      : nothing}
    <button type="button" class="quiet" id=${id} @click=${remove}>
      ${sign("remove")}<span class="unseen">Remove ${name}</span></button>
  </div>`;
}
