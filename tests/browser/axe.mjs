// What axe finds against a page: every violation, and what it could not tell unless that is known and looked at.

import assert from "node:assert/strict";
import axe from "axe-core";
import { drawn, shot } from "./bench.mjs";
import { contrastOf, contrastRatio, REVIEWED } from "./left-open.mjs";

const TAGS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** Fails on every violation, and on what axe could not tell: contrast is worked out where it leaves that open, nothing else may be. */
export async function passesAxe(page, state) {
  // Once a page, so that what the browser has compiled and learnt of it stays; the markup of what is found is not told.
  if (!await page.evaluate(() => "axe" in globalThis)) {
    await page.evaluate(axe.source);
    await page.evaluate(`globalThis.axe.configure({ noHtml: true }); globalThis.contrastRatio = ${contrastRatio}; globalThis.contrastOf = ${contrastOf}`);
  }
  const { violations, incomplete } = await page.evaluate(async (tags) => {
    // What passes is not asked for: most of the time goes into saying where each of it stands.
    const found = await globalThis.axe.run(document, {
      runOnly: { type: "tag", values: tags }, resultTypes: ["violations", "incomplete"], preload: false, elementRef: true,
    });
    const plain = (result) => ({ id: result.id, nodes: result.nodes.map((node) => ({
      target: node.target.join(" "), message: node.any[0]?.message ?? "", key: node.any[0]?.data?.messageKey,
      // What was replaced while axe looked is no longer seen.
      contrast: result.id === "color-contrast" && node.element?.isConnected ? globalThis.contrastOf(node.element) : undefined,
    })) });
    return { violations: found.violations.map(plain), incomplete: found.incomplete.map(plain) };
  }, TAGS);
  assert.deepEqual(told(violations), [], `axe in state “${state}”`);
  assert.deepEqual(told(incomplete.filter((result) => result.id !== "color-contrast")), [], `axe could not tell in state “${state}”`);
  const open = incomplete.flatMap((result) => result.nodes);
  assert.deepEqual(told(open.filter(({ key }) => !Object.hasOwn(REVIEWED, key)).map((node) => ({ id: "color-contrast", nodes: [node] }))), [], `contrast left open for no known reason in state “${state}”`);
  assert.deepEqual(open.filter(({ contrast }) => contrast && !(contrast.ratio >= contrast.asked)), [], `too little contrast in state “${state}”`);
}

const told = (results) => results.map((result) => `${result.id}: ${result.nodes.slice(0, 3).map(({ target, message }) => `${target} ${message}`).join(" ; ")}`);

/**
 * The page as it stands, light and wide, then dark and 320 px: colours do not depend on the width, nor the layout on the
 * colours, so that shows all of both. Keeps a picture of each.
 */
export async function passesAxeBothWays(page, state, { fullPage = true } = {}) {
  await passesAxe(page, `${state}, light, wide`);
  await shot(page, `${state}-light`);
  await page.emulateMedia({ colorScheme: "dark" });
  await page.setViewportSize({ width: 320, height: 800 });
  await drawn(page);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  assert.ok(wide <= 320, `the page is ${wide} px wide at 320 px`);
  await passesAxe(page, `${state}, dark, 320 px`);
  await shot(page, `${state}-dark-320`, { fullPage });
}
