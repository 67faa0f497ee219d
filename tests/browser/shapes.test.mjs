// Shapes beyond bends: every demo opened and drawn, a spiral built from nothing by keyboard, ties that carry along.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, settled, shot } from "./bench.mjs";
import { tabTo, typeOver } from "./keyboard.mjs";

const its = bench();

/** Opens a demo by its place in the menu. */
async function openDemo(page, index) {
  await page.getByRole("button", { name: "Start from…" }).click();
  const choice = page.locator(".menu .choice", { hasText: "Demo" }).nth(index);
  const label = (await choice.locator("b").innerText()).replace("Demo: ", "");
  await choice.click();
  await page.waitForFunction(() => !document.getElementById("start").matches(":popover-open"));
  await settled(page);
  return label;
}

/** What is found but for the care that every brittle material gives: mind side loads. */
const against = async (page) => (await page.locator("#result .note.stop, #result .note.mend, #result .note.care").allInnerTexts())
  .filter((words) => !/^Care:.* is brittle\./s.test(words.trim()));

test("every demo is made, has nothing against it, and is drawn in both ways", async (context) => {
  await its.withPage(async (page) => {
    await settled(page);
    const demos = await page.locator(".menu .choice", { hasText: "Demo" }).count();
    assert.ok(demos >= 7);
    for (let index = 0; index < demos; index += 1) {
      const label = await openDemo(page, index);
      context.diagnostic(`${label}: ${await page.locator(".standing").innerText()}`);
      assert.deepEqual(await against(page), [], label);
      assert.equal(await page.locator("#result .unmade").count(), 0, label);
      assert.equal(await page.locator(".notice").count(), 0, label);
      const name = `demo-${label.toLowerCase().replaceAll(" ", "-")}`;
      await shot(page, name);
      await page.getByRole("button", { name: "Drawing", exact: true }).click();
      for (const path of await page.locator(".drawing .tube .skin").all()) assert.ok((await path.getAttribute("d")).split("L").length > 4, label);
      await page.getByRole("button", { name: "Solid" }).click();
    }
  });
});

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

/** The first run's whole length as the result says it, mm. */
async function lengthOf(page) {
  const [length] = await page.locator("#result table.figures tbody tr").first().locator("td").allTextContents();
  return Number(length);
}

test("a spiral is built from a blank design by keyboard, follows its port, and is kept", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await tabTo(page, "Start from…");
    await page.keyboard.press("Enter");
    await tabTo(page, /^A blank design/, { most: 4 });
    await page.keyboard.press("Enter");
    await settled(page);
    await typeOver(page, "A spiral");
    await tabTo(page, "Add a fitting");
    await tabTo(page, "Add a fitting: which", { back: true, most: 2 });
    await page.keyboard.press("ArrowDown");
    await tabTo(page, "Add a fitting", { most: 2 });
    await page.keyboard.press("Enter");
    await settled(page);
    await typePort(page, "out", [24, -70, 20], 2);
    await typePort(page, "in", [-60, -120, 74], 2);
    await tabTo(page, "Add a run");
    await page.keyboard.press("Enter");
    await settled(page);
    await tabTo(page, "Add a coil", { most: 14 });
    await page.keyboard.press("Enter");
    await settled(page);

    // The coil that is offered is typed over: up along z, opening from 24 to 60 mm, two turns and a half.
    await typeOver(page, "0");
    await tabTo(page, "y", { most: 3 });
    await typeOver(page, "0");
    await tabTo(page, "z", { most: 3 });
    await typeOver(page, "22");
    await tabTo(page, "z counts from", { most: 2 });
    await page.keyboard.type("out");
    await settled(page);
    await tabTo(page, /^Axis /, { most: 3 });
    // From whichever way it was offered to +z: the choice goes round.
    for (let press = 0; press < 7 && !(await page.locator("#at-runs-0-route-0-coil-axis").getByRole("radio", { name: "+z" }).isChecked()); press += 1) {
      await page.keyboard.press("ArrowRight");
    }
    for (const [label, value] of [["Coil radius mm", 24], ["End radius mm", 60], ["Pitch mm", 20], ["Turns", 2.5]]) {
      await tabTo(page, label, { most: 3 });
      await typeOver(page, String(value));
    }
    await tabTo(page, /^Hand /, { most: 3 });
    await tabTo(page, "Start angle °", { most: 3 });
    await typeOver(page, "0");
    await settled(page);

    const design = await keptDesign(page);
    assert.deepEqual(design.runs[0].route, [{
      coil: { centre: [0, 0, { of: "out", plus: 2 }], axis: [0, 0, 1], radius: 24, end_radius: 60, pitch: 20, turns: 2.5, hand: "right", start_deg: 0 },
    }]);
    assert.equal(await page.locator("#result .note.stop").count(), 0, await page.locator("#result").innerText());
    const before = await lengthOf(page);
    // An Archimedean spiral's plane length is a lower bound of the coil's: the mean radius times the angle.
    assert.ok(before > 42 * 5 * Math.PI, `${before}`);
    await shot(page, "spiral-typed");

    // The port moves up by 10 mm: the coil's centre stands 10 mm higher, and the tie is as it was.
    const stands = page.locator("#at-runs-0-route-0 .coordinate").nth(2).locator("output");
    assert.equal(await stands.innerText(), "= 22");
    await page.locator("#at-ports-0-at-2").focus();
    await typeOver(page, "30");
    await settled(page);
    assert.equal(await stands.innerText(), "= 32");
    assert.deepEqual((await keptDesign(page)).runs[0].route[0].coil.centre[2], { of: "out", plus: 2 });
    const after = await lengthOf(page);
    assert.notEqual(after, before, "the tube follows");

    // A new name for the port goes through to the coil.
    await page.locator("#at-ports-0-name").focus();
    await typeOver(page, "pump");
    await settled(page);
    assert.deepEqual((await keptDesign(page)).runs[0].route[0].coil.centre[2], { of: "pump", plus: 2 });

    const kept = await keptDesign(page);
    await page.reload();
    await settled(page);
    assert.deepEqual(await keptDesign(page), kept);
    assert.equal(await lengthOf(page), after);
    assert.equal(await page.locator("#at-runs-0-route-0-coil-turns").inputValue(), "2.5");
  });
});

test("a smooth curve is put through points of a blank design, without anything against it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: "A blank design" }).click();
    await page.getByRole("button", { name: "Add a fitting", exact: true }).click();
    for (const [index, at] of [[0, 0, 0], [150, 40, 60]].entries()) {
      await page.getByRole("button", { name: "Add a port", exact: true }).click();
      for (const axis of [0, 1, 2]) await page.locator(`#at-ports-${index}-at-${axis}`).fill(String(at[axis]));
    }
    await page.getByRole("button", { name: "Add a run", exact: true }).click();
    const points = [[10, 0, 60], [70, 20, 110], [140, 40, 110]];
    for (const [index, at] of points.entries()) {
      await page.getByRole("button", { name: "Add a point", exact: true }).click();
      for (const axis of [0, 1, 2]) await page.locator(`#at-runs-0-route-${index}-through-${axis}`).fill(String(at[axis]));
    }
    await settled(page);
    assert.deepEqual((await keptDesign(page)).runs[0].route, points.map((through) => ({ through })));
    assert.deepEqual(await against(page), []);
    const before = await lengthOf(page);
    // The curve is longer than the straights from seat to seat over its points are, less what the stops take of both ends.
    const way = [[0, 0, 0], ...points, [150, 40, 60]];
    const straights = way.slice(1).reduce((sum, at, index) => sum + Math.hypot(...at.map((part, axis) => part - way[index][axis])), 0);
    assert.ok(before > straights - 40 && before < 1.3 * straights, `${before} mm for ${straights} mm`);
    await page.locator("#at-ports-1-at-0").fill("170");
    await settled(page);
    assert.ok(await lengthOf(page) > before, "the tube follows its port");
    await shot(page, "curve-typed");
  });
});

test("a moved port carries the corners that are tied to it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await openDemo(page, 5);
    const outputs = page.locator("#at-runs-0-route .coordinate output");
    const before = await outputs.allInnerTexts();
    await page.locator("#at-ports-1-at-0").fill("66");
    await settled(page);
    const after = await outputs.allInnerTexts();
    // Tied coordinates in order: the first corner's x and y, then x and y of the two corners beside the second port.
    assert.deepEqual(before, ["= 0", "= 0", "= 60", "= 0", "= 60", "= 60"]);
    assert.deepEqual(after, ["= 0", "= 0", "= 66", "= 0", "= 66", "= 60"]);
    assert.equal(await page.locator("#result .note.stop").count(), 0);
  });
});

test("a station changes its kind, order and company, and keeps its point", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await openDemo(page, 4);
    const route = async () => (await keptDesign(page)).runs[0].route;
    const was = await route();
    const kind = (at) => page.locator(`#at-runs-0-route-${at} .kind select`);

    await kind(1).selectOption("corner");
    assert.deepEqual((await route())[1], { corner: was[1].through });
    await page.locator("#at-runs-0-route-1-bend_radius").fill("31");
    await kind(1).selectOption("coil");
    const { coil } = (await route())[1];
    assert.deepEqual(coil.centre, was[1].through);
    assert.ok(coil.radius > 0 && coil.pitch > 12 && coil.turns > 0);
    await kind(1).selectOption("corner");
    assert.deepEqual((await route())[1], { corner: was[1].through, bend_radius: 31 }, "what it had as a corner is there again");
    await kind(1).selectOption("through");
    assert.deepEqual(await route(), was);

    await page.getByRole("button", { name: /^Move point 1 of .* later$/ }).click();
    assert.deepEqual(await route(), [was[1], was[0], was[2]]);
    await page.getByRole("button", { name: /^Move point 3 of .* earlier$/ }).click();
    await page.getByRole("button", { name: /^Remove point 1 of/ }).click();
    assert.deepEqual(await route(), [was[2], was[0]]);
    assert.equal(await page.evaluate(() => document.activeElement.id), "at-runs-0-route-0-remove");
    await settled(page);
  });
});

test("a new coil fits round the reservoir, and a new point lies half way", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await openDemo(page, 2);
    await page.getByRole("button", { name: /^Remove coil 1 of/ }).click();
    await page.getByRole("button", { name: "Add a coil" }).click();
    await settled(page);
    const [{ coil }] = (await keptDesign(page)).runs[0].route;
    assert.deepEqual(coil.axis.map(Math.abs), [0, 0, 1]);
    assert.ok(coil.radius >= 23.5 + 2 + 6 && coil.radius < 40, "its radius, the clearance and half the tube");
    assert.ok(coil.pitch >= 14, "the tube and the clearance");
    await shot(page, "coil-suggested");
    assert.equal(await page.locator("#result .note.stop").count(), 0, await page.locator("#result").innerText());

    await openDemo(page, 4);
    for (const _ of [1, 2, 3]) await page.getByRole("button", { name: /^Remove point 1 of/ }).click();
    await page.getByRole("button", { name: "Add a point" }).click();
    await settled(page);
    const [station] = (await keptDesign(page)).runs[0].route;
    assert.ok(station.through.every((part) => typeof part === "number" || part.plus === 0));
    assert.equal(await page.locator("#result .note.stop").count(), 0);
  });
});

test("what is wrong with a coil, a point and a dress is said at their own places", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await openDemo(page, 2);
    await page.locator("#at-runs-0-route-0-coil-turns").fill("0");
    await page.locator("#at-runs-0-route-0-coil-centre-0").fill("x");
    await settled(page);
    assert.match(await page.locator("#at-runs-0-route-0-coil-turns-notes").innerText(), /turns/i);
    assert.match(await page.locator("#at-runs-0-route-0-coil-centre-0-notes").innerText(), /centre/i);
    assert.equal(await page.locator("#at-runs-0-route-0-coil-turns").getAttribute("aria-invalid"), "true");

    await openDemo(page, 6);
    await page.locator("#at-runs-0-dress-lobes").fill("1");
    await settled(page);
    assert.match(await page.locator("#at-runs-0-dress-lobes-notes").innerText(), /2 to 24/);
    await page.locator("#at-runs-0-dress-lobes").fill("5");
    await page.locator("#at-runs-0-dress").getByRole("checkbox").uncheck();
    await settled(page);
    assert.equal((await keptDesign(page)).runs[0].dress, null);
    await page.locator("#at-runs-0-dress").getByRole("checkbox").check();
    assert.equal((await keptDesign(page)).runs[0].dress.lobes, 5, "what was taken off is put on again");
    await settled(page);
  });
});
