// The engine as built, started under Node from the very bytes that the page loads.

import { readFile } from "node:fs/promises";

const site = new URL("../../target/site/", import.meta.url);

/** A fresh instance of the built engine with its memory. */
export async function startEngine() {
  // A query makes the module new, so that every caller has an instance of its own.
  const glue = new URL(`engine.js?${Math.random()}`, site);
  const engine = await import(glue.href);
  const exports = await engine.default({ module_or_path: await readFile(new URL("engine_bg.wasm", site)) });
  return { engine, memory: exports.memory };
}
