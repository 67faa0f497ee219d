// What a handle does to a design, without a browser: levels, ties, new corners, and a drag as one step.

import assert from "node:assert/strict";
import { test } from "node:test";
import { cornerAdded, cornerBent, stationMoved } from "../../www/design/route-edits.js";
import { identityOf } from "../../www/design/identity.js";
import { Store } from "../../www/design/store.js";
import { levelsOf, snapped, snappedRadius } from "../../www/preview/snap.js";

const port = (name, at) => ({ name, at, facing: [0, 0, 1], fitting: "F", measured_to: 0.5 });
const design = () => ({
  ports: [port("a", [10, 20, 30]), port("b", [100, 50, 90]), port("c", [1, 2, 3])],
  runs: [{ name: "r", from: "a", to: "b", route: [{ corner: [{ of: "a", plus: 2 }, 70, ""] },
    { through: [{ of: "c", plus: 0.1 }, { of: "gone", plus: 5 }, 40] }, { corner: [60, 60, 60], bend_radius: 9 }] }],
});

test("a moved station keeps its ties, what cannot be told, and its identity", () => {
  const before = design();
  const after = stationMoved(before, 0, 1, [1.4, 99, 40.5]);
  assert.deepEqual(after.runs[0].route[1], { through: [{ of: "c", plus: 0.4 }, { of: "gone", plus: 5 }, 40.5] });
  assert.deepEqual(stationMoved(before, 0, 0, [0, 71, 8]).runs[0].route[0], { corner: [{ of: "a", plus: -10 }, 71, ""] });
  assert.equal(identityOf(after.runs[0].route[1]), identityOf(before.runs[0].route[1]));
  assert.deepEqual(before, design(), "the design before is as it was");
  assert.deepEqual(cornerBent(before, 0, 2, 12.5).runs[0].route[2], { corner: [60, 60, 60], bend_radius: 12.5 });
});

test("a handle comes to the nearest level in reach, else to a round length, else to a fine one", () => {
  const grid = { whole: 1, fine: 0.1 };
  const levels = levelsOf(design(), 0, 2);
  assert.deepEqual(levels.map(({ name }) => name), ["a", "b"], "stations that stand nowhere yet give no level");
  assert.deepEqual(levelsOf(design(), 0, 0).at(-1), { name: "corner 3", at: [60, 60, 60] });
  assert.deepEqual(snapped(12.4, 0, levels, 3, grid), { value: 10, level: "a" });
  assert.deepEqual(snapped(54, 0, levels, 48, grid), { value: 10, level: "a" }, "the nearer of two");
  assert.deepEqual(snapped(13.4, 0, levels, 3, grid), { value: 13, level: undefined });
  assert.deepEqual(snapped(13.46, 0, levels, 0.2, grid), { value: 13.5, level: undefined });
  assert.deepEqual([31.7, 31.8, 0.2, -7].map((radius) => snappedRadius(radius, 0.5)), [31.5, 32, 0.5, 0.5]);
  // Where inches are typed: twentieths of one, 1.27 mm, else its two-hundredths.
  const inches = { whole: 1.27, fine: 0.127 };
  assert.deepEqual(snapped(24.9, 0, levels, 0.6, inches), { value: 25.4, level: undefined });
  assert.deepEqual(snapped(24.9, 0, levels, 0.2, inches), { value: 24.892, level: undefined });
});

test("a new corner stands on its straight, tied where it is level with a port of its run", () => {
  const square = cornerAdded(design(), 0, { at: [10, 33.4, 90], direction: [0, 1, 0], before: 1 });
  assert.deepEqual(square.runs[0].route[1], { corner: [{ of: "a", plus: 0 }, 33, { of: "b", plus: 0 }] });
  assert.equal(square.runs[0].route.length, 4);
  // 3-4-5: at a whole millimetre of y, x is 3/4 of the way that y went.
  const slanted = cornerAdded(design(), 0, { at: [3, 4.4, 7], direction: [0.6, 0.8, 0], before: 0 });
  assert.deepEqual(slanted.runs[0].route[0], { corner: [2.7, 4, 7] });
  const along = cornerAdded(design(), 0, { at: [10, 20.2, 3], direction: [0, -1, 0], before: 3 });
  assert.deepEqual(along.runs[0].route[3].corner[1], 20, "along the straight it is level with a port by chance");
});

test("a drag is one step however often it writes and long it rests, and put back it leaves steps back and forward as they were", (context) => {
  let minutes = 0;
  context.mock.method(performance, "now", () => 60_000 * minutes);
  const first = { id: "x", design: design(), untouched: true };
  const store = new Store(first);
  const moved = (x) => stationMoved(store.design, 0, 2, [x, 60, 60]);
  store.change(moved(61));
  store.change(moved(62));
  store.undo();
  const { past, future } = store.steps;
  const names = [past.length, future.length];
  const drag = store.drag("one");
  for (const x of [63, 64, 65]) store.change(moved(x), "one", "move");
  assert.deepEqual([store.steps.past.length, store.steps.future.length], [2, 0]);
  drag.cancel();
  assert.deepEqual([store.steps.past.length, store.steps.future.length], names);
  assert.equal(store.design.runs[0].route[2].corner[0], 61);
  store.redo();
  assert.equal(store.design.runs[0].route[2].corner[0], 62);
  const other = store.drag("two");
  for (const x of [70, 71]) {
    store.change(moved(x), "two", "move");
    minutes += 1;
  }
  other.end();
  store.undo();
  assert.equal(store.design.runs[0].route[2].corner[0], 62);
});
