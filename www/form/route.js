// A run's route: its corners, points passed through and coils in order.

import { html } from "../words/html.js";
import { repeat } from "../vendor/directives/repeat.js";
import { identityOf } from "../design/identity.js";
import { valueAt, withValue } from "../design/pointer.js";
import { kindOf, pointKey } from "../design/stations.js";
import { suggestedCorner, suggestedThrough } from "../design/suggest.js";
import { suggestedCoil } from "../design/suggest-coil.js";
import { addButton } from "./adder.js";
import { notesAt } from "./notes.js";
import { idOf } from "./sheet.js";
import { stationItem } from "./station.js";
import { say } from "../words/say.js";

/** @import { Design, Run, Station } from "../design/types.js" */
/** @import { Sheet } from "./sheet.js" */

/**
 * @param {Sheet} sheet
 * @param {Run} run
 * @param {string} pointer of the run
 */
export function route(sheet, run, pointer) {
  const place = `${pointer}/route`;
  /** @param {(design: Design, run: Run) => Station} suggested */
  const add = (suggested) => sheet.act.change((design) => {
    const now = /** @type {Run} */ (valueAt(design, pointer));
    const station = suggested(design, now);
    sheet.act.goTo(`${place}/${now.route.length}/${pointKey(kindOf(station))}/0`);
    return withValue(design, place, [...now.route, station]);
  });
  const id = idOf(place);
  return html`<fieldset class="route" id=${id}>
    <legend>Route</legend>
    <p class="station end">From <b dir="auto">${run.from || say`a port`}</b></p>
    ${notesAt(sheet, place)}
    <ol class="stations">
      ${repeat(run.route, identityOf, (station, index) => stationItem(sheet, run, station, index, pointer))}
    </ol>
    <div class="adder">
      ${addButton(id, say`Add a corner`, () => add(suggestedCorner))} ${addButton(`${id}-through`, say`Add a point`, () => add(suggestedThrough))}
      ${addButton(`${id}-coil`, say`Add a coil`, () => add(suggestedCoil))}
    </div>
    <p class="station end">To <b dir="auto">${run.to || say`a port`}</b></p>
  </fieldset>`;
}
