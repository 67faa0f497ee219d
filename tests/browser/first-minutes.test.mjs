// The first two minutes: what a first visit shows, and how few actions lead from a blank page to files.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, saved, settled, shot } from "./bench.mjs";
import { readStl } from "./meshes.mjs";

const its = bench();

test("a first visit begins with three steps, which stay away once they are put away", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const steps = page.locator(".welcome li");
    assert.equal(await steps.count(), 3);
    for (const [name, place] of [["To the ports", "ports"], ["To the tubes", "runs"], ["To the files", "files"]]) {
      await page.getByRole("link", { name }).click();
      assert.ok(await page.evaluate((id) => {
        const { top } = document.getElementById(id).getBoundingClientRect();
        return top > -1 && top < innerHeight;
      }, place), `${name} leads there`);
    }
    await page.getByRole("button", { name: "Put these steps away" }).click();
    await steps.first().waitFor({ state: "detached" });
    await page.reload();
    await settled(page);
    assert.equal(await steps.count(), 0);
  });
});

test("from a blank page to downloaded files in at most 25 actions", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    let actions = 0;
    /** One press, one choice or one field typed in. */
    const act = async (work) => {
      actions += 1;
      await work();
      await settled(page);
    };
    const type = (place, text) => act(() => page.locator(place).fill(text));
    await act(() => page.getByRole("button", { name: "start from a blank design" }).click());
    await act(() => page.locator("#choose-fittings").selectOption({ label: "Straight, 12 mm tube" }));
    await act(() => page.getByRole("button", { name: "Add a fitting" }).click());
    for (const [port, at, facing] of [[0, ["(31.2 + 49) / 2", "22,5", "61"], "+z"], [1, ["150", "22.5", "110"], "−x"]]) {
      await act(() => page.getByRole("button", { name: "Add a port" }).click());
      for (const [axis, text] of at.entries()) await type(`#at-ports-${port}-at-${axis}`, text);
      if (facing !== "+z") await act(() => page.locator(`#at-ports-${port}-facing`).getByRole("radio", { name: facing }).check());
    }
    await act(() => page.getByRole("button", { name: "Add a run" }).click());
    const { ports, runs } = await keptDesign(page);
    assert.deepEqual(ports.map((one) => one.at), [[40.1, 22.5, 61], [150, 22.5, 110]]);
    assert.deepEqual([runs[0].from, runs[0].to], ports.map((one) => one.name));
    actions += 1;
    const { bytes } = await saved(page, () => page.getByRole("button", { name: `STL of ${runs[0].name}` }).click());
    assert.equal(readStl(bytes).open, 0, "a closed tube");
    assert.equal(await page.locator("#result .note.stop").count(), 0);
    assert.ok(actions <= 25, `${actions} actions`);
  });
});

test("the measuring sheet is one page of paper and nothing else of the page is on it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.evaluate(() => { window.print = () => {}; });
    await page.getByRole("button", { name: "How to measure" }).first().click();
    await page.getByRole("button", { name: "Print a measuring sheet" }).click();
    await page.locator(".measuring").waitFor({ state: "attached" });
    await page.emulateMedia({ media: "print" });
    const seen = await page.evaluate(() => [...document.getElementById("page").children].filter((one) => getComputedStyle(one).display !== "none").map((one) => one.className));
    assert.deepEqual(seen, ["print-pages"]);
    const high = await page.locator(".measuring").evaluate((sheet) => [sheet.scrollHeight, sheet.clientHeight]);
    assert.ok(high[0] <= high[1] + 1, "everything is on the sheet");
    await shot(page, "measuring-sheet");
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    await page.locator(".measuring").waitFor({ state: "detached" });
  });
});
