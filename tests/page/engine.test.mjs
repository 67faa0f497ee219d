// The built engine keeps its promises to whoever calls it from JavaScript: Node here, a worker in the page.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import test from "node:test";
import { startEngine } from "./site.mjs";

const desk = await readFile(new URL("../../crate/xtask/bench/desk.json", import.meta.url), "utf8");
const { engine } = await startEngine();

/** What a refused call throws. */
function refusal(call) {
  try {
    call();
  } catch (error) {
    assert.ok(error instanceof Error, "a refusal is an Error");
    assert.equal(typeof error.path, "string", `a refusal has a path: ${error.message}`);
    return error;
  }
  return assert.fail("the call was not refused");
}

/** The desk design with one thing changed. */
function changed(change) {
  const design = JSON.parse(desk);
  change(design);
  return JSON.stringify(design);
}

test("a mesh comes as two arrays of its own", () => {
  const { positions, indices } = engine.tubeMesh(desk, "tube", 0.01);
  assert.ok(positions instanceof Float32Array && indices instanceof Uint32Array);
  assert.equal(positions.length % 3, 0);
  assert.equal(indices.length % 3, 0);
  assert.ok(indices.every((index) => index < positions.length / 3));
  const kept = positions.slice();
  engine.tubeMesh(desk, "tube", 0.05);
  assert.deepEqual(positions, kept, "a later call must not write into an earlier answer");
  structuredClone(positions.buffer, { transfer: [positions.buffer] });
});

test("a file comes as bytes, with a name for it", () => {
  const request = JSON.stringify({ kind: "stl", run: "tube", deviation: 0.05 });
  const bytes = engine.exportFile(desk, request);
  assert.ok(bytes instanceof Uint8Array);
  const triangles = new DataView(bytes.buffer, bytes.byteOffset).getUint32(80, true);
  assert.equal(bytes.length, 84 + 50 * triangles, "binary STL: 84 bytes, then 50 a triangle");
  assert.match(engine.fileName(desk, request), /\.stl$/);
});

test("a file that bears the design opens again as it", () => {
  const text = engine.normalise(desk);
  for (const kind of ["3mf", "all", "design"]) {
    assert.equal(engine.designIn(engine.exportFile(desk, JSON.stringify({ kind, deviation: 0.2 }))), text, kind);
  }
  assert.throws(() => engine.designIn(new Uint8Array([80, 75, 3, 4])), (error) => error.path === "" && /damaged/.test(error.message));
  assert.throws(() => engine.designIn(new Uint8Array()), /empty/);
});

test("a refusal names the place and says what would work", () => {
  const cases = [
    ["", ""],
    ["nonsense", ""],
    [changed((design) => { design.runs[0].tube.bore = 12; }), "/runs/0/tube/bore"],
    [changed((design) => { design.ports[0].facing = [0, 0, 0]; }), "/ports/0/facing"],
    [changed((design) => { design.runs[0].to = "first"; }), "/runs/0/to"],
    [changed((design) => { design.runs[0].colour = "red"; }), "/runs/0/colour"],
    [changed((design) => { design.version = 99; }), "/version"],
  ];
  for (const [text, path] of cases) {
    for (const call of ["normalise", "report", "scene"]) {
      const error = refusal(() => engine[call](text));
      assert.equal(error.path, path, `${call}: ${error.message}`);
      assert.ok(error.message.length > 10, "a message is words");
    }
    assert.equal(JSON.parse(engine.problems(text))[0].path, path);
  }
});

test("a request that makes no sense is refused, and the engine goes on", () => {
  refusal(() => engine.tubeMesh(desk, "no such run", 0.01));
  for (const deviation of [0, -1, NaN, Infinity, 1e308]) refusal(() => engine.tubeMesh(desk, "tube", deviation));
  for (const request of ["", "{}", '{"kind":"parcel"}', '{"kind":"stl","run":"?"}', '{"kind":"stl","run":"tube","deviation":-1}']) {
    refusal(() => engine.exportFile(desk, request));
    refusal(() => engine.fileName(desk, request));
  }
  refusal(() => engine.apply(desk, "not a patch"));
  refusal(() => engine.apply(desk, '[{"op":"remove","path":"/format"}]'));
  assert.deepEqual(JSON.parse(engine.problems(desk)), []);
});

test("a patch gives the changed design in canonical form", () => {
  const after = engine.apply(desk, '[{"op":"replace","path":"/runs/0/bend_radius","value":13}]');
  assert.equal(JSON.parse(after).runs[0].bend_radius, 13);
  assert.equal(engine.normalise(after), after, "canonical text is its own canonical form");
});

test("text in any script comes back as it went in", () => {
  const name = "трубка 管 أنبوب <b>&amp; \ud83d\udd27";
  const text = changed((design) => { design.notes = name; });
  assert.equal(JSON.parse(engine.normalise(text)).notes, name);
});

test("fifty megabytes of anything are refused before they are copied", async () => {
  const { engine, memory } = await startEngine();
  const before = memory.buffer.byteLength;
  for (const text of [" ".repeat(50e6), "[".repeat(50e6), `{"name":"${"x".repeat(50e6)}"}`]) {
    for (const call of ["normalise", "report", "scene"]) assert.match(refusal(() => engine[call](text)).message, /MiB/);
    refusal(() => engine.apply(text, "[]"));
    refusal(() => engine.apply(desk, text));
    assert.match(JSON.parse(engine.problems(text))[0].message, /MiB/);
  }
  assert.ok(memory.buffer.byteLength - before < 2 ** 20, "a huge text must not grow the memory");
});

test("what is no text is refused as such", () => {
  for (const thing of [undefined, null, 12, {}, [], Symbol("s")]) {
    refusal(() => engine.report(thing));
    refusal(() => engine.exportFile(desk, thing));
    assert.equal(JSON.parse(engine.problems(thing)).length, 1);
  }
  assert.ok(engine.report(`\ud800${desk}`.slice(1)), "the engine goes on");
  refusal(() => engine.report(`\ud800${desk}`));
});

test("what the form is made of is there", () => {
  const { quantities, findings, severities, cautions } = JSON.parse(engine.vocabulary());
  assert.ok(Object.keys(quantities).length > 20 && Object.keys(findings).length > 5 && cautions.length > 0);
  assert.deepEqual(Object.keys(severities), ["stop", "care", "note"]);
  for (const { design } of JSON.parse(engine.presets()).demos) {
    const text = JSON.stringify(design);
    assert.deepEqual(JSON.parse(engine.problems(text)), []);
    assert.ok(JSON.parse(engine.report(text)).runs.every((run) => run.made), "every run of a demo can be made");
  }
});
