// What print services ask of a run's file, and what the file answers: asked of the engine while its list is open.

import { html, nothing } from "../words/html.js";
import { wordsOf } from "../words/errors.js";
import { mark } from "../words/marks.js";
import { fixed, grouped, short } from "../words/numbers.js";
import { engineWord } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { Inspection } from "../engine/messages.js" */
/** @import { Sheet } from "../form/sheet.js" */

/** What each question is called. */
const NAMES = /** @type {Record<string, string>} */ ({
  closed: say`Closed`, one_body: say`One body`, volume: say`Volume`, unit: say`Unit`, wall: say`Wall`, wall_for_size: say`Wall for its size`,
  room: say`Room in the printer`, triangles: say`Triangles`, size: say`File size`,
});

/** @typedef {number | "fit"} Fineness */
/** @typedef {{ key: string, answer: Inspection | undefined, trouble: string }} Told */

export class Asked {
  /** @type {App} */
  #app;
  /** @type {Set<string>} the runs whose list is open */
  #open = new Set();
  /** @type {Map<string, Told>} */
  #told = new Map();
  #busy = false;

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  /** @param {string} run */
  isOpen(run) {
    return this.#open.has(run);
  }

  /**
   * @param {string} run
   * @param {boolean} open
   */
  unfold(run, open) {
    if (this.isOpen(run) === open) return;
    if (open) this.#open.add(run);
    else this.#open.delete(run);
    this.#app.redraw();
  }

  /**
   * The answer about a run as far as it is known, asked for anew where it is not that of the design as it is.
   * @param {string} run
   */
  of(run) {
    const { link, text, fresh, saving: { deviation, compensated } } = this.#app;
    const key = `${link.edition} ${deviation} ${compensated}`;
    const told = this.#told.get(run);
    const current = told?.key === key;
    // One at a time: while one is answered the design may move on by many keys, and only the last of them is asked about next.
    if (fresh && !current && !this.#busy) void this.#ask(text, { run, deviation, ...(compensated ? {} : { compensated }) }, key);
    return { told, current };
  }

  /**
   * @param {string} text
   * @param {{ run: string, deviation: Fineness, compensated?: boolean }} request
   * @param {string} key
   */
  async #ask(text, request, key) {
    this.#busy = true;
    /** @type {Told} */
    let told;
    try {
      told = { key, answer: JSON.parse(await this.#app.link.ask("inspect", text, JSON.stringify(request))), trouble: "" };
    } catch (error) {
      told = { key, answer: undefined, trouble: wordsOf(error) };
    }
    this.#told.set(request.run, told);
    this.#busy = false;
    this.#app.redraw();
  }
}

/**
 * @param {Sheet} sheet
 * @param {Asked} asked
 * @param {string} run
 * @param {string} id
 */
export function askedOf(sheet, asked, run, id) {
  const open = asked.isOpen(run);
  return html`<details class="asked-of" ?open=${open} @toggle=${(/** @type {Event} */ event) => asked.unfold(run, /** @type {HTMLDetailsElement} */ (event.target).open)}>
    <summary>What a print service asks<span class="unseen"> of ${run}</span></summary>
    ${open && sheet.fresh ? answers(asked, run, id) : open ? html`<p class="source">Fill in or mend what is marked first.</p>` : nothing}
  </details>`;
}

/**
 * @param {Asked} asked
 * @param {string} run
 * @param {string} id
 */
function answers(asked, run, id) {
  const { told, current } = asked.of(run);
  if (!told) return html`<p class="source" role="status">Writing the file and reading it back…</p>`;
  const { answer, trouble } = told;
  if (!answer) return html`<p class="trouble">${trouble}</p>`;
  const missed = answer.questions.filter((question) => !question.passes).length;
  const size = answer.bytes < 100_000 ? `${fixed(answer.bytes / 1000, 1)} kB` : `${fixed(answer.bytes / 1e6, 2)} MB`;
  return html`<div data-stale=${!current}>
    <p class="asked-sum" id="${id}-sum">${mark(missed === 0 ? "fine" : "care")} <span>${missed === 0 ? say`Passes all that is asked` : say`${missed} of ${answer.questions.length} not passed`},
      as STL with ${grouped(answer.triangles)} triangles in ${size}, within ${short(answer.deviation_mm, 6)} mm of the exact tube.</span></p>
    <ul class="asked-list" aria-labelledby="${id}-sum">${answer.questions.map((question) => html`<li data-code=${question.code} data-passes=${question.passes}>
      ${mark(question.passes ? "fine" : "care")}<div><b>${NAMES[question.code] ?? question.code}: ${question.passes ? say`passed` : say`not passed`}.</b> ${engineWord(question.message)}
        <span class="source">${engineWord(question.source)}</span></div></li>`)}</ul>
  </div>`;
}
