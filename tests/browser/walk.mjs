// Many states of the page, one after the other in one tab, where what is looked at is what a state shows: to open the page
// anew takes longer than to look at it. Each state is a test by its name and starts from the first demo, as the page does.

import assert from "node:assert/strict";
import { test } from "node:test";
import { settled } from "./bench.mjs";

/**
 * Reaches each of `states` and runs `look` on it. `ready` is run on every fresh page; `options` are those of `withPage`.
 * Fails on what the page logs, in the state in which it did.
 */
export function walk(its, title, states, look, { ready = async () => {}, ...options } = {}) {
  test(title, async (walked) => {
    await its.withPage(async (page, _, faults) => {
      await settled(page);
      for (const [index, [state, reach]] of Object.entries(states).entries()) {
        await walked.test(state, async () => {
          if (index > 0) await afresh(page, options.size);
          await ready(page);
          await reach(page);
          await settled(page);
          await look(page, state);
          assert.deepEqual(faults.splice(0), [], `the page logged errors or asked for something elsewhere in state “${state}”`);
        });
      }
    }, options);
  });
}

/** The page as it opens but for its history: light, wide, nothing over it, nothing unfolded, in millimetres, the first demo. */
async function afresh(page, [width, height] = [1440, 900]) {
  await page.emulateMedia({ colorScheme: "light" });
  await page.setViewportSize({ width, height });
  await page.evaluate(() => {
    for (const dialog of document.querySelectorAll("dialog[open]")) dialog.close();
    for (const menu of document.querySelectorAll(":popover-open")) menu.hidePopover();
    for (const fold of document.querySelectorAll("main details[open]:not(.run-detail)")) fold.open = false;
    for (const notice of document.querySelectorAll(".notice")) notice.querySelector(".quiet").click();
    document.querySelector("[name=lengths]").click();
    document.querySelector(".preview .moves button").click();
    document.querySelectorAll(".menu .choice")[1].click();
    document.activeElement?.blur();
    scrollTo(0, 0);
  });
  await settled(page);
}
