// Without a network, and from one file on a disk: the page does all that it does.

import assert from "node:assert/strict";
import fs from "node:fs";
import path from "node:path";
import { test } from "node:test";
import { pathToFileURL } from "node:url";
import { bench, keptDesign, openLoop, saved, settled, shot } from "./bench.mjs";
import { readStl } from "./meshes.mjs";
import { SITE, serveSite } from "./site.mjs";

const its = bench();
const kept = (page) => page.evaluate(() => caches.keys());

async function ready(page) {
  await settled(page);
  await page.waitForFunction(() => document.getElementById("page").dataset.offline === "ready");
}

test("a reload without a network gives the page back, engine and files and all", async () => {
  await its.withPage(async (page, context) => {
    await ready(page);
    await page.locator("#at-name").fill("Kept offline");
    await settled(page);
    await context.setOffline(true);
    await page.reload();
    await settled(page);
    assert.equal(await page.locator("#at-name").inputValue(), "Kept offline");
    await page.locator("#at-ports-0-at-0").fill("37");
    await settled(page);
    const run = (await keptDesign(page)).runs[0].name;
    const { bytes } = await saved(page, () => page.getByRole("button", { name: `STL of ${run}` }).click());
    assert.equal(readStl(bytes).open, 0);
    const one = await context.newPage();
    await one.goto(`${its.url}#design=1.AAAA`);
    await settled(one);
    assert.match(await one.locator(".notice.trouble").first().innerText(), /not whole/, "a link opens without a network too");
  }, { workers: "allow", quiet: false });
});

test("a newer build waits until it is asked for, takes over whole, and the older one's files go", async () => {
  const folder = fs.mkdtempSync(path.join(SITE, "../site-newer-"));
  fs.cpSync(SITE, folder, { recursive: true });
  const server = await serveSite(folder);
  try {
    await its.withPage(async (page) => {
      await page.goto(server.url);
      await ready(page);
      await page.locator("#at-name").fill("Through an update");
      await settled(page);
      const [old] = await kept(page);
      const file = path.join(folder, "sw.js");
      fs.writeFileSync(file, fs.readFileSync(file, "utf8").replace(/^const VERSION = "[^"]+"/, 'const VERSION = "a-newer-one"'));
      fs.appendFileSync(path.join(folder, "page.js"), "\nglobalThis.newer = true;\n");
      await page.reload();
      await page.locator(".notice", { hasText: "A newer Tubewright is ready" }).waitFor();
      assert.equal(await page.evaluate(() => globalThis.newer), undefined, "the page is still all of the older build");
      await shot(page, "newer");
      await page.getByRole("button", { name: "Load it now" }).click();
      await page.waitForFunction(() => globalThis.newer === true);
      await settled(page);
      assert.equal(await page.locator("#at-name").inputValue(), "Through an update");
      assert.deepEqual(await kept(page), ["tubewright-a-newer-one"]);
      assert.notEqual(old, "tubewright-a-newer-one");
    }, { workers: "allow", quiet: false });
  } finally {
    await server.close();
    fs.rmSync(folder, { recursive: true });
  }
});

test("it can be installed: its manifest is whole and its mark is there", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const manifest = await page.evaluate(async () => (await fetch(document.querySelector("link[rel=manifest]").href)).json());
    assert.deepEqual([manifest.name, manifest.display, manifest.start_url], ["Tubewright", "standalone", "./"]);
    for (const { src } of manifest.icons) assert.ok(fs.existsSync(path.join(SITE, src)));
  });
});

test("the single file does the whole job from a disk: demo, edit, files, thread, keeping", async () => {
  const file = pathToFileURL(path.join(SITE, "tubewright.html")).href;
  await its.withPage(async (page) => {
    const asked = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.goto(file);
    await settled(page);
    assert.ok(await page.locator("#at-ports-0-at-0").inputValue());
    assert.ok(await page.evaluate(() => document.querySelector(".top img").naturalWidth > 0), "the mark is drawn");
    assert.equal(await page.locator(".preview .trouble").count(), 0, "the solid preview is there");
    await openLoop(page);
    await page.locator("#at-name").fill("From a disk");
    await settled(page);
    const { runs } = await keptDesign(page);
    const { bytes } = await saved(page, () => page.getByRole("button", { name: `STL of ${runs[0].name}` }).click());
    assert.equal(readStl(bytes).open, 0);
    await page.getByRole("button", { name: "Share", exact: true }).click();
    const link = page.locator("#share-link");
    await link.waitFor();
    assert.ok((await link.inputValue()).startsWith("#design=1."), "nobody's folders are in a link");
    await page.keyboard.press("Escape");
    await page.reload();
    await settled(page);
    assert.equal(await page.locator("#at-name").inputValue(), "From a disk");
    assert.ok(asked.every((url) => url.startsWith("file:") || url.startsWith("blob:") || url.startsWith("data:")), asked.join("\n"));
    await shot(page, "single-file");
  }, { elsewhere: true });
});

test("the single file is under 2.5 MB", () => {
  assert.ok(fs.statSync(path.join(SITE, "tubewright.html")).size < 2_500_000);
});
