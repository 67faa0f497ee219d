// The tube taken hold of in the preview: corners and bends dragged, corners added, and the same by key and by button.

import assert from "node:assert/strict";
import { test } from "node:test";
import { passesAxe } from "./axe.mjs";
import { bench, drawn, keptDesign, settled, shot } from "./bench.mjs";

const its = bench();

/** From (0, 0, 0) up, along x at z 100, down to (120, 0, 20): all in the plane that the front shows. */
const DESIGN = {
  format: "tubewright-design", version: 1, name: "arch",
  fittings: [{ name: "F", tube_diameter: 12, height: 18, socket_depth: 10, collar_diameter: 19, lead: 5 }],
  ports: [
    { name: "low", at: [0, 0, 0], facing: [0, 0, 1], fitting: "F" },
    { name: "high", at: [120, 0, 20], facing: [0, 0, 1], fitting: "F" },
  ],
  runs: [{ name: "arch", from: "low", to: "high", tube: { outer_diameter: 12, bore: 8 }, bend_radius: 20,
    route: [{ corner: [{ of: "low", plus: 0 }, 0, 100] }, { corner: [120, 0, { of: "high", plus: 80 }] }] }],
};

/** Opens the page with a design, seen from the front. */
function withDesign(work, { design = DESIGN, ...how } = {}) {
  return its.withPage(async (page) => {
    await settled(page);
    await page.locator("#open-file").setInputFiles({ name: "own.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(design)) });
    await page.locator("#at-runs-0-name").waitFor();
    await settled(page);
    await page.evaluate(() => {
      window.said = [];
      const status = document.getElementById("spoken");
      new MutationObserver(() => window.said.push(status.textContent)).observe(status, { childList: true, characterData: true, subtree: true });
    });
    await page.getByRole("button", { name: "Front", exact: true }).click();
    await page.locator(".stage canvas").scrollIntoViewIfNeeded();
    await drawn(page);
    await work(page);
  }, how);
}

/** Where a point of the scene is on the screen, as the view that the page draws with tells. */
async function seen(page, [x, y, z]) {
  return page.evaluate(async (point) => {
    const { View } = await import("./engine.js");
    const found = new Promise((resolve) => {
      const draw = View.prototype.draw;
      View.prototype.draw = function () {
        View.prototype.draw = draw;
        resolve(this);
        return draw.call(this);
      };
    });
    // Any change makes it draw: it is turned there and back.
    const canvas = document.querySelector(".stage canvas");
    for (const key of ["ArrowLeft", "ArrowRight"]) canvas.dispatchEvent(new KeyboardEvent("keydown", { key }));
    const view = await found;
    const box = canvas.getBoundingClientRect();
    const [left, top] = view.locate(...point);
    return { x: box.left + left, y: box.top + top };
  }, [x, y, z]);
}

/** Drags from one point of the scene to another, by way of one between; `during` is called before the pointer is let go. */
async function drag(page, from, to, during) {
  const [start, end] = [await seen(page, from), await seen(page, to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move((start.x + end.x) / 2 + 3, (start.y + end.y) / 2 - 2, { steps: 3 });
  await page.mouse.move(end.x, end.y, { steps: 3 });
  await drawn(page);
  await during?.();
  await page.mouse.up();
  await settled(page);
}

async function click(page, point, times = 1) {
  const { x, y } = await seen(page, point);
  await page.mouse.click(x, y, { clickCount: times });
  await settled(page);
}

const route = async (page) => (await keptDesign(page)).runs[0].route;
const undo = (page) => page.getByRole("button", { name: /^Undo/ });
const told = (page) => page.locator(".held-words").innerText();

/** Waits until something has been spoken: what follows it may be spoken soon after. */
const spoken = (page, words) => page.waitForFunction((source) => window.said.some((one) => new RegExp(source).test(one)), words.source, { timeout: 10_000 });

/** Clicks on the tube, half way along x, where no handle is. */
const select = (page) => click(page, [50, 0, 100]);

test("a click on a tube selects its run, marks its card and scrolls nothing", async () => {
  await withDesign(async (page) => {
    assert.equal(await page.locator("#at-runs-0").getAttribute("data-selected"), "false");
    const before = await page.evaluate(() => [scrollY, document.querySelector(".form").scrollTop]);
    const on = await seen(page, [50, 0, 100]);
    await page.mouse.move(on.x, on.y);
    assert.equal(await page.locator(".stage canvas").getAttribute("data-over"), "tube");
    await drawn(page);
    assert.equal(await told(page), "arch: click to select it, double-click to add a corner.");
    await select(page);
    assert.equal(await page.locator("#at-runs-0").getAttribute("data-selected"), "true");
    assert.match(await page.locator(".stage canvas").getAttribute("aria-label"), /Selected: arch/);
    assert.deepEqual(await page.evaluate(() => [scrollY, document.querySelector(".form").scrollTop]), before);
    const apex = await seen(page, [0, 0, 100]);
    await page.mouse.move(apex.x, apex.y);
    assert.equal(await page.locator(".stage canvas").getAttribute("data-over"), "handle");
    await drawn(page);
    assert.equal(await told(page), "Corner 1 of arch: drag to move it.");
    const off = await seen(page, [60, 0, 50]);
    await page.mouse.move(off.x, off.y);
    assert.equal(await page.locator(".stage canvas").getAttribute("data-over"), "");
  });
});

test("a corner is dragged to whole millimetres, keeps its tie, and one undo brings it back", async () => {
  await withDesign(async (page) => {
    await select(page);
    const before = await route(page);
    await drag(page, [0, 0, 100], [-13.2, 0, 89.8], async () => {
      assert.match(await told(page), /^Corner 1 of arch: x -13, y 0, z 90 mm\./);
      assert.match(await told(page), /Straight [\d.]+ mm before and [\d.]+ mm after/);
      await shot(page, "handle-drag");
      const on = await seen(page, [-20.1, 0, 85.2]);
      await page.mouse.move(on.x, on.y, { steps: 2 });
    });
    assert.deepEqual((await route(page))[0].corner, [{ of: "low", plus: -20 }, 0, 85]);
    await spoken(page, /x -20, y 0, z 85/);
    assert.match(await undo(page).innerText(), /move corner 1 of arch/);
    await undo(page).click();
    await settled(page);
    assert.deepEqual(await route(page), before);
  });
});

test("a corner snaps to the level of the other one and of a port, and says so", async () => {
  await withDesign(async (page) => {
    await select(page);
    await drag(page, [120, 0, 100], [105, 0, 80]);
    assert.deepEqual((await route(page))[1].corner, [105, 0, { of: "high", plus: 60 }]);
    await drag(page, [105, 0, 80], [118.9, 0, 98.9], async () => {
      assert.match(await told(page), /X level with high, z level with corner 1/);
    });
    assert.deepEqual((await route(page))[1].corner, [120, 0, { of: "high", plus: 80 }]);
  });
});

test("a drag that leads out of the picture does not move the picture under the pointer", async () => {
  await withDesign(async (page) => {
    await page.getByRole("button", { name: "Fit", exact: true }).click();
    await select(page);
    const end = await seen(page, [0, 0, 0]);
    await drag(page, [0, 0, 100], [-60, 0, 110], async () => {
      await settled(page);
      const now = await seen(page, [0, 0, 0]);
      assert.ok(Math.hypot(now.x - end.x, now.y - end.y) < 0.1, `the picture went from ${end.x}, ${end.y} to ${now.x}, ${now.y}`);
    });
    assert.deepEqual((await route(page))[0].corner, [{ of: "low", plus: -60 }, 0, 110]);
  });
});

test("a drag keeps to an axis that was chosen or whose key is held", async () => {
  await withDesign(async (page) => {
    await select(page);
    assert.ok(await page.getByRole("button", { name: "Along z" }).isDisabled(), "nothing to move yet");
    await page.getByRole("button", { name: "Next handle" }).click();
    await page.getByRole("button", { name: "Along z" }).click();
    await drag(page, [0, 0, 100], [-14, 0, 88]);
    assert.deepEqual((await route(page))[0].corner, [{ of: "low", plus: 0 }, 0, 88]);
    await page.getByRole("button", { name: "Along plane" }).click();
    await page.locator(".stage canvas").focus();
    await page.keyboard.down("x");
    await drag(page, [0, 0, 88], [-14, 0, 70]);
    await page.keyboard.up("x");
    assert.deepEqual((await route(page))[0].corner, [{ of: "low", plus: -14 }, 0, 88]);
  });
});

test("escape puts a dragged corner back and leaves no step", async () => {
  await withDesign(async (page) => {
    await select(page);
    const [before, steps] = [await route(page), await undo(page).innerText()];
    await drag(page, [0, 0, 100], [-20, 0, 80], async () => {
      await settled(page);
      await page.keyboard.press("Escape");
    });
    assert.deepEqual(await route(page), before);
    assert.equal(await undo(page).innerText(), steps);
    await spoken(page, /^Put back/);
  });
});

test("a bend's radius is dragged along its bisector in halves of a millimetre", async () => {
  await withDesign(async (page) => {
    await select(page);
    const before = await route(page);
    // The middle of a right angle's arc is R (sqrt(2) - 1) from its apex along the bisector, R (1 - sqrt(1/2)) along each leg.
    const middle = (radius) => [radius * (1 - Math.SQRT1_2), 0, 100 - radius * (1 - Math.SQRT1_2)];
    await drag(page, middle(20), middle(31.6), async () => {
      assert.match(await told(page), /^Bend radius at corner 1 of arch: 31\.5 mm/);
      await shot(page, "handle-radius");
    });
    assert.equal((await route(page))[0].bend_radius, 31.5);
    assert.equal((await route(page))[1].bend_radius, undefined);
    await undo(page).click();
    await settled(page);
    assert.deepEqual(await route(page), before);
    await drag(page, middle(20), [-20, 0, 120]);
    assert.equal((await route(page))[0].bend_radius, 0.5, "never below the least");
  });
});

test("a double click adds a corner in its place on the route", async () => {
  await withDesign(async (page) => {
    await click(page, [50.3, 0, 100], 2);
    const added = await route(page);
    assert.equal(added.length, 3);
    assert.deepEqual(added[1], { corner: [50, { of: "low", plus: 0 }, 100] });
    assert.match(await undo(page).innerText(), /add a corner/);
    await drag(page, [50, 0, 100], [50, 0, 120]);
    assert.deepEqual((await route(page))[1].corner[2], 120);
  });
});

test("keys choose handles and move them as a drag does", async () => {
  await withDesign(async (page) => {
    await page.locator(".stage canvas").focus();
    await page.keyboard.press("Enter");
    await settled(page);
    await spoken(page, /^Corner 1 of arch: x 0, y 0, z 100 mm/);
    await page.keyboard.press("Alt+ArrowLeft");
    await page.keyboard.press("Alt+Shift+ArrowLeft");
    await page.keyboard.press("Alt+Shift+ArrowDown");
    await settled(page);
    assert.deepEqual((await route(page))[0].corner, [{ of: "low", plus: -11 }, 0, 90]);
    await spoken(page, /x -11, y 0, z 90/);
    await page.keyboard.press("Enter");
    await page.keyboard.press("Alt+ArrowUp");
    await settled(page);
    assert.equal((await route(page))[0].bend_radius, 21);
    await page.keyboard.press("Shift+Enter");
    await page.keyboard.press("Shift+Enter");
    await settled(page);
    await spoken(page, /^Bend radius at corner 2 of arch/);
    await page.keyboard.press("Escape");
    await drawn(page);
    assert.equal(await page.locator(".held-words").count(), 0);
    assert.equal(await page.evaluate(() => document.activeElement.tagName), "CANVAS", "keys leave the focus where it is");
  });
});

test("where inches are typed a press is a twentieth of an inch, and says so", async () => {
  await withDesign(async (page) => {
    await page.getByRole("radio", { name: "inches" }).check();
    await page.locator(".stage canvas").focus();
    await page.keyboard.press("Enter");
    await settled(page);
    await page.keyboard.press("Alt+ArrowLeft");
    await settled(page);
    // 0.05 in = 1.27 mm.
    assert.deepEqual((await route(page))[0].corner, [{ of: "low", plus: -1.27 }, 0, 100]);
    await spoken(page, /x -0\.05, y 0, z 3\.937 in/);
    await page.getByRole("group", { name: "Move handle by 0.05 in" }).getByRole("button", { name: "Move handle left" }).click();
    await settled(page);
    assert.deepEqual((await route(page))[0].corner[0], { of: "low", plus: -2.54 });
  });
});

test("buttons do without a key what a drag does, at 320 px and in the dark too", async () => {
  await withDesign(async (page) => {
    await page.getByRole("button", { name: "Next handle" }).click();
    await page.getByRole("button", { name: "Move handle left" }).click();
    await page.getByRole("button", { name: "Move handle up" }).click();
    await settled(page);
    assert.deepEqual((await route(page))[0].corner, [{ of: "low", plus: -1 }, 0, 101]);
    await page.getByRole("button", { name: "Handle before" }).click();
    await page.getByRole("button", { name: "Next handle" }).click();
    await page.getByRole("button", { name: "Put a corner here" }).click();
    await settled(page);
    const added = await route(page);
    assert.equal(added.length, 3);
    assert.deepEqual(added[2].corner, [120, 0, { of: "high", plus: 80 }]);
    // On the straight from (-1, 0, 101) to (120, 0, 100), at a whole millimetre along x.
    const [x, y, z] = added[1].corner;
    assert.ok(Number.isInteger(x) && x > 40 && x < 80, `x ${x}`);
    assert.deepEqual([y, z], [{ of: "low", plus: 0 }, Number((101 - (x + 1) / 121).toFixed(3))]);
    await spoken(page, /^Corner 2 of arch added/);
    await passesAxe(page, "a handle is chosen");
    await page.locator(".preview").scrollIntoViewIfNeeded();
    await shot(page, "handles-narrow");
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), "nothing sticks out");
  }, { size: [320, 720], scheme: "dark" });
});

test("a finger on a handle drags it", async () => {
  await withDesign(async (page) => {
    await select(page);
    const [from, to] = [await seen(page, [0, 0, 100]), await seen(page, [-20, 0, 85])];
    const session = await page.context().newCDPSession(page);
    const touch = (type, ...touchPoints) => session.send("Input.dispatchTouchEvent", { type, touchPoints });
    await touch("touchStart", { x: from.x - 9, y: from.y - 9 });
    for (const share of [0.3, 0.6, 1]) {
      await touch("touchMove", { x: from.x - 9 + share * (to.x - from.x), y: from.y - 9 + share * (to.y - from.y) });
    }
    await touch("touchEnd");
    await settled(page);
    assert.deepEqual((await route(page))[0].corner, [{ of: "low", plus: -20 }, 0, 85]);
  });
});
