// Measures, for the bench: from a warm server, in profiles of their own, until something is painted, until the form can be
// typed in and until the tube is shown; how long an edit takes to its new picture, over a script of edits; and what many
// edits leave in memory. Prints JSON: medians in ms, the 95th percentile of the edits, growth as a share.

import { chromium } from "playwright-core";
import { serveSite, SOFTWARE } from "./site.mjs";

const LOADS = 7;
const EDITS = 500;
const MANY_EDITS = 5000;

const server = await serveSite();
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--disable-quic", ...SOFTWARE],
});
const usable = [];
const shown = [];
const painted = [];
for (let load = 0; load <= LOADS; load += 1) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(server.url);
  await page.locator("#at-ports-0-at-0").waitFor();
  const first = await page.evaluate(() => performance.now());
  const paint = await page.evaluate(() => performance.getEntriesByName("first-contentful-paint")[0]?.startTime);
  await page.locator("#result table.figures tbody tr").first().waitFor();
  const second = await page.evaluate(() => performance.now());
  // The first load warms server and disk.
  if (load > 0) {
    painted.push(paint);
    usable.push(first);
    shown.push(second);
  }
  await context.close();
}

const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
await page.goto(server.url);
await page.locator("#result table.figures tbody tr").first().waitFor();
const client = await page.context().newCDPSession(page);

/** So many edits, one after the other, each until its answer is there, and with `drawn` its picture; their times, ms. */
const edited = (count, drawn) => page.evaluate(async ([count, drawn]) => {
  const [root, field] = [document.getElementById("page"), document.getElementById("at-ports-1-at-0")];
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  const times = [];
  for (let edit = 0; edit < count; edit += 1) {
    const began = performance.now();
    field.value = String(150 + (edit % 40) / 2);
    field.dispatchEvent(new InputEvent("input", { bubbles: true }));
    do await frame(); while (root.dataset.sent !== root.dataset.answered);
    if (drawn) await frame();
    times.push(performance.now() - began);
  }
  return times;
}, [count, drawn]);

/** What is held by the page, bytes, once nothing more can be let go. */
async function held() {
  await client.send("HeapProfiler.collectGarbage");
  return (await client.send("Runtime.getHeapUsage")).usedSize;
}

// The first edits fill the steps back, which are bounded.
const times = (await edited(EDITS, true)).sort((a, b) => a - b);
const before = await held();
await edited(MANY_EDITS, false);
const growth = (await held()) / before - 1;
await browser.close();
await server.close();
const median = (values) => values.sort((a, b) => a - b)[values.length >> 1];
console.log(JSON.stringify({
  painted_ms: median(painted), usable_ms: median(usable), shown_ms: median(shown), edit_ms: median(times),
  edit_95_ms: times[Math.floor(0.95 * times.length)], growth,
}));
