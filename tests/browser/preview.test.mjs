// The preview: draws, stays out of the way of scrolling, loses its context and gets it back, and has a stand-in.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, drawn, settled, shot } from "./bench.mjs";
import { countPixels, difference } from "./pixels.mjs";

const its = bench();

/** How many colours the canvas shows: a blank one has one. */
async function colours(page) {
  return (await countPixels(page, await page.locator(".stage canvas").screenshot())).colours;
}

// The compositor may place the canvas half a pixel off after a scroll, which shifts outlines and nothing else: under
// this share of pixels, in a thousand, the picture is the same.
const ALIKE = 15;

/** A picture of the canvas. */
async function picture(page) {
  await drawn(page);
  return page.locator(".stage canvas").screenshot();
}

test("it draws, is named in words, and every button changes what is seen", async (context) => {
  await its.withPage(async (page) => {
    await settled(page);
    const renderer = await page.evaluate(() => {
      const gl = document.querySelector(".stage canvas").getContext("webgl2");
      return gl && gl.getParameter(gl.getExtension("WEBGL_debug_renderer_info")?.UNMASKED_RENDERER_WEBGL ?? gl.RENDERER);
    });
    assert.ok(renderer, "no WebGL2 in this browser: the preview cannot be tested");
    context.diagnostic(`renderer: ${renderer}`);
    assert.ok((await colours(page)) > 30, "the canvas is blank");
    const canvas = page.locator(".stage canvas");
    assert.equal(await canvas.getAttribute("role"), "img");
    assert.match(await canvas.getAttribute("aria-label"), /\w+ \w+/);

    let before = await picture(page);
    for (const name of ["Front", "Top", "Corner", "Cut open", "Zoom in", "Turn left", "Move up", "Fit"]) {
      await page.getByRole("button", { name, exact: true }).click();
      const after = await picture(page);
      assert.ok((await difference(page, before, after)) > 2, `“${name}” changed nothing`);
      before = after;
    }
    assert.equal(await page.getByRole("button", { name: "Cut open" }).getAttribute("aria-pressed"), "true");
    await shot(page, "preview-cut");
  });
});

test("it is drawn only when something changes", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    // The last thing a page does by itself is to speak its standing, when typing has rested.
    await page.waitForFunction(() => document.getElementById("spoken")?.textContent !== "");
    await page.waitForTimeout(200);
    const frames = await page.evaluate(async () => {
      let count = 0;
      const ask = window.requestAnimationFrame;
      window.requestAnimationFrame = (call) => { count += 1; return ask.call(window, call); };
      await new Promise((done) => setTimeout(done, 600));
      return count;
    });
    assert.equal(frames, 0, "a page at rest asks for no frames");
  });
});

test("keys turn it only with the focus; the wheel scrolls the page until then", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const box = await page.locator(".stage canvas").boundingBox();
    const before = await picture(page);
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.wheel(0, 200);
    await page.waitForFunction(() => scrollY > 0);
    await page.evaluate(() => scrollTo(0, 0));
    assert.ok((await difference(page, before, await picture(page))) < ALIKE, "the wheel must not zoom an unfocused preview");
    await page.locator(".stage canvas").focus();
    await page.keyboard.press("ArrowLeft");
    const turned = await picture(page);
    assert.ok((await difference(page, before, turned)) > 2);
    await page.mouse.wheel(0, 200);
    await page.waitForTimeout(100);
    assert.equal(await page.evaluate(() => scrollY), 0);
    assert.ok((await difference(page, turned, await picture(page))) > ALIKE, "with the focus the wheel zooms");
    await page.keyboard.press("Tab");
    assert.notEqual(await page.evaluate(() => document.activeElement.tagName), "CANVAS", "Tab leaves it");
  });
});

test("a lost context comes back with the same picture", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-name").focus();
    const before = await picture(page);
    await page.evaluate(async () => {
      const gl = document.querySelector(".stage canvas").getContext("webgl2");
      const loss = gl.getExtension("WEBGL_lose_context");
      loss.loseContext();
      // Restoring in the task of the loss is not allowed.
      await new Promise((done) => setTimeout(done, 200));
      loss.restoreContext();
      await new Promise((done) => setTimeout(done, 300));
    });
    assert.equal(await page.locator(".preview .trouble").count(), 0);
    assert.ok((await colours(page)) > 30, "the canvas is blank after the context came back");
    assert.ok((await difference(page, before, await picture(page))) < 2, "it is not the same picture");
    await page.locator("#at-ports-0-at-2").fill("20");
    await settled(page);
    assert.ok((await difference(page, before, await picture(page))) > 2, "it follows edits again");
  });
});

test("a context lost for good leaves the drawing and words", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.evaluate(() => document.querySelector(".stage canvas").getContext("webgl2").getExtension("WEBGL_lose_context").loseContext());
    await page.locator(".preview .trouble").waitFor({ timeout: 8000 });
    assert.ok((await page.locator(".drawing svg").count()) === 3);
  });
});

test("without WebGL2 the drawing stands in and says so", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    assert.match(await page.locator(".preview .trouble").innerText(), /WebGL2/);
    assert.equal(await page.locator(".drawing[role=img]").getAttribute("aria-label").then((label) => label.length > 5), true);
    assert.ok((await page.locator(".drawing .tube .skin").count()) >= 3);
    await page.locator("#at-ports-0-at-2").fill("20");
    await settled(page);
    await shot(page, "no-webgl");
  }, {
    prepare: (page) => page.addInitScript(() => {
      const get = HTMLCanvasElement.prototype.getContext;
      HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
        return kind.startsWith("webgl") ? null : get.call(this, kind, ...rest);
      };
    }),
  });
});

test("the drawing can be chosen and left again", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.getByRole("button", { name: "Drawing", exact: true }).click();
    await page.locator(".drawing").waitFor();
    await shot(page, "drawing");
    await page.getByRole("button", { name: "Solid" }).click();
    await page.locator(".stage canvas").waitFor({ state: "visible" });
    assert.ok((await colours(page)) > 30);
  });
});
