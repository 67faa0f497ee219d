// The fit coupon: its files, its readings, what they say, and that files are then corrected.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, saved, settled } from "./bench.mjs";

const its = bench();
const at = (page, key) => page.locator(`#at-process-fit-${key}`);
const line = (page, key) => page.locator(`#fit tr[data-result="/fit/${key}"]`).first();

/** Puts in what a printer would make of each end that is asked for. */
async function read(page, list, count, off) {
  for (let index = 0; index < count; index += 1) {
    const size = Number(await at(page, `${list}-${index}-nominal`).inputValue());
    await at(page, `${list}-${index}-measured`).fill(String(Math.round((size + off) * 1000) / 1000));
  }
}

async function started(page) {
  await settled(page);
  await page.locator("#add-fit").click();
  await settled(page);
}

test("the coupon is saved as one 3MF and as an STL a stick, and the picture says its sizes", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    assert.match(await page.locator("#at-process-fit-notes").innerText(), /not measured\. Print a coupon/);
    const outside = Number((await page.locator("#coupon-0-sizes").locator("xpath=..").locator("b").innerText()).split(" / ")[0]);
    const [least, most] = [outside - 3 * 0.05, outside + 3 * 0.05].map((size) => Number(size.toFixed(3)));
    assert.equal(await page.locator("#coupon-0-sizes").innerText(), `7 sizes, 0.05 mm apart: outside ${least} to ${most} mm.`);
    const one = await saved(page, () => page.locator("#coupon-0-3mf").click());
    assert.match(one.name, / coupon\.3mf$/);
    assert.equal(String.fromCharCode(...one.bytes.slice(0, 2)), "PK");
    const many = await saved(page, () => page.locator("#coupon-0-stl").click());
    assert.match(many.name, / coupon\.zip$/);
    const picture = page.locator("#coupon-0-picture");
    assert.match(await picture.getAttribute("aria-label"), /^The coupon, stick 1: [\d.]+ mm with 1 ring, [\d.]+ mm with 2 rings; stick 2:/);
    assert.equal(await picture.locator(".ring").count(), 1 + 2 + 3 + 4 + 5 + 6 + 7 + 4);
  });
});

test("readings are kept, say what they mean, and correct the files", async () => {
  await its.withPage(async (page) => {
    await started(page);
    assert.equal(await page.evaluate(() => document.activeElement.id), "at-process-fit-outer-0-measured");
    assert.equal(await page.locator("#fit [aria-invalid=true]").count(), 0, "nothing is wrong with what is not read yet");
    assert.match(await page.locator("#fit .verdict").innerText(), /Nothing is measured yet/);
    const { fit } = (await keptDesign(page)).process;
    assert.equal(fit.outer.length, 8);
    assert.deepEqual([fit.outer[0].measured, fit.fitted], [null, null]);

    await read(page, "outer", 3, 0.08);
    await read(page, "bore", 1, -0.05);
    const length = Number(await at(page, "length-0-nominal").inputValue());
    await at(page, "length-0-measured").fill(String(length * 0.996));
    await settled(page);
    assert.equal(await page.locator("#fit .verdict").getAttribute("data-fit"), "applied");
    assert.match(await line(page, "outer/off_mm").innerText(), /0\.080\s*mm\s*mean of 3 readings/);
    assert.match(await line(page, "outer/within_mm").innerText(), /0\.020\s*mm/);
    assert.match(await line(page, "bore/off_mm").innerText(), /−0\.050\s*mm\s*from 1 reading/);
    assert.match(await line(page, "bore/within_mm").innerText(), /three readings or more/);
    assert.match(await line(page, "length/off_percent").innerText(), /−0\.40\s*%/);
    const { tube } = (await keptDesign(page)).runs[0];
    assert.match(await line(page, "runs/*/file_outer_mm").innerText(), new RegExp((tube.outer_diameter - 0.08).toFixed(3)));
    assert.match(await line(page, "runs/*/file_bore_mm").innerText(), new RegExp((tube.bore + 0.05).toFixed(3)));

    // Where does it come from: the readings themselves.
    await line(page, "outer/off_mm").locator(".where").click();
    assert.match(await page.getByRole("dialog").innerText(), /Mean of measured less stated/);
    await page.keyboard.press("Escape");

    const stl = page.locator("#files .file-list button", { hasText: "STL" }).first();
    const corrected = await saved(page, () => stl.click());
    assert.match(corrected.name, / compensated\.stl$/);
    await page.locator("#compensated").uncheck();
    const plain = await saved(page, () => stl.click());
    assert.doesNotMatch(plain.name, /compensated/);
    assert.notDeepEqual(corrected.bytes, plain.bytes);

    await page.reload();
    await settled(page);
    assert.equal(await at(page, "outer-0-measured").inputValue(), String((await keptDesign(page)).process.fit.outer[0].measured));
  });
});

test("what is typed stays as typed, a slip is told at its place, and another material sets the readings aside", async () => {
  await its.withPage(async (page) => {
    await started(page);
    await at(page, "outer-0-measured").fill("1,2o");
    await settled(page);
    assert.equal(await at(page, "outer-0-measured").inputValue(), "1,2o");
    assert.equal(await at(page, "outer-0-measured").getAttribute("aria-invalid"), "true");
    await at(page, "outer-0-measured").fill("22");
    await settled(page);
    assert.match(await page.locator("#at-process-fit-outer-0-measured-notes").innerText(), /slip of the jaws or the keys/);
    assert.equal(await page.locator("#fit .verdict").getAttribute("data-fit"), "doubtful");
    assert.equal(await page.locator("#compensated").count(), 0);
    await read(page, "outer", 1, 0.05);
    await page.locator("#at-process-material").selectOption({ label: "PLA" });
    await settled(page);
    assert.equal(await page.locator("#fit .verdict").getAttribute("data-fit"), "other");
    assert.match(await page.locator("#at-process-fit-material-notes").innerText(), /Care: The coupon was of/);
  });
});

test("readings are added and taken away by keys, and the focus stays where the work is", async () => {
  await its.withPage(async (page) => {
    await started(page);
    await page.locator("#add-fit-length").click();
    await settled(page);
    assert.equal(await page.evaluate(() => document.activeElement.id), "at-process-fit-length-2-measured");
    await page.locator("#at-process-fit-length-2-remove").press("Enter");
    await settled(page);
    assert.equal(await page.evaluate(() => document.activeElement.id), "at-process-fit-length-1-remove");
    await page.locator("#add-fitted").click();
    await settled(page);
    const { fitted } = (await keptDesign(page)).process.fit;
    assert.deepEqual(fitted, { outer_diameter: (await keptDesign(page)).runs[0].tube.outer_diameter, measured: null });
    await read(page, "outer", 2, 0.1);
    await at(page, "fitted-measured").fill(String(fitted.outer_diameter + 0.05));
    await settled(page);
    assert.match(await line(page, "runs/*/aim_mm").innerText(), new RegExp((fitted.outer_diameter + 0.05).toFixed(3)));
    await page.locator("#fitted-remove").click();
    await page.locator("#fit-remove").click();
    await settled(page);
    assert.equal((await keptDesign(page)).process.fit, null);
    assert.equal(await page.evaluate(() => document.activeElement.id), "add-fit");
  });
});
