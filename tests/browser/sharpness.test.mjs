// The preview has as many pixels as the screen: its own launch, since only a real scale factor changes the boxes.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, settled } from "./bench.mjs";

const its = bench({ args: ["--force-device-scale-factor=2"] });

test("the canvas follows the screen's pixels and the window's size", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const sizes = () => page.evaluate(() => {
      const canvas = document.querySelector(".stage canvas");
      const box = canvas.getBoundingClientRect();
      return { ratio: devicePixelRatio, across: canvas.width / box.width, down: canvas.height / box.height, width: canvas.width };
    });
    const before = await sizes();
    assert.equal(before.ratio, 2);
    assert.ok(Math.abs(before.across - 2) < 0.01 && Math.abs(before.down - 2) < 0.01, JSON.stringify(before));
    // The stage is made narrower, as dragging the window does.
    await page.evaluate(() => { document.body.style.width = "600px"; });
    await page.waitForFunction((width) => document.querySelector(".stage canvas").width !== width, before.width);
    const after = await sizes();
    assert.ok(Math.abs(after.across - 2) < 0.01 && Math.abs(after.down - 2) < 0.01, JSON.stringify(after));
  }, { size: null });
});
