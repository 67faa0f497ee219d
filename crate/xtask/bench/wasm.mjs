// Times the built engine under Node on designs: from the text to the report, the mesh, the bytes of an STL file.
//
//     node wasm.mjs REPEATS DESIGN.json...
//
// Prints JSON: { design: { deviation: { report_ms, mesh_ms, stl_ms, triangles, volume_error, growth_mib } } }, medians;
// each time is of one whole call, strings and arrays copied in and out. Every row has an instance of its own, and its
// memory is looked at before the first call and after the last.

import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { startEngine } from "../../../tests/page/site.mjs";

const [repeats, ...paths] = process.argv.slice(2);
const table = {};
for (const path of paths) {
  const text = await readFile(path, "utf8");
  const rows = (table[basename(path, ".json")] = {});
  for (const deviation of [0.01, 0.05]) rows[deviation] = await timed(text, deviation);
}
console.log(JSON.stringify(table));

async function timed(text, deviation) {
  const { engine, memory } = await startEngine();
  const before = memory.buffer.byteLength;
  const run = JSON.parse(text).runs[0].name;
  const request = JSON.stringify({ kind: "stl", run, deviation });
  const row = {
    report_ms: median(() => engine.report(text)),
    mesh_ms: median(() => engine.tubeMesh(text, run, deviation)),
    stl_ms: median(() => engine.exportFile(text, request)),
  };
  const mesh = engine.tubeMesh(text, run, deviation);
  const exact = JSON.parse(engine.report(text)).runs[0].material_mm3;
  return {
    ...row,
    triangles: mesh.indices.length / 3,
    volume_error: Math.abs(volume(mesh) / exact - 1),
    growth_mib: (memory.buffer.byteLength - before) / 2 ** 20,
  };
}

/** Milliseconds, after as many calls to warm up. */
function median(call) {
  const times = [];
  for (let i = 0; i < 2 * repeats; i++) {
    const start = performance.now();
    call();
    times.push(performance.now() - start);
  }
  return times.slice(repeats).sort((a, b) => a - b)[repeats >> 1];
}

/** By the divergence theorem, from tetrahedra over the origin, mm³. */
function volume({ positions: p, indices }) {
  let six = 0;
  for (let i = 0; i < indices.length; i += 3) {
    const [a, b, c] = [3 * indices[i], 3 * indices[i + 1], 3 * indices[i + 2]];
    six += p[a] * (p[b + 1] * p[c + 2] - p[b + 2] * p[c + 1]);
    six += p[a + 1] * (p[b + 2] * p[c] - p[b] * p[c + 2]);
    six += p[a + 2] * (p[b] * p[c + 1] - p[b + 1] * p[c]);
  }
  return six / 6;
}
