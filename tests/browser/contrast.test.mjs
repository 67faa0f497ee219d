// The preview for those who set their own colours, want nothing moving, or print the page.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, drawn, openLoop, settled, shot } from "./bench.mjs";
import { countPixels } from "./pixels.mjs";

const its = bench();

/** Computed colours of the first element of a selector. */
const computed = (page, selector, ...keys) => page.evaluate(([wanted, names]) => {
  const style = getComputedStyle(document.querySelector(wanted));
  return names.map((name) => style[name]);
}, [selector, keys]);

/** What a colour word of the person's own stands for. */
const own = (page, word) => page.evaluate((name) => {
  const probe = document.body.appendChild(document.createElement("i"));
  probe.style.setProperty("forced-color-adjust", "none");
  probe.style.color = name;
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}, word);

for (const scheme of ["light", "dark"]) {
  test(`own colours are kept to round the preview and in the drawing: ${scheme}`, async () => {
    await its.withPage(async (page) => {
      await page.emulateMedia({ forcedColors: "active", colorScheme: scheme });
      await openLoop(page);
      const [highlight, text, canvas] = [await own(page, "Highlight"), await own(page, "CanvasText"), await own(page, "Canvas")];
      assert.notEqual(text, canvas);
      const pressed = '.moves button[aria-pressed="true"]';
      assert.deepEqual(await computed(page, pressed, "backgroundColor"), [highlight], "what is pressed is seen to be");
      await shot(page, `contrast-solid-${scheme}`);
      // The page's own theme has no say: the picture is on paper as dark as the person's own.
      for (let press = 0; press < 3; press += 1) {
        const { paper } = await countPixels(page, await page.locator(".stage > canvas").screenshot());
        assert.equal(paper[0] < 100, scheme === "dark", `theme pressed ${press} times: paper ${paper}`);
        await page.getByRole("button", { name: /^Theme/ }).click();
        await drawn(page);
      }
      await page.getByRole("button", { name: "Drawing", exact: true }).click();
      await page.locator(".drawing").waitFor();
      assert.deepEqual(await computed(page, ".drawing .skin", "stroke"), [text]);
      assert.deepEqual(await computed(page, ".drawing .bore", "stroke"), [canvas]);
      assert.deepEqual(await computed(page, ".drawing .collar rect", "fill", "stroke"), [canvas, text]);
      assert.deepEqual(await computed(page, ".drawing .keep-out rect, .drawing rect.keep-out", "fill", "stroke"), ["none", text]);
      assert.deepEqual(await computed(page, ".drawing text", "fill"), [text]);
      await shot(page, `contrast-drawing-${scheme}`);
    });
  });
}

test("nothing moves by itself, whether less motion is wanted or not: a step is one picture", async () => {
  for (const reducedMotion of ["reduce", "no-preference"]) {
    await its.withPage(async (page) => {
      await page.emulateMedia({ reducedMotion });
      await settled(page);
      await page.waitForFunction(() => document.getElementById("spoken")?.textContent !== "");
      await page.waitForTimeout(100);
      const pictures = await page.evaluate(async () => {
        const gl = document.querySelector(".stage > canvas").getContext("webgl2");
        const clear = gl.clear;
        let count = 0;
        gl.clear = function (...args) { count += 1; return clear.apply(this, args); };
        const press = (name) => [...document.querySelectorAll(".moves button")].find((one) => one.textContent.trim() === name).click();
        const counts = [];
        for (const name of ["Front", "Turn left", "Zoom in", "Show coolant"]) {
          count = 0;
          press(name);
          await new Promise((done) => setTimeout(done, 400));
          counts.push(count);
        }
        return counts;
      });
      assert.deepEqual(pictures, [1, 1, 1, 1], reducedMotion);
    });
  }
});

/** Puts the page into the state of being printed, as the browser's own command does, and gives what stands in the stage. */
async function printed(page) {
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await page.emulateMedia({ media: "print" });
  return page.locator(".stage .printed");
}

test("on paper a picture on white stands for the canvas, whatever the screen's theme", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    const stand = await printed(page);
    // A4 at 96 px an inch.
    await page.setViewportSize({ width: 794, height: 1123 });
    assert.equal(await page.locator(".stage > canvas").isVisible(), false);
    const [box, stage] = [await stand.locator("canvas").boundingBox(), await page.locator(".stage").boundingBox()];
    assert.ok(box.height > 150 && box.y >= stage.y && box.y + box.height <= stage.y + stage.height + 1, JSON.stringify({ box, stage }));
    await shot(page, "printed-preview", { clip: stage });
    const found = await countPixels(page, await stand.locator("canvas").screenshot());
    assert.ok(found.clay > 4 && found.colours > 60, JSON.stringify(found));
    assert.deepEqual(found.paper, [255, 255, 255]);
    assert.equal(await page.locator(".moves").isVisible(), false);
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    await page.emulateMedia({ media: "screen" });
    await page.setViewportSize({ width: 1440, height: 900 });
    assert.equal(await stand.locator("canvas").count(), 0);
    await settled(page);
    const { paper } = await countPixels(page, await page.locator(".stage > canvas").screenshot());
    assert.ok(paper[0] < 100, "the screen keeps its own theme");
    // The browser's own printing says so by itself: the file holds a picture that is wider than any sign of the page.
    const pdf = Buffer.from(await page.pdf()).toString("latin1");
    const widths = [...pdf.matchAll(/\/Subtype\s*\/Image[^>]*?\/Width (\d+)|\/Width (\d+)[^>]*?\/Subtype\s*\/Image/g)].map((it) => Number(it[1] ?? it[2]));
    assert.ok(Math.max(0, ...widths) > 600, `images in the print: ${widths}`);
  }, { scheme: "dark" });
});

test("on paper the drawing stands for a canvas that was lost", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.evaluate(() => document.querySelector(".stage > canvas").getContext("webgl2").getExtension("WEBGL_lose_context").loseContext());
    await drawn(page);
    const stand = await printed(page);
    assert.equal(await stand.locator(".drawing svg").count(), 3);
    assert.equal(await stand.locator(".drawing svg").first().isVisible(), true);
    assert.ok((await stand.locator(".tube .skin").count()) >= 3);
  });
});

test("on paper the drawing is printed where it is what is seen", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.getByRole("button", { name: "Drawing", exact: true }).click();
    const stand = await printed(page);
    assert.equal(await stand.locator("*").count(), 0);
    assert.equal(await page.locator(".stage > .drawing svg").first().isVisible(), true);
  });
});
