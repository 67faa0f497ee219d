// Edits of the whole design that the engine makes: a fix, a mirrored run, another design's ports.

import { engineWord } from "./words/engine-words.js";
import { wordsOf } from "./words/errors.js";
import { say } from "./words/say.js";

/** @import { App } from "./app.js" */
/** @import { Cuts, EditRequest, Finding } from "./engine/messages.js" */

export class Edits {
  /** @type {App} */
  #app;
  #under = 0;

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  /** @param {Finding} finding */
  async applyFix(finding) {
    const { known, words } = this.#app;
    if (!known || !finding.fix) return;
    const name = say`mend “${words.findingTitle(finding.code)}”`;
    await this.#make("apply", finding.fix, name, { subject: "fix", words: say`The fix was not applied`, goTo: finding.where });
  }

  /**
   * @param {EditRequest} request
   * @param {string} [goTo] the place to show then
   */
  async edit(request, goTo) {
    await this.#make("edit", request, undefined, { subject: "edit", words: say`Nothing was changed`, goTo });
  }

  /**
   * Cuts a run into the fewest pieces that the engine finds for the printer, or says why there are none.
   * @param {string} run
   */
  async cut(run) {
    const { link, store } = this.#app;
    const { design } = store;
    this.count(1);
    try {
      const found = /** @type {Cuts} */ (JSON.parse(await link.ask("cuts", JSON.stringify(design), run)));
      if (store.design !== design) return;
      const whole = found.pieces === 1;
      if (found.pieces === null) this.#app.say("cut", { kind: "trouble", text: say`${run} was not cut: ${found.why === null ? say`no way was found.` : engineWord(found.why)}` });
      else if (found.patch.length === 0) this.#app.say("cut", { kind: "word", text: cutWords(run, found.pieces) });
      else {
        const made = await this.#make("apply", found.patch, whole ? say`leave “${run}” whole` : say`cut “${run}”`, { subject: "cut", words: say`${run} was not cut`, goTo: undefined });
        if (!made) return;
        const after = store.design;
        const undo = { label: say`Undo: as it was before`, run: () => store.design === after && store.undo() };
        this.#app.say("cut", { kind: "word", text: cutWords(run, found.pieces), action: undo });
      }
    } catch (error) {
      this.#app.say("cut", { kind: "trouble", text: say`${run} was not cut: ${wordsOf(error)}` });
    } finally {
      this.count(-1);
    }
  }

  /**
   * For the tests: how many edits the engine is making.
   * @param {number} more
   */
  count(more) {
    this.#under += more;
    this.#app.root.dataset.editing = String(this.#under);
  }

  /**
   * @param {"apply" | "edit"} call
   * @param {unknown} request
   * @param {string | undefined} name of the step
   * @param {{ subject: string, words: string, goTo: string | undefined }} how
   * @returns {Promise<boolean>} whether it was made
   */
  async #make(call, request, name, { subject, words, goTo }) {
    const { link, store } = this.#app;
    const { design } = store;
    this.count(1);
    try {
      const edited = JSON.parse(await link.ask(call, JSON.stringify(design), JSON.stringify(request)));
      // A key typed while the edit was under way wins: the edit was of the design before it.
      if (store.design !== design) return false;
      store.adopt(edited, name);
      this.#app.say(subject, undefined);
      if (goTo !== undefined) this.#app.show(goTo);
      return true;
    } catch (error) {
      this.#app.say(subject, { kind: "trouble", text: `${words}: ${wordsOf(error)}` });
      return false;
    } finally {
      this.count(-1);
    }
  }
}

/**
 * @param {string} run
 * @param {number} pieces
 */
function cutWords(run, pieces) {
  return pieces === 1 ? say`${run} fits the printer whole.` : say`${run} is cut into ${pieces} pieces, the fewest that fit the printer.`;
}
