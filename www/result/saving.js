// Saving files: which, how fine, and what is under way. Anything that takes longer than a moment says how far it is, and can
// be given up.

import { wordsOf } from "../words/errors.js";
import { download } from "./download.js";
import { FINENESS } from "./files.js";
import { inLanguage } from "../words/files.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { FileRequest } from "./files.js" */
/** @import { Fineness } from "./asked.js" */

// What is made sooner than this needs no words, ms.
const NOTICEABLE = 500;
const NAMES = /** @type {Record<string, string>} */ ({ pack: say`the pack`, all: say`the archive of all files`, coupon: say`the coupon` });

export class Saving {
  /** @type {App} */
  #app;
  /** @type {Fineness} how closely files follow the exact tube: mm, or as the printer takes them */
  deviation = FINENESS[0].deviation;
  /** Whether files are corrected by a coupon that was measured. */
  compensated = true;
  /** Whether a pack is under way. */
  making = false;
  #givenUp = false;

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  /** @returns {import("./files.js").FilesState} */
  state() {
    return {
      deviation: this.deviation,
      asked: this.#app.asked,
      making: this.making,
      setDeviation: (deviation) => {
        this.deviation = deviation;
        this.#app.redraw();
      },
      compensated: this.compensated,
      setCompensated: (compensated) => {
        this.compensated = compensated;
        this.#app.redraw();
      },
      save: (request) => void this.save(request),
    };
  }

  /** @param {FileRequest} request */
  async save(request) {
    const { link, text } = this.#app;
    // A pack takes seconds: a second one asked for meanwhile would be the same.
    if (request.kind === "pack" && this.making) return;
    if (request.kind === "pack") this.#makes(true);
    const sized = this.#sized(request);
    const slow = new Slow(this.#app, say`Making ${NAMES[request.kind] ?? say`the file`}`, () => this.giveUp());
    this.#givenUp = false;
    try {
      const name = await link.ask("fileName", text, JSON.stringify(sized));
      download(await link.askWatched((share) => slow.reached(share), "exportFile", text, JSON.stringify(inLanguage(sized))), name);
      this.#app.say("file", undefined);
    } catch (error) {
      if (!this.#givenUp) this.#app.say("file", { kind: "trouble", text: say`No file was made: ${wordsOf(error)}` });
    } finally {
      slow.end();
      if (request.kind === "pack") this.#makes(false);
    }
  }

  giveUp() {
    this.#givenUp = true;
    this.#app.link.giveUp();
  }

  /**
   * A mesh of the stated sizes where they are wanted although a coupon was measured.
   * @param {FileRequest} request
   * @returns {FileRequest}
   */
  #sized(request) {
    const stated = ["stl", "3mf", "plate", "all", "pack"].includes(request.kind) && !this.compensated && this.#app.report?.fit.state === "applied";
    return stated ? { ...request, compensated: false } : request;
  }

  /** @param {boolean} making */
  #makes(making) {
    if (this.making === making) return;
    this.making = making;
    this.#app.redraw();
  }
}

/** What is said of something that takes long. */
class Slow {
  #share = 0;
  #said = false;
  #late;

  /**
   * @param {App} app
   * @param {string} words
   * @param {() => void} giveUp
   */
  constructor(app, words, giveUp) {
    this.app = app;
    this.words = words;
    this.giveUp = giveUp;
    this.#late = setTimeout(() => {
      this.#said = true;
      this.#say();
    }, NOTICEABLE);
  }

  /** @param {number} share */
  reached(share) {
    this.#share = share;
    if (this.#said) this.#say();
  }

  end() {
    clearTimeout(this.#late);
    this.#said = false;
    this.app.say("slow", undefined);
  }

  #say() {
    this.app.say("slow", { kind: "word", text: `${this.words}…`, share: this.#share, action: { label: say`Give it up`, run: this.giveUp } });
  }
}
