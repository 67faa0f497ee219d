// Printing the measuring sheet.

export class Measuring {
  /** Whether the sheet is being printed. */
  printing = false;
  /** @type {() => void} */
  #redraw;

  /** @param {() => void} redraw */
  constructor(redraw) {
    this.#redraw = redraw;
  }

  print() {
    this.printing = true;
    this.#redraw();
    addEventListener("afterprint", () => {
      this.printing = false;
      this.#redraw();
    }, { once: true });
    // The page stands two frames later.
    requestAnimationFrame(() => requestAnimationFrame(() => print()));
  }
}
