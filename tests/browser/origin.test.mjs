// "Where does this come from?": asked of any number of the results, by keyboard too, down to the field that it is made of.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, drawn, keptDesign, settled } from "./bench.mjs";
import { tabTo } from "./keyboard.mjs";

const its = bench();
const dialog = (page) => page.getByRole("dialog");
const inFocus = (page) => page.evaluate(() => document.activeElement?.id || document.activeElement?.textContent?.trim());

/** The engine's own table of the results. */
const table = (page) => page.evaluate(async () => JSON.parse((await import("/engine.js")).vocabulary()).results);

test("by keyboard: asked, read, closed by Escape with the focus where it was, and followed to the field", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#result .run-detail > summary").first().focus();
    await tabTo(page, "Where does Growth from fitted to hottest come from?", { most: 12 });
    await page.keyboard.press("Enter");
    await dialog(page).waitFor();
    assert.equal(await inFocus(page), "where-from-title");
    const row = (await table(page)).find((one) => one.path === "/runs/*/service/heat/growth_mm");
    const words = await dialog(page).innerText();
    for (const part of [row.formula, row.source, row.range]) assert.ok(words.includes(part), part);
    const { loop, process, runs } = await keptDesign(page);
    assert.ok(words.includes(runs[0].name));
    assert.match(words, new RegExp(`Fault temperature[^\\d]+${loop.fault_c} °C`));
    assert.match(words, new RegExp(`of ${process.material.name ?? process.material}`), "the figure of a material that stands by its name");
    await page.keyboard.press("Escape");
    await dialog(page).waitFor({ state: "hidden" });
    assert.equal(await inFocus(page), "Where does Growth from fitted to hottest come from?");

    await page.keyboard.press("Enter");
    await dialog(page).waitFor();
    await tabTo(page, /^Fault temperature/, { most: 8 });
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement.id === "at-loop-fault_c");
    assert.ok(await dialog(page).isHidden());
  });
});

test("from a result to the results that it is made of, and back", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator('.service tr[data-result="strength/utilisation"] .where').click();
    await dialog(page).getByRole("button", { name: /^in a straight/ }).first().click();
    await drawn(page);
    assert.equal(await inFocus(page), "where-from-title");
    assert.match(await dialog(page).innerText(), /Lamé/);
    await dialog(page).getByRole("button", { name: /^Back to/ }).click();
    await drawn(page);
    assert.match(await dialog(page).getByRole("heading").innerText(), /Strength used/);
    await page.mouse.click(5, 5);
    assert.ok(await dialog(page).isHidden(), "a click beside it closes it");
  });
});

test("every button answers with a formula, a source and how far it holds, and no number that the page tells is unknown to it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: "Demo" }).nth(1).click();
    await settled(page);
    await page.locator("#add-leak-test").click();
    await page.locator("#at-loop-leak_test-end_kpa").fill("49.5");
    await page.locator(".run-detail > summary").first().click();
    await settled(page);
    const rows = await table(page);
    const asked = new Set();
    const { loop, runs } = await keptDesign(page);
    // What goes in is counted: each part's drop and flow and each point of the pump; the length of every run.
    const parts = { "/loop/stated/loss_kpa": 2 * loop.parts.length + loop.pump.points.length + runs.length, "/totals/length_mm": runs.length };
    const buttons = await page.locator(".where").all();
    assert.ok(buttons.length > 20, `${buttons.length}`);
    for (const button of buttons) {
      await button.click();
      await drawn(page);
      const answers = await dialog(page).evaluate((one) => [...one.querySelectorAll("dl")].map((list) => ({
        facts: [...list.children].slice(0, 3).map((line) => line.lastElementChild.textContent),
        values: [...list.querySelectorAll("li .figure")].map((value) => value.textContent),
        head: (list.previousElementSibling ?? list).textContent,
      })));
      const name = await button.innerText();
      assert.ok(answers.length > 0, name);
      for (const { facts, values, head } of answers) {
        const row = rows.find((one) => one.formula === facts[0] && one.source === facts[1] && one.range === facts[2]);
        assert.ok(row, `${name}: ${facts}`);
        assert.doesNotMatch(head, /not known|undefined|NaN/, name);
        for (const value of values) assert.doesNotMatch(value, /undefined|NaN|to fill in/, `${name}: ${value}`);
        if (row.path in parts) assert.equal(values.length, parts[row.path], row.path);
        asked.add(row.path);
      }
      await page.keyboard.press("Escape");
    }
    for (const path of ["/totals/mass_g", "/runs/*/length_mm", "/loop/operating/flow_l_per_h", "/loop/leak_test/energy_j", "/runs/*/service/seals/*/squeeze_percent"]) {
      assert.ok(asked.has(path), path);
    }
    await page.setViewportSize({ width: 320, height: 640 });
    await buttons[0].click();
    const box = await dialog(page).boundingBox();
    assert.ok(box.x >= 0 && box.x + box.width <= 320 && box.y >= 0 && box.y + box.height <= 640, JSON.stringify(box));
  });
});
