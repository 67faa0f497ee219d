// The design in other sizes and materials, side by side: what the table says, and what taking a row over does.

import assert from "node:assert/strict";
import { test } from "node:test";
import { startEngine } from "../page/site.mjs";
import { bench, drawn, keptDesign, keptText, settled, shot } from "./bench.mjs";
import { tabTo, typeOver } from "./keyboard.mjs";

const its = bench();

/** Opens the loop of four tubes of 14 mm and the panel. */
async function openLoop(page) {
  await settled(page);
  await page.getByRole("button", { name: "Start from…" }).click();
  await page.locator(".menu .choice", { hasText: "A loop of four tubes" }).click();
  await settled(page);
  await page.locator(".what-if > summary").click();
  await worked(page);
}

/** Waits until the table is about the design and the lists as they are. */
async function worked(page) {
  await page.waitForFunction(() => document.querySelector(".variants-answer")?.getAttribute("data-stale") === "false");
  await drawn(page);
}

/** Tries these sizes. */
async function tryOut(page, outer, bores) {
  await page.locator("#what-if-outer_diameters").fill(outer);
  await page.locator("#what-if-bores").fill(bores);
  await worked(page);
}

/** Waits until a variant has been made the design. */
async function taken(page) {
  await page.locator(".notice", { hasText: "Taken over" }).waitFor();
  await settled(page);
}

const rowOf = (page, size) => page.locator(".variants tbody").filter({ has: page.locator(".size .number", { hasText: new RegExp(`^${size.replaceAll(".", "\\.")}$`) }) });
const sizesIn = (page) => page.locator(".variants .size .number").allInnerTexts();
/** A cell as a number; a minus is the typographic one. */
const cell = async (row, key) => Number((await row.locator(`[data-figure=${key}]`).innerText()).replace("\u2212", "-"));

test("it starts around the design's own sizes, and its own row is marked", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    assert.equal(await page.locator("#what-if-outer_diameters").inputValue(), "14");
    assert.deepEqual(await sizesIn(page), ["14 × 8", "14 × 9", "14 × 10", "14 × 11", "14 × 12"]);
    assert.equal(await page.locator(".variants tbody[data-present=true]").count(), 1);
    assert.match(await rowOf(page, "14 × 10").innerText(), /as it is now/);
    assert.match(await page.locator(".variants-count").innerText(), /^5 variants, of 4 runs together: 5 can be made\.$/);
    // Once a row is taken over the table stays the one that it was chosen from.
    await rowOf(page, "14 × 12").getByRole("button", { name: /^Take over/ }).click();
    await taken(page);
    await worked(page);
    assert.deepEqual(await sizesIn(page), ["14 × 8", "14 × 9", "14 × 10", "14 × 11", "14 × 12"]);
    assert.match(await rowOf(page, "14 × 12").innerText(), /as it is now/);
  });
});

test("a row's numbers are the report's once it is taken over; its undo gives the same text back", async () => {
  const { engine } = await startEngine();
  await its.withPage(async (page) => {
    await openLoop(page);
    await page.getByRole("checkbox", { name: "PETG", exact: true }).check();
    await tryOut(page, "14, 16", "9, 11.5");
    const row = rowOf(page, "14 × 11.5");
    const keys = ["wall_mm", "utilisation", "allowed_kpa", "heat_margin_k", "loss_kpa", "operating_l_per_h", "coolant_ml", "material_cm3", "mass_g", "cost"];
    const told = Object.fromEntries(await Promise.all(keys.map(async (key) => [key, await cell(row, key)])));
    const found = await row.locator("[data-figure=findings]").innerText();
    const before = await keptText(page);

    await row.getByRole("button", { name: /^Take over/ }).click();
    await taken(page);
    const design = await keptDesign(page);
    assert.deepEqual(design.runs.map((run) => run.tube), Array(4).fill({ outer_diameter: 14, bore: 11.5 }));
    assert.equal(design.process.material.name, "PETG");
    const report = JSON.parse(engine.report(await keptText(page)));
    const { runs, totals, findings } = report;
    const least = (of) => Math.min(...runs.map(of));
    const near = (key, value, decimals) => assert.equal(told[key].toFixed(decimals), value.toFixed(decimals), key);
    near("wall_mm", 1.25, 2);
    near("utilisation", Math.max(...runs.map((run) => run.service.strength.utilisation)), 3);
    near("allowed_kpa", least((run) => run.service.strength.allowed_kpa), 0);
    near("heat_margin_k", runs[0].service.heat.limit_c - design.loop.fault_c, 0);
    near("loss_kpa", runs.reduce((sum, run) => sum + run.service.flow.loss_kpa.nominal, 0), 2);
    near("operating_l_per_h", report.loop.operating.flow_l_per_h.nominal, 0);
    near("coolant_ml", totals.bore_mm3 / 1000, 1);
    near("material_cm3", totals.material_mm3 / 1000, 2);
    near("mass_g", totals.mass_g, 1);
    near("cost", totals.material_mm3 * design.process.material.price_per_l / 1e6, 2);
    for (const [severity, word] of [["stop", "stop"], ["care", "care"], ["note", "note"]]) {
      const count = findings.filter((finding) => finding.severity === severity).length;
      assert.equal(Number(new RegExp(`(\\d+) ${word}`).exec(found)?.[1] ?? 0), count, `${word}: ${found}`);
    }
    // Nothing but what was taken over has changed.
    const sizesBack = structuredClone(design);
    const original = JSON.parse(before);
    sizesBack.runs.forEach((run, index) => (run.tube = original.runs[index].tube));
    sizesBack.process.material = original.process.material;
    assert.deepEqual(sizesBack, original);

    await worked(page);
    assert.match(await rowOf(page, "14 × 11.5").innerText(), /as it is now/);
    const notice = page.locator(".notice", { hasText: "Taken over: 14 × 11.5 mm, PETG." });
    await notice.getByRole("button", { name: /^Undo/ }).click();
    await settled(page);
    assert.equal(await keptText(page), before);
    assert.equal(await notice.count(), 0);
    assert.match(await page.evaluate(() => document.activeElement.textContent), /^Take over 14 × 11.5/, "the focus is where it was taken over");

    // The page's own undo does the same, and the word about it goes with it.
    await worked(page);
    await rowOf(page, "14 × 9").getByRole("button", { name: /^Take over/ }).click();
    await taken(page);
    await page.locator(".tools").getByRole("button", { name: /^Undo: / }).click();
    await settled(page);
    assert.equal(await keptText(page), before);
    assert.equal(await page.locator(".notice").count(), 0);
  });
});

test("one run alone is changed where only it is asked about", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    await page.locator("#what-if-run").selectOption({ label: "only block to radiator" });
    await worked(page);
    await rowOf(page, "14 × 12").getByRole("button", { name: /^Take over/ }).click();
    await taken(page);
    assert.deepEqual((await keptDesign(page)).runs.map((run) => run.tube.bore), [10, 12, 10, 10]);
    await page.locator("#what-if-run").selectOption({ label: "all 4 runs" });
    await worked(page);
    // The design, whose bores differ now, is none of those asked about and stands before them.
    assert.equal(await page.locator(".variants tbody[data-present=true] .size .number").innerText(), "14 × each");
  });
});

test("what cannot be made stands there too, marked, and says why", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    await tryOut(page, "12, 14", "10, 13, 14");
    const wrong = rowOf(page, "12 × 10");
    assert.match(await wrong.locator(".why").innerText(), /^Stopped: .*takes 14 mm/);
    assert.match(await wrong.locator("th").innerText(), /Stopped/);
    assert.equal(await wrong.locator("th svg.is-stop").count(), 1);
    assert.equal(await cell(wrong, "wall_mm"), 1);
    assert.equal(await wrong.locator("[data-figure=fits]").innerText(), "no");
    const more = wrong.locator(".why summary");
    assert.match(await more.innerText(), /^And \d+ more reasons$/);
    await more.press("Enter");
    assert.ok((await wrong.locator(".why li").count()) > 1 && (await wrong.locator(".why li").first().isVisible()));
    const take = wrong.getByRole("button", { name: /^Take over/ });
    const why = await take.getAttribute("aria-describedby");
    assert.match(await page.locator(`[id="${why}"]`).innerText(), /takes 14 mm/);

    // What is no tube at all cannot be taken over.
    const none = rowOf(page, "14 × 14");
    assert.match(await none.locator(".why").innerText(), /leaves no wall/);
    const before = await keptText(page);
    const cannot = none.getByRole("button", { name: /^Take over/ });
    assert.equal(await cannot.getAttribute("aria-disabled"), "true");
    await cannot.click({ force: true });
    await drawn(page);
    assert.equal(await keptText(page), before);
    // What can be a design, though a bad one, is the builder's to take.
    await take.click();
    await taken(page);
    assert.equal((await keptDesign(page)).runs[0].tube.outer_diameter, 12);
    assert.match(await page.locator(".standing").innerText(), /stop/);
  });
});

test("nonsense in a list is told at its field and stays as it was typed", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    const field = page.locator("#what-if-bores");
    for (const [text, words] of [["8, ten, 12", /“ten” is not a size/], ["8, -9", /above 0/], ["9,5", /9\.5, or 9 and 5/], ["8, 1e999", /not a size/]]) {
      await field.fill(text);
      await drawn(page);
      assert.equal(await field.getAttribute("aria-invalid"), "true", text);
      assert.equal(await field.inputValue(), text);
      const described = (await field.getAttribute("aria-describedby")).split(" ")[0];
      assert.match(await page.locator(`#${described}`).innerText(), words);
      assert.equal(await page.locator(".variants-answer").getAttribute("data-stale"), "true");
      assert.equal(await page.locator("#what-if-outer_diameters").getAttribute("aria-invalid"), "false");
    }
    await shot(page, "what-if-error");
    for (const [text, sizes] of [["8,9,10", [8, 9, 10]], ["9,5; 10,5", [9.5, 10.5]], ["12 8, 8,", [8, 12]], ["10.5", [10.5]]]) {
      await field.fill(text);
      await worked(page);
      assert.equal(await field.getAttribute("aria-invalid"), "false", text);
      const rows = (await page.locator(".variants tbody[data-present=false] .size .number, .variants tbody[data-present=true] .size .number").allInnerTexts()).map((size) => Number(size.split(" × ")[1]));
      assert.deepEqual(rows.filter((bore) => sizes.includes(bore)), sizes, text);
    }
    // More than can be tried at once is refused in words.
    const many = (from, count) => Array.from({ length: count }, (_, at) => (from + at / 100).toFixed(2)).join(" ");
    await page.locator("#what-if-outer_diameters").fill(many(12, 40));
    await field.fill(many(6, 40));
    await page.locator(".what-if .trouble").waitFor();
    assert.match(await page.locator(".what-if .trouble").innerText(), /1600 variants; at most 1000/);
    await page.locator("#what-if-anew").click();
    await worked(page);
    assert.equal(await page.locator("#what-if-outer_diameters").inputValue(), "14");
  });
});

test("an edit in the form is followed while the panel is open, the latest one", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    const [outer] = [page.locator("#at-runs-0-tube-bore")];
    await outer.fill("");
    await outer.pressSequentially("9.25", { delay: 15 });
    await settled(page);
    await worked(page);
    assert.match(await page.locator(".variants tbody[data-present=true]").innerText(), /as it is now/);
    assert.equal(await page.locator(".variants tbody[data-present=true] .size .number").innerText(), "14 × each");
    // A design that is not whole leaves the table as it was, and says so.
    await outer.fill("x");
    await settled(page);
    assert.equal(await page.locator(".variants-answer").getAttribute("data-stale"), "true");
    const before = await keptText(page);
    await page.locator(".variants .take[aria-disabled=false]").first().click();
    await page.locator(".notice", { hasText: "Mend first what is marked" }).waitFor();
    assert.equal(await keptText(page), before);
    await outer.fill("10");
    await settled(page);
    await worked(page);
    assert.equal(await page.locator(".variants tbody[data-present=true] .size .number").innerText(), "14 × 10");
  });
});

test("by keyboard alone: sizes, order, chart, and taking over and back", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#what-if").focus();
    await tabTo(page, /^Try other sizes/);
    await page.keyboard.press("Enter");
    await worked(page);
    await tabTo(page, /^Outer diameters/);
    await typeOver(page, "12, 12.7");
    await tabTo(page, "9");
    await worked(page);
    // A size in trade use is taken out of the list by its button, and put back.
    assert.equal(await page.locator("#what-if-bores").inputValue(), "6, 7, 8, 9, 10");
    await page.keyboard.press("Space");
    await drawn(page);
    assert.equal(await page.locator("#what-if-bores").inputValue(), "6, 7, 8, 10");
    await page.keyboard.press("Space");
    await worked(page);
    assert.equal(await page.locator("#what-if-bores").inputValue(), "6, 7, 8, 9, 10");

    await tabTo(page, /^Cost/);
    await page.keyboard.press("Enter");
    await page.keyboard.press("Enter");
    await drawn(page);
    const costs = await Promise.all((await page.locator(".variants tbody").all()).map((row) => cell(row, "cost")));
    assert.deepEqual(costs, costs.toSorted((a, b) => b - a));
    assert.equal(await page.locator(".variants th[aria-sort=descending]").count(), 1);
    assert.match(await page.locator(".variants th[aria-sort=descending]").innerText(), /Cost/);

    const known = new RegExp("^12(\\.7)? × \\d+ mm, .*: cost [\\d.]+, loss in the tubes [\\d.]+ kPa; ");
    await tabTo(page, known);
    await page.keyboard.press("Home");
    await drawn(page);
    const first = await page.evaluate(() => document.activeElement.getAttribute("data-key"));
    await page.keyboard.press("ArrowRight");
    await drawn(page);
    const second = await page.evaluate(() => document.activeElement.getAttribute("data-key"));
    assert.notEqual(second, first);
    assert.equal(await page.locator(`.variants tbody[data-key="${second}"]`).getAttribute("data-marked"), "true");
    assert.equal(await page.locator(".variants tbody[data-marked=true]").count(), 1);
    await page.keyboard.press("Enter");
    const before = await keptText(page);
    await page.keyboard.press("Enter");
    await taken(page);
    const { outer_diameter, bore } = (await keptDesign(page)).runs[0].tube;
    assert.ok(second.startsWith(`${outer_diameter} ${bore} `), `${second} for ${outer_diameter} × ${bore}`);
    await page.keyboard.press("Control+z");
    await settled(page);
    assert.equal(await keptText(page), before);
  });
});

test("the chart draws what has both figures, and the axes can be chosen", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    await tryOut(page, "12, 14", "8, 10, 14");
    // 12 × 14 and 14 × 14 are no tubes and have no figures.
    assert.equal(await page.locator(".variants-chart .dot").count(), 4);
    assert.match(await page.locator(".variants-chart figcaption").innerText(), /Least cost of those that can be made: 14 × 10 mm.*Not drawn: 2 variants/s);
    await page.locator("#what-if-up").selectOption("mass_g");
    await drawn(page);
    const mass = await cell(rowOf(page, "14 × 8"), "mass_g");
    const dot = page.locator('.variants-chart .dot[data-key^="14 8 "]');
    assert.match(await dot.getAttribute("aria-label"), new RegExp(`mass ${mass.toFixed(1)} g`));
    // Heavier is higher.
    const boxes = await Promise.all([dot, page.locator('.variants-chart .dot[data-key^="14 10 "]')].map((one) => one.boundingBox()));
    assert.ok(boxes[0].y < boxes[1].y && boxes[0].x > boxes[1].x);
    await dot.click();
    assert.equal(await rowOf(page, "14 × 8").getAttribute("data-marked"), "true");
    assert.ok(await rowOf(page, "14 × 8").isVisible());
  });
});
