// The drawing read back: every number on it is the report's, every leg and bend of the report is on it, and what is drawn
// has the size that is written on it. Read by plain readers that know SVG's own description and the data attributes.

import assert from "node:assert/strict";
import test from "node:test";
import { startEngine } from "./site.mjs";

const { engine } = await startEngine();

const bare = (name, from, facing, to, toFacing, route, more = {}) => ({
  format: "tubewright-design", version: 1, name: `Design of ${name}`,
  fittings: [{ name: "F", tube_diameter: 12, height: 10, socket_depth: 10, collar_diameter: 13, lead: 2 }],
  ports: [{ name: "a", at: from, facing, fitting: "F" }, { name: "b & <c>", at: to, facing: toFacing, fitting: "F" }],
  runs: [{ name, from: "a", to: "b & <c>", tube: { outer_diameter: 12, bore: 8 }, bend_radius: 24, route, ...more }],
});
const less = (a, b) => a.map((value, axis) => value - b[axis]);
const through = (name, points, radius) =>
  bare(name, points[0], less(points[1], points[0]), points.at(-1), less(points.at(-2), points.at(-1)),
    points.slice(1, -1).map((corner) => ({ corner })), { bend_radius: radius });

const coil = { centre: [0, 0, 10], axis: [0, 1, 3], radius: 30, end_radius: 60, pitch: 16, turns: 3.25, hand: "left" };
const DESIGNS = [
  ...JSON.parse(engine.presets()).demos.map((demo) => demo.design),
  through("A", [[0, 0, 0], [100, 0, 0], [100, 80, 0], [100, 80, 60]], 24),
  through("B", [[0, 0, 0], [100, 0, 0], [100, 80, 0], [160, 80, 60], [160, 140, 60]], 24),
  bare("trimmed", [0, 0, 0], [1, 0, 0], [150, 90, 0], [0, -1, 0], [{ corner: [150, 0, 0] }], { ends: { trim: 4 } }),
  through("C", [[0, 0, 0], [100, 0, 0], [160, 80, 0], [160, 80, 100], [200, 80, 130]], 20),
  through("straight", [[5, 6, 7], [60, 6, 7], [115, 6, 7]], 24),
  through("small", [[0, 0, 0], [50, 0, 0], [50, 0, 45]], 24),
  through("far too large for true size", [[0, 0, 0], [9000, 0, 0], [9000, 7000, 0], [9000, 7000, 5000]], 400),
  bare("coil <&>", [0, -60, -20], [0, 0, 1], [90, 40, 120], [0, 0, -1], [{ coil }],
    { dress: { diameter: 14, end_diameter: 16, lobes: 6, depth: 0.8, twist_deg_per_mm: 2 } }),
  bare("smooth", [0, -60, -20], [0, 0, 1], [90, 40, 120], [0, 0, -1], [{ through: [0, -60, 30] }, { through: [40, -30, 60] }, { through: [70, 10, 40] }]),
  bare("back", [0, 0, 0], [1, 0, 0], [0, 60, 0], [1, 0, 0], []),
];
// Zigzags of many lengths in all directions.
for (let seed = 1; seed <= 12; seed += 1) {
  let state = seed * 2654435761 % 2 ** 32;
  const chance = () => (state = (state * 1664525 + 1013904223) % 2 ** 32) / 2 ** 32;
  const points = [[0, 0, 0]];
  for (let leg = 0; leg < 2 + (seed % 6); leg += 1) points.push(points.at(-1).map((at) => at + (chance() - 0.5) * 220));
  DESIGNS.push(through(`zigzag ${seed}`, points, 6.5 + 2 * chance()));
}

const RUNS = DESIGNS.flatMap((design) => {
  const text = JSON.stringify(design);
  const report = JSON.parse(engine.report(text));
  return report.runs.filter((run) => run.made).map((run) => ({
    design: JSON.parse(engine.normalise(text)), run, stated: design.runs.find((one) => one.name === run.name),
    svg: new TextDecoder().decode(engine.exportFile(text, JSON.stringify({ kind: "drawing", run: run.name }))),
  }));
});

const plain = (markup) => markup.replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&quot;/g, '"').replace(/&amp;/g, "&");
const attribute = (markup, name) => new RegExp(`\\s${name}="([^"]*)"`).exec(markup)?.[1];

/** Every number that says what it is. */
function numbersOf(svg) {
  return [...svg.matchAll(/<tspan ([^>]*)>([^<]*)<\/tspan>/g)].map(([, head, shown]) => ({
    what: attribute(` ${head}`, "data-dimension"), row: attribute(` ${head}`, "data-row"), value: Number(attribute(` ${head}`, "data-value")),
    shown: plain(shown), underlined: head.includes("underline"),
  }));
}

/** A group's own text, without the groups inside others being lost: groups of the drawing's leaves hold no groups. */
function groups(svg, kind) {
  return [...svg.matchAll(new RegExp(`<g class="${kind}"[^>]*>([\\s\\S]*?)</g>`, "g"))].map((found) => found[0]);
}

const points = (d) => [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((found) => [Number(found[1]), Number(found[2])]);
const distance = (a, b) => Math.hypot(...a.map((value, axis) => value - b[axis]));

/** What the report, or for what it does not hold the design, says of a number's name. */
function told({ run, design, stated }) {
  const rows = run.bend_table;
  const own = design.runs.find((one) => one.name === run.name);
  const fitting = (port) => design.fittings.find((one) => one.name === design.ports.find((other) => other.name === port).fitting);
  const bend = (row) => rows[Number(row) - 1];
  const coilOf = (row) => own.route[bend(row).station].coil;
  const centre = (row, axis) => {
    const part = coilOf(row).centre[axis];
    return typeof part === "number" ? part : design.ports.find((one) => one.name === part.of).at[axis] + part.plus;
  };
  const axis = (row) => coilOf(row).axis.map((part) => part / Math.hypot(...coilOf(row).axis));
  return {
    leg: (row) => distance(run.points_mm[Number(row)], run.points_mm[Number(row) - 1]),
    straight: (row) => bend(row).straight_mm, rotation: (row) => bend(row).rotation_deg, angle: (row) => bend(row).angle_deg,
    radius: (row) => bend(row).radius_mm, arc: (row) => bend(row).length_mm,
    x: (row) => run.points_mm[row][0], y: (row) => run.points_mm[row][1], z: (row) => run.points_mm[row][2],
    length: () => run.length_mm, mass: () => run.mass_g,
    size_x: () => run.bounds_mm.max[0] - run.bounds_mm.min[0], size_y: () => run.bounds_mm.max[1] - run.bounds_mm.min[1],
    size_z: () => run.bounds_mm.max[2] - run.bounds_mm.min[2],
    outer_diameter: () => stated.tube.outer_diameter, bore: () => stated.tube.bore, wall: () => (stated.tube.outer_diameter - stated.tube.bore) / 2,
    chamfer_deg: () => own.ends.chamfer_deg, chamfer_length: () => own.ends.chamfer_length, edge_break: () => own.ends.edge_break,
    // The mark vanishes in the mouth when the tube is home, so it is as far from the end as the tube goes in.
    seat_mark: (row) => fitting([own.from, own.to][row]).socket_depth + own.ends.trim,
    trim: () => own.ends.trim, socket_depth: (row) => fitting([own.from, own.to][row]).socket_depth,
    coil_radius: (row) => coilOf(row).radius, coil_end_radius: (row) => coilOf(row).end_radius ?? coilOf(row).radius,
    coil_pitch: (row) => coilOf(row).pitch, coil_turns: (row) => coilOf(row).turns, coil_start: (row) => coilOf(row).start_deg,
    coil_axis_x: (row) => axis(row)[0], coil_axis_y: (row) => axis(row)[1], coil_axis_z: (row) => axis(row)[2],
    coil_centre_x: (row) => centre(row, 0), coil_centre_y: (row) => centre(row, 1), coil_centre_z: (row) => centre(row, 2),
    body_diameter: () => own.dress.diameter ?? stated.tube.outer_diameter, body_end_diameter: () => own.dress.end_diameter ?? own.dress.diameter,
    body_blend: () => own.dress.blend, body_lobes: () => own.dress.lobes, body_depth: () => own.dress.depth, body_twist: () => own.dress.twist_deg_per_mm,
  };
}

test("every number on every drawing is the report's, as it is written and as it is kept", () => {
  const kinds = new Set();
  let count = 0;
  assert.ok(RUNS.length >= 20, `${RUNS.length} runs`);
  for (const one of RUNS) {
    const source = told(one);
    for (const { what, row, value, shown } of numbersOf(one.svg)) {
      assert.ok(source[what], `${what} is something that is known`);
      const expected = source[what](row);
      const at = `${one.run.name}: ${what} of row ${row}`;
      assert.ok(Math.abs(value - expected) <= 1e-9 * Math.max(1, Math.abs(expected)), `${at}: ${value} kept, ${expected} reported`);
      const read = Number(shown.replace("\u2212", "-").replace(/[R°+]/g, ""));
      assert.ok(Math.abs(read - expected) <= 0.005 + 1e-9, `${at}: ${shown} written, ${expected} reported`);
      kinds.add(what);
      count += 1;
    }
  }
  assert.ok(count > 1500, `${count} numbers`);
  for (const what of Object.keys(told(RUNS[0]))) assert.ok(kinds.has(what), `no drawing has a ${what}`);
});

test("no number stands on a drawing that cannot be read back", () => {
  for (const { svg, run, stated, design } of RUNS) {
    const loose = svg.replace(/<(tspan|title|style)\b[^>]*>[^<]*<\/\1>/g, "");
    const names = [run.name, design.name, stated.from, stated.to, design.process?.material?.name ?? ""];
    for (const [, words] of loose.matchAll(/<text [^>]*>([\s\S]*?)<\/text>/g)) {
      let rest = plain(words);
      if (names.some((name) => rest === name || (rest.endsWith("…") && name.startsWith(rest.slice(0, -1))))) continue;
      // What is left: counts, names of tiles and sheets, scales, the bar's 50 mm and the printer's 100 %.
      rest = rest.replace(/^[A-Z]\d+$|^\d+$|^\d+: .*$|\b1:\d+\b|\bA[34]\b|50 mm|100 %|point 0|first is 0|^\d+(\.\d+)? × \d+(\.\d+)?$/g, "");
      assert.doesNotMatch(rest, /\d/, `${run.name}: ${words}`);
    }
  }
});

test("every leg stands once, and every bend with its angle, radius and rotation", () => {
  for (const { svg, run } of RUNS) {
    const rows = run.bend_table;
    const inLegs = groups(svg, "leg").flatMap(numbersOf).filter((one) => one.what === "leg").map((one) => Number(one.row));
    assert.equal(new Set(inLegs).size, inLegs.length, `${run.name}: a leg stands twice`);
    if (rows.every((row) => row.kind !== "coil" && row.kind !== "curve" && row.angle_deg <= 120)) {
      const legs = run.points_mm.slice(1).map((_, index) => index + 1).filter((leg) => distance(run.points_mm[leg], run.points_mm[leg - 1]) > 1);
      for (const leg of legs) assert.ok(inLegs.includes(leg), `${run.name}: leg ${leg} is missing`);
    }
    const labels = groups(svg, "bend").map((group) => numbersOf(group));
    assert.equal(labels.length, rows.length - 1, `${run.name}: a label a bend`);
    labels.forEach((label, index) => {
      const has = label.map((one) => one.what);
      const row = rows[index];
      if (row.kind === "coil") for (const what of ["coil_radius", "coil_end_radius", "coil_turns", "coil_pitch"]) assert.ok(has.includes(what), what);
      else if (row.kind === "curve") assert.ok(has.includes("radius"));
      else assert.deepEqual(has, index === 0 ? ["angle", "radius"] : ["angle", "radius", "rotation"], run.name);
      assert.ok(label.every((one) => Number(one.row) === index + 1));
    });
    const tables = numbersOf(svg);
    for (let row = 1; row <= rows.length; row += 1) assert.ok(tables.some((one) => one.what === "straight" && Number(one.row) === row));
    for (let point = 0; point < run.points_mm.length; point += 1) assert.ok(tables.some((one) => one.what === "z" && Number(one.row) === point));
  }
});

test("a dimension line is as long as its number, and shorter where it is underlined", () => {
  let [seen, short] = [0, 0];
  for (const { svg, run } of RUNS) {
    const scale = 1 / Number(/data-scale="1:(\d+)"/.exec(svg)[1]);
    for (const group of [...groups(svg, "leg"), ...groups(svg, "mark")]) {
      const [number] = numbersOf(group);
      const arrows = [...group.matchAll(/<path fill="#000" stroke="none" d="([^"]*)"/g)].map((found) => points(found[1])[0]);
      const long = distance(arrows[0], arrows[1]);
      if (number.underlined) {
        assert.ok(long < number.value * scale, `${run.name}: ${number.value} is seen ${long}`);
        short += 1;
      } else if (long > 20) {
        assert.ok(Math.abs(long - number.value * scale) <= 2e-4 * long + 2e-3, `${run.name}: ${number.value} is drawn ${long}`);
        seen += 1;
      }
    }
  }
  assert.ok(seen > 20 && short > 5, `${seen} in true length, ${short} foreshortened`);
});

test("the rings at both ends are dimensioned from their faces", () => {
  const marks = (name) => groups(RUNS.find(({ run }) => run.name === name).svg, "mark").flatMap(numbersOf).map(({ what, row, value }) => `${what} ${row} ${value}`);
  assert.deepEqual(marks("trimmed").sort(), ["seat_mark 0 14", "seat_mark 1 14", "trim 0 4", "trim 1 4"]);
  assert.deepEqual(marks("A").sort(), ["seat_mark 0 10", "seat_mark 1 10"]);
});

test("an arc is as wide as the angle that stands on it", () => {
  let seen = 0;
  for (const { svg, run } of RUNS) {
    for (const group of groups(svg, "bend")) {
      const path = /<path class="angle"[^>]* d="([^"]*)"/.exec(group)?.[1];
      if (!path) continue;
      const [from, ...rest] = points(path);
      const to = rest.at(-1);
      // Three points of the arc give its centre, and that the angle.
      const on = rest[Math.floor(rest.length / 2) - 1];
      const [a, b, c] = [from, on, to].map(([x, y]) => [x - from[0], y - from[1]]);
      const twice = 2 * (b[0] * c[1] - b[1] * c[0]);
      const centre = [(c[1] * (b[0] ** 2 + b[1] ** 2) - b[1] * (c[0] ** 2 + c[1] ** 2)) / twice, (b[0] * (c[0] ** 2 + c[1] ** 2) - c[0] * (b[0] ** 2 + b[1] ** 2)) / twice];
      const ways = [a, c].map(([x, y]) => Math.atan2(y - centre[1], x - centre[0]));
      const turned = Math.abs(((ways[1] - ways[0]) * 180 / Math.PI + 540) % 360 - 180);
      const [angle] = numbersOf(group);
      assert.equal(angle.what, "angle");
      assert.ok(Math.abs(turned - angle.value) < 0.1, `${run.name}: ${angle.value} is drawn ${turned}`);
      seen += 1;
    }
  }
  assert.ok(seen >= 8, `${seen} arcs`);
});

test("each view is as large as the tube", () => {
  const axes = { front: [0, 2], top: [0, 1], right: [1, 2] };
  for (const { svg, run } of RUNS) {
    const scale = 1 / Number(/data-scale="1:(\d+)"/.exec(svg)[1]);
    for (const [name, [across, up]] of Object.entries(axes)) {
      const [group] = [...svg.matchAll(new RegExp(`<g class="view" data-view="${name}">([\\s\\S]*?)</g>`, "g"))];
      const drawn = [...group[1].matchAll(/class="(edge|hidden)"[^>]* d="([^"]*)"/g)].flatMap((found) => points(found[2]));
      const size = [0, 1].map((axis) => Math.max(...drawn.map((at) => at[axis])) - Math.min(...drawn.map((at) => at[axis])));
      const expected = [across, up].map((axis) => (run.bounds_mm.max[axis] - run.bounds_mm.min[axis]) * scale);
      // A sampled round falls short of its crest by its sagitta.
      for (const axis of [0, 1]) assert.ok(Math.abs(size[axis] - expected[axis]) < 0.06, `${run.name}, ${name}: ${size} for ${expected}`);
    }
  }
});

test("the sheet is as large as it says, fits where it can, and is cut into tiles where it is larger", () => {
  const sizes = new Set();
  for (const { svg, run } of RUNS) {
    const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg).map(Number);
    assert.match(svg, new RegExp(`viewBox="0 0 ${width} ${height}"`), "a unit of the picture is a millimetre");
    assert.ok(svg.includes(`@page{size:${width}mm ${height}mm;margin:0}`));
    const paper = [...svg.replace(/<g class="tiles">[\s\S]*?<\/g>/, "").matchAll(/ d="([^"]*)"/g)].flatMap((found) => points(found[1]));
    assert.ok(paper.every(([x, y]) => x >= 0 && y >= 0 && x <= width && y <= height), `${run.name}: nothing leaves the sheet`);
    const [, bar] = /<path class="bar"[^>]* d="([^"]*)"/.exec(svg);
    assert.ok(Math.abs(distance(...points(bar)) - 50) < 1e-6, "the bar");
    const isA4 = Math.min(width, height) === 210 && Math.max(width, height) === 297;
    const tiles = /data-tiles="([^"]*)"/.exec(svg)?.[1].split(" ").map(Number);
    assert.equal(tiles === undefined, isA4);
    const marks = /<g class="tiles">[\s\S]*?<\/g>/.exec(svg)?.[0] ?? "";
    if (tiles) assert.equal((marks.match(/<text [^>]*>[A-Z]+\d+<\/text>/g) ?? []).length, tiles[0] * tiles[1], "a letter a tile");
    sizes.add(`${width} ${height}`);
  }
  assert.ok(sizes.has("210 297") && sizes.has("420 297"), [...sizes].join(", "));
  const large = RUNS.find(({ run }) => run.name.startsWith("far"));
  assert.doesNotMatch(large.svg, /data-scale="1:1"/);
  assert.match(large.svg, /Too large for true size/);
});

test("the picture asks for nothing, runs nothing and styles nothing but the printer's page", () => {
  for (const { svg } of RUNS) {
    assert.doesNotMatch(svg, /\sstyle=|<script|<image|<use|href|\son\w+=|url\(/);
    assert.equal(svg.match(/<style>/g).length, 1);
    const colours = new Set([...svg.matchAll(/(?:fill|stroke)="(#[^"]*)"/g)].map((found) => found[1]));
    assert.deepEqual([...colours].sort(), ["#000", "#fff"]);
  }
});

test("of two thousand corners a drawing tells as many as it has room for", () => {
  const zig = Array.from({ length: 1500 }, (_, index) => [40 * index, (index % 2) * 40, ((index >> 1) % 2) * 40]);
  const text = JSON.stringify(through("long", zig, 10));
  const svg = new TextDecoder().decode(engine.exportFile(text, JSON.stringify({ kind: "drawing", run: "long" })));
  assert.ok(svg.length < 20e6 && /more: see the file/.test(svg), `${svg.length} bytes`);
});
