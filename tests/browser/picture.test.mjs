// The picture as a file: what is seen, twice as fine, with the name below; never an empty one.

import assert from "node:assert/strict";
import path from "node:path";
import { test } from "node:test";
import { pathToFileURL } from "node:url";
import { bench, drawn, openLoop, saved, settled } from "./bench.mjs";
import { countPixels, difference } from "./pixels.mjs";
import { SITE } from "./site.mjs";

const its = bench();
const button = (page) => page.getByRole("button", { name: "Picture (.png)" });
const canvasSize = (page) => page.evaluate(() => {
  const { width, height } = document.querySelector(".stage > canvas");
  return { width, height };
});

/** Width and height as the file itself says, after its signature (PNG, ISO/IEC 15948, 5.2 and 11.2.2). */
function sizeOf(bytes) {
  assert.deepEqual([...bytes.subarray(0, 8)], [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  assert.equal(Buffer.from(bytes.subarray(12, 16)).toString("latin1"), "IHDR");
  return { width: view.getUint32(16), height: view.getUint32(20) };
}

/** Saves it, and holds it to what is on the screen. */
async function holds(page) {
  const shown = await countPixels(page, await page.locator(".stage > canvas").screenshot());
  const { width, height } = await canvasSize(page);
  const { name, bytes } = await saved(page, () => button(page).click());
  const size = sizeOf(bytes);
  assert.equal(size.width, 2 * width);
  assert.ok(size.height > 2 * height + 20, `${size.height} px hold the picture of ${2 * height} and words`);
  const file = await countPixels(page, bytes);
  assert.ok(file.colours > 60, "it is blank");
  // The same picture with more paper below: the share of clay falls by as much as that adds.
  const share = (file.clay * size.height) / (2 * height);
  assert.ok(shown.clay > 5 && Math.abs(share / shown.clay - 1) < 0.15, `clay: ${share} in the file, ${shown.clay} on the screen`);
  await settled(page);
  const off = await page.evaluate(() => {
    const canvas = document.querySelector(".stage > canvas");
    return Math.max(Math.abs(canvas.width - canvas.clientWidth), Math.abs(canvas.height - canvas.clientHeight));
  });
  assert.ok(off <= 1, `the canvas is ${off} px off its own size`);
  return { name, bytes, file, size };
}

/** What is seen of the picture once it stays: what the graphics drew last may come to the screen a moment later. */
async function still(page) {
  let last = Buffer.alloc(0);
  for (let look = 0; look < 40; look += 1) {
    await drawn(page);
    const now = await page.locator(".stage > canvas").screenshot();
    if (now.equals(last)) return now;
    last = now;
  }
  return assert.fail("the picture never stays");
}

test("it is saved twice as fine under the design's name, and what is seen stays", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    await page.getByRole("button", { name: "Turn left" }).click();
    await page.getByRole("button", { name: "Zoom in" }).click();
    await settled(page);
    const before = await still(page);
    const label = await page.locator(".stage > canvas").getAttribute("aria-label");
    const { name, file } = await holds(page);
    const design = await saved(page, () => page.getByRole("button", { name: "Save", exact: true }).click());
    assert.equal(name, design.name.replace(/\.json$/, ".png"));
    assert.deepEqual(file.paper, [255, 255, 255]);
    await settled(page);
    // The frame's own edge lies on parts of pixels where the page is scrolled.
    assert.equal(await difference(page, before, await still(page), { by: 0, rim: 3 }), 0, "saving it changed what is seen");
    assert.equal(await page.locator(".stage > canvas").getAttribute("aria-label"), label);
  });
});

test("it is of the theme that is seen, and shows what is chosen to be seen", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const { file } = await holds(page);
    assert.deepEqual(file.paper, [16, 20, 21]);
    await page.getByRole("button", { name: "Show coolant" }).click();
    await settled(page);
    const { bytes } = await saved(page, () => button(page).click());
    assert.ok((await countPixels(page, bytes)).teal > 2, "the coolant is not in it");
  }, { scheme: "dark" });
});

test("a long name is broken into lines, an empty one leaves none", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const high = async (name) => {
      await page.locator("#at-name").fill(name);
      await settled(page);
      return sizeOf((await saved(page, () => button(page).click())).bytes).height;
    };
    const [none, one, many] = [await high(""), await high("One"), await high("A word ".repeat(28))];
    assert.ok(none < one && one < many, `${none}, ${one}, ${many}`);
  }, { size: [400, 800] });
});

test("without graphics there are words in its place, and it is saved again once they are back", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.evaluate(() => {
      globalThis.loss = document.querySelector(".stage > canvas").getContext("webgl2").getExtension("WEBGL_lose_context");
      globalThis.loss.loseContext();
    });
    let files = 0;
    page.on("download", () => { files += 1; });
    await button(page).click();
    await page.locator(".notice.trouble", { hasText: "No picture was made" }).waitFor();
    assert.equal(files, 0);
    await page.evaluate(async () => {
      globalThis.loss.restoreContext();
      await new Promise((done) => setTimeout(done, 300));
    });
    await holds(page);
    assert.equal(await page.locator(".notice", { hasText: "No picture was made" }).count(), 0);
  });
});

test("the page that is one file on a disk saves it too", async () => {
  await its.withPage(async (page) => {
    await page.goto(pathToFileURL(path.join(SITE, "tubewright.html")).href);
    await settled(page);
    const { name } = await holds(page);
    assert.match(name, /\.png$/);
  }, { elsewhere: true });
});
