// From a blank design, typed in by keyboard alone, to files that are read back.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, saved, settled, shot } from "./bench.mjs";
import { tabTo, typeOver } from "./keyboard.mjs";
import { read3mf, readStl, readZip } from "./meshes.mjs";

const its = bench();

// A pump whose port looks up and a block whose port looks back at it: one right angle between them.
const RADIUS = 16;
const [OUTER, BORE] = [12, 8];
const STOP = 8; // height 18 less socket depth 10, as typed below

/** Length of the centreline: two straights less two tangents, and a quarter circle. */
const LENGTH = 110 - 60 - STOP + (150 - 30 - STOP) - 2 * RADIUS + (Math.PI / 2) * RADIUS;

/** A frustum's volume. */
const frustum = (a, b, long) => (Math.PI * long * (a * a + a * b + b * b)) / 3;

/** Pappus for the plain tube, less what the lead-in chamfer (15 degrees, 2 mm) and the inner break (0.2 mm) take off. */
function expectedVolume() {
  const [outer, bore] = [OUTER / 2, BORE / 2];
  const plain = Math.PI * (outer ** 2 - bore ** 2) * LENGTH;
  const tip = outer - 2 * Math.tan(Math.PI / 12);
  const chamfer = Math.PI * outer ** 2 * 2 - frustum(outer, tip, 2);
  const inner = frustum(bore, bore + 0.2, 0.2) - Math.PI * bore ** 2 * 0.2;
  return plain - 2 * (chamfer + inner);
}

/** The bounds of the tube: its skin round a corner at (30, 20, 110), ends cut square at the stops. */
const LOW = [30 - OUTER / 2, 20 - OUTER / 2, 60 + STOP];
const HIGH = [150 - STOP, 20 + OUTER / 2, 110 + OUTER / 2];

function holdsTheTube(mesh, deviation) {
  assert.ok(mesh.count > 500, `${mesh.count} triangles are too few for a tube`);
  assert.equal(mesh.open, 0, "every edge must be met once from each side");
  for (let axis = 0; axis < 3; axis += 1) {
    assert.ok(Math.abs(mesh.low[axis] - LOW[axis]) <= deviation, `low ${axis}: ${mesh.low[axis]} for ${LOW[axis]}`);
    assert.ok(Math.abs(mesh.high[axis] - HIGH[axis]) <= deviation, `high ${axis}: ${mesh.high[axis]} for ${HIGH[axis]}`);
  }
  const off = mesh.volume / expectedVolume() - 1;
  assert.ok(Math.abs(off) < 5e-4, `volume ${mesh.volume} is off by ${off}`);
}

/** Types a port in: its name, fitting taken as offered, position, and facing by so many presses back from +z. */
async function typePort(page, name, at, pressesBack) {
  await tabTo(page, "Add a port");
  await page.keyboard.press("Enter");
  await settled(page);
  await typeOver(page, name);
  for (const [axis, value] of [["x", at[0]], ["y", at[1]], ["z", at[2]]]) {
    await tabTo(page, axis, { most: 3 });
    await page.keyboard.type(String(value));
  }
  await tabTo(page, /^Facing \+z/, { most: 3 });
  for (let press = 0; press < pressesBack; press += 1) await page.keyboard.press("ArrowLeft");
}

test("a blank design is typed in by keyboard and comes out as STL, 3MF, zip and design", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await tabTo(page, "Start from…");
    await page.keyboard.press("Enter");
    await tabTo(page, /^A blank design/, { most: 4 });
    await page.keyboard.press("Enter");
    await settled(page);
    await typeOver(page, "Typed by hand");

    await tabTo(page, "Add a fitting");
    await tabTo(page, "Add a fitting: which", { back: true, most: 2 });
    await page.keyboard.press("End");
    await tabTo(page, "Add a fitting", { most: 2 });
    await page.keyboard.press("Enter");
    await settled(page);
    await typeOver(page, "mine 12");
    for (const [label, value] of [["Takes tube of mm", 12], ["Height over the port face mm", 18], ["Socket depth mm", 10], ["Collar diameter mm", 19], ["Lead mm", "5,5"]]) {
      await tabTo(page, label, { most: 4 });
      await page.keyboard.type(String(value));
    }

    await typePort(page, "pump out", [30, 20, 60], 0);
    await typePort(page, "block in", [150, 20, 110], 3);
    await shot(page, "typing-ports");

    await tabTo(page, "Add a run");
    await page.keyboard.press("Enter");
    await settled(page);
    await tabTo(page, "Bend radius mm", { most: 8 });
    await typeOver(page, String(RADIUS));
    await tabTo(page, "Add a corner", { most: 3 });
    await page.keyboard.press("Enter");
    await settled(page);
    await tabTo(page, "z", { most: 8 });
    await typeOver(page, "110");
    await settled(page);

    const design = await keptDesign(page);
    assert.equal(design.fittings[0].lead, 5.5, "a decimal comma is a decimal mark");
    assert.deepEqual(design.ports.map((port) => [port.name, port.at, port.facing, port.fitting]), [
      ["pump out", [30, 20, 60], [0, 0, 1], "mine 12"],
      ["block in", [150, 20, 110], [-1, 0, 0], "mine 12"],
    ]);
    assert.deepEqual(design.runs[0].route, [{ corner: [{ of: "pump out", plus: 0 }, { of: "pump out", plus: 0 }, 110] }]);

    const [length] = await page.locator("#result table.figures tbody tr").first().locator("td").allTextContents();
    assert.equal(length, LENGTH.toFixed(1));
    assert.match(await page.locator(".standing").innerText(), /1 run/);
    assert.equal(await page.locator("#result .note.stop").count(), 0, "a plain right angle has nothing against it");
    await page.waitForFunction(() => document.getElementById("spoken")?.textContent?.includes("1 run"));

    // By keyboard too: the files' buttons, by the way the page has past all that is between.
    await tabTo(page, "Files");
    await page.keyboard.press("Enter");
    await tabTo(page, "STL of pump out to block in", { most: 12 });
    const stl = await saved(page, () => page.keyboard.press("Enter"));
    assert.match(stl.name, /^[\w -]+\.stl$/);
    holdsTheTube(readStl(stl.bytes), 0.011);

    await tabTo(page, "3MF of pump out to block in", { most: 2 });
    const packed = await saved(page, () => page.keyboard.press("Enter"));
    const model = read3mf(packed.bytes);
    assert.equal(model.unit, "millimeter");
    assert.deepEqual(model.objects.map((object) => object.name), ["pump out to block in"]);
    holdsTheTube(model.objects[0], 0.011);

    await tabTo(page, "All files in one (.zip)", { most: 9 });
    const all = await saved(page, () => page.keyboard.press("Enter"));
    const files = readZip(all.bytes);
    const [inner] = Object.keys(files).filter((name) => name.endsWith(".stl"));
    assert.deepEqual(files[inner], stl.bytes, "the zip holds the same STL");
    assert.equal(Object.keys(files).filter((name) => name.endsWith(".3mf")).length, 1);

    await tabTo(page, "Save the design (.json)", { most: 2 });
    const kept = await saved(page, () => page.keyboard.press("Enter"));
    assert.match(kept.name, /\.json$/);
    const written = JSON.parse(Buffer.from(kept.bytes).toString("utf8"));
    assert.equal(written.name, "Typed by hand");
    assert.equal(typeof written.process.material.density_g_per_cm3, "number", "a saved design is whole");

    // A coarser choice is a smaller file that still holds.
    await page.getByRole("radio", { name: /Coarse/ }).check();
    const coarse = await saved(page, () => page.getByRole("button", { name: "STL of pump out to block in" }).click());
    const mesh = readStl(coarse.bytes);
    assert.ok(mesh.count < readStl(stl.bytes).count / 2);
    holdsTheTube(mesh, 0.051);
  });
});
