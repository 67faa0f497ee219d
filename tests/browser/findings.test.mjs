// What is found stands beside what it is about, leads there, and is mended with one press.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, saved, settled, shot } from "./bench.mjs";
import { readStl } from "./meshes.mjs";

const its = bench();

test("a bend radius under half the tube is a stop at its field, and its fix is applied", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const field = page.locator("#at-runs-0-bend_radius");
    await field.fill("4");
    await settled(page);
    await page.locator("#runs .note.stop").first().waitFor();
    assert.equal(await field.getAttribute("aria-invalid"), "true");
    assert.match(await page.locator("#result .note.stop").first().innerText(), /Stop/);
    assert.match(await page.locator(".standing").innerText(), /stop/);
    await shot(page, "finding-stop");

    // The files say why, and offer none that cannot be made.
    assert.match(await page.locator(".file-list .note.stop").innerText(), /cannot be made/);
    assert.ok(await page.locator(".file-list button").first().isDisabled());

    await page.locator("#runs").getByRole("button", { name: /^Apply this fix/ }).first().click();
    await settled(page);
    assert.equal(await page.locator("#at-runs-0-bend_radius").getAttribute("aria-invalid"), "false");
    const radius = (await keptDesign(page)).runs[0].bend_radius;
    assert.ok(radius > 6, `the fix made it ${radius}`);
    assert.equal(await page.evaluate(() => document.activeElement.id), "at-runs-0-bend_radius", "the focus is on what was mended");
    assert.equal(await page.locator("#runs .note.stop").count(), 0);
    await page.getByRole("button", { name: "Undo" }).click();
    await settled(page);
    assert.equal((await keptDesign(page)).runs[0].bend_radius, 4);
  });
});

test("a tube that is not its fitting's is found; the link in the result leads to the place", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-runs-0-tube-outer_diameter").fill("13");
    await settled(page);
    const link = page.locator("#result .note").getByRole("button", { name: /^Go to/ }).first();
    await link.waitFor();
    await link.click();
    // The focus follows with the next frame.
    await page.waitForFunction(() => /^at-(runs|ports|fittings)/.test(document.activeElement.id));
    await page.waitForTimeout(700);
    const inSight = await page.evaluate(() => {
      const box = document.activeElement.getBoundingClientRect();
      return box.top >= 0 && box.bottom <= innerHeight;
    });
    assert.ok(inSight, "the field is scrolled into sight");
  });
});

test("a run with a stop that can be made still downloads, with the warning beside it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-runs-0-tube-outer_diameter").fill("13");
    await settled(page);
    const warning = page.locator(".file-list .note.stop");
    assert.match(await warning.innerText(), /Do not print this yet/);
    const button = page.locator(".file-list button").first();
    assert.equal(await button.getAttribute("aria-describedby"), await warning.getAttribute("id"));
    const { bytes } = await saved(page, () => button.click());
    assert.equal(readStl(bytes).open, 0);
    // Another tube is another size: the preset for the fitting mends it.
    await page.locator("#at-runs-0-tube-preset").selectOption({ index: await page.locator("#at-runs-0-tube-preset option").evaluateAll((all) => all.findIndex((one) => /^12 . 8/.test(one.textContent))) });
    await settled(page);
    assert.equal(await page.locator(".file-list .note.stop").count(), 0);
  });
});
