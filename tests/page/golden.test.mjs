// The engine in WebAssembly answers with the very bytes of the native one: `golden`, an example of the core, wrote down
// every call and its answer, and the same calls are made here.

import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import test from "node:test";
import { startEngine } from "./site.mjs";

const folder = new URL("../../target/golden/", import.meta.url);
const read = (name) => readFile(new URL(name, folder));
const { engine } = await startEngine();

/** The same call here: its bytes, or its refusal. */
function answered({ call, args }, text) {
  try {
    return { bytes: asBytes(engine[call](...text, ...args)) };
  } catch (error) {
    if (!("path" in error)) throw error;
    return { refused: { path: error.path, message: error.message } };
  }
}

function asBytes(value) {
  if (typeof value === "string") return Buffer.from(value);
  if (value instanceof Uint8Array) return Buffer.from(value);
  const parts = [value.positions, value.indices];
  return Buffer.concat(parts.map((part) => Buffer.from(part.buffer, part.byteOffset, part.byteLength)));
}

const calls = JSON.parse(await read("calls.json"));
const kinds = Map.groupBy ? Map.groupBy(calls, (call) => call.call) : grouped(calls);

function grouped(list) {
  const groups = new Map();
  for (const entry of list) groups.set(entry.call, [...(groups.get(entry.call) ?? []), entry]);
  return groups;
}

test("there is something to compare", () => {
  for (const call of ["normalise", "report", "scene", "tubeMesh", "exportFile", "fileName", "problems", "variants", "stances", "cuts", "plates", "inspect", "codeOf"]) {
    assert.ok(kinds.get(call)?.some((entry) => entry.answer), `no answered ${call} was recorded`);
  }
  const inWords = calls.filter(({ call, args, answer }) => call === "exportFile" && answer && JSON.parse(args[0]).words);
  assert.ok(inWords.length > 0, "no file in another language was recorded");
});

for (const [kind, entries] of kinds) {
  test(`${kind}: ${entries.length} calls give the native bytes`, async () => {
    for (const entry of entries) {
      const text = entry.text ? [String(await read(entry.text))] : [];
      const here = answered(entry, text);
      const what = `${kind}(${entry.text ?? ""}, ${JSON.stringify(entry.args)})`;
      if (entry.refused) {
        assert.deepEqual(here.refused, entry.refused, what);
        continue;
      }
      assert.ok(here.bytes, `${what} was refused here alone: ${JSON.stringify(here.refused)}`);
      const native = await read(entry.answer);
      if (!here.bytes.equals(native)) {
        const at = native.findIndex((byte, i) => byte !== here.bytes[i]);
        assert.fail(`${what} differs from byte ${at} on; ${here.bytes.length} bytes here, ${native.length} native`);
      }
    }
  });
}
