// The loop around the tubes: the pump's curve, the heat, and the other parts.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, settled } from "./bench.mjs";

const its = bench();

const at = (page, place) => page.locator(`#at-loop-${place}`);
const inFocus = (page) => page.evaluate(() => document.activeElement.id);

test("a shipped pump tells its curve and source; made one's own, its points are fields", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    assert.match(await page.locator("#loop .stuff").innerText(), /m at 0 L\/h/);
    await at(page, "pump-own").click();
    await settled(page);
    assert.equal(await inFocus(page), "at-loop-pump-name");
    const { points } = (await keptDesign(page)).loop.pump;
    for (const [index, point] of points.entries()) {
      assert.equal(await at(page, `pump-points-${index}-flow_l_per_h`).inputValue(), String(point.flow_l_per_h));
      assert.equal(await at(page, `pump-points-${index}-head_m`).inputValue(), String(point.head_m));
    }
  });
});

test("a point out of order is told at its place; put right or removed, nothing is left of it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await at(page, "pump-own").click();
    await settled(page);
    const { points } = (await keptDesign(page)).loop.pump;
    await page.locator("#add-pump-points").click();
    await settled(page);
    const place = `pump-points-${points.length}`;
    assert.equal(await inFocus(page), `at-loop-${place}-flow_l_per_h`);
    const last = points.at(-1).flow_l_per_h;
    await at(page, `${place}-flow_l_per_h`).fill(String(last / 2));
    await at(page, `${place}-head_m`).fill("0");
    await settled(page);
    const notes = page.locator("#loop .points .note.mend");
    assert.equal(await notes.count(), 1);
    assert.equal(await at(page, `${place}-flow_l_per_h`).getAttribute("aria-invalid"), "true");
    await page.locator("#result .note.mend").getByRole("button", { name: /^Go to/ }).click();
    await page.waitForFunction((id) => document.activeElement.id === id, `at-loop-${place}-flow_l_per_h`);

    await at(page, `${place}-remove`).click();
    await settled(page);
    assert.equal(await page.locator("#loop .note.mend").count(), 0);
    assert.deepEqual((await keptDesign(page)).loop.pump.points, points);
    assert.match(await inFocus(page), /^at-loop-pump-points-\d+-flow_l_per_h$/, "the focus stays at the curve");
  });
});

test("of two points none is removed: they are what a curve needs", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await at(page, "pump-own").click();
    await settled(page);
    const remove = () => page.getByRole("button", { name: /^Remove point/ });
    while ((await remove().count()) > 2) await remove().last().click();
    await settled(page);
    assert.equal(await remove().first().getAttribute("aria-disabled"), "true");
    await remove().first().dispatchEvent("click");
    await settled(page);
    assert.equal((await keptDesign(page)).loop.pump.points.length, 2);
  });
});

test("parts of the loop: a shipped one, a blank one, renamed, removed", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const parts = async () => (await keptDesign(page)).loop.parts ?? [];
    const there = (await parts()).length;
    await page.locator("#add-parts").click();
    await settled(page);
    assert.equal(await inFocus(page), `at-loop-parts-${there}-name`);
    const [shipped] = (await parts()).slice(there);
    assert.deepEqual(Object.keys(shipped).sort(), ["at_l_per_h", "drop_kpa", "name", "volume_ml"]);
    for (const key of ["at_l_per_h", "drop_kpa", "volume_ml"]) assert.equal(typeof shipped[key], "number");

    await page.locator("#choose-parts").selectOption("own");
    await page.locator("#add-parts").click();
    await settled(page);
    const mine = `parts-${there + 1}`;
    assert.match(await page.locator(".standing").innerText(), /3 fields to fill in/);
    for (const [key, text] of [["name", "graphics block"], ["drop_kpa", "6.5"], ["at_l_per_h", "120"], ["volume_ml", "15"]]) await at(page, `${mine}-${key}`).fill(text);
    await settled(page);
    assert.deepEqual((await parts())[there + 1], { name: "graphics block", drop_kpa: 6.5, at_l_per_h: 120, volume_ml: 15 });

    await at(page, `${mine}-drop_kpa`).fill("much");
    await settled(page);
    assert.equal(await at(page, `${mine}-drop_kpa`).getAttribute("aria-invalid"), "true");
    assert.ok(await page.locator(`#at-loop-${mine}-drop_kpa-notes`).isVisible());
    await at(page, `${mine}-drop_kpa`).fill("6.5");

    await at(page, `parts-${there}-remove`).click();
    await settled(page);
    assert.equal((await parts())[there].name, "graphics block");
    assert.equal(await inFocus(page), `at-loop-parts-${there}-remove`);
    await at(page, `parts-${there}-remove`).click();
    await settled(page);
    assert.equal((await parts()).length, there);
  });
});

test("the heat that the coolant carries is kept, and nonsense is told at its place", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await at(page, "heat_w").fill("650");
    await settled(page);
    assert.equal((await keptDesign(page)).loop.heat_w, 650);
    await at(page, "heat_w").fill("a lot");
    await settled(page);
    assert.equal(await at(page, "heat_w").getAttribute("aria-invalid"), "true");
    assert.match(await page.locator("#at-loop-heat_w-notes").innerText(), /number/);
  });
});
