// Times the built engine under Node on a hundred variants of each design: what the page asks for when other sizes and
// materials are tried side by side.
//
//     node variants.mjs REPEATS DESIGN.json...
//
// A file holds a design, or a demo with its design. Prints JSON: { design: { variants, variants_ms } }, medians of whole
// calls, text in and out, in an instance of its own.

import { readFile } from "node:fs/promises";
import { basename } from "node:path";
import { startEngine } from "../../../tests/page/site.mjs";

const ASKED = JSON.stringify({
  outer_diameters: [10, 12, 12.7, 14, 16], bores: [6, 7, 8, 9, 9.5], materials: ["PETG", "ABS", "tough resin", "high-temperature resin"],
});

const [repeats, ...paths] = process.argv.slice(2);
const table = {};
for (const path of paths) {
  const read = JSON.parse(await readFile(path, "utf8"));
  table[basename(path, ".json")] = await timed(JSON.stringify(read.design ?? read));
}
console.log(JSON.stringify(table));

async function timed(text) {
  const { engine } = await startEngine();
  const variants = JSON.parse(engine.variants(text, ASKED)).rows.length;
  const times = [];
  for (let i = 0; i < 2 * repeats; i++) {
    const start = performance.now();
    engine.variants(text, ASKED);
    times.push(performance.now() - start);
  }
  return { variants, variants_ms: times.slice(repeats).sort((a, b) => a - b)[repeats >> 1] };
}
