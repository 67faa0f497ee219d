// Text at twice its size, and the page magnified twice: all is still there, nothing is cut off or lies on another.

import assert from "node:assert/strict";
import { test } from "node:test";
import { passesAxe } from "./axe.mjs";
import { bench, openLoop, shot } from "./bench.mjs";

// As a person has it who has set letters of twice the usual size in the browser.
const large = bench({ args: ["--blink-settings=defaultFontSize=32,defaultFixedFontSize=26"] });
const usual = bench();

/** What a person could no longer read: words wider than the box that hides what runs over, told by its place. */
const cutOff = (page) => page.evaluate(() => [...document.querySelectorAll("body *")].filter((one) => {
  if (!one.checkVisibility() || one.closest("svg, canvas, .unseen") || one.childElementCount > 0 || one.textContent.trim() === "") return false;
  const style = getComputedStyle(one);
  return style.overflowX !== "visible" && style.textOverflow !== "ellipsis" && (one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 1) && style.overflowX !== "auto";
}).map((one) => `${one.tagName} ${one.className}: ${one.textContent.trim().slice(0, 60)}`));

for (const [way, its, size] of [["text of twice the size", large, [1280, 900]], ["text of twice the size on a phone", large, [640, 900]], ["the page magnified twice", usual, [640, 450]]]) {
  test(`${way}: everything is there and can be read`, async () => {
    await its.withPage(async (page) => {
      await openLoop(page);
      const letters = await page.evaluate(() => parseFloat(getComputedStyle(document.getElementById("at-name")).fontSize));
      assert.ok(letters >= (its === large ? 28 : 14), `a field's words are ${letters} px`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.ok(wide <= 0, `${wide} px wider than the window`);
      assert.deepEqual(await cutOff(page), []);
      await passesAxe(page, way);
      await shot(page, `large-${letters}-${size[0]}`);
    }, { size });
  });
}
