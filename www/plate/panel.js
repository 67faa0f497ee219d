// The panel that shows how a tube stands on the printer's plate, and the ways that it could.

import { html, nothing } from "../words/html.js";
import { guard } from "../vendor/directives/guard.js";
import { live } from "../vendor/directives/live.js";
import { mark, SEVERITY } from "../words/marks.js";
import { counted, fixed } from "../words/numbers.js";
import { whereFrom } from "../result/origin.js";
import { against, sizeWords } from "./against.js";
import { platePicture } from "./picture.js";
import { say } from "../words/say.js";

/** @import { Finding } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */
/** @import { FilesState } from "../result/files.js" */
/** @import { Plate, Way } from "./plate.js" */

/**
 * @param {Sheet} sheet
 * @param {Plate} plate
 * @param {FilesState} files
 */
export function platePanel(sheet, plate, files) {
  if (sheet.design.runs.length === 0) return html`<p class="nothing">No run yet. Once there is one, this shows how it stands when it is printed.</p>`;
  return html`<details class="plate" ?open=${plate.open} @toggle=${(/** @type {Event} */ event) => plate.unfold(/** @type {HTMLDetailsElement} */ (event.target).open)}>
    <summary>How each tube stands when it is printed</summary>
    ${plate.open ? opened(sheet, plate, files) : nothing}
  </details>`;
}

/**
 * @param {Sheet} sheet
 * @param {Plate} plate
 * @param {FilesState} files
 */
function opened(sheet, plate, files) {
  const { answer, trouble, fresh, ways, shown } = plate;
  return html`<div class="plate-body">
    <p class="about">What counts, about in this order: that it fits, that no resin is trapped, that no bore lies too flat, that the sealing bands stay clear of supports, then supports and height. The plate is drawn below; a resin printer holds it upside down.</p>
    ${chooser(plate)} ${pieceChooser(plate)}
    <p class="plate-status" role="status">${statusWords(sheet, plate)}</p>
    ${trouble ? html`<p class="trouble">${trouble}</p>` : nothing}
    ${answer && shown ? html`<div class="plate-answer" data-stale=${!fresh}>
        ${answer.findings.length > 0 ? html`<ul class="notes">${answer.findings.map((finding) => html`<li class="note ${finding.severity}">${mark(finding.severity)}
          <div><p><b>${SEVERITY[finding.severity]}:</b> ${finding.message}</p></div>
          ${finding.fix ? html`<button type="button" ?disabled=${!fresh} @click=${() => sheet.act.applyFix(finding)}>${isCut(finding) ? say`Cut it so` : say`Mend it so`}<span class="unseen">: ${finding.message}</span></button>` : nothing}</li>`)}</ul>` : nothing}
        ${guard([answer, shown.id, sheet.words], () => platePicture(answer, shown))}
        <div class="adder">${/** @type {const} */ (["stl", "3mf"]).map((kind) => html`<button type="button" ?disabled=${!fresh || !sheet.fresh}
          @click=${() => files.save({ kind, run: answer.run, ...(answer.pieces > 1 ? { piece: answer.piece } : {}), deviation: files.deviation, stance: shown.stood })}>${kind.toUpperCase()}, standing as drawn</button>`)}
          ${ways.some((way) => way.own) ? html`<button type="button" id="plate-best" ?disabled=${!fresh} @click=${() => plate.stand(undefined)}>Leave it to the best found</button>` : nothing}</div>
        ${answer.service_price === null ? nothing : html`<p class="service-price">The print service asks ${fixed(answer.service_price, 2)} for it in your money, however it stands; its least order is for all tubes together.</p>`}
        <ul class="stance-list">${ways.map((way) => wayCard(sheet, plate, way, way.id === shown.id))}</ul>
      </div>` : nothing}
  </div>`;
}

/** @param {Plate} plate */
function chooser(plate) {
  if (plate.made.length < 2) return nothing;
  /** @param {Event} event */
  const take = (event) => plate.choose(/** @type {HTMLSelectElement} */ (event.target).value);
  return html`<div class="field">
    <label for="plate-run">Run</label>
    <select id="plate-run" .value=${live(plate.run ?? "")} @change=${take}>
      ${plate.made.map((name) => html`<option value=${name} ?selected=${plate.run === name}>${name}</option>`)}
    </select>
  </div>`;
}

/** @param {Plate} plate */
function pieceChooser(plate) {
  if (plate.pieces < 2) return nothing;
  return html`<fieldset class="choice"><legend>Piece</legend>
    ${Array.from({ length: plate.pieces }, (_, at) => at + 1).map((piece) => html`<label>
      <input type="radio" name="plate-piece" .checked=${live(plate.piece === piece)} @change=${() => plate.choosePiece(piece)}> ${piece} of ${plate.pieces}</label>`)}
  </fieldset>`;
}

/**
 * Whether what a finding offers is to cut the run.
 * @param {Finding} finding
 */
function isCut({ fix }) {
  return fix?.some((step) => step.path.endsWith("/cuts")) ?? false;
}

/**
 * @param {Sheet} sheet
 * @param {Plate} plate
 * @param {Way} way
 * @param {boolean} shown
 */
function wayCard(sheet, plate, way, shown) {
  const { answer, fresh } = plate;
  if (!answer) return nothing;
  return html`<li class="stance-card" data-shown=${shown} data-present=${way.present}>
    <h3 id="${way.id}-name">${way.name} ${way.present ? html`<span class="now">as it stands now</span>` : nothing}</h3>
    <p class="stance-size">${sizeWords(way.stance)}</p>
    ${costWords(sheet, plate, way)}
    <ul class="parts">${against(answer, way.stance).map(({ kind, words }) => html`<li>${mark(kind)}<span>${words}</span></li>`)}</ul>
    <div class="adder">
      <button type="button" id="${way.id}-look" aria-pressed=${shown} @click=${() => plate.look(way.id)}>Show<span class="unseen"> ${way.name}</span></button>
      ${way.present && way.own ? nothing : html`<button type="button" id="${way.id}-stand" ?disabled=${!fresh} @click=${() => plate.stand(way)}>Stand it so<span class="unseen">: ${way.name}</span></button>`}
    </div>
  </li>`;
}

/**
 * What its material costs in that stance: "Material 1.20 to 1.63 in your money".
 * @param {Sheet} sheet
 * @param {Plate} plate
 * @param {Way} way
 */
function costWords(sheet, { run }, { stance }) {
  const { support_mm3, material_cost } = stance;
  if (material_cost === null) return nothing;
  const at = `/runs/${sheet.report?.runs.findIndex(({ name }) => name === run) ?? 0}/stances/0`;
  const asked = [{ path: `${at}/material_cost`, value: material_cost }, { path: `${at}/support_mm3`, value: support_mm3 }];
  return html`<p class="stance-cost">Material <b>${material_cost.map((end) => fixed(end, 2)).join(say` to `)}</b> in your money, up to supports and
    <span class="asked">waste ${whereFrom(sheet, asked, say`the cost in this stance`)}</span></p>`;
}

/**
 * @param {Sheet} sheet
 * @param {Plate} plate
 */
function statusWords({ report, fresh }, plate) {
  if (plate.slow) return say`Being looked for…`;
  if (report && fresh && plate.made.length === 0) return say`No run can be made as it is; see what is found.`;
  if (plate.answer && !plate.fresh) return fresh ? say`Being looked for anew…` : say`This is as it was before; what is marked has to be mended first.`;
  const found = plate.answer?.stances.length;
  return found ? say`${counted(found, "way")} to stand, the best first.` : "";
}
