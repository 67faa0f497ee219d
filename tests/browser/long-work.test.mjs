// What takes long says how far it is, never freezes the page, and can be given up.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, saved, settled, shot } from "./bench.mjs";

const its = bench();

test("a pack that takes long can be given up, and the page goes on at once", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    // A spiral followed as closely as files can be takes a second or more, and twenty of them most of a minute.
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: "A spiral that opens" }).click();
    await settled(page);
    const design = await keptDesign(page);
    const [run] = design.runs;
    design.runs = Array.from({ length: 20 }, (_, at) => ({ ...run, name: `spiral ${at}` }));
    await page.locator("#open-file").setInputFiles({ name: "many.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify({ ...design, name: "Many" })) });
    await page.waitForFunction(() => document.getElementById("at-name").value === "Many");
    await settled(page);
    await page.locator("#pack").click();
    const notice = page.locator(".notice", { hasText: "Making the pack" });
    await notice.waitFor();
    await page.waitForFunction(() => document.querySelector(".notice progress")?.value > 0, undefined, { timeout: 120_000 });
    await shot(page, "long-work");
    await page.locator("#at-name").fill("Typed meanwhile");
    assert.equal(await page.locator("#at-name").inputValue(), "Typed meanwhile", "typing waits for nothing");
    await notice.getByRole("button", { name: "Give it up" }).click();
    await notice.waitFor({ state: "detached" });
    await settled(page);
    assert.equal(await page.locator(".notice.trouble").count(), 0, "what was given up is no trouble");
    assert.equal((await keptDesign(page)).name, "Typed meanwhile");
    const { bytes } = await saved(page, () => page.getByRole("button", { name: "STL of spiral 0" }).click());
    assert.ok(bytes.length > 1000, "the new thread makes files");
  });
});
