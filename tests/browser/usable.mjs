// Measures, for the bench: from a warm server, in profiles of their own, until the form can be typed in and until the
// tube is shown. Prints JSON, medians in ms.

import { chromium } from "playwright-core";
import { serveSite } from "./site.mjs";

const LOADS = 7;

const server = await serveSite();
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
  args: ["--disable-quic", "--use-angle=swiftshader"],
});
const usable = [];
const shown = [];
for (let load = 0; load <= LOADS; load += 1) {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(server.url);
  await page.locator("#at-ports-0-at-0").waitFor();
  const first = await page.evaluate(() => performance.now());
  await page.locator("#result table.figures tbody tr").first().waitFor();
  const second = await page.evaluate(() => performance.now());
  // The first load warms server and disk.
  if (load > 0) {
    usable.push(first);
    shown.push(second);
  }
  await context.close();
}
await browser.close();
await server.close();
const median = (times) => times.sort((a, b) => a - b)[times.length >> 1];
console.log(JSON.stringify({ usable_ms: median(usable), shown_ms: median(shown) }));
