// All pieces on as few plates as they take: what is drawn and listed is the engine's, and the file of a plate holds its pieces.

import assert from "node:assert/strict";
import { test } from "node:test";
import { unzipSync } from "fflate";
import { startEngine } from "../page/site.mjs";
import { bench, drawn, keptDesign, keptText, saved, settled, shot } from "./bench.mjs";

const its = bench();

/** Waits until the plates are those of the design as it is. */
async function laidOut(page) {
  await page.waitForFunction(() => document.querySelector(".plates .plate-answer")?.getAttribute("data-stale") === "false");
  await drawn(page);
}

async function openPlates(page, demo) {
  await settled(page);
  if (demo) {
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: demo }).click();
    await settled(page);
  }
  await page.locator(".plates > summary").click();
  await laidOut(page);
}

const cards = (page) => page.locator(".plate-card");

test("the plates are the engine's: drawn from above, listed in words, and saved as they lie", async () => {
  const { engine } = await startEngine();
  await its.withPage(async (page) => {
    await openPlates(page, "A loop of four tubes");
    const told = JSON.parse(engine.plates(await keptText(page)));
    assert.equal(await cards(page).count(), told.plates.length);
    const count = told.plates.reduce((sum, plate) => sum + plate.pieces.length, 0);
    assert.ok((await page.locator(".plates .plate-status").innerText()).startsWith(`${count} piece`));
    for (const [index, plate] of told.plates.entries()) {
      const words = await cards(page).nth(index).innerText();
      assert.ok(words.includes(`${plate.height_mm.toFixed(1)} mm high`), words);
      const boxes = cards(page).nth(index).locator("rect.box");
      assert.equal(await boxes.count(), plate.pieces.length);
      for (const [at, piece] of plate.pieces.entries()) {
        assert.ok(words.includes(`${piece.run}: ${piece.box_mm[0].toFixed(1)} × ${piece.box_mm[1].toFixed(1)} mm${piece.turned_deg === 0 ? "" : `, turned by ${piece.turned_deg.toFixed(0)}°`}`), words);
        // In the build volume's own millimetres, y up.
        assert.equal(Number(await boxes.nth(at).getAttribute("x")), piece.at_mm[0]);
        const y = told.volume_mm[1] - piece.at_mm[1] - piece.box_mm[1];
        assert.ok(Math.abs(Number(await boxes.nth(at).getAttribute("y")) - y) < 1e-6);
      }
    }
    await page.locator(".plates").scrollIntoViewIfNeeded();
    await shot(page, "plates", { fullPage: true });
    const { name, bytes } = await saved(page, () => page.getByRole("button", { name: "3MF of plate 1" }).click());
    assert.match(name, /-plate-1\.3mf$/);
    const model = new TextDecoder().decode(unzipSync(bytes)["3D/3dmodel.model"]);
    const names = [...model.matchAll(/<object [^>]*name="([^"]*)"/g)].map((found) => found[1]);
    assert.deepEqual(names, told.plates[0].pieces.map((piece) => piece.run));
  });
});

test("the plates follow an edit, and what fits in no way is said", async () => {
  await its.withPage(async (page) => {
    await openPlates(page);
    const before = await page.locator(".plate-pieces").first().innerText();
    await page.locator("#at-process-printer").selectOption({ label: "filament" });
    await settled(page);
    await laidOut(page);
    assert.notEqual(await page.locator(".plate-card").first().innerText(), before);
    const design = await keptDesign(page);
    design.process.printer = { ...design.process.printer, build_volume: [40, 40, 40] };
    await page.locator("#open-file").setInputFiles({ name: "small.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(design)) });
    await settled(page);
    await laidOut(page);
    assert.equal(await page.locator(".plates .plate-status").innerText(), "Nothing fits on a plate.");
    assert.match(await page.locator(".plates .notes").innerText(), /On no plate: .*in no stance; the best sticks out/);
    assert.equal(await cards(page).count(), 0);
  });
});

test("at 320 px nothing of it is wider than the page", async () => {
  await its.withPage(async (page) => {
    await page.setViewportSize({ width: 320, height: 800 });
    await page.emulateMedia({ colorScheme: "dark" });
    await openPlates(page, "A loop of four tubes");
    const wide = await page.evaluate(() => [...document.querySelectorAll(".plates *")].filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5).length);
    assert.equal(wide, 0);
    await cards(page).first().scrollIntoViewIfNeeded();
    await shot(page, "plates-narrow");
  });
});
