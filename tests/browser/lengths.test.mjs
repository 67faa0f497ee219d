// Lengths as people type them: small sums, units, inches. The design holds millimetres whatever was typed.

import assert from "node:assert/strict";
import { test } from "node:test";
import { readTyped } from "../../www/design/typed.js";
import { bench, keptDesign, settled, shot } from "./bench.mjs";

const its = bench();

test("sums and units say what arithmetic says, and what could mean two things stays a text", () => {
  // An inch is 25.4 mm exactly (international yard and pound agreement, 1959).
  const cases = [
    ["120/2+6.5", 66.5], ["1,5+2", 3.5], ["-(3+4)*2", -14], ["3 x 4", 12], ["3×4", 12], ["10−4", 6], ["7/2/2", 1.75], ["2-3-4", -5],
    ["1 in", 25.4], ["1/4\"", 6.35], ["1 1/2 in", 38.1], ["½ in", 12.7], ["3 1/8″", 79.375], ["2 cm", 20], ["0.1 m", 100], ["1 in + 3", 28.4], ["2 * 1 in", 50.8],
    ["(1 + 2) cm", 30], ["10 cm / 4", 25], ["5-5", 0],
  ];
  for (const [text, value] of cases) assert.equal(readTyped(text, 1), value, text);
  for (const text of ["", " ", "120/", "12/0", "3 in * 2 in", "5 / (2 in)", "--3", "1,234.5", "0x10", "1e400", "Infinity", "NaN", "2 kg", "1+", "(1", "1)", "a+b", "1;2", "((((((((((((((((((((((1))))))))))))))))))))))"]) {
    assert.equal(readTyped(text, 1), text, `“${text}” is no sum`);
  }
  assert.equal(readTyped("2 in", undefined), "2 in", "an angle has no inches");
  assert.equal(readTyped("360/8", undefined), 45);
  assert.equal(readTyped("0.5", 25.4), 12.7);
  assert.equal(readTyped("10 mm", 25.4), 10);
  assert.equal(readTyped("0.5 + 3 mm", 25.4), 15.7);
});

test("a sum is kept as what it comes to, which is shown while it is typed", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const field = page.locator("#at-ports-0-at-0");
    await field.fill("120/2 + 6,5");
    await settled(page);
    assert.equal((await keptDesign(page)).ports[0].at[0], 66.5);
    assert.equal(await field.inputValue(), "120/2 + 6,5", "it stays as typed while it has the focus");
    assert.equal(await page.locator(".field output.stands").innerText(), "= 66.5 mm");
    await page.locator("#at-ports-0-at-1").focus();
    await page.waitForFunction(() => document.getElementById("at-ports-0-at-0").value === "66.5");
    assert.equal(await page.locator(".field output.stands").count(), 0);
    await field.fill("120/");
    await settled(page);
    assert.equal((await keptDesign(page)).ports[0].at[0], "120/", "half a sum is kept as it is");
    assert.equal(await field.getAttribute("aria-invalid"), "true");
  });
});

test("inches: fields show and take them, the design and the files do not change", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-ports-0-at-0").fill("25.4");
    await settled(page);
    const before = await keptDesign(page);
    await page.getByRole("radio", { name: "inches" }).check();
    await settled(page);
    assert.deepEqual(await keptDesign(page), before);
    assert.equal(await page.locator("#at-ports-0-at-0").inputValue(), "1");
    await page.locator("#at-ports-0-at-1").fill("1/2");
    await page.locator("#at-ports-0-at-2").fill("30 mm");
    await settled(page);
    assert.deepEqual((await keptDesign(page)).ports[0].at, [25.4, 12.7, 30]);
    await page.locator("#at-runs-0-bend_radius").fill("1");
    await page.keyboard.press("ArrowUp");
    assert.equal(await page.locator("#at-runs-0-bend_radius").inputValue(), "1.01");
    await settled(page);
    assert.equal((await keptDesign(page)).runs[0].bend_radius, 25.654);
    await page.evaluate(() => scrollTo(0, 0));
    await shot(page, "inches");
    await page.reload();
    await settled(page);
    assert.equal(await page.locator("#at-ports-0-at-1").inputValue(), "0.5", "the choice is kept");
    assert.match(await page.locator("#at-ports-0 .card-body, #at-ports-0").first().innerText(), /Position\s+in/);
  });
});
