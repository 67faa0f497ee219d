// What a print service asks of each file is told before it is sent, of the very file that is saved.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, saved, settled } from "./bench.mjs";

const its = bench();

/** The count that a binary STL holds. */
const trianglesOf = (bytes) => new DataView(bytes.buffer, bytes.byteOffset).getUint32(80, true);

/** Opens the first run's list and waits for the answer about the design as it is. */
async function opened(page) {
  const list = page.locator(".asked-of").first();
  if (!(await list.evaluate((details) => details.open))) await list.locator("summary").click();
  await page.waitForFunction(() => document.querySelector(".asked-of [data-stale=false] .asked-list"));
  return list;
}

test("the first tube passes all that is asked, and the file that is saved is the one that was asked", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const list = await opened(page);
    const codes = await list.locator(".asked-list li").evaluateAll((items) => items.map((item) => item.dataset.code));
    assert.deepEqual(codes.filter((code) => code !== "wall_for_size"), ["closed", "one_body", "volume", "unit", "wall", "room", "triangles", "size"]);
    for (const item of await list.locator(".asked-list li:not([data-code=wall_for_size])").all()) {
      assert.match(await item.innerText(), /: passed\./);
    }
    const { bytes } = await saved(page, () => page.getByRole("button", { name: /^STL of / }).first().click());
    const triangles = trianglesOf(bytes);
    assert.match(await list.locator(".asked-sum").innerText(), new RegExp(`${triangles.toLocaleString("en")} triangles`));
  });
});

test("what is not passed is said in words, and follows the design and the fineness", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const list = await opened(page);
    await page.locator("#at-process-printer-own").click();
    await page.locator("#at-process-printer-most_triangles").fill("3000");
    await page.locator("#at-process-printer-least_wall").fill("3");
    await settled(page);
    await opened(page);
    await list.locator("li[data-code=triangles][data-passes=false]").waitFor();
    assert.match(await list.locator("li[data-code=triangles]").innerText(), /not passed.*3,?000 are taken/s);
    assert.match(await list.locator("li[data-code=wall]").innerText(), /not passed.*asks for 3/s);
    assert.match(await list.locator(".asked-sum").innerText(), /not passed/);
    await page.getByRole("radio", { name: /As it fits/ }).check();
    await list.locator("li[data-code=triangles][data-passes=true]").waitFor();
    const [, deviation] = /within ([\d.]+) mm/.exec(await list.locator(".asked-sum").innerText());
    assert.ok(Number(deviation) > 0.01, deviation);
    const { bytes } = await saved(page, () => page.getByRole("button", { name: /^STL of / }).first().click());
    assert.ok(trianglesOf(bytes) <= 3000);
  });
});
