// Bad input: each a clear message at its place, and the design before it untouched.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, settled, shot } from "./bench.mjs";

const its = bench();

const port = (name, at, facing = [0, 0, 1]) => ({ name, at, facing, fitting: "F" });
const fitting = { name: "F", tube_diameter: 12, height: 18, socket_depth: 10, collar_diameter: 19, lead: 5 };
const run = (more = {}) => ({ name: "r", from: "a", to: "b", tube: { outer_diameter: 12, bore: 8 }, bend_radius: 24, route: [], ...more });
const design = (more = {}) => ({
  format: "tubewright-design", version: 1, name: "bad", fittings: [fitting],
  ports: [port("a", [0, 0, 0]), port("b", [100, 0, 80], [-1, 0, 0])], runs: [run()], ...more,
});
const station = (index) => ({ corner: [index, 0, 100] });

/** File contents, and what the refusal must say. */
const FILES = {
  "an empty file": ["", /empty/],
  "no JSON": ["solid tube\nendsolid", /JSON/],
  "half a JSON": ['{"format":"tubewright-design"', /ends too early/],
  "not text": [Buffer.from([0xff, 0xfe, 0x00, 0x81, 0x9d]), /neither text nor an archive/],
  "NaN": [JSON.stringify(design()).replace('"bend_radius":24', '"bend_radius":NaN'), /not opened/],
  "1e308": [JSON.stringify(design({ ports: [port("a", [1e308, 0, 0]), port("b", [1, 1, 1])] })), /1,000,000|million|from/],
  "1e999": [JSON.stringify(design()).replace('"bend_radius":24', '"bend_radius":1e999'), /not opened/],
  "a newer version": [JSON.stringify(design({ version: 2 })), /version/i],
  "an unknown key": [JSON.stringify(design({ colour: "red" })), /colour/],
  "a missing port": [JSON.stringify(design({ runs: [run({ to: "nowhere" })] })), /nowhere/],
  "an unknown fitting": [JSON.stringify(design({ fittings: [{ ...fitting, name: "G" }] })), /“F”|"F"/],
  "a facing of no length": [JSON.stringify(design({ ports: [port("a", [0, 0, 0], [0, 0, 0]), port("b", [100, 0, 80])] })), /facing/i],
  "a run from a port to itself": [JSON.stringify(design({ runs: [run({ to: "a" })] })), /itself|same port|another port/i],
  "a name with a right-to-left mark": [JSON.stringify(design({ name: "\u202egpj.exe" })), /U\+202E/],
  "10,000 stations": [JSON.stringify(design({ runs: [run({ route: Array.from({ length: 10_000 }, (_, index) => station(index)) })] })), /2,?000/],
};

test("opening what is no design is refused with words and changes nothing", async (context) => {
  await withOpenPage(async (page) => {
    const before = await keptDesign(page);
    for (const [what, [content, words]] of Object.entries(FILES)) {
      await context.test(what, async () => {
        await page.locator("#open-file").setInputFiles({ name: "bad.json", mimeType: "application/json", buffer: Buffer.from(content) });
        const notice = page.locator(".notice.trouble");
        await notice.waitFor();
        const said = await notice.innerText();
        assert.match(said, words);
        assert.match(said, /Your design is as it was/);
        assert.deepEqual(await keptDesign(page), before);
        await notice.getByRole("button", { name: /^Put this/ }).click();
        await notice.waitFor({ state: "detached" });
      });
    }
  });
});

test("a 50 MB file is refused before it is read", async () => {
  await withOpenPage(async (page) => {
    const before = await keptDesign(page);
    await page.evaluate(() => {
      window.read = 0;
      for (const call of ["arrayBuffer", "text", "stream", "slice"]) Blob.prototype[call] = () => { window.read += 1; };
      const data = new DataTransfer();
      data.items.add(new File([new Uint8Array(50e6)], "huge.json"));
      document.body.dispatchEvent(new DragEvent("drop", { bubbles: true, dataTransfer: data }));
    });
    const notice = page.locator(".notice.trouble");
    await notice.waitFor();
    assert.match(await notice.innerText(), /50 MB.*never over 16 MB/);
    assert.equal(await page.evaluate(() => window.read), 0);
    assert.deepEqual(await keptDesign(page), before);
    await notice.getByRole("button", { name: /^Put this/ }).click();
  });
});

test("a design that is dropped on the page is opened, whatever its names", async () => {
  const names = ["<img src=x onerror=alert(1)>", "../../etc/passwd", "pumpe \u00e4\u00f6\u00fc \u05e9"];
  await withOpenPage(async (page) => {
    const good = design({
      name: names[0], ports: [port(names[1], [0, 0, 0]), port(names[2], [100, 0, 80], [-1, 0, 0])],
      runs: [run({ name: names[0], from: names[1], to: names[2], route: [{ corner: [0, 0, 80] }] })],
    });
    await page.evaluate((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], "good.json"));
      document.body.dispatchEvent(new DragEvent("dragover", { bubbles: true, dataTransfer: data }));
      document.body.dispatchEvent(new DragEvent("drop", { bubbles: true, dataTransfer: data }));
    }, JSON.stringify(good));
    await page.waitForFunction((name) => document.querySelector("#at-name")?.value === name, names[0]);
    await settled(page);
    assert.equal(await page.locator("#page img").count(), 1, "markup in a name stays text");
    const [download] = await Promise.all([page.waitForEvent("download"), page.locator(".file-list button").first().click()]);
    assert.match(download.suggestedFilename(), /^[^<>:"/\\|?*\u202e]+\.stl$/);
    assert.ok(!download.suggestedFilename().includes(".."));
  });
});

test("bad input in a field is marked there, with words; the last good result stays in sight", async () => {
  await withOpenPage(async (page) => {
    const length = page.locator("#result table.figures tbody td").first();
    const before = await length.textContent();
    for (const [field, typed] of [
      ["#at-ports-0-at-0", "NaN"], ["#at-ports-0-at-0", "1e308"], ["#at-ports-0-at-0", "12 kg"],
      ["#at-runs-0-tube-bore", "12"], ["#at-runs-0-tube-outer_diameter", "0"], ["#at-runs-0-bend_radius", "-4"],
      ["#at-ports-0-measured_to", "-1"],
    ]) {
      const input = page.locator(field);
      const was = await input.inputValue();
      await input.fill(typed);
      await settled(page);
      assert.equal(await input.inputValue(), typed);
      await page.waitForFunction(() => document.querySelector(".note.mend"));
      const where = await page.locator("[aria-invalid=true]").evaluateAll((all) => all.map((one) => [
        `#${one.id}`, one.getAttribute("aria-describedby").split(" ").map((id) => document.getElementById(id)?.textContent ?? "").join(" "),
      ]));
      assert.ok(where.length > 0, `${typed} in ${field} marks no field`);
      assert.ok(where.some(([, words]) => /Mend:/.test(words)), `${typed} in ${field}: no words at the field`);
      assert.equal(await length.textContent(), before);
      assert.ok(await page.getByRole("button", { name: "All files in one (.zip)" }).isDisabled());
      if (typed === "12 kg") await shot(page, "field-errors");
      await input.fill(was);
      await settled(page);
      assert.equal(await page.locator("[aria-invalid=true]").count(), 0);
    }
  });
});

test("two ports at one point are said at their place", async () => {
  await withOpenPage(async (page) => {
    const { ports } = await keptDesign(page);
    for (const axis of [0, 1, 2]) await page.locator(`#at-ports-1-at-${axis}`).fill(String(ports[0].at[axis]));
    await settled(page);
    await page.waitForFunction(() => document.querySelector("#ports .note, #runs .note, #fittings .note"));
    assert.ok((await page.locator("#ports .note, #runs .note").count()) > 0);
    assert.match(await page.locator("#result").innerText(), /Stop|Care|Mend/);
  });
});

async function withOpenPage(work) {
  await its.withPage(async (page) => {
    await settled(page);
    await work(page);
  });
}
