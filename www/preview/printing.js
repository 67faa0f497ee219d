// What stands for the preview on paper: a canvas is printed empty, so a copy of the picture is; or the drawing, where there
// is no picture.

import { render } from "../vendor/lit-html.js";
import { drawing } from "./drawing.js";

/** @import { Scene } from "../engine/messages.js" */
/** @import { Preview } from "./host.js" */

const TIMES = 2;

/**
 * Puts what is to be printed into the stage before each printing, and takes it away after.
 * @param {Preview} solid
 * @param {() => { scene: Scene | undefined, words: string, selected: string | null }} told what a drawing is made of
 */
export function printWith(solid, told) {
  addEventListener("beforeprint", () => {
    const holder = document.querySelector(".stage .printed");
    // Where the drawing is shown, it is what is printed.
    if (!holder || document.querySelector(".stage > canvas")?.hasAttribute("hidden")) return;
    const copy = document.createElement("canvas");
    // Paper is white whatever the screen is.
    const drawn = solid.large(TIMES, (canvas) => {
      copy.width = canvas.width;
      copy.height = canvas.height;
      copy.getContext("2d")?.drawImage(canvas, 0, 0);
    }, "light");
    if (drawn) return holder.replaceChildren(copy);
    const stand = document.createElement("div");
    const { scene, words, selected } = told();
    render(drawing(scene, words, selected), stand);
    holder.replaceChildren(stand);
  });
  addEventListener("afterprint", () => document.querySelector(".stage .printed")?.replaceChildren());
}
