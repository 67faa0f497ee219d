// The page's end of the engine's thread: the latest design wins, stale answers are dropped, and a thread that has
// crashed or hangs is replaced by a new one.

import { startThread } from "./home.js";
import { engineMessage } from "../words/engine-words.js";
import { say } from "../words/say.js";

/** @import { Answer, Call, Edition } from "./messages.js" */

// Far longer than any design in bounds takes; past it the thread is taken for hung, ms.
const PATIENCE = 30_000;

/** A call that the engine refused: why, and the place it was about. */
export class Refused extends Error {
  /**
   * @param {string} message
   * @param {string} path
   */
  constructor(message, path) {
    super(message);
    this.path = path;
  }
}

/** @typedef {{ onEdition: (answer: Edition) => void, onTrouble: (words: string, again: boolean) => void }} Listeners */
/** @typedef {{ vocabulary: string, presets: string }} Ready */
/**
 * A call that waits for its answer. `watch` where it may take long: told how much is done.
 * @typedef {{ question: Call, resolve: (value: any) => void, reject: (error: Error) => void, watch?: (share: number) => void }} Waiting
 */

export class EngineLink {
  /** @type {Promise<WebAssembly.Module>} */
  #module;
  /** @type {Listeners} */
  #listeners;
  /** @type {Worker | undefined} */
  #worker;
  #edition = 0;
  #crashed = -1;
  #nextId = 0;
  /** @type {Map<number, Waiting>} */
  #calls = new Map();
  /** @type {{ text: string, deviation: number } | undefined} */
  #shown;
  #watch = 0;

  /**
   * @param {Promise<WebAssembly.Module>} module the thread loads its own code while this is being compiled
   * @param {Listeners} listeners
   */
  constructor(module, listeners) {
    this.#module = module;
    this.#listeners = listeners;
  }

  /** The edition of the design that was sent last. */
  get edition() {
    return this.#edition;
  }

  /**
   * Starts the thread.
   * @returns {Promise<Ready>}
   */
  start() {
    const worker = startThread();
    this.#worker = worker;
    let ready = false;
    return new Promise((resolve, reject) => {
      worker.addEventListener("message", (event) => {
        if (worker !== this.#worker) return;
        /** @type {Answer} */
        const answer = event.data;
        if (answer.kind === "ready") {
          ready = true;
          resolve(answer);
        }
        else if (answer.kind === "crash" && answer.edition === 0) reject(new Error(answer.message));
        else this.#take(answer);
      });
      worker.addEventListener("error", (event) => {
        if (worker !== this.#worker) return;
        event.preventDefault();
        const words = event.message || say`its thread could not be started`;
        reject(new Error(words));
        if (ready) this.#replace(words);
      });
      this.#module.then((module) => worker.postMessage({ kind: "start", module }), reject);
    });
  }

  /**
   * Sends the design as it is now; whatever was being worked on is overtaken.
   * @param {string} text
   * @param {number} deviation of the meshes to look at, mm
   */
  show(text, deviation) {
    this.#edition += 1;
    this.#shown = { text, deviation };
    this.#send({ kind: "design", edition: this.#edition, text, deviation });
    this.#startWatch();
  }

  /**
   * Asks for one thing: a file, its name, a design written out, a fix applied.
   * @param {Call["call"]} call
   * @param {(string | Uint8Array | number)[]} args
   * @returns {Promise<any>} rejected with `Refused` where the engine refuses
   */
  ask(call, ...args) {
    return this.#ask(call, args);
  }

  /**
   * The same for one that may take long.
   * @param {(share: number) => void} watch told how much of it is done, 0 to 1
   * @param {Call["call"]} call
   * @param {(string | Uint8Array | number)[]} args
   * @returns {Promise<any>} rejected with `Refused` where the engine refuses or the call was given up
   */
  askWatched(watch, call, ...args) {
    return this.#ask(call, args, watch);
  }

  /**
   * @param {Call["call"]} call
   * @param {(string | Uint8Array | number)[]} args
   * @param {(share: number) => void} [watch]
   * @returns {Promise<any>}
   */
  #ask(call, args, watch) {
    const question = /** @type {Call} */ ({ kind: "call", id: ++this.#nextId, call, args });
    return new Promise((resolve, reject) => {
      this.#calls.set(question.id, { question, resolve, reject, watch });
      this.#send(question);
    });
  }

  /** Gives up the calls that may take long: the thread is replaced by a new one, which is asked for all the rest again. */
  giveUp() {
    const rest = [...this.#calls.values()].filter(({ watch }) => !watch);
    this.#end((waiting) => waiting.watch !== undefined, say`It was given up.`);
    this.start().then(() => {
      this.#showAgain();
      for (const { question } of rest) this.#send(question);
    }, (error) => this.#listeners.onTrouble(String(error), false));
  }

  /** @param {import("./messages.js").Question} question */
  #send(question) {
    this.#worker?.postMessage(question);
  }

  /** @param {Answer} answer */
  #take(answer) {
    if (answer.kind === "progress") {
      this.#calls.get(answer.id)?.watch?.(answer.share);
      // A design that waits behind something long is not hung.
      if (this.#watch !== 0) this.#startWatch();
    }
    else if (answer.kind === "result") this.#settle(answer.id)?.resolve(answer.value);
    else if (answer.kind === "refused") this.#settle(answer.id)?.reject(new Refused(engineMessage(answer.message), answer.path));
    else if (answer.kind === "crash") this.#replace(answer.message);
    else if (answer.kind !== "ready" && answer.edition === this.#edition) {
      if (answer.kind === "done" || answer.kind === "problems") this.#stopWatch();
      else this.#startWatch();
      this.#listeners.onEdition(answer);
    }
  }

  /** @param {number} id */
  #settle(id) {
    const call = this.#calls.get(id);
    this.#calls.delete(id);
    return call;
  }

  #stopWatch() {
    clearTimeout(this.#watch);
    this.#watch = 0;
  }

  #startWatch() {
    this.#stopWatch();
    this.#watch = setTimeout(() => this.#replace(say`it gave no answer for half a minute`), PATIENCE);
  }

  /**
   * Ends the thread and starts another. The design is sent again, unless it is the one that broke the thread twice.
   * @param {string} reason
   */
  #replace(reason) {
    this.#end(() => true, say`The engine stopped before it was done. Try again.`);
    const again = this.#crashed !== this.#edition;
    this.#crashed = this.#edition;
    this.start().then(
      () => {
        if (again) this.#showAgain();
        this.#listeners.onTrouble(reason, again);
      },
      () => this.#listeners.onTrouble(reason, false),
    );
  }

  #showAgain() {
    if (!this.#shown) return;
    this.#send({ kind: "design", edition: this.#edition, ...this.#shown });
    this.#startWatch();
  }

  /**
   * Ends the thread, and with it the calls that `which` names.
   * @param {(waiting: Waiting) => boolean} which
   * @param {string} words why nothing came of them
   */
  #end(which, words) {
    this.#stopWatch();
    this.#worker?.terminate();
    this.#worker = undefined;
    for (const [id, waiting] of this.#calls) {
      if (!which(waiting)) continue;
      this.#calls.delete(id);
      waiting.reject(new Refused(words, ""));
    }
  }
}
