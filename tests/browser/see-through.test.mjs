// Walls that are seen through, and the coolant in them.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, drawn, keptDesign, openLoop, settled, shot } from "./bench.mjs";
import { countPixels } from "./pixels.mjs";

const its = bench();
const CANVAS = ".stage > canvas";

async function seen(page) {
  await settled(page);
  await drawn(page);
  const png = await page.locator(CANVAS).screenshot();
  return { png, ...(await countPixels(page, png)) };
}

const coolantButton = (page) => page.getByRole("button", { name: "Show coolant" });

/** Chooses a shipped material by its name. */
async function chooseMaterial(page, name) {
  await page.locator("#at-process-material").selectOption({ label: name });
  await settled(page);
}

test("the coolant of an opaque tube shows when it is asked for, and goes again", async () => {
  await its.withPage(async (page) => {
    const before = await seen(page);
    assert.ok(before.clay > 5 && before.teal < 1, JSON.stringify(before));
    assert.equal(await coolantButton(page).getAttribute("aria-pressed"), "false");
    await coolantButton(page).click();
    const shown = await seen(page);
    assert.ok(shown.teal > 4, `teal ${shown.teal}`);
    assert.equal(await coolantButton(page).getAttribute("aria-pressed"), "true");
    assert.match(await page.locator(CANVAS).getAttribute("aria-label"), /coolant in the tubes is shown/);
    await coolantButton(page).click();
    const after = await seen(page);
    assert.ok(after.png.equals(before.png), "it is not the picture of before");
  });
});

test("a clear tube shows its bore and its coolant by itself, cut open its wall", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    const opaque = await seen(page);
    await chooseMaterial(page, "clear resin");
    assert.deepEqual((await keptDesign(page)).process.material.look.clarity, "clear");
    const clear = await seen(page);
    assert.ok(clear.teal > 4 && clear.clay < opaque.clay / 10, `teal ${clear.teal}, clay ${clear.clay}`);
    assert.equal(await coolantButton(page).getAttribute("aria-pressed"), "true");
    assert.match(await page.locator(CANVAS).getAttribute("aria-label"), /clear and the coolant in them shows/);
    await coolantButton(page).click();
    const empty = await seen(page);
    assert.ok(empty.teal < 1, `an empty clear tube shows ${empty.teal}`);
    assert.ok(!empty.png.equals(clear.png) && empty.colours > 60, `${empty.colours} colours`);
    await page.getByRole("button", { name: "Cut open" }).click();
    assert.ok((await seen(page)).teal > 1, "the wetted bore shows in the cut");
    await coolantButton(page).click();
    assert.ok((await seen(page)).teal > 4, "what fills the bore stands whole in the cut");
  });
});

test("the picture hangs neither on the order of the tubes nor on how the view came there", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    await chooseMaterial(page, "clear resin");
    const before = await seen(page);
    for (const name of ["Turn left", "Top", "Zoom in", "Corner"]) await page.getByRole("button", { name, exact: true }).click();
    const again = await seen(page);
    assert.ok(again.png.equals(before.png), "turned away and back it is another picture");
  });
});

test("a shipped material stays the shipped one in another colour, and is drawn in it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-process-material-look-clarity").selectOption("opaque");
    await page.locator("#at-process-material-look-colour").fill("#d01818");
    await settled(page);
    const { look } = (await keptDesign(page)).process.material;
    assert.deepEqual(look, { clarity: "opaque", colour: "#d01818" });
    assert.match(await page.locator("#at-process-material option:checked").innerText(), /^high-temperature resin$/);
    const red = await seen(page);
    assert.ok(red.red > 5 && red.clay < 3, JSON.stringify({ red: red.red, clay: red.clay }));
    await page.locator("#at-process-material-look-clarity").selectOption("");
    assert.equal((await keptDesign(page)).process.material.look, null);
    assert.ok((await seen(page)).clay > 5);
  });
});

test("tubes are told apart by numbers that are listed below", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    assert.equal(await page.locator(".runs-key").count(), 0, "a lone tube needs no number");
    const { runs } = await openLoop(page);
    const listed = await page.locator(".runs-key li").allInnerTexts();
    assert.deepEqual(listed.map((text) => text.replace(/\s+/g, " ").trim()), runs.map(({ name }, index) => `${index + 1} ${name}`));
  });
});

for (const [scheme, size] of [["light", [1440, 900]], ["dark", [1440, 900]], ["light", [320, 800]], ["dark", [320, 800]]]) {
  test(`solid, cut open, clear and with its coolant: ${scheme}, ${size[0]} px`, async () => {
    await its.withPage(async (page) => {
      await openLoop(page);
      const stage = async (name) => {
        await page.locator(".stage").scrollIntoViewIfNeeded();
        await shot(page, `seen-${name}-${scheme}-${size[0]}`);
        assert.ok((await seen(page)).colours > 60, name);
      };
      await stage("solid");
      await coolantButton(page).click();
      await stage("coolant");
      await page.getByRole("button", { name: "Cut open" }).click();
      await stage("cut-coolant");
      await coolantButton(page).click();
      await stage("cut");
      await page.getByRole("button", { name: "Cut open" }).click();
      await coolantButton(page).click();
      await chooseMaterial(page, "clear resin");
      await stage("clear");
    }, { size, scheme });
  });
}
