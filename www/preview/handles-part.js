// The handles as buttons: whatever can be dragged can be chosen, moved and added by pressing.

import { html } from "../words/html.js";
import { sign } from "../words/marks.js";
import { say } from "../words/say.js";
import { WAYS } from "./ways.js";

/** @import { Handles } from "./handles.js" */

const ARROWS = /** @type {const} */ ([["left", -1, 0, say`Move handle left`], ["up", 0, 1, say`Move handle up`], ["down", 0, -1, say`Move handle down`], ["right", 1, 0, say`Move handle right`]]);

/**
 * @param {Handles} handles
 * @param {() => void} redraw
 */
export function handlesPart(handles, redraw) {
  // Until a handle is chosen there is nothing to move, and what cannot be pressed is no stop for the Tab key.
  const idle = handles.words === "";
  return html`<div class="group" role="group" aria-label="Handles">
      <span class="group-name" aria-hidden="true">Handle</span>
      <button type="button" @click=${() => handles.next(-1)}>${sign("left")}<span class="unseen">Handle before</span></button>
      <button type="button" @click=${() => handles.next(1)}>${sign("right")}<span class="unseen">Next handle</span></button>
    </div>
    <div class="group" role="group" aria-label="Move handle along">
      <span class="group-name" aria-hidden="true">along</span>
      ${WAYS.map((way) => html`<button type="button" ?disabled=${idle} aria-pressed=${handles.way === way} @click=${() => {
        handles.way = way;
        redraw();
      }}><span class="unseen">Along </span>${way === "plane" ? say`plane` : way}</button>`)}
    </div>
    <div class="group" role="group" aria-label="Move handle by ${handles.stride}">
      <span class="group-name" aria-hidden="true">by ${handles.stride}</span>
      ${ARROWS.map(([way, across, up, words]) => html`<button type="button" ?disabled=${idle} @click=${() => handles.nudge([across, up], 1)}>
        ${sign(way)}<span class="unseen">${words}</span></button>`)}
    </div>
    <div class="group" role="group" aria-label="Corners">
      <button type="button" @click=${() => handles.addCorner()}>Put a corner here</button>
    </div>`;
}
