// The first visit: three steps from ports to files, beside a finished example, until they are put away.

import { html, nothing } from "./words/html.js";
import { glossaryButton } from "./glossary.js";
import { measureButton } from "./measure/dialog.js";
import { readSlot, writeSlot } from "./keep/slots.js";
import { sign } from "./words/marks.js";

/** @import { App } from "./app.js" */

const SLOT = "tubewright.welcomed";

export class Welcome {
  shown = readSlot(SLOT) !== "yes";

  putAway() {
    this.shown = false;
    // Steps that come again are no loss worth words.
    writeSlot(SLOT, "yes");
  }
}

/** @param {App} app */
export function welcome(app) {
  if (!app.welcome.shown) return nothing;
  const away = () => {
    app.welcome.putAway();
    app.redraw();
    document.getElementById("form")?.focus();
  };
  return html`<section class="welcome" aria-labelledby="welcome-title">
    <header><h2 id="welcome-title">From your ports to printed tubes</h2>
      <button type="button" class="quiet" @click=${away}>${sign("remove")}<span class="unseen">Put these steps away</span></button></header>
    <ol>
      <li><b>Where are your ports?</b> <span>Measure each threaded hole from one corner of the case, and say which fitting it carries.</span>
        <span class="ways"><a href="#ports">To the ports</a> ${measureButton()}</span></li>
      <li><b>Which tube?</b> <span>Say which ports it joins, and give it corners, a coil or points where it needs them. What is found about it stands beside the form.</span>
        <span class="ways"><a href="#runs">To the tubes</a></span></li>
      <li><b>Get the files.</b> <span>For a print service or your own printer, with a sheet on how to finish, fit and test them.</span>
        <span class="ways"><a href="#files">To the files</a></span></li>
    </ol>
    <p class="source">The small tube here is a finished example: change it, or <button type="button" class="link" @click=${() => app.opening.startBlank()}>start from a blank design</button>. Everything stays on this machine. ${glossaryButton()}</p>
  </section>`;
}
