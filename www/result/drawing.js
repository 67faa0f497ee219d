// The drawing of a run in the page, and its pages for the printer.

import { html, nothing, svg } from "../words/html.js";
import { unsafeSVG } from "../vendor/directives/unsafe-svg.js";
import { counted } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { Papers, Sheet, Tile } from "./papers.js" */
/** @import { RunReport } from "../engine/messages.js" */

/**
 * The panel of a run's drawing: closed, nothing is asked of the engine.
 * @param {Papers} papers
 * @param {RunReport} run
 */
export function drawingPanel(papers, run) {
  const open = papers.isOpen(run.name);
  /** @param {Event} event */
  const toggled = (event) => papers.open(run.name, /** @type {HTMLDetailsElement} */ (event.target).open);
  return html`<details class="drawing-fold" ?open=${open} @toggle=${toggled}>
    <summary>Drawing to scale</summary>
    ${open ? drawn(papers, run) : nothing}
  </details>`;
}

/**
 * @param {Papers} papers
 * @param {RunReport} run
 */
function drawn(papers, run) {
  const { sheet, trouble } = papers.drawing(run.name);
  if (!sheet) return html`<p class="nothing">${trouble ? say`No drawing: ${trouble}` : say`Drawing…`}</p>`;
  const words = say`Drawing of ${run.name}, scale ${sheet.scale}: three views, an isometric, dimensions and tables. The numbers stand in the bend table too.`;
  return html`
    <div class="adder">
      ${printButtons(papers, sheet)}
      <label class="check"><input type="checkbox" .checked=${papers.trueSize} @change=${(/** @type {Event} */ event) =>
        papers.setTrueSize(/** @type {HTMLInputElement} */ (event.target).checked)}> <span>True size</span></label>
    </div>
    <div class="scroll sheet" tabindex="0" role="region" aria-label="Drawing of ${run.name}">
      <svg class=${papers.trueSize ? "true" : "fitted"} role="img" aria-label=${words} viewBox="0 0 ${sheet.width} ${sheet.height}"
        width="${sheet.width}mm" height="${sheet.height}mm">${onPaper(sheet)}</svg>
    </div>
    <p class="source">${aboutPrinting(sheet)} Print at 100 %, not fitted to the page, and measure the bar of 50 mm on it.</p>`;
}

/**
 * @param {Papers} papers
 * @param {Sheet} sheet
 */
function printButtons(papers, sheet) {
  const whole = pageOf(sheet.width, sheet.height);
  return html`
    ${sheet.tiles.length > 0
      ? html`<button type="button" @click=${() => papers.print(sheet, true)}>Print on ${counted(sheet.tiles.length, "A4 sheet")}</button>`
      : nothing}
    ${whole ? html`<button type="button" @click=${() => papers.print(sheet, false)}>Print on one ${whole.slice(0, 2).toUpperCase()} sheet</button>` : nothing}`;
}

/** @param {Sheet} sheet */
function aboutPrinting({ width, height, tiles }) {
  if (tiles.length === 0) return say`It fits one A4 sheet.`;
  const size = pageOf(width, height) ? "A3" : `${width} × ${height} mm`;
  return say`The sheet is ${size}; on A4 it takes ${counted(tiles.length, "sheet")} that overlap by 10 mm: lay the crosses on each other.`;
}

/**
 * The pages for the printer, which the style sheet shows there alone.
 * @param {Papers} papers
 */
export function printedPages(papers) {
  if (!papers.printing) return nothing;
  const { sheet, tiled } = papers.printing;
  const whole = { name: "", x: 0, y: 0, width: sheet.width, height: sheet.height };
  return html`<div class="print-pages" aria-hidden="true">
    <svg class="print-source" width="0" height="0"><defs><g id="print-sheet">${onPaper(sheet)}</g></defs></svg>
    ${tiled ? sheet.tiles.map((tile) => tilePage(sheet, tile)) : wholePage(whole)}
  </div>`;
}

/** @param {Tile} sheet */
function wholePage(sheet) {
  return html`<div class="print-page ${pageOf(sheet.width, sheet.height) ?? ""}">${windowOn(sheet)}</div>`;
}

/**
 * @param {Sheet} sheet
 * @param {Tile} tile
 */
function tilePage(sheet, tile) {
  const words = say`${sheet.run}: sheet ${tile.name} of ${sheet.tiles[0]?.name} to ${sheet.tiles.at(-1)?.name}`;
  return html`<div class="print-page tile ${tile.width < tile.height ? "a4-portrait" : "a4-landscape"}"><p>${words}</p>${windowOn(tile)}</div>`;
}

/** @param {Tile} tile */
function windowOn({ x, y, width, height }) {
  return html`<svg viewBox="${x} ${y} ${width} ${height}" width="${width}mm" height="${height}mm"><use href="#print-sheet"/></svg>`;
}

/**
 * What is on a sheet, with what the file's outermost element says of all of it. The engine writes it, and escapes every
 * word that a person gave.
 * @param {Sheet} sheet
 */
function onPaper(sheet) {
  return svg`<g font-family="sans-serif" fill="none" stroke="#000" stroke-linejoin="round">${unsafeSVG(sheet.inner)}</g>`;
}

/**
 * The style sheet's name for a page of that size, if it is one that printers have.
 * @param {number} width
 * @param {number} height
 */
function pageOf(width, height) {
  const name = { 297: "a4", 420: "a3" }[Math.max(width, height)];
  const short = name === "a4" ? 210 : 297;
  return name && Math.min(width, height) === short ? `${name}-${width > height ? "landscape" : "portrait"}` : undefined;
}
