// The plates from above, each with the boxes of the pieces on it; the list below says which is which.

import { html, nothing, svg } from "../words/html.js";
import { counted, fixed, short } from "../words/numbers.js";
import { mark } from "../words/marks.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { Plates } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { FilesState } from "../result/files.js" */
/** @import { Layout } from "./layout.js" */

/** @typedef {Plates["plates"][number]} OnePlate */

/**
 * @param {Sheet} sheet
 * @param {Layout} layout
 * @param {FilesState} files
 */
export function platesFold(sheet, layout, files) {
  return html`<details class="plates" ?open=${layout.open} @toggle=${(/** @type {Event} */ event) => layout.unfold(/** @type {HTMLDetailsElement} */ (event.target).open)}>
    <summary>All pieces on as few plates as they take</summary>
    ${layout.open ? opened(sheet, layout, files) : nothing}
  </details>`;
}

/**
 * @param {Sheet} sheet
 * @param {Layout} layout
 * @param {FilesState} files
 */
function opened(sheet, layout, files) {
  const { answer, trouble, fresh } = layout;
  return html`<div class="plate-body">
    <p class="about">Every piece stands as it is chosen above, turned by a right angle where more fit so; where fewer plates do, each is turned until the rectangle round it is least.${answer ? say` Boxes are ${short(answer.gap_mm, 1)} mm apart or more (common practice, no source).` : ""} What is found is good, not proven the fewest.</p>
    <p class="plate-status" role="status">${statusWords(sheet, layout)}</p>
    ${trouble ? html`<p class="trouble">${trouble}</p>` : nothing}
    ${answer ? html`<div class="plate-answer" data-stale=${!fresh}>
        ${answer.left_out.length > 0 ? html`<ul class="notes">${answer.left_out.map(({ run, piece, why }) => html`<li class="note care">${mark("care")}
          <div><p><b>On no plate: ${run}${piece === null ? "" : cut(sheet, run) ? say`, piece ${piece}` : ""}.</b> ${engineWord(why)}</p></div></li>`)}</ul>` : nothing}
        <ul class="plate-list">${answer.plates.map((plate, index) => card(sheet, layout, files, answer, plate, index + 1))}</ul>
      </div>` : nothing}
  </div>`;
}

/**
 * @param {Sheet} sheet
 * @param {Layout} layout
 * @param {FilesState} files
 * @param {Plates} answer
 * @param {OnePlate} plate
 * @param {number} number
 */
function card(sheet, layout, files, answer, plate, number) {
  return html`<li class="plate-card on-plate">
    <h3>Plate ${number}</h3>
    <p class="stance-size">${sizeWords(plate)}</p>
    <div class="view">${fromAbove(answer, plate)}<span class="view-name" aria-hidden="true">From above; the dashes are the margins.</span></div>
    <ol class="plate-pieces">${plate.pieces.map((piece) => html`<li><span dir="auto">${named(piece)}</span>: ${piece.box_mm.slice(0, 2).map((side) => fixed(side, 1)).join(" × ")} mm${piece.turned_deg === 0 ? "" : say`, turned by ${short(piece.turned_deg, 0)}°`}</li>`)}</ol>
    <div class="adder"><button type="button" ?disabled=${!layout.fresh || !sheet.fresh}
      @click=${() => files.save({ kind: "plate", plate: number, deviation: files.deviation })}>3MF of plate ${number}</button></div>
  </li>`;
}

/**
 * "2 pieces, 106 mm high; 2120 layers, about 4.7 h".
 * @param {OnePlate} plate
 */
function sizeWords({ pieces, height_mm, layers, hours }) {
  const time = layers === null ? "" : `; ${counted(layers, "layer")}${hours === null ? "" : say`, about ${hours < 1 ? `${fixed(hours * 60, 0)} min` : `${fixed(hours, 1)} h`}`}`;
  return say`${counted(pieces.length, "piece")}, ${fixed(height_mm, 1)} mm high${time}`;
}

/**
 * The numbers are those of the list, which says in words what is drawn.
 * @param {Plates} answer
 * @param {OnePlate} plate
 */
function fromAbove({ volume_mm: volume, room_mm: room }, plate) {
  const most = Math.max(volume[0], volume[1]);
  const rim = 0.03 * most;
  const margin = (volume[0] - room[0]) / 2;
  return html`<svg viewBox="${-rim} ${-rim} ${volume[0] + 2 * rim} ${volume[1] + 2 * rim}" aria-hidden="true">
    <rect class="volume" x="0" y="0" width=${volume[0]} height=${volume[1]}/>
    <rect class="margin" x=${margin} y=${margin} width=${Math.max(0, room[0])} height=${Math.max(0, room[1])}/>
    ${plate.pieces.map((piece, index) => {
      const [wide, deep] = piece.box_mm;
      // The plate's y points up on the page.
      const [x, y] = [piece.at_mm[0], volume[1] - piece.at_mm[1] - deep];
      const size = Math.min(0.07 * most, 0.8 * wide, 0.8 * deep);
      return svg`<rect class="box" x=${x} y=${y} width=${wide} height=${deep}><title>${named(piece)}</title></rect>
        <text class="number" x=${x + wide / 2} y=${y + deep / 2} font-size=${size}>${index + 1}</text>`;
    })}
  </svg>`;
}

/** @param {OnePlate["pieces"][number]} piece */
function named({ run, piece, pieces }) {
  return pieces > 1 ? say`${run}, piece ${piece} of ${pieces}` : run;
}

/**
 * @param {Sheet} sheet
 * @param {string} run
 */
function cut({ report }, run) {
  return (report?.runs.find(({ name }) => name === run)?.pieces.length ?? 1) > 1;
}

/**
 * @param {Sheet} sheet
 * @param {Layout} layout
 */
function statusWords({ fresh }, layout) {
  if (layout.asking) return say`Being laid out…`;
  if (!layout.answer) return "";
  if (!layout.fresh) return fresh ? say`Being laid out anew…` : say`This is as it was before; what is marked has to be mended first.`;
  const { plates, left_out } = layout.answer;
  const count = plates.reduce((sum, plate) => sum + plate.pieces.length, 0);
  const rest = left_out.length > 0 ? say` ${counted(left_out.length, "other")} on none.` : "";
  return plates.length === 0 ? say`Nothing fits on a plate.` : say`${counted(count, "piece")} on ${counted(plates.length, "plate")}.${rest}`;
}
