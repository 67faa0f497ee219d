// The page's markup, as a function of what the app holds.

import { html, nothing } from "./words/html.js";
import { comparePanel } from "./compare/panel.js";
import { ACCEPTED } from "./design/open.js";
import { MARK } from "./engine/home.js";
import { form } from "./form/sections.js";
import { section } from "./form/section.js";
import { isBlank } from "./form/sheet.js";
import { platePanel } from "./plate/panel.js";
import { platesFold } from "./plate/plates.js";
import { previewPanel } from "./preview/panel.js";
import { chosenTheme } from "./preview/theme.js";
import { printedPages } from "./result/drawing.js";
import { files } from "./result/files.js";
import { findingsList, standing } from "./result/findings.js";
import { glance } from "./result/glance.js";
import { loopPanel } from "./result/loop.js";
import { glossaryButton, glossaryDialog } from "./glossary.js";
import { measureDialog } from "./measure/dialog.js";
import { measureSheet } from "./measure/sheet.js";
import { originDialog } from "./result/origin.js";
import { plotsPanel } from "./result/plots.js";
import { whatIfPanel } from "./what-if/panel.js";
import { designsDialog, openDesigns } from "./keep/dialog.js";
import { openShare, shareDialog } from "./share/dialog.js";
import { welcome } from "./welcome.js";
import { languageChoice } from "./words/choice.js";
import { mark } from "./words/marks.js";
import { say } from "./words/say.js";

/** @import { App } from "./app.js" */
/** @import { Step } from "./design/store.js" */
/** @import { Sheet } from "./form/sheet.js" */

/** Where a person on a small screen jumps to. */
const JUMPS = [["ports", say`Ports`], ["runs", say`Runs`], ["making", say`Making`], ["leak-test", say`Leak test`], ["preview", say`Preview`], ["result", say`Result`], ["whole-loop", say`Loop`], ["plots", say`Plots`], ["what-if", say`What if`], ["plate", say`On the plate`], ["files", say`Files`], ["compare", say`Compare`]];

const THEMES = { system: say`system`, light: say`light`, dark: say`dark` };

/**
 * The whole page.
 * @param {App} app
 * @param {Sheet} sheet
 */
export function page(app, sheet) {
  const { problems, findings } = app;
  const wrong = problems.some((problem) => !isBlank(sheet.design, problem));
  const worst = wrong ? "mend" : problems.length > 0 ? "note" : findings.some((one) => one.severity === "stop") ? "stop"
    : findings.some((one) => one.severity === "care") ? "care" : "fine";
  const stands = standing(sheet.design, problems, findings);
  const filesState = app.saving.state();
  return html`
    <a class="skip" href="#form">Skip to the form</a>
    <a class="skip" href="#result">Skip to the result</a>
    ${header(app)} ${app.notices.render()}
    <main class="bench" @focusin=${app.focused}>
      <div class="form">${welcome(app)} <div id="form" tabindex="-1">${form(sheet)}</div></div>
      <div class="side">
        ${previewPanel(app.preview.state())}
        <p class="standing">${sheet.design.runs.length > 0 || problems.length > 0 ? mark(worst) : nothing} <span>${stands}</span>
          <a href="#result">See the result</a></p>
        <nav class="within" aria-label="In the answers">${JUMPS.slice(JUMPS.findIndex(([id]) => id === "result")).map(([id, words]) => html`<a href="#${id}">${words}</a>`)}</nav>
        <div class="answers" id="answers">
          ${section("result", say`Result`, nothing, html`${findingsList(sheet, problems, findings)} ${glance(sheet)}`)}
          ${section("whole-loop", say`What the loop does`, nothing, loopPanel(sheet))}
          ${section("plots", say`Plots`, nothing, plotsPanel(sheet, app.graphs, filesState.save))}
          ${section("what-if", say`What if`, nothing, whatIfPanel(sheet, app.whatIf))}
          ${section("plate", say`On the plate`, nothing, [platePanel(sheet, app.plate, filesState), sheet.design.runs.length > 0 ? platesFold(sheet, app.layout, filesState) : nothing])}
          ${section("files", say`Files`, nothing, files(sheet, filesState))}
          ${section("compare", say`Compare`, nothing, comparePanel(sheet, app.comparing))}
          <p class="source private">Nothing that you type leaves this machine: there is no account, no cookie, nothing is counted, and the page's own policy forbids it to ask anything of another place.</p>
          <p>${glossaryButton()}</p>
        </div>
      </div>
    </main>
    <footer class="foot" data-idle=${app.hint === ""}><p aria-hidden="true">${app.hint || say`A hint for the field that you are in stands here.`}</p></footer>
    <p class="unseen" role="status" id="spoken">${app.spoken}</p>
    ${app.opening.dropping ? html`<p class="dropping">Drop the design here to open it</p>` : nothing}
    ${originDialog(sheet)} ${designsDialog(app)} ${shareDialog(app)} ${measureDialog(app.measuring)} ${glossaryDialog()}
    ${printedPages(app.papers)} ${app.measuring.printing ? measureSheet() : nothing}`;
}

/** @param {App} app */
function header(app) {
  const { store, opening, presets } = app;
  const theme = chosenTheme();
  return html`<header class="top">
    <img src=${MARK} alt="" width="28" height="28">
    <h1>Tubewright</h1>
    <div class="tools" role="group" aria-label="The design as a whole">
      <button type="button" popovertarget="start">Start from…</button>
      <button type="button" aria-haspopup="dialog" @click=${() => openDesigns(app)}>Designs</button>
      <button type="button" ?disabled=${!app.fresh} @click=${() => app.saving.save({ kind: "design" })}>Save</button>
      <button type="button" aria-haspopup="dialog" ?disabled=${!app.fresh} @click=${() => openShare(app)}>Share</button>
      <!-- Not disabled at the end of the steps: the focus would be lost with the last of them. -->
      ${stepButton(app, say`Undo`, say`Nothing to undo`, store.lastStep, () => store.undo())} ${stepButton(app, say`Redo`, say`Nothing to redo`, store.nextStep, () => store.redo())}
      <button type="button" @click=${() => app.nextTheme()}>Theme: ${THEMES[theme]}</button>
      ${languageChoice(app)}
    </div>
    <nav class="jump" aria-label="On this page">
      ${JUMPS.map(([id, words]) => html`<a href="#${id}">${words}</a>`)}
    </nav>
    <div id="start" popover class="menu">
      <h2>Start from</h2>
      <p class="source">What you have now stays under “Designs”, and undo brings it back.</p>
      <button type="button" class="choice" @click=${() => opening.startBlank()}><b>A blank design</b><span>Type in your own ports.</span></button>
      ${presets.demos.map((demo) => html`<button type="button" class="choice" @click=${() => opening.startDemo(demo.design, demo.label)}>
        <b>Demo: ${demo.label}</b><span>${demo.about}</span></button>`)}
      <button type="button" class="choice" @click=${() => document.getElementById("open-file")?.click()}>
        <b>A design file…</b><span>One that you saved before: the design (.json), or a 3MF file or archive that it went into. You can also drop it anywhere on the page.</span></button>
      <input class="unseen" id="open-file" type="file" accept=${ACCEPTED} tabindex="-1" aria-label="Design file to open"
        @change=${(/** @type {Event} */ event) => opening.openFrom(/** @type {HTMLInputElement} */ (event.target))}>
    </div>
  </header>`;
}

/**
 * Undo or redo, named after what it does.
 * @param {App} app
 * @param {string} what
 * @param {string} none where there is no step
 * @param {Step | undefined} step
 * @param {() => void} press
 */
function stepButton(app, what, none, step, press) {
  const name = step && app.nameOf(step);
  return html`<button type="button" aria-disabled=${!step} title=${name ? `${what}: ${name}` : none}
    @click=${press}>${what}${name ? html`<span class="what">: ${name}</span>` : nothing}</button>`;
}
