// The main job and what must never be lost, in a second browser: Firefox.

import assert from "node:assert/strict";
import path from "node:path";
import { test } from "node:test";
import { pathToFileURL } from "node:url";
import { keepThreads, keptDesign, killThread, settled } from "./bench.mjs";
import { firefoxBench, pictured, press, put, savedFile, says } from "./firefox.mjs";
import { read3mf, readStl, readZip } from "./meshes.mjs";
import { SITE, serveSite } from "./site.mjs";

const its = firefoxBench();

/** Opens the demo whose place in the menu of beginnings is `index`, and gives its label. */
async function openDemo(page, index) {
  await press(page, "Start from…");
  const label = await page.evaluate((place) => {
    const choice = [...document.querySelectorAll(".menu .choice")].filter((one) => one.textContent.includes("Demo: "))[place];
    choice.click();
    return choice.querySelector("b").innerText.replace("Demo: ", "");
  }, index);
  await page.waitForFunction(() => !document.getElementById("start").matches(":popover-open"));
  await settled(page);
  return label;
}

const valueOf = (page, field) => page.$eval(field, (input) => input.value);

test("every demo opens, is made and is drawn", async (context) => {
  await its.withPage(async (page) => {
    await settled(page);
    const demos = await page.$$eval(".menu .choice", (all) => all.filter((one) => one.textContent.includes("Demo: ")).length);
    assert.ok(demos >= 7);
    for (let index = 0; index < demos; index += 1) {
      const label = await openDemo(page, index);
      const { runs } = await keptDesign(page);
      const seen = await page.evaluate(() => ({
        standing: document.querySelector(".standing").innerText,
        stops: document.querySelectorAll("#result .note.stop, #result .note.mend, #result .unmade").length,
        notices: document.querySelectorAll(".notice").length,
        files: document.querySelectorAll(".file-list li").length,
        skins: [...document.querySelectorAll(".drawing .tube .skin")].map((skin) => skin.getAttribute("d").split("L").length),
      }));
      context.diagnostic(`${label}: ${seen.standing}`);
      assert.deepEqual([seen.stops, seen.notices, seen.files], [0, 0, runs.length], label);
      assert.ok(seen.skins.length >= 3 * runs.length && seen.skins.every((points) => points > 4), label);
    }
    await pictured(page, "demo");
  });
});

test("from a blank page to files that hold the tube", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await press(page, "start from a blank design");
    await settled(page);
    await page.select("#choose-fittings", await page.$$eval("#choose-fittings option", (all) => all.find((one) => one.textContent.includes("Straight, 12 mm tube")).value));
    await press(page, "Add a fitting");
    await settled(page);
    for (const [port, at, facing] of [[0, ["(31.2 + 28.8) / 2", "22,5", "60"], "+z"], [1, ["150", "22.5", "110"], "−x"]]) {
      await press(page, "Add a port");
      await settled(page);
      for (const [axis, text] of at.entries()) await put(page, `#at-ports-${port}-at-${axis}`, text);
      if (facing === "+z") continue;
      await page.$eval(`#at-ports-${port}-facing`, (group, name) => [...group.querySelectorAll("label")].find((one) => one.textContent.trim() === name).click(), facing);
      await settled(page);
    }
    await press(page, "Add a run");
    await settled(page);
    await press(page, "Add a corner");
    await settled(page);
    await put(page, 'input[id^="at-runs-0-route-0-corner-2"]', "110");
    const { ports, runs, fittings } = await keptDesign(page);
    assert.deepEqual(ports.map((one) => [one.at, one.facing]), [[[30, 22.5, 60], [0, 0, 1]], [[150, 22.5, 110], [-1, 0, 0]]]);

    // Two straights less two tangents, and a quarter circle; Pappus for the skin, within what chamfers and seat marks take off and put on.
    const [stop, radius, { outer_diameter: outer, bore }] = [fittings[0].height - fittings[0].socket_depth, runs[0].bend_radius, runs[0].tube];
    const length = 110 - 60 - stop + (150 - 30 - stop) + (Math.PI / 2 - 2) * radius;
    assert.equal(await page.$eval("#result table.figures tbody tr td", (cell) => cell.innerText), length.toFixed(1));
    const whole = (Math.PI / 4) * (outer ** 2 - bore ** 2) * length;
    const ends = (Math.PI / 4) * outer ** 2 * 2;

    const stl = await savedFile(() => press(page, `STL of ${runs[0].name}`));
    assert.match(stl.name, /\.stl$/);
    const mesh = readStl(stl.bytes);
    assert.equal(mesh.open, 0, "a closed tube");
    assert.ok(Math.abs(mesh.volume - whole) < ends, `${mesh.volume} for ${whole}`);
    const packed = await savedFile(() => press(page, `3MF of ${runs[0].name}`));
    assert.equal(read3mf(packed.bytes).unit, "millimeter");
    const all = readZip((await savedFile(() => press(page, "All files in one (.zip)"))).bytes);
    const [name] = Object.keys(all).filter((one) => one.endsWith(".stl"));
    assert.deepEqual(all[name], stl.bytes, "the archive holds the same STL");
    await pictured(page, "files");
  });
});

test("a link carries the design to a friend, beside what the friend had", async () => {
  let link = "";
  let mine = null;
  await its.withPage(async (page) => {
    await settled(page);
    await openDemo(page, 2);
    mine = await keptDesign(page);
    await press(page, "Share");
    link = await page.waitForFunction(() => document.getElementById("share-link")?.value).then((found) => found.jsonValue());
  });
  await its.withPage(async (page) => {
    await settled(page);
    await put(page, "#at-name", "My own");
    await page.goto("about:blank");
    await page.goto(link);
    await page.waitForFunction((name) => document.getElementById("at-name")?.value === name, {}, mine.name);
    await settled(page);
    assert.deepEqual(await keptDesign(page), mine);
    await press(page, "Undo: open a linked design");
    await settled(page);
    assert.equal((await keptDesign(page)).name, "My own");
  });
});

test("a reload without a network gives the page and the work back", async () => {
  const server = await serveSite();
  try {
    await its.withPage(async (_, open) => {
      const page = await open(server.url);
      await settled(page);
      await page.waitForFunction(() => document.getElementById("page").dataset.offline === "ready");
      await put(page, "#at-name", "Kept offline");
      await server.close();
      await page.reload();
      await settled(page);
      assert.equal(await valueOf(page, "#at-name"), "Kept offline");
      await put(page, "#at-ports-0-at-0", "37");
      assert.equal((await keptDesign(page)).ports[0].at[0], 37);
    }, { elsewhere: true, quiet: false });
  } finally {
    await server.close().catch(() => {});
  }
});

test("the single file works from a disk", async () => {
  await its.withPage(async (_, open) => {
    const page = await open(pathToFileURL(path.join(SITE, "tubewright.html")).href);
    await settled(page);
    await openDemo(page, 1);
    await put(page, "#at-name", "From a disk");
    const { runs } = await keptDesign(page);
    assert.equal(readStl((await savedFile(() => press(page, `STL of ${runs[0].name}`))).bytes).open, 0);
    await page.reload();
    await settled(page);
    assert.equal(await valueOf(page, "#at-name"), "From a disk");
  }, { elsewhere: true });
});

test("two tabs with one design do not write over each other", async () => {
  await its.withPage(async (page, open) => {
    await settled(page);
    await put(page, "#at-name", "Shared");
    const other = await open(its.url);
    await settled(other);
    assert.equal((await keptDesign(other)).name, "Shared");
    await put(other, "#at-ports-0-at-0", "77");
    await page.bringToFront();
    await says(page, ".notice", /changed in another tab/);
    await put(page, "#at-ports-0-at-1", "66");
    await says(page, ".notices", /Nothing was overwritten/);
    const all = await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith("tubewright.kept.1."))
      .map((key) => JSON.parse(localStorage.getItem(key)).design.ports[0].at));
    assert.deepEqual(all.map(([x]) => x === 77).sort(), [false, true]);
    assert.ok(all.some(([x, y]) => x !== 77 && y === 66));
  });
});

test("where the browser keeps nothing for pages, the page says so and works on", async () => {
  await its.withPreferences({ "dom.storage.enabled": false }, async (page) => {
    await settled(page);
    await says(page, ".notices", /does not let the page keep anything/);
    await put(page, "#at-ports-0-at-0", "51");
    assert.equal(await valueOf(page, "#at-ports-0-at-0"), "51");
    const file = await savedFile(() => press(page, "Save"));
    assert.equal(JSON.parse(Buffer.from(file.bytes).toString()).ports[0].at[0], 51);
  });
});

test("where WebAssembly is not allowed the page says so and offers a report", async () => {
  await its.withPreferences({ "javascript.options.wasm": false }, async (page) => {
    await says(page, "[role=alert]", /could not start.*untouched/s);
    await press(page, "Copy a report");
    await says(page, "button", /Copied/);
    await pictured(page, "cannot-start");
  });
});

test("a thread that is killed is said, and the work goes on", async () => {
  await its.withPage(async (_, open) => {
    const page = await open(null);
    await page.evaluateOnNewDocument(keepThreads);
    await page.goto(its.url);
    await settled(page);
    await put(page, "#at-name", "Kept through it");
    await killThread(page);
    await says(page, ".notice.trouble", /engine stopped/);
    await put(page, "#at-ports-0-at-0", "44");
    const design = await keptDesign(page);
    assert.deepEqual([design.name, design.ports[0].at[0]], ["Kept through it", 44]);
  }, { elsewhere: true, quiet: false });
});
