// The first visit: a demo is there, from files that are small, and both demos come out whole.

import assert from "node:assert/strict";
import fs from "node:fs";
import path from "node:path";
import { test } from "node:test";
import { bench, keptDesign, openLoop, saved, settled, shot } from "./bench.mjs";
import { readStl } from "./meshes.mjs";
import { SITE } from "./site.mjs";

const its = bench();

test("the first visit shows the single-run demo, made", async () => {
  await its.withPage(async (page) => {
    await page.locator("#at-ports-0-at-0").waitFor();
    await settled(page);
    assert.equal(await page.locator("#result table.figures").first().locator("tbody tr").count(), 1);
    await shot(page, "first-visit");
  });
});

test("no file that the page asks for but the engine is over 200 kB", () => {
  const files = fs.readdirSync(SITE, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  assert.ok(files.length > 20);
  for (const file of files) {
    const { size } = fs.statSync(path.join(file.parentPath, file.name));
    if (file.name !== "engine_bg.wasm" && file.name !== "tubewright.html") assert.ok(size <= 200_000, `${file.name} is ${size} bytes`);
  }
});

test("the loop demo makes four closed tubes", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    const { runs } = await keptDesign(page);
    assert.equal(runs.length, 4);
    await page.getByRole("radio", { name: /Coarse/ }).check();
    for (const run of runs) {
      const { bytes } = await saved(page, () => page.getByRole("button", { name: `STL of ${run.name}` }).click());
      const mesh = readStl(bytes);
      assert.equal(mesh.open, 0, `${run.name} is not closed`);
      assert.ok(mesh.volume > 1000);
    }
    assert.equal(await page.locator("#result .note.stop").count(), 0, "a demo has no stop");
    await shot(page, "loop");
  });
});

test("index.html asks early for every module that main.js comes to need, and for no other", async () => {
  const needed = new Set();
  let listed = [];
  await its.withPage(async (page) => {
    await settled(page);
    assert.ok(listed.length > 20);
    assert.deepEqual([...needed].sort(), listed.sort());
  }, {
    // The page is served without its list, so that what is asked for is what the modules import.
    prepare: async (page) => {
      await page.route(its.url, async (route) => {
        const response = await route.fetch();
        const text = await response.text();
        const link = /<link rel="modulepreload" href="([^"]+)">\n/g;
        listed = [...text.matchAll(link)].map(([, href]) => href);
        await route.fulfill({ response, body: text.replace(link, "") });
      });
      page.on("request", (request) => {
        const file = request.url().slice(its.url.length);
        if (/\.js$/.test(file) && file !== "main.js" && file !== "engine/worker.js") needed.add(file);
      });
    },
  });
});
