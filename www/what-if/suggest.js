// What is tried to begin with: the design's own sizes, and bores around its own.

import { numberIn, tidy } from "../design/typed.js";
import { joined } from "./sizes.js";

/** @import { Run } from "../design/types.js" */
/** @import { SizeList } from "./what-if.js" */

// How far around a design's own bore is tried to begin with, mm.
const AROUND = [-2, -1, 0, 1, 2];
// The thinnest wall that is tried to begin with, mm; a thinner one is the builder's to ask for.
const LEAST_WALL = 0.75;

/**
 * What a list starts with: the runs' own sizes; of bores, where all have the same, also those around it.
 * @param {readonly Run[]} runs
 * @param {SizeList} list
 */
export function suggested(runs, list) {
  const [outers, bores] = [own(runs, "outer_diameter"), own(runs, "bore")];
  const [bore] = bores;
  if (list === "outer_diameters") return joined(outers);
  if (bores.length !== 1) return joined(bores);
  const around = AROUND.map((by) => tidy(bore + by));
  const thinnest = (/** @type {number} */ one) => Math.min(...outers.map((outer) => (outer - one) / 2));
  return joined(around.filter((one) => one === bore || (one >= 1 && thinnest(one) >= LEAST_WALL)));
}

/**
 * The sizes that runs have, each once.
 * @param {readonly Run[]} runs
 * @param {"outer_diameter" | "bore"} key
 */
function own(runs, key) {
  const sizes = runs.map((run) => numberIn(run.tube[key])).filter((size) => size !== undefined);
  return [...new Set(sizes)].sort((a, b) => a - b);
}
