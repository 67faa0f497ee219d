// What the page itself does to a design, without a browser: reading typed numbers, names, lists, places, kept states.

import assert from "node:assert/strict";
import { test } from "node:test";
import { newRun } from "../../www/design/fresh.js";
import { added, moved, removed } from "../../www/design/lists.js";
import { valueAt, upFrom, withValue } from "../../www/design/pointer.js";
import { renamed } from "../../www/design/rename.js";
import { isDesignShaped } from "../../www/design/shape.js";
import { asKind, kindOf } from "../../www/design/stations.js";
import { suggestedCorner, suggestedThrough } from "../../www/design/suggest.js";
import { suggestedCoil } from "../../www/design/suggest-coil.js";
import { alreadySays, readTyped } from "../../www/design/typed.js";
import { identityOf } from "../../www/design/identity.js";

const port = (name, at, facing) => ({ name, at, facing, fitting: "F", measured_to: 0.5 });
const ends = { chamfer_deg: 15, chamfer_length: 2, edge_break: 0.2, trim: 0, seat_mark: true };
const design = () => ({
  format: "tubewright-design", version: 1, name: "", notes: "", clearance: 1,
  fittings: [{ name: "F", tube_diameter: 12, height: 18, socket_depth: 10, collar_diameter: 19, lead: 5, elbow: null, seal: null }],
  ports: [port("a", [10, 20, 30], [0, 0, 2]), port("b", [100, 50, 90], [-1, 0, 0])],
  runs: [{ name: "r", from: "a", to: "b", tube: { outer_diameter: 12, bore: 8 }, bend_radius: 24, ends,
    route: [{ corner: [{ of: "a", plus: 0 }, { of: "b", plus: -2.5 }, 80] }] }],
  keep_outs: [], process: { material: "tough resin", printer: "medium resin" },
  loop: { flow_l_per_h: 120, coolant: "water", working_c: 40, fault_c: 60, pressure_kpa: 50 },
});

const coil = { coil: { centre: [0, { of: "a", plus: 5 }, ""], axis: [0, 0, 1], radius: 30, pitch: 16, turns: 2, hand: "left", start_deg: 0 } };

test("a number is read as a person writes it, and nothing else is taken for one", () => {
  const numbers = { "12": 12, " 12.50 ": 12.5, "12,5": 12.5, "-3": -3, "\u22123": -3, "+4": 4, ".5": 0.5, "7.": 7, "1e2": 100, "1e-3": 0.001, "-0": 0, "0,0": 0 };
  for (const [text, value] of Object.entries(numbers)) assert.ok(Object.is(readTyped(text), value), `${text} is ${value}`);
  for (const text of ["", " ", "-", "1e", "1,2.3", "1,234,5", "1.234.5", "12 mm", "0x10", "NaN", "Infinity", "1e999", "1_000", "12a", "١٢"]) {
    assert.equal(readTyped(text), text, `“${text}” is no number`);
  }
  assert.ok(alreadySays("12,50", 12.5) && alreadySays("1e", "1e") && alreadySays("", undefined));
  assert.ok(!alreadySays("12", 13) && !alreadySays("12", ""));
});

test("an edit shares what it does not touch and stands for the same things", () => {
  const before = design();
  const after = withValue(before, "/ports/0/at/1", 21);
  assert.equal(before.ports[0].at[1], 20);
  assert.equal(after.ports[0].at[1], 21);
  assert.equal(after.ports[1], before.ports[1]);
  assert.equal(identityOf(after.ports[0]), identityOf(before.ports[0]));
  assert.equal("bend_radius" in withValue(withValue(before, "/runs/0/route/0/bend_radius", 9), "/runs/0/route/0/bend_radius", undefined).runs[0].route[0], false);
  assert.equal(valueAt({ "a/b": { "~": 1 } }, "/a~1b/~0"), 1, "RFC 6901 escapes");
  assert.equal(valueAt(before, "/ports/toString"), undefined);
  assert.deepEqual(upFrom("/a/0/b"), ["/a/0/b", "/a/0", "/a", ""]);
});

test("a new run has a wall that holds, whatever sizes of tube are shipped", () => {
  const words = { quantity: (key) => ({ key, label: "", unit: "", hint: "", default: 0 }) };
  const tubes = [[10, 8], [12, 10], [12, 8], [12, 9], [12.7, 9.525]].map(([outer_diameter, bore]) => ({ outer_diameter, bore }));
  const bores = { 12: 8, 10: 6, 12.7: 9.525, 20: 16, 6: 3 };
  for (const [outer, bore] of Object.entries(bores)) {
    const bare = { ...design(), runs: [] };
    bare.fittings[0].tube_diameter = Number(outer);
    assert.deepEqual(newRun(bare, words, tubes).tube, { outer_diameter: Number(outer), bore }, outer);
  }
  assert.deepEqual(newRun(design(), words, []).tube, { outer_diameter: "", bore: "" }, "no port is free");
});

test("a new name carries every reference, also when typed through a neighbour's name", () => {
  let now = design();
  now = renamed(now, "ports", 0, "pump");
  assert.equal(now.runs[0].from, "pump");
  assert.deepEqual(now.runs[0].route[0].corner, [{ of: "pump", plus: 0 }, { of: "b", plus: -2.5 }, 80]);
  for (const name of ["b", "", "bl", "block"]) now = renamed(now, "ports", 0, name);
  assert.equal(now.runs[0].from, "block");
  assert.equal(now.runs[0].to, "b", "the neighbour keeps its own");
  assert.deepEqual(now.runs[0].route[0].corner[1], { of: "b", plus: -2.5 });
  now = renamed(now, "fittings", 0, "G");
  assert.deepEqual(now.ports.map((one) => one.fitting), ["G", "G"]);
});

test("what referred to a removed thing is made whole or asked for", () => {
  const without = removed(design(), "ports", 1);
  assert.equal(without.runs[0].to, "");
  assert.deepEqual(without.runs[0].route[0].corner, [{ of: "a", plus: 0 }, 47.5, 80]);
  assert.deepEqual(removed(design(), "fittings", 0).ports.map((one) => one.fitting), ["", ""]);
  const twin = added(design(), "ports", port("b", [0, 0, 0], [0, 0, 1]));
  assert.equal(removed(twin, "ports", 2).runs[0].to, "b", "a namesake keeps the reference");
  assert.deepEqual(moved([1, 2, 3], 0, 1), [2, 1, 3]);
  assert.deepEqual(moved([1, 2, 3], 0, -1), [1, 2, 3]);
});

test("a corner starts out of the first port and goes on level with the second, tied to both", () => {
  const bare = { ...design() };
  bare.runs = [{ ...bare.runs[0], route: [] }];
  const first = suggestedCorner(bare, bare.runs[0]);
  assert.deepEqual(first.corner, [{ of: "a", plus: 0 }, { of: "a", plus: 0 }, 90]);
  bare.runs = [{ ...bare.runs[0], route: [first] }];
  assert.deepEqual(suggestedCorner(bare, bare.runs[0]).corner, [{ of: "b", plus: 0 }, { of: "a", plus: 0 }, 90]);
  bare.ports = [port("a", ["", 0, 0], [0, 0, 1]), bare.ports[1]];
  bare.runs = [{ ...bare.runs[0], route: [] }];
  assert.deepEqual(suggestedCorner(bare, bare.runs[0]).corner, ["", "", ""], "what is not known yet is left blank");
});

test("a kept state is shown only if it is built like a design", () => {
  assert.ok(isDesignShaped(design()));
  assert.ok(isDesignShaped(withValue(design(), "/ports/0/at/0", "1,2.3")), "half-typed values are part of it");
  assert.ok(isDesignShaped(withValue(design(), "/runs/0/route", [{ through: [1, "", { of: "a", plus: 0 }] }, coil])), "every kind of station");
  for (const [place, value] of [["/ports", {}], ["/ports/0/at", [1, 2]], ["/runs/0/route/0", { through: [1, 2] }],
    ["/runs/0/route/0", { coil: { centre: [0, 0, 0] } }], ["/runs/0/route/0", { corner: [0, 0, 0], through: [1, 2, 3] }], ["/runs/0/dress", {}], ["/version", 2],
    ["/loop", undefined], ["/fittings/0/elbow", 3], ["/runs/0/from", 4], ["/extra", 1], ["/keep_outs", [{ name: "k" }]]]) {
    assert.ok(!isDesignShaped(withValue(design(), place, value)), `${place}: ${JSON.stringify(value)}`);
  }
  for (const value of [null, undefined, 3, "x", [], {}]) assert.ok(!isDesignShaped(value));
});

test("points and coils are carried by a name, and keep their place when their port goes", () => {
  const before = withValue(design(), "/runs/0/route", [{ through: [{ of: "a", plus: 1 }, 2, 3] }, coil]);
  const now = renamed(before, "ports", 0, "pump");
  assert.deepEqual(now.runs[0].route[0], { through: [{ of: "pump", plus: 1 }, 2, 3] });
  assert.deepEqual(now.runs[0].route[1].coil.centre, [0, { of: "pump", plus: 5 }, ""]);
  assert.equal(identityOf(now.runs[0].route[1]), identityOf(before.runs[0].route[1]), "the same card");
  const without = removed(before, "ports", 0);
  assert.deepEqual(without.runs[0].route[0], { through: [11, 2, 3] });
  assert.deepEqual(without.runs[0].route[1].coil.centre, [0, 25, ""]);
});

test("a station becomes another kind about the same point, and what it was comes back", () => {
  const corner = { corner: [1, { of: "a", plus: 2 }, 3], bend_radius: 31 };
  const never = () => assert.fail("it has been a coil");
  const wound = asKind(corner, "coil", () => coil.coil);
  assert.deepEqual(wound, { coil: { ...coil.coil, centre: corner.corner } });
  const point = asKind(wound, "through", never);
  assert.equal(kindOf(point), "through");
  assert.deepEqual(asKind(point, "corner", never), corner);
  assert.deepEqual(asKind(point, "coil", never), wound);
  assert.equal(identityOf(point), identityOf(corner));
});

test("a new coil goes round the cylinder from where the tube is, and one without starts between its neighbours", () => {
  const bare = withValue(design(), "/runs/0/route", []);
  const drum = { name: "reservoir", cylinder: { from: [60, 60, 0], to: [60, 60, 200], radius: 25 } };
  const round = suggestedCoil(withValue(bare, "/keep_outs", [drum]), bare.runs[0]).coil;
  assert.deepEqual(round.axis, [0, 0, 1]);
  // Radius 25, clearance 1, half of 12 mm tube; level with 60 mm in front of port a.
  assert.equal(round.radius, 32);
  assert.deepEqual(round.centre, [60, 60, { of: "b", plus: 0 }], "tied to the port that is as high");
  assert.ok(round.pitch >= 15 && round.turns >= 1);
  const upside = { name: "reservoir", cylinder: { from: [60, 60, 200], to: [60, 60, 0], radius: 25 } };
  assert.deepEqual(suggestedCoil(withValue(bare, "/keep_outs", [upside]), bare.runs[0]).coil, round, "whichever end is named first");
  const free = suggestedCoil(bare, bare.runs[0]).coil;
  assert.ok(free.radius >= 24 && free.pitch >= 15 && free.centre.every((part) => part !== ""));
  const lost = suggestedCoil(bare, { ...bare.runs[0], to: "" }).coil;
  assert.deepEqual(lost.centre, ["", "", ""], "what is not known yet is left blank");
  assert.deepEqual(suggestedThrough(bare, { ...bare.runs[0], to: "" }).through, ["", "", ""]);
});
