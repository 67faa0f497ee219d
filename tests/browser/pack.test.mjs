// The pack of a demo: saved from the page, its sheet read in the browser and printed, and opened again as the design.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { unzipSync } from "fflate";
import { passesAxe } from "./axe.mjs";
import { bench, keptDesign, saved, settled, shot } from "./bench.mjs";
import { readPdf } from "./pdf.mjs";

const its = bench();

/** Opens the sheet of a pack as a file, as whoever unpacks it does. */
async function withSheet(page, pack, look) {
  const folder = await mkdtemp(join(tmpdir(), "sheet-"));
  const place = join(folder, "sheet.html");
  await writeFile(place, unzipSync(pack.bytes)["sheet.html"]);
  const sheet = await page.context().newPage();
  const asked = [];
  sheet.on("request", (request) => asked.push(request.url()));
  const url = pathToFileURL(place).href;
  try {
    await sheet.goto(url);
    await look(sheet);
    assert.deepEqual(asked, [url], "the sheet fetches nothing");
  } finally {
    await sheet.close();
    await rm(folder, { recursive: true });
  }
}

test("the pack is made, said meanwhile, and opens again as the design", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const before = await keptDesign(page);
    const said = page.evaluate(() => new Promise((found) => {
      const button = document.getElementById("pack");
      new MutationObserver(() => {
        if (button.textContent === "Making the pack…" && button.getAttribute("aria-disabled") === "true") found(document.activeElement === button);
      }).observe(button, { subtree: true, childList: true, characterData: true, attributes: true });
    }));
    const pack = await saved(page, () => page.locator("#pack").click());
    assert.match(pack.name, / pack\.zip$/);
    assert.equal(await said, true, "the button says so and keeps the focus");
    await page.locator("#pack[aria-disabled=false]").waitFor();
    assert.match(await page.locator("#pack").innerText(), /^The pack: files, sheet, coupon/);
    await page.locator("#at-name").fill("Another one");
    await settled(page);
    assert.notDeepEqual(await keptDesign(page), before);
    await page.locator("#open-file").setInputFiles({ name: pack.name, mimeType: "application/zip", buffer: Buffer.from(pack.bytes) });
    await settled(page);
    assert.deepEqual(await keptDesign(page), before);
  });
});

test("the sheet reads well and prints on A4", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const pack = await saved(page, () => page.locator("#pack").click());
    await withSheet(page, pack, async (sheet) => {
      for (const width of [1100, 320]) {
        await sheet.setViewportSize({ width, height: 900 });
        await passesAxe(sheet, `the sheet at ${width} px`);
        const over = await sheet.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        assert.ok(over <= 0, `${over} px wider than the screen of ${width}`);
        await shot(sheet, `sheet-${width}`, { fullPage: true });
      }
      await sheet.emulateMedia({ media: "print" });
      await sheet.setViewportSize({ width: 696, height: 1020 });
      const wide = await sheet.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.ok(wide <= 0, `a table is ${wide} px wider than A4`);
      await shot(sheet, "sheet-print", { fullPage: true });
      const pages = readPdf(await sheet.pdf({ preferCSSPageSize: true, printBackground: true }));
      assert.ok(pages.length >= 2 && pages.length <= 12, `${pages.length} pages`);
      for (const { width, height } of pages) assert.ok(Math.abs(width - 210) < 1 && Math.abs(height - 297) < 1, `${width} × ${height} mm`);
    });
  });
});
