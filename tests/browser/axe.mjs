// What axe finds, in WCAG's rules down to its best practice.

import assert from "node:assert/strict";
import axe from "axe-core";

const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** Fails on every violation, and on what axe could not tell unless it is known and looked at. */
export async function passesAxe(page, state) {
  await page.evaluate(axe.source);
  const { violations, incomplete } = await page.evaluate((tags) => axe.run(document, { runOnly: { type: "tag", values: tags } }), TAGS);
  const told = (results) => results.map((result) => `${result.id}: ${result.nodes.slice(0, 3).map((node) => `${node.target} ${node.any[0]?.message ?? ""}`).join(" ; ")}`);
  assert.deepEqual(told(violations), [], `axe in state “${state}”`);
  // axe cannot see through a translucent or covered background; nothing else may be left open.
  const open = incomplete.filter((result) => result.id !== "color-contrast");
  assert.deepEqual(told(open), [], `axe could not tell in state “${state}”`);
}
