// The preview's panel: the canvas or the drawing, and every move as a button, so that none needs a drag.

import { html, nothing } from "../words/html.js";
import { guard } from "../vendor/directives/guard.js";
import { ref } from "../vendor/directives/ref.js";
import { sign } from "../words/marks.js";
import { short } from "../words/numbers.js";
import { say } from "../words/say.js";
import { drawing } from "./drawing.js";
import { listen } from "./gestures.js";
import { handlesPart } from "./handles-part.js";
import { runsKey } from "./runs-key.js";

/** @import { Scene } from "../engine/messages.js" */
/** @import { Handles } from "./handles.js" */
/** @import { Preview } from "./host.js" */

/**
 * @typedef {{ preview: Preview, handles: Handles, scene: Scene | undefined, drawn: boolean, trouble: string | undefined, words: string,
 *   stale: boolean, selected: string | null, runs: string[], savePicture: () => void, setDrawn: (drawn: boolean) => void, redraw: () => void }} PreviewState
 *   `drawn`: the flat drawing is shown instead of the solid view. `words`: what is to be seen, for who cannot see it.
 */

/** Where the design can be looked at from: what the view calls it, and the button. */
const SIDES = [["corner", say`Corner`], ["front", say`Front`], ["back", say`Back`], ["left", say`Left`], ["right", say`Right`], ["top", say`Top`], ["bottom", say`Bottom`]];

const TURNS = { left: say`Turn left`, up: say`Turn up`, down: say`Turn down`, right: say`Turn right` };
const MOVES = { left: say`Move left`, up: say`Move up`, down: say`Move down`, right: say`Move right` };

/** @param {PreviewState} state */
export function previewPanel(state) {
  const { preview, handles, drawn, trouble, words, stale } = state;
  const held = drawn ? "" : handles.shown;
  return html`<section class="preview" id="preview" aria-labelledby="preview-title">
    <h2 class="unseen" id="preview-title">Preview</h2>
    <div class="stage" data-stale=${stale}>
      <canvas ${ref((canvas) => attach(canvas, preview, handles))} ?hidden=${drawn} tabindex="0" role="img"
        aria-label=${words} aria-describedby="preview-keys"></canvas>
      ${drawn ? guard([state.scene, words, state.selected], () => drawing(state.scene, words, state.selected)) : nothing}
      <div class="printed" aria-hidden="true"></div>
      ${!drawn && preview.squares > 0 ? html`<p class="paper">Squares of ${short(preview.squares)} mm</p>` : nothing}
      ${held ? html`<p class="held-words" aria-hidden="true">${held}</p>` : nothing}
      ${stale ? html`<p class="stale-words">The last complete design. Fill in or mend what is marked.</p>` : nothing}
    </div>
    ${runsKey(state.runs)}
    ${trouble ? html`<p class="trouble">${trouble}</p>` : nothing}
    <div class="moves">
      <div class="group" role="group" aria-label="Kind of preview">
        <button type="button" aria-pressed=${!drawn} ?disabled=${trouble !== undefined} @click=${() => state.setDrawn(false)}>Solid</button>
        <button type="button" aria-pressed=${drawn} @click=${() => state.setDrawn(true)}>Drawing</button>
      </div>
      ${drawn ? nothing : solidMoves(state)}
    </div>
    <p class="unseen" id="preview-keys">Arrow keys turn, with shift they move; plus and minus zoom; 0 fits.
      Enter goes to the next handle of the selected run, with shift to the one before; arrow keys with alt move it by ${handles.stride}, with
      shift too by ten times as much; x, y or z held keeps it to that axis; escape lets go.</p>
  </section>`;
}

/** @param {PreviewState} state */
function solidMoves({ preview, handles, stale, redraw, savePicture }) {
  /** @type {(dx: number, dy: number) => () => void} */
  const turn = (dx, dy) => () => preview.act((view) => view.orbit(dx, dy));
  /** @type {(dx: number, dy: number) => () => void} */
  const move = (dx, dy) => () => preview.act((view) => view.pan(dx, dy));
  /** @type {(factor: number) => () => void} */
  const zoom = (factor) => () => preview.act((view) => view.zoom(factor, 0.5, 0.5));
  const section = () => {
    preview.setSection(!preview.section);
    redraw();
  };
  const coolant = () => {
    preview.setCoolant(!preview.coolant);
    redraw();
  };
  return html`
    <div class="group" role="group" aria-label="Inside">
      <button type="button" aria-pressed=${preview.section} @click=${section}>Cut open</button>
      <button type="button" aria-pressed=${preview.coolant} @click=${coolant}>Show coolant</button>
    </div>
    <div class="group" role="group" aria-label="Look from">
      <button type="button" @click=${() => preview.act((view) => view.fit())}>Fit</button>
      ${SIDES.map(([side, words]) => html`<button type="button" @click=${() => preview.act((view) => view.look(side))}>${words}</button>`)}
    </div>
    <div class="group" role="group" aria-label="Zoom">
      <button type="button" @click=${zoom(1 / 1.25)}>${sign("less")}<span class="unseen">Zoom out</span></button>
      <button type="button" @click=${zoom(1.25)}>${sign("add")}<span class="unseen">Zoom in</span></button>
    </div>
    ${cluster(say`Turn`, TURNS, turn, 30)} ${cluster(say`Move`, MOVES, move, 40)}
    <button type="button" class="picture" ?disabled=${stale} @click=${savePicture}>Picture (.png)</button>
    ${handlesPart(handles, redraw)}`;
}

/**
 * Four buttons for four ways.
 * @param {string} what
 * @param {{ left: string, up: string, down: string, right: string }} names of the four
 * @param {(dx: number, dy: number) => () => void} by
 * @param {number} far pixels of the drag that one press stands for
 */
function cluster(what, names, by, far) {
  const ways = /** @type {const} */ ([["left", -far, 0], ["up", 0, -far], ["down", 0, far], ["right", far, 0]]);
  return html`<div class="group" role="group" aria-label=${what}>
    <span class="group-name" aria-hidden="true">${what}</span>
    ${ways.map(([way, dx, dy]) => html`<button type="button" @click=${by(dx, dy)}>${sign(way)}<span class="unseen">${names[way]}</span></button>`)}
  </div>`;
}

/** @type {WeakSet<Element>} */
const listened = new WeakSet();

/**
 * @param {Element | undefined} element
 * @param {Preview} preview
 * @param {Handles} handles
 */
function attach(element, preview, handles) {
  if (!(element instanceof HTMLCanvasElement) || listened.has(element)) return;
  listened.add(element);
  preview.attach(element);
  listen(element, preview, handles);
}
