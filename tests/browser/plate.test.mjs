// How a tube stands on the printer's plate: what the panel says is the engine's, choosing a way changes the design and can
// be undone, and the files stand as drawn.

import assert from "node:assert/strict";
import { test } from "node:test";
import { startEngine } from "../page/site.mjs";
import { bench, drawn, keptDesign, keptText, saved, settled, shot } from "./bench.mjs";
import { tabTo } from "./keyboard.mjs";

const its = bench();

/** Waits until the ways are about the design as it is. */
async function found(page) {
  await page.waitForFunction(() => document.querySelector(".plate-answer")?.getAttribute("data-stale") === "false");
  await drawn(page);
}

async function openPlate(page, demo) {
  await settled(page);
  if (demo) {
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: demo }).click();
    await settled(page);
  }
  await page.locator(".plate > summary").click();
  await found(page);
}

const cards = (page) => page.locator(".stance-card");

test("the ways are the engine's, the best first and drawn, each with its numbers in words", async () => {
  const { engine } = await startEngine();
  await its.withPage(async (page) => {
    await openPlate(page);
    const run = (await keptDesign(page)).runs[0].name;
    const told = JSON.parse(engine.stances(await keptText(page), run));
    assert.equal(await cards(page).count(), told.stances.length);
    assert.match(await page.locator(".plate-status").innerText(), new RegExp(`^${told.stances.length} ways? to stand, the best first\\.$`));
    for (const [index, stance] of told.stances.entries()) {
      const words = await cards(page).nth(index).innerText();
      assert.ok(words.includes(`${stance.height_mm.toFixed(1)} mm high`), words);
      assert.ok(words.includes(stance.cups.length === 0 ? "traps no resin" : "of resin in"), words);
      assert.ok(words.includes(stance.flat_mm === 0 ? "no bore flatter than 30°" : `${Number(stance.flat_mm.toFixed(1))} mm of bore flatter than 30°`), words);
      assert.ok(words.includes(stance.bands_mm[0] + stance.bands_mm[1] === 0 ? "stay clear" : "sealing bands need support"), words);
    }
    assert.match(await cards(page).first().innerText(), /Best found\s+as it stands now/);
    const label = await page.locator(".on-plate-views").getAttribute("aria-label");
    assert.ok(label.startsWith(`${run} on the plate, best found: `) && label.includes("mm high"), label);
    assert.equal(await page.locator(".on-plate .edge").count(), 2);
    // The tube is drawn at its true width, in the room's own millimetres.
    assert.equal(Number(await page.locator(".on-plate .edge").first().getAttribute("stroke-width")), told.outer_diameter);
  });
});

test("a way that is chosen is the run's own, one undo brings the old back, and it can be left to the best again", async () => {
  await its.withPage(async (page) => {
    await openPlate(page);
    const before = await keptText(page);
    const second = cards(page).nth(1);
    const size = await second.locator(".stance-size").innerText();
    await second.getByRole("button", { name: /^Stand it so/ }).click();
    await settled(page);
    await found(page);
    const { stance } = (await keptDesign(page)).runs[0];
    assert.ok(Math.abs(Math.hypot(...stance.up) - 1) < 1e-5 && Math.abs(stance.turn_deg) <= 180);
    const now = page.locator(".stance-card[data-present=true]");
    assert.equal(await now.count(), 1);
    assert.equal(await now.locator(".stance-size").innerText(), size);
    await page.locator(".notice", { hasText: "from now on" }).getByRole("button", { name: /^Undo/ }).click();
    await settled(page);
    await found(page);
    assert.equal(await keptText(page), before);
    assert.match(await page.locator(".stance-card[data-present=true]").innerText(), /Best found/);

    await cards(page).nth(1).getByRole("button", { name: /^Stand it so/ }).click();
    await settled(page);
    await found(page);
    await page.locator("#plate-best").click();
    await settled(page);
    await found(page);
    assert.equal((await keptDesign(page)).runs[0].stance, null);
    await page.locator(".tools").getByRole("button", { name: /^Undo: / }).click();
    await settled(page);
    assert.notEqual((await keptDesign(page)).runs[0].stance, null);
  });
});

test("a stance of one's own that is none of those found stands among them, with what is found against it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const design = await keptDesign(page);
    design.runs[0].stance = { up: [0, 0, 1], turn_deg: 10 };
    await page.locator("#open-file").setInputFiles({ name: "own.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(design)) });
    await settled(page);
    await page.locator(".plate > summary").click();
    await found(page);
    assert.match(await cards(page).first().innerText(), /Your own\s+as it stands now/);
    assert.ok((await page.locator(".plate-answer > .notes > li").count()) > 0);
    assert.match(await page.locator(".plate-answer > .notes").innerText(), /Care:/);
    await shot(page, "plate-own", { fullPage: true });
  });
});

test("the files stand as drawn: in the build volume, the lowest point at the margin", async () => {
  await its.withPage(async (page) => {
    await openPlate(page);
    const { printer } = (await keptDesign(page)).process;
    await page.locator("#way-1-look").click();
    await drawn(page);
    assert.equal(await page.locator("#way-1-look").getAttribute("aria-pressed"), "true");
    const { name, bytes } = await saved(page, () => page.getByRole("button", { name: "STL, standing as drawn" }).click());
    assert.ok(name.endsWith(".stl"));
    const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const [low, high] = [[Infinity, Infinity, Infinity], [-Infinity, -Infinity, -Infinity]];
    for (let at = 84; at < bytes.length; at += 50) {
      for (let part = 0; part < 9; part += 1) {
        const value = view.getFloat32(at + 12 + 4 * part, true);
        low[part % 3] = Math.min(low[part % 3], value);
        high[part % 3] = Math.max(high[part % 3], value);
      }
    }
    assert.ok(Math.abs(low[2] - printer.margin) < 0.02, `${low[2]}`);
    for (const axis of [0, 1]) assert.ok(Math.abs((low[axis] + high[axis]) / 2 - printer.build_volume[axis] / 2) < 0.05);
    const words = await cards(page).nth(1).locator(".stance-size").innerText();
    assert.ok(words.startsWith(`${(high[2] - low[2]).toFixed(1)} mm high`), words);
  });
});

test("of several runs one is chosen, and the ways follow an edit; a run that cannot be made is not among them", async () => {
  await its.withPage(async (page) => {
    await openPlate(page, "A loop of four tubes");
    const names = await page.locator("#plate-run option").allInnerTexts();
    assert.equal(names.length, 4);
    await page.locator("#plate-run").selectOption(names[2]);
    await page.waitForFunction((name) => document.querySelector(".on-plate-views")?.getAttribute("aria-label")?.startsWith(`${name} on the plate`), names[2]);
    const before = await cards(page).first().innerText();
    await page.locator("#at-process-printer").selectOption({ label: "filament" });
    await settled(page);
    await found(page);
    assert.notEqual(await cards(page).first().innerText(), before);
    await page.locator("#at-runs-2-bend_radius").fill("1");
    await settled(page);
    await page.waitForFunction(() => document.querySelectorAll("#plate-run option").length === 3);
  });
});

test("all of it by keyboard", async () => {
  await its.withPage(async (page) => {
    await openPlate(page);
    await page.locator(".plate > summary").focus();
    await tabTo(page, "Show Way 2");
    await page.keyboard.press("Enter");
    await drawn(page);
    assert.equal(await page.locator("#way-1-look").getAttribute("aria-pressed"), "true");
    await tabTo(page, "Stand it so: Way 2");
    await page.keyboard.press("Enter");
    await settled(page);
    assert.ok((await keptDesign(page)).runs[0].stance);
  });
});

test("a stance is typed in the run's card too, and one that points nowhere is to mend there", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const part = page.locator("#at-runs-0-stance");
    await part.getByRole("checkbox", { name: "Own stance on the plate" }).check();
    await part.getByRole("radio", { name: "+y" }).check();
    await page.locator("#at-runs-0-stance-turn_deg").fill("45");
    await settled(page);
    assert.deepEqual((await keptDesign(page)).runs[0].stance, { up: [0, 1, 0], turn_deg: 45 });
    await part.getByRole("radio", { name: "other" }).check();
    await page.locator("#at-runs-0-stance-up-1").fill("0");
    await settled(page);
    assert.match(await page.locator("#at-runs-0-stance-up-notes").innerText(), /points nowhere/);
    await part.getByRole("checkbox", { name: "Own stance on the plate" }).uncheck();
    await settled(page);
    assert.equal((await keptDesign(page)).runs[0].stance, null);
  });
});

test("what an own printer can do is typed with its other figures, and the ways follow", async () => {
  await its.withPage(async (page) => {
    await openPlate(page);
    await page.locator("#at-process-printer-own").click();
    for (const [key, text] of [["margin", "2"], ["overhang_deg", ""], ["bore_deg", "55"], ["layer_mm", "0,1"], ["seconds_per_layer", "6"], ["bridge_mm", "15"], ["spot_mm", "0.03"], ["most_triangles", "500000"], ["most_mb", "64"]]) {
      await page.locator(`#at-process-printer-${key}`).fill(text);
    }
    await settled(page);
    await found(page);
    const { printer } = (await keptDesign(page)).process;
    assert.deepEqual([printer.margin, printer.overhang_deg, printer.bore_deg, printer.layer_mm, printer.spot_mm, printer.most_mb], [2, null, 55, 0.1, 0.03, 64]);
    const words = await cards(page).first().innerText();
    assert.ok(words.includes("flatter than 55°") && !words.includes("sealing bands"), words);
  });
});
