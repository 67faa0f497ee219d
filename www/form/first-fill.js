// The usual order of a first fill and leak test, with its cautions.

import { html } from "../vendor/lit-html.js";
import { mark } from "../words/marks.js";

/** Each step, and what to mind at it. @type {[step: string, mind?: string][]} */
const ORDER = [
  ["Unplug the machine from the mains and leave it so until the loop is dry and tested.", "No power to anything but the pump before the last step."],
  ["Put on eye protection. Close the loop, with a plug or valve at every open port.", "A part that lets go under air pressure flies."],
  ["Put air in by a hand pump, or by a regulator with a relief valve set to half a bar (50 kPa) at most.",
    "Air stores energy where coolant does not. Never connect a compressor directly."],
  ["Wait 5 minutes, so that rings settle and the air takes the loop's temperature; then read gauge and thermometer."],
  ["Hold it for 15 to 60 minutes out of sun and draught, then read both again and type them in above."],
  ["Where it loses more than it may, brush soapy water on one joint after another and watch for bubbles; dry them well.",
    "Let the pressure out before you turn a fitting."],
  ["Let the air out slowly. Fill the reservoir with coolant, below its rim."],
  ["Power the pump alone, from a separate supply, in pulses of a few seconds; fill up in between.", "Never let the pump run dry."],
  ["Tilt and turn the machine until no more bubbles come, and fill up to the mark."],
  ["Let the pump run alone for 24 hours with paper towels under every joint, and look at each of them."],
  ["Check the level once more. Only then plug in the machine; look again after its first warm hours."],
];

/** What can hurt, where it is seen before anything is begun. */
export function careWithAir() {
  return html`<p class="note care">${mark("care")}<span><b>Care:</b> mains unplugged, eye protection on, half a bar (50 kPa) of air at most,
    by a hand pump or a regulator with a relief valve; never a compressor directly.</span></p>`;
}

export function firstFill() {
  return html`<details class="more first-fill">
    <summary>The usual order of a first fill and leak test</summary>
    <ol>${ORDER.map(([step, mind]) => html`<li>${step}${mind ? html` <span class="mind-step">${mark("care")} <b>Care:</b> ${mind}</span>` : ""}</li>`)}</ol>
    <p class="source">Common practice, no source. Local codes, the data sheets of your parts and licensed practice go first.</p>
  </details>`;
}
