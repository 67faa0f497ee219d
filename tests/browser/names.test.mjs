// What everything that can be worked on is called, as a screen reader says it, kept as text: a name that changes is a change
// that somebody reads. `UPDATE_SNAPSHOTS=1` writes it anew.

import assert from "node:assert/strict";
import fs from "node:fs";
import { test } from "node:test";
import { bench, openLoop, settled } from "./bench.mjs";

const its = bench();
const KEPT = new URL("names.txt", import.meta.url);
const WORKED = ["heading", "region", "navigation", "button", "link", "textbox", "checkbox", "radio", "combobox", "spinbutton", "slider", "switch"];

/** Roles and names in order, as the browser reckons them; numbers that the design gives are left out. */
async function names(page) {
  const lines = (await page.locator("body").ariaSnapshot()).split("\n");
  return lines.map((line) => /^\s*- ['"]?(\w+) "((?:[^"\\]|\\.)*)"/.exec(line)).filter((found) => found && WORKED.includes(found[1]))
    .map(([, role, name]) => `${role}: ${name.replace(/\d+(?:[.,]\d+)?/g, "#")}`);
}

test("what can be worked on has the names that were agreed", async () => {
  const told = [];
  const seen = new Set();
  await its.withPage(async (page) => {
    const tell = async (state) => {
      // What was told of a state before is not told again.
      const fresh = (await names(page)).filter((line) => !seen.has(line) && seen.add(line));
      told.push(`# ${state}`, ...fresh, "");
    };
    await settled(page);
    await tell("first visit");
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.getByRole("button", { name: /^A blank design/ }).click();
    await settled(page);
    await tell("blank");
    await openLoop(page);
    await page.evaluate(() => document.querySelectorAll("details").forEach((fold) => { fold.open = true; }));
    await page.locator(".stance-card").nth(1).waitFor();
    await page.locator(".variants tbody").first().waitFor();
    await page.locator(".plates .plate-card").first().waitFor();
    await page.waitForFunction(() => !document.querySelector(".asked-of [role=status]"));
    await settled(page);
    await tell("loop, everything unfolded");
  });
  const text = `${told.join("\n")}\n`;
  if (process.env.UPDATE_SNAPSHOTS) fs.writeFileSync(KEPT, text);
  assert.deepEqual(text.split("\n"), fs.readFileSync(KEPT, "utf8").split("\n"));
  assert.deepEqual(told.filter((line) => /: \s*$/.test(line)), [], "everything has a name");
});
