// The app: holds the design and the engine's last answer, and turns every change into a new page.

import { render } from "./words/html.js";
import { copied } from "./clipboard.js";
import { Comparing } from "./compare/comparing.js";
import { Lengths } from "./design/lengths.js";
import { keysOf, valueAt } from "./design/pointer.js";
import { renamed } from "./design/rename.js";
import { stepName } from "./design/step-name.js";
import { Store } from "./design/store.js";
import { Edits } from "./edits.js";
import { Cards } from "./form/cards.js";
import { Sums } from "./form/sums.js";
import { placed } from "./form/sheet.js";
import { focusPlace, keepingFocus } from "./focus.js";
import { Keeping } from "./keep/keeping.js";
import { Measuring } from "./measure/measuring.js";
import { Notices } from "./notices.js";
import { Opening } from "./opening.js";
import { page } from "./page.js";
import { Layout } from "./plate/layout.js";
import { Plate } from "./plate/plate.js";
import { PreviewDesk } from "./preview/desk.js";
import { nextTheme, themeInForce } from "./preview/theme.js";
import { Asked } from "./result/asked.js";
import { Graphs } from "./result/graphs.js";
import { Papers } from "./result/papers.js";
import { Saving } from "./result/saving.js";
import { standing } from "./result/findings.js";
import { Sharing } from "./share/sharing.js";
import { WhatIf } from "./what-if/what-if.js";
import { Welcome } from "./welcome.js";
import { problemsInWords, reportInWords } from "./words/engine-words.js";
import { troubleReport } from "./words/trouble.js";
import { say } from "./words/say.js";

/** @import { Step } from "./design/store.js" */
/** @import { EngineLink } from "./engine/link.js" */
/** @import { Edition, Problem, Report } from "./engine/messages.js" */
/** @import { Sheet } from "./form/sheet.js" */

// The preview's meshes: an error that no screen shows, at a fraction of the triangles of a file, mm.
const TO_LOOK_AT = 0.05;
// An answer that takes longer than this makes the page say that it is waiting, ms.
const NOTICEABLE = 400;
// How long typing must rest before the result is spoken, ms.
const REST = 1200;

export class App {
  /** @type {Problem[]} */ problems = [];
  /** @type {Report | undefined} */ report;
  /** @type {string | null} */ selected = null;
  hint = "";
  spoken = "";
  cards = new Cards();
  lengths = new Lengths();
  sums = new Sums();
  #answered = 0;
  #settled = 0;
  #waitingLong = false;
  #frame = 0;
  #rest = 0;
  #slow = 0;
  /** @type {string | undefined} */ #goTo;

  /**
   * @param {{ root: HTMLElement, store: Store, shelf: import("./keep/shelf.js").Shelf,
   *   words: import("./words/vocabulary.js").Vocabulary, presets: import("./words/presets.js").Presets,
   *   link: EngineLink }} parts
   */
  constructor({ root, store, shelf, words, presets, link }) {
    this.root = root;
    this.words = words;
    this.presets = presets;
    this.link = link;
    this.store = store;
    this.keeping = new Keeping(this, shelf);
    this.opening = new Opening(this);
    this.edits = new Edits(this);
    this.notices = new Notices(() => this.redraw());
    this.preview = new PreviewDesk(this);
    this.papers = new Papers(this);
    this.graphs = new Graphs(this);
    this.comparing = new Comparing(this);
    this.whatIf = new WhatIf(this);
    this.plate = new Plate(this);
    this.layout = new Layout(this);
    this.asked = new Asked(this);
    this.saving = new Saving(this);
    this.sharing = new Sharing(this);
    this.measuring = new Measuring(this.redraw);
    this.welcome = new Welcome();
  }

  start() {
    this.store.onChange(() => {
      this.keeping.changed();
      this.#changed();
    });
    this.preview.solid.setTheme(themeInForce());
    this.root.replaceChildren();
    this.opening.listen();
    addEventListener("keydown", (event) => this.#undoKey(event));
    this.keeping.start();
    this.#changed();
    this.#draw();
  }

  get findings() {
    return this.report?.findings ?? [];
  }

  /** Whether the report is about the design as it is, or will be before anyone notices. */
  get fresh() {
    return this.problems.length === 0 && this.report !== undefined && !this.#waitingLong;
  }

  /** Whether the engine has answered everything about the design as it is, so that what can wait may be asked for. */
  get settled() {
    return this.#settled === this.link.edition;
  }

  /** Whether it is known what the engine makes of the design as it is: a report, or what has to be mended. */
  get known() {
    return this.#answered === this.link.edition;
  }

  get text() {
    return JSON.stringify(this.store.design);
  }

  /** Draws the page in the next frame. */
  redraw = () => {
    if (this.#frame === 0) this.#frame = requestAnimationFrame(() => this.#draw());
  };

  /**
   * @param {string} subject
   * @param {import("./notices.js").Notice | undefined} notice
   */
  say(subject, notice) {
    this.notices.say(subject, notice);
  }

  /**
   * Takes an answer of the engine about an edition of the design.
   * @param {Edition} answer
   */
  take(answer) {
    // A mesh of an overtaken edition is still the newest that there is of its run; the rest of it is dropped.
    if (answer.kind === "mesh") return this.preview.solid.setTube(answer.run, answer);
    if (answer.edition !== this.link.edition) return;
    if (answer.kind === "problems") {
      this.problems = problemsInWords(answer.problems);
      this.#hasAnswered(answer.edition);
    } else if (answer.kind === "report") {
      this.problems = [];
      this.report = reportInWords(answer.report);
      if (!answer.report.runs.some((run) => run.name === this.selected)) this.selected = null;
      this.#hasAnswered(answer.edition);
    } else if (answer.kind === "scene") {
      this.keeping.seen(answer.scene);
      this.preview.take(answer.scene, this.report?.runs.filter((run) => run.made).map((run) => run.name) ?? []);
    } else if (answer.kind === "noMesh") {
      this.say(`mesh ${answer.run}`, { kind: "trouble", text: `${answer.run}: ${answer.message}` });
    } else if (answer.kind === "sameMesh") this.say(`mesh ${answer.run}`, undefined);
    if (answer.kind === "done" || answer.kind === "problems") {
      this.#settled = answer.edition;
      this.root.dataset.answered = String(answer.edition);
      this.preview.handles.answered();
    }
    this.redraw();
  }

  /**
   * The engine's thread was replaced.
   * @param {string} reason
   * @param {boolean} again whether the design was given to the new one
   */
  engineTrouble(reason, again) {
    const next = again
      ? say`It was started anew and your design is as you left it.`
      : say`Your design is kept as you left it; undo the last change, or change what it was about.`;
    this.#trouble("engine", say`The engine stopped: ${reason}. ${next}`, reason);
  }

  /**
   * Says that something gave way, with a report to copy.
   * @param {string} subject
   * @param {string} text
   * @param {string} what the report's word for it
   */
  #trouble(subject, text, what) {
    const copy = async () => {
      const done = await copied(troubleReport(what, this.store.design));
      this.say("report", { kind: "word", text: done ? say`The report is copied. It names the browser and what went wrong, and nothing of your design.` : say`The browser does not let the page copy.` });
    };
    this.say(subject, { kind: "trouble", text, action: { label: say`Copy a report`, run: () => void copy() } });
  }

  themeChanged() {
    this.preview.solid.setTheme(themeInForce());
    this.redraw();
  }

  nextTheme() {
    nextTheme();
    this.themeChanged();
  }

  /** The next design is another one: nothing of it is selected, and the preview is fitted to it. */
  anotherDesign() {
    this.selected = null;
    this.preview.solid.fitNext();
    this.whatIf.anotherDesign();
    this.plate.anotherDesign();
    this.layout.anotherDesign();
  }

  /** Follows the focus: the hint of the field at the foot of the page, the run that is worked on in the preview. */
  focused = (/** @type {FocusEvent} */ event) => {
    const element = /** @type {Element} */ (event.target);
    const hint = document.getElementById(`${element.id}-hint`)?.textContent ?? "";
    const card = element.closest("[data-list=runs]");
    const run = card ? this.store.design.runs[Number(card.id.split("-").at(-1))]?.name : undefined;
    if (run !== undefined) this.select(run);
    if (hint === this.hint) return;
    this.hint = hint;
    this.redraw();
  };

  #changed() {
    this.whatIf.designChanged();
    this.link.show(this.text, TO_LOOK_AT);
    // For the tests: which edition the engine was given, and which it has answered.
    this.root.dataset.sent = String(this.link.edition);
    clearTimeout(this.#slow);
    this.#slow = setTimeout(() => {
      if (this.#answered === this.link.edition) return;
      this.#waitingLong = true;
      this.redraw();
    }, NOTICEABLE);
    this.redraw();
  }

  /** @param {number} edition */
  #hasAnswered(edition) {
    this.#answered = edition;
    this.#waitingLong = false;
    void this.comparing.refresh();
    void this.whatIf.refresh();
    void this.plate.refresh();
    void this.layout.refresh();
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => {
      this.spoken = standing(this.store.design, this.problems, this.findings);
      this.redraw();
    }, REST);
  }

  #draw() {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    if (this.#goTo !== undefined) this.#unfold(this.#goTo);
    const sheet = this.#sheet();
    keepingFocus(() => render(page(this, sheet), this.root));
    if (this.#goTo !== undefined) {
      focusPlace(this.#goTo);
      this.#goTo = undefined;
    }
  }

  /** @returns {Sheet} */
  #sheet() {
    const { store, words, presets, report, fresh, cards, selected, papers, lengths, sums } = this;
    const { design } = store;
    return {
      design, words, presets, report, fresh, cards, selected, papers, lengths, sums,
      ...placed(design, this.problems, this.problems.length > 0 ? [] : this.findings),
      act: {
        set: (pointer, value) => store.set(pointer, value),
        change: (edit) => store.change(edit(store.design)),
        update: (pointer, edit) => store.set(pointer, edit(valueAt(store.design, pointer))),
        rename: (list, index, name) => store.change(renamed(store.design, list, index, name), `/${list}/${index}/name`),
        applyFix: (finding) => void this.edits.applyFix(finding),
        cut: (run) => void this.edits.cut(run),
        edit: (request, goTo) => void this.edits.edit(request, goTo),
        save: (request) => void this.saving.save(request),
        goTo: (pointer) => this.show(pointer),
        select: (run) => this.select(run),
        redraw: this.redraw,
      },
    };
  }

  /**
   * What a step is called: "bend radius of “pump to block”".
   * @param {Step} step
   */
  nameOf(step) {
    return step.name ?? stepName(step.before.design, step.after.design, this.words);
  }

  /**
   * Puts the focus on a place when the page is drawn next.
   * @param {string} pointer
   */
  show(pointer) {
    this.#goTo = pointer;
    this.redraw();
  }

  /**
   * Unfolds the card that a place is in.
   * @param {string} pointer
   */
  #unfold(pointer) {
    const [list, index] = keysOf(pointer);
    const thing = valueAt(this.store.design, `/${list}/${index}`);
    if (typeof thing === "object" && thing) this.cards.set(thing, true);
  }

  /**
   * Undo and redo by key, except in a text's own field, where the browser undoes the typing.
   * @param {KeyboardEvent} event
   */
  #undoKey(event) {
    const typing = event.target instanceof Element && event.target.matches("input[type=text], textarea");
    if (typing || event.altKey || !(event.ctrlKey || event.metaKey)) return;
    const key = event.key.toLowerCase();
    if (key === "z" && !event.shiftKey) this.store.undo();
    else if (key === "y" || key === "z") this.store.redo();
    else return;
    event.preventDefault();
  }

  /** @param {string | null} run */
  select(run) {
    if (this.selected === run) return;
    this.selected = run;
    this.preview.solid.setSelected(run);
    this.preview.handles.refresh();
    this.redraw();
  }
}
