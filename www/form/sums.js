// What a sum in the field that is being typed in comes to; not part of the design, which holds the number.

export class Sums {
  #place = "";
  #words = "";

  /**
   * @param {string} place
   * @param {string} words empty where the field holds no sum
   */
  typed(place, words) {
    [this.#place, this.#words] = [place, words];
  }

  /** @param {string} place */
  left(place) {
    if (this.#place === place) this.typed("", "");
  }

  /**
   * What the sum at a place comes to, in words.
   * @param {string} place
   */
  at(place) {
    return place === this.#place ? this.#words : "";
  }
}
