// Which cards of the form are open. Not part of the design: it belongs to the page as it is being looked at.

import { identityOf } from "../design/identity.js";

export class Cards {
  /** @type {Map<number, boolean>} */
  #open = new Map();

  /**
   * Whether a thing's card is open; the first answer stays until it is set.
   * @param {object} thing
   * @param {boolean} atFirst
   */
  isOpen(thing, atFirst) {
    const identity = identityOf(thing);
    const open = this.#open.get(identity);
    if (open !== undefined) return open;
    this.#open.set(identity, atFirst);
    return atFirst;
  }

  /**
   * @param {object} thing
   * @param {boolean} open
   */
  set(thing, open) {
    this.#open.set(identityOf(thing), open);
  }
}
