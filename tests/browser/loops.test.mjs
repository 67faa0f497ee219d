// Several runs in one design: the table of them all, copies, runs turned round and mirrored, and a design held beside
// another. The demo loop has four runs; numbers to compare with come from the page's own table.

import assert from "node:assert/strict";
import { test } from "node:test";
import { passesAxeBothWays } from "./axe.mjs";
import { bench, keptDesign, openLoop, settled, shot } from "./bench.mjs";
import { tabTo } from "./keyboard.mjs";

const its = bench();

/** The rows of the table of runs: name and lengths. */
async function rows(page) {
  return page.locator(".runs-table tbody tr").evaluateAll((all) => all.map((row) => ({
    name: row.querySelector("button").textContent,
    length: Number(row.querySelector("td").textContent),
    words: row.querySelector("th").textContent.replace(/\s+/g, " "),
  })));
}

/** Unfolds what can be done with a run. */
async function unfoldEdits(page, index) {
  const card = page.locator(`#at-runs-${index}`);
  await card.locator(".run-edits > summary").click();
  return card;
}


async function compareWith(page, name, design) {
  await page.locator("#compare-file").setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(typeof design === "string" ? design : JSON.stringify(design)) });
}

test("the table tells every run and selects the one that is pressed", async () => {
  await its.withPage(async (page) => {
    const design = await openLoop(page);
    const told = await rows(page);
    assert.deepEqual(told.map((row) => row.name), design.runs.map((one) => one.name));
    for (const [index, row] of told.entries()) {
      const { from, to, tube } = design.runs[index];
      assert.ok(row.words.includes(`${from} → ${to}`) && row.words.includes(`${tube.outer_diameter} × ${tube.bore}`), row.words);
      assert.ok(row.length > 50, `${row.name}: ${row.length}`);
    }
    assert.match(await page.locator(".runs-table .found").first().innerText(), /note/, "the worst that is found stands in the row");
    const second = page.locator(".runs-table tbody button.link").nth(1);
    await second.focus();
    await page.keyboard.press("Enter");
    await settled(page);
    assert.equal(await second.getAttribute("aria-pressed"), "true");
    assert.equal(await page.locator(".run-detail[open]").count(), 1, "its bends are shown");
    assert.match(await page.locator(".run-detail[open] > summary").innerText(), new RegExp(told[1].name));
    await page.keyboard.press("Enter");
    await settled(page);
    assert.equal(await second.getAttribute("aria-pressed"), "false");
    // A run that cannot be made says so in its row.
    await page.locator("#at-runs-0-bend_radius").fill("4");
    await settled(page);
    assert.match(await page.locator(".runs-table tbody tr").first().innerText(), /cannot be made[\s\S]*stop/);
    await shot(page, "runs-table");
  });
});

test("a run is copied and turned round by keyboard, and undo takes it back", async () => {
  await its.withPage(async (page) => {
    const before = await openLoop(page);
    const lengths = (await rows(page)).map((row) => row.length);
    await page.locator("#at-runs-0-name").focus();
    await tabTo(page, "Copy, turn round or mirror");
    await page.keyboard.press("Enter");
    await tabTo(page, `Copy ${before.runs[0].name}`, { most: 2 });
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement.id === "at-runs-1-name");
    await settled(page);
    let design = await keptDesign(page);
    assert.equal(design.runs.length, 5);
    assert.equal(design.runs[1].name, `${before.runs[0].name} copy`);
    assert.equal((await rows(page))[1].length, lengths[0]);
    assert.ok(await page.locator("#at-runs-2 .card-body").isVisible(), "the other cards stay as they were");
    await page.getByRole("button", { name: "Undo" }).click();
    await settled(page);
    assert.deepEqual((await keptDesign(page)).runs, before.runs);

    await page.locator("#at-runs-0-name").focus();
    await tabTo(page, /^Turn round/);
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.activeElement.id === "at-runs-0-from");
    await settled(page);
    design = await keptDesign(page);
    assert.deepEqual([design.runs[0].from, design.runs[0].to], [before.runs[0].to, before.runs[0].from]);
    assert.deepEqual(design.runs[0].route, before.runs[0].route.toReversed());
    assert.deepEqual((await rows(page)).map((row) => row.length), lengths, "it is the same tube");
  });
});

test("a run is mirrored onto ports of its own, and a blank plane is asked for", async () => {
  await its.withPage(async (page) => {
    const before = await openLoop(page);
    const card = await unfoldEdits(page, 0);
    await card.getByRole("button", { name: /^Mirror/ }).click();
    assert.match(await page.locator(".notice.trouble").innerText(), /where the plane is/);
    assert.deepEqual(await keptDesign(page), before);
    await card.locator("[id$=-across]").selectOption("y");
    await card.locator("[id$=-at]").fill("-200");
    await card.getByRole("button", { name: /^Mirror/ }).click();
    await page.waitForFunction(() => document.activeElement.id === "at-runs-1-name");
    await settled(page);
    assert.equal(await page.locator(".notice").count(), 0, "what was said before is put away");
    const design = await keptDesign(page);
    const [own, twin] = [before.runs[0], design.runs[1]];
    assert.equal(twin.name, `${own.name} mirrored`);
    for (const end of ["from", "to"]) {
      const [port, image] = [own[end], twin[end]].map((name) => design.ports.find((one) => one.name === name));
      assert.deepEqual(image.at, [port.at[0], -400 - port.at[1], port.at[2]]);
    }
    const [first, second] = await rows(page);
    assert.equal(first.length, second.length);
    await shot(page, "mirrored");
  });
});

test("a port that moves carries its tied corners, and the comparison shows how far", async () => {
  await its.withPage(async (page) => {
    const before = await openLoop(page);
    const old = (await rows(page)).map((row) => row.length);
    await compareWith(page, "before.json", before);
    await page.locator("#compared").waitFor();
    assert.match(await page.locator("#compared").innerText(), /Nothing differs/);
    assert.deepEqual(await keptDesign(page), before, "the design here is not touched");

    // The second run's one corner is tied to its ports in all three coordinates.
    const tied = before.runs[1];
    const port = before.ports.findIndex((one) => one.name === tied.to);
    const axis = tied.route[0].corner.findIndex((coordinate) => coordinate.of === tied.to);
    const place = page.locator(`#at-ports-${port}-at-${axis}`);
    await place.fill(String(before.ports[port].at[axis] + 7));
    await settled(page);
    await page.waitForFunction(() => /moved 7 mm/.test(document.getElementById("compared")?.textContent ?? ""));
    const words = await page.locator("#compared").innerText();
    assert.match(words, new RegExp(tied.to));
    assert.match(words, /Corner 1: moved 7 mm .*with its port/);
    const now = (await rows(page)).map((row) => row.length);
    const row = page.locator("#compared tbody tr", { hasText: tied.name });
    const figures = await row.locator("td").allTextContents();
    assert.deepEqual(figures.slice(0, 2).map(Number), [old[1], now[1]]);
    await page.evaluate(() => document.getElementById("compare").scrollIntoView());
    await shot(page, "compared");

    await page.getByRole("button", { name: "Undo" }).click();
    await page.waitForFunction(() => /Nothing differs/.test(document.getElementById("compared")?.textContent ?? ""));
    await page.getByRole("button", { name: "Stop comparing" }).click();
    await page.locator("#compared").waitFor({ state: "detached" });
    assert.equal(await page.evaluate(() => document.activeElement.id), "compare-choose", "the focus is not lost with the button");
  });
});

test("a friend's ports are taken over and the shape is kept", async () => {
  await its.withPage(async (page) => {
    const mine = await openLoop(page);
    const theirs = structuredClone(mine);
    for (const port of theirs.ports) port.at = port.at.map((part, axis) => part + [1.5, -2, 0.5][axis]);
    theirs.runs = [];
    await compareWith(page, "friend.json", theirs);
    const take = page.getByRole("button", { name: "Take its ports, keep my shape" });
    await take.click();
    await page.waitForFunction((at) => document.getElementById("at-ports-0-at-0").value === String(at), theirs.ports[0].at[0]);
    await settled(page);
    const design = await keptDesign(page);
    assert.deepEqual(design.ports.map((port) => port.at), theirs.ports.map((port) => port.at));
    assert.deepEqual(design.runs, mine.runs);
    await page.getByRole("button", { name: "Undo" }).click();
    await settled(page);
    assert.deepEqual((await keptDesign(page)).ports, mine.ports);
  });
});

test("a file that is no design is refused in words and nothing is lost", async () => {
  await its.withPage(async (page) => {
    const before = await openLoop(page);
    for (const [name, text] of [["bad.json", "[1"], ["empty.json", ""], ["other.json", "{\"format\":\"else\"}"]]) {
      await compareWith(page, name, text);
      await page.locator(".notice.trouble", { hasText: name }).waitFor();
      assert.deepEqual(await keptDesign(page), before);
    }
    assert.equal(await page.locator("#compared").count(), 0);
  });
});

test("axe finds nothing with a comparison and edits open, light and wide, dark and 320 px", async () => {
  await its.withPage(async (page) => {
    const before = await openLoop(page);
    const other = structuredClone(before);
    other.clearance = 3;
    other.ports[0].at[2] += 4;
    other.fittings[0].height = 20;
    other.keep_outs.pop();
    other.runs[3].name = "the last one";
    await compareWith(page, "other.json", other);
    await page.locator("#compared").waitFor();
    await unfoldEdits(page, 0);
    await page.locator(".runs-table tbody button").first().click();
    await settled(page);
    await passesAxeBothWays(page, "loops");
  });
});
