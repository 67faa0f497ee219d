// What gives way is said in words, the work is kept, there is a way on, and a report names nothing of the design.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keepThreads, keptDesign, killThread, saved, settled, shot } from "./bench.mjs";

const its = bench();

/** What was copied last. */
const copied = (page) => page.evaluate(() => globalThis.copiedText);
const watchCopies = (page) => page.addInitScript(() => {
  Object.defineProperty(navigator, "clipboard", { value: { writeText: async (text) => { globalThis.copiedText = text; } } });
});

function namesNothing(report, design) {
  assert.match(report, /^Browser: /m);
  for (const name of [design.name, ...design.ports.map((port) => port.name), ...design.runs.map((run) => run.name)]) {
    assert.ok(!report.includes(name), `the report names “${name}”`);
  }
}

test("a thread that is killed is said, the design is kept and goes on, and a report can be copied", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-name").fill("Secret rig");
    await settled(page);
    await killThread(page);
    await page.locator(".notice.trouble", { hasText: "engine stopped" }).waitFor();
    await settled(page);
    const design = await keptDesign(page);
    assert.equal(design.name, "Secret rig");
    await page.getByRole("button", { name: "Copy a report" }).click();
    await page.locator(".notice", { hasText: "report is copied" }).waitFor();
    const report = await copied(page);
    assert.match(report, /What: killed/);
    assert.match(report, /Build: [0-9a-f]{16}/);
    namesNothing(report, design);
    await page.locator("#at-ports-0-at-0").fill("44");
    await settled(page);
    assert.equal((await keptDesign(page)).ports[0].at[0], 44);
  }, {
    prepare: async (page) => {
      await watchCopies(page);
      await page.addInitScript(keepThreads);
    },
  });
});

test("where WebAssembly is not allowed the page says so, and hands out the kept designs and a report", async () => {
  const design = {
    format: "tubewright-design", version: 1, name: "Kept <b>one</b>", notes: "", fittings: [], ports: [], runs: [], keep_outs: [], clearance: 1,
    process: { material: "PETG", printer: "medium resin" },
    loop: { flow_l_per_h: 120, coolant: "water", working_c: 40, fault_c: 60, pressure_kpa: 50 },
  };
  const entry = JSON.stringify({ stamp: "a", changed: "2026-11-01T10:00:00.000Z", untouched: false, design });
  await its.withPage(async (page) => {
    const words = page.getByRole("alert");
    await words.waitFor();
    assert.match(await words.innerText(), /could not start.*untouched/s);
    await shot(page, "cannot-start");
    const { bytes } = await saved(page, () => page.getByRole("button", { name: "Save my designs as a file" }).click());
    assert.deepEqual(JSON.parse(Buffer.from(bytes).toString()).designs, [design]);
    await page.getByRole("button", { name: "Copy a report" }).click();
    await page.getByRole("button", { name: "Copied" }).waitFor();
    namesNothing(await copied(page), design);
    assert.equal(await page.evaluate(() => localStorage.getItem("tubewright.kept.1.abc")), entry);
  }, {
    quiet: false, kept: { "tubewright.kept.1.abc": entry, "tubewright.last": "abc" },
    prepare: async (page) => {
      await watchCopies(page);
      await page.addInitScript(() => { globalThis.WebAssembly = undefined; });
    },
  });
});

test("where storage is closed to the page it says so and works on", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    assert.match(await page.locator(".notices").innerText(), /does not let the page keep anything/);
    await page.locator("#at-ports-0-at-0").fill("51");
    await settled(page);
    assert.equal(await page.locator("#at-ports-0-at-0").inputValue(), "51");
    await page.getByRole("button", { name: "Designs", exact: true }).click();
    await page.locator("#designs").waitFor();
    await page.keyboard.press("Escape");
    await saved(page, () => page.getByRole("button", { name: "Save", exact: true }).click());
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.getByRole("button", { name: /^A blank design/ }).click();
    await settled(page);
    await page.getByRole("button", { name: "Undo: start from a blank design" }).click();
    await settled(page);
    assert.equal(await page.locator("#at-ports-0-at-0").inputValue(), "51", "undo needs no storage");
  }, {
    prepare: (page) => page.addInitScript(() => {
      for (const store of ["localStorage", "sessionStorage"]) Object.defineProperty(globalThis, store, { get() { throw new DOMException("closed", "SecurityError"); } });
    }),
  });
});

test("a report that cannot be copied is shown to be copied by hand", async () => {
  await its.withPage(async (page) => {
    await page.getByRole("button", { name: "Copy a report" }).click();
    const field = page.getByRole("textbox", { name: "The report, to be copied" });
    await field.waitFor();
    assert.match(await field.inputValue(), /What: the engine's file could not be read \(404\)/);
  }, {
    quiet: false,
    prepare: async (page) => {
      await page.addInitScript(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
      await page.route("**/engine_bg.wasm", (route) => route.fulfill({ status: 404 }));
    },
  });
});
