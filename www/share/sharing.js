// Sharing: a link that holds the whole design, and its picture for a phone's camera.

import { copied } from "../clipboard.js";
import { codeIn } from "./code.js";
import { CUT_BY_SOME, linkTo, MOST_LINK } from "./fragment.js";
import { grouped } from "../words/numbers.js";
import { say } from "../words/say.js";

/** @import { App } from "../app.js" */
/** @import { Code } from "./code.js" */

export class Sharing {
  /** @type {App} */
  #app;
  /** The link to the design as it was when it was asked for. */
  link = "";
  /** Its picture; none where it is too long for one. @type {Code | undefined} */
  code;
  /** What there is to say of it. */
  words = "";
  /** What became of the last try to copy it. */
  copied = "";

  /** @param {App} app */
  constructor(app) {
    this.#app = app;
  }

  /** Makes the link to the design as it is now. */
  async make() {
    [this.link, this.code, this.words, this.copied] = ["", undefined, "", ""];
    this.#app.redraw();
    try {
      // An address on a disk would lead nowhere else, and tell the names of folders.
      const page = location.protocol === "file:" ? "" : location.href;
      const link = await linkTo(await this.#app.link.ask("normalise", this.#app.text), page);
      this.words = `${page === "" ? say`This page was opened from a disk: put this behind your friend's address of Tubewright. ` : ""}${wordsAbout(link.length)}`;
      if (link.length <= MOST_LINK) {
        this.link = link;
        if (page !== "") this.code = codeIn(await this.#app.link.ask("codeOf", link));
      }
    } catch (error) {
      this.words = say`No link was made: ${error instanceof Error ? error.message : error}`;
    }
    this.#app.redraw();
  }

  async copy() {
    const done = await copied(this.link);
    const field = document.getElementById("share-link");
    if (!done && field instanceof HTMLTextAreaElement) field.select();
    this.copied = done ? say`Copied.` : say`The browser does not let the page copy: the link is marked, copy it yourself.`;
    this.#app.redraw();
  }
}

/** @param {number} length */
function wordsAbout(length) {
  const count = say`It has ${grouped(length)} characters.`;
  if (length > MOST_LINK) return say`This design is too large for a link (${grouped(length)} characters, ${grouped(MOST_LINK)} at most). Save it as a file and send that.`;
  return length > CUT_BY_SOME ? say`${count} Some programs cut links of this length; if it does not arrive whole, send the design as a file.` : count;
}
