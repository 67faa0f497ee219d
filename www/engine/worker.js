// The engine in its own thread, so that typing never waits for it. A new design overtakes one that is still being
// worked on: between two steps the worker looks whether a newer one has come, and leaves the older.

import init, * as engine from "../engine.js";
import { wordsOf } from "../words/errors.js";

/** @import { Question, Answer } from "./messages.js" */

/** @type {{ edition: number, text: string, deviation: number } | undefined} */
let waiting;
let working = false;

// A tube of more triangles than this is looked at more coarsely, so that taking it in never holds the page up.
const MOST_TO_LOOK_AT = 100_000;
// The coarsest that the engine makes, mm.
const COARSEST = 1;

// What the page already has of each run's mesh, so that a mesh that an edit did not touch is not sent again.
/** @type {Map<string, string>} */
const sent = new Map();

/**
 * @param {Answer} answer
 * @param {Transferable[]} [goods]
 */
function post(answer, goods = []) {
  self.postMessage(answer, { transfer: goods });
}

self.addEventListener("message", (event) => {
  /** @type {Question} */
  const question = event.data;
  if (question.kind === "start") start(question.module);
  else if (question.kind === "design") {
    waiting = question;
    if (!working) work();
  } else post(answered(question));
});

/** @param {WebAssembly.Module} module */
async function start(module) {
  try {
    await init({ module_or_path: module });
    post({ kind: "ready", vocabulary: engine.vocabulary(), presets: engine.presets() });
  } catch (error) {
    post({ kind: "crash", edition: 0, message: wordsOf(error) });
  }
}

async function work() {
  working = true;
  while (waiting) {
    const job = waiting;
    waiting = undefined;
    try {
      for (const _ of steps(job)) {
        // A message can only come in between two tasks.
        await nextTask();
        if (waiting) break;
      }
    } catch (error) {
      // A bound that only shows once the tubes are laid, such as their whole length, is refused here.
      if (isRefusal(error)) post({ kind: "problems", edition: job.edition, problems: [{ path: pathOf(error), message: wordsOf(error) }] });
      else post({ kind: "crash", edition: job.edition, message: wordsOf(error) });
    }
  }
  working = false;
}

/**
 * One step at a time: what is wrong with the text, the report, what the view draws, each run's mesh.
 * @param {{ edition: number, text: string, deviation: number }} job
 */
function* steps({ edition, text, deviation }) {
  const started = performance.now();
  const problems = JSON.parse(engine.problems(text));
  if (problems.length > 0) {
    post({ kind: "problems", edition, problems });
    return;
  }
  /** @type {{ runs: { name: string, made: boolean }[] }} */
  const report = JSON.parse(engine.report(text));
  post({ kind: "report", edition, report: /** @type {any} */ (report) });
  yield;
  post({ kind: "scene", edition, scene: engine.scene(text) });
  yield;
  for (const name of [...sent.keys()]) {
    if (!report.runs.some((run) => run.made && run.name === name)) sent.delete(name);
  }
  for (const { name } of report.runs.filter((run) => run.made)) {
    sendMesh(edition, text, name, deviation);
    yield;
  }
  post({ kind: "done", edition, milliseconds: performance.now() - started });
}

/**
 * @param {number} edition
 * @param {string} text
 * @param {string} run
 * @param {number} deviation
 */
function sendMesh(edition, text, run, deviation) {
  let mesh;
  try {
    mesh = engine.tubeMesh(text, run, deviation);
    for (let coarser = deviation; mesh.indices.length > 3 * MOST_TO_LOOK_AT && coarser < COARSEST; ) {
      coarser = Math.min(COARSEST, 4 * coarser);
      mesh = engine.tubeMesh(text, run, coarser);
    }
  } catch (error) {
    if (!isRefusal(error)) throw error;
    // The report says the run is made, so the view shows its line and the words stand in for the mesh.
    sent.delete(run);
    post({ kind: "noMesh", edition, run, message: wordsOf(error) });
    return;
  }
  const { positions, indices } = mesh;
  const print = `${fingerprint(positions)} ${fingerprint(indices)}`;
  if (sent.get(run) === print) {
    post({ kind: "sameMesh", edition, run });
    return;
  }
  sent.set(run, print);
  post({ kind: "mesh", edition, run, positions, indices }, [positions.buffer, indices.buffer]);
}

/**
 * A short sum over an array's bits: equal arrays give equal ones, and an edit changes it all but surely.
 * @param {Float32Array | Uint32Array} array
 */
function fingerprint(array) {
  const bits = new Uint32Array(array.buffer, array.byteOffset, array.length);
  let [a, b] = [0x811c9dc5, 0x9e3779b9];
  for (const bit of bits) {
    a = Math.imul(a ^ bit, 0x01000193);
    b = Math.imul((b << 5) ^ (b >>> 27) ^ bit, 0x85ebca6b);
  }
  return `${array.length}.${a >>> 0}.${b >>> 0}`;
}

/**
 * @param {import("./messages.js").Call} question
 * @returns {Answer}
 */
function answered({ id, call, args }) {
  try {
    const calls = {
      normalise: engine.normalise, designIn: engine.designIn, apply: engine.apply, edit: engine.edit, difference: engine.difference,
      variants: engine.variants, stances: engine.stances, cuts: engine.cuts, plates: engine.plates, inspect: engine.inspect, codeOf: engine.codeOf,
      exportFile: engine.exportFile, fileName: engine.fileName,
    };
    const run = /** @type {(...given: any[]) => string | Uint8Array} */ (calls[call]);
    // What may take long tells how much of it is done.
    const watch = call === "exportFile" ? [(/** @type {number} */ share) => post({ kind: "progress", id, share })] : [];
    return { kind: "result", id, value: run(...args, ...watch) };
  } catch (error) {
    if (!isRefusal(error)) post({ kind: "crash", edition: -1, message: wordsOf(error) });
    return { kind: "refused", id, message: wordsOf(error), path: pathOf(error) };
  }
}

/**
 * A refusal carries the place it is about; anything else that is thrown means that the engine itself gave way.
 * @param {unknown} error
 */
function isRefusal(error) {
  return error instanceof Error && "path" in error;
}

/** @param {unknown} error */
function pathOf(error) {
  return error instanceof Error && "path" in error ? String(error.path) : "";
}

const channel = new MessageChannel();
/** @returns {Promise<void>} */
function nextTask() {
  return new Promise((resolve) => {
    channel.port1.onmessage = () => resolve();
    channel.port2.postMessage(0);
  });
}
