// The drawing in the page: shown, saved, printed at true size, and open to everyone.

import assert from "node:assert/strict";
import { test } from "node:test";
import { passesAxeBothWays } from "./axe.mjs";
import { bench, drawn, saved, settled, shot } from "./bench.mjs";
import { readZip } from "./meshes.mjs";
import { readPdf } from "./pdf.mjs";

const its = bench();

/** The printer's dialog stays shut: the test takes the pages as the browser would hand them to it. */
const quietPrinter = (page) => page.addInitScript(() => {
  globalThis.print = () => { globalThis.printed = (globalThis.printed ?? 0) + 1; };
});

async function openDrawing(page) {
  await settled(page);
  await page.locator(".drawing-fold > summary").first().click();
  await page.locator(".sheet svg .check-bar").first().waitFor();
}

/** The bar on a page: two points 50 mm apart, lying level, wide of pen; there is one on the whole drawing. */
function bars(page) {
  return page.strokes.filter((points) => points.length === 2)
    .map(([a, b]) => ({ long: Math.hypot(a[0] - b[0], a[1] - b[1]), level: Math.abs(a[1] - b[1]) < 0.02 }))
    .filter((bar) => bar.level && Math.abs(bar.long - 50) < 2);
}

test("the drawing stands in the page and axe finds nothing against it", async () => {
  await its.withPage(async (page) => {
    await openDrawing(page);
    const told = await page.locator(".sheet svg tspan[data-dimension=length]").textContent();
    const [length] = await page.locator("#result table.figures tbody tr").first().locator("td").allTextContents();
    assert.equal(Number(told).toFixed(1), length);
    await page.locator(".sheet").first().scrollIntoViewIfNeeded();
    await passesAxeBothWays(page, "drawing", { fullPage: false });
  });
});

test("it follows the design", async () => {
  await its.withPage(async (page) => {
    await openDrawing(page);
    await page.locator("#at-runs-0-bend_radius").fill("31");
    await settled(page);
    await page.locator(".sheet svg tspan[data-dimension=radius][data-value='31']").first().waitFor({ state: "attached" });
    await page.locator("#at-runs-0-bend_radius").fill("3100");
    await settled(page);
    assert.equal(await page.locator(".sheet svg").count(), 0, "a run that cannot be made has no drawing");
  });
});

test("words on it do not lie on one another", async () => {
  await its.withPage(async (page) => {
    for (const demo of [0, 1]) {
      await page.getByRole("button", { name: "Start from…" }).click();
      await page.locator(".menu .choice", { hasText: "Demo" }).nth(demo).click();
      await settled(page);
      const runs = await page.locator(".run-detail").count();
      for (let run = 0; run < runs; run += 1) {
        const detail = page.locator(".run-detail").nth(run);
        if (!(await detail.evaluate((element) => element.open))) await detail.locator("> summary").click();
        const fold = detail.locator(".drawing-fold");
        await fold.waitFor();
        if (!(await fold.evaluate((element) => element.open))) await fold.locator("> summary").click();
        await detail.locator(".sheet svg .check-bar").waitFor();
        const over = await detail.locator(".sheet svg").evaluate((drawing) => {
          // Slanting words have boxes wider than they are, and are left out.
          const upright = [...drawing.querySelectorAll("text")].filter((text) => !/rotate\((?!-90|90|0)/.test(text.getAttribute("transform") ?? ""));
          const boxes = upright.map((text) => ({ words: text.textContent, box: text.getBoundingClientRect() }));
          const unit = drawing.getBoundingClientRect().width / drawing.viewBox.baseVal.width;
          const pairs = [];
          boxes.forEach((one, index) => boxes.slice(index + 1).forEach((other) => {
            const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
            const high = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
            // A line's box is taller than its letters: a millimetre of it may be shared.
            if (wide > 0.3 * unit && high > 1.2 * unit) pairs.push(`${one.words} / ${other.words}`);
          }));
          return pairs;
        });
        assert.deepEqual(over, [], `demo ${demo + 1}, run ${run + 1}`);
      }
    }
  });
});

test("printed on A4 tiles, every page is A4 and the bar is 50 mm", async () => {
  await its.withPage(async (page) => {
    await openDrawing(page);
    const button = page.getByRole("button", { name: /^Print on \d+ A4 sheets?/ });
    const count = Number(/\d+/.exec(await button.textContent())[0]);
    await button.click();
    await page.waitForFunction(() => globalThis.printed === 1);
    const pages = readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    assert.equal(pages.length, count, "a page a tile, and nothing else of the page");
    for (const { width, height } of pages) {
      assert.ok(Math.abs(Math.min(width, height) - 210) < 0.5 && Math.abs(Math.max(width, height) - 297) < 0.5, `${width} by ${height}`);
    }
    const found = pages.flatMap(bars);
    assert.ok(found.some((bar) => Math.abs(bar.long - 50) <= 0.1), JSON.stringify(found));
    assert.ok(found.every((bar) => Math.abs(bar.long - 50) <= 0.1), JSON.stringify(found));
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    await drawn(page);
    assert.equal(await page.locator(".print-pages").count(), 0, "afterwards the page is as it was");
  }, { prepare: quietPrinter });
});

test("printed whole, it is one sheet of its size and the bar is 50 mm", async () => {
  await its.withPage(async (page) => {
    await openDrawing(page);
    await page.getByRole("button", { name: "Print on one A3 sheet" }).click();
    await page.waitForFunction(() => globalThis.printed === 1);
    const pages = readPdf(await page.pdf({ preferCSSPageSize: true }));
    assert.equal(pages.length, 1);
    assert.ok(Math.abs(pages[0].width - 420) < 0.5 && Math.abs(pages[0].height - 297) < 0.5, `${pages[0].width} by ${pages[0].height}`);
    const found = bars(pages[0]);
    assert.ok(found.length > 0 && found.every((bar) => Math.abs(bar.long - 50) <= 0.1), JSON.stringify(found));
  }, { prepare: quietPrinter });
});

test("the file opened by itself prints on one sheet of its size with a bar of 50 mm", async () => {
  await its.withPage(async (page, context) => {
    await settled(page);
    const { name, bytes } = await saved(page, () => page.getByRole("button", { name: /^Drawing \(\.svg\) of/ }).first().click());
    assert.match(name, /\.svg$/);
    const text = Buffer.from(bytes).toString("utf8");
    const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(text).map(Number);
    const alone = await context.newPage();
    await alone.route("**/alone.svg", (route) => route.fulfill({ contentType: "image/svg+xml", body: text }));
    await alone.goto(`${its.url}alone.svg`);
    const pages = readPdf(await alone.pdf({ preferCSSPageSize: true }));
    assert.equal(pages.length, 1);
    assert.ok(Math.abs(pages[0].width - width) < 0.5 && Math.abs(pages[0].height - height) < 0.5);
    const found = bars(pages[0]);
    assert.ok(found.length > 0 && found.every((bar) => Math.abs(bar.long - 50) <= 0.1), JSON.stringify(found));
  });
});

test("tables and drawing are saved for each run, as the page tells them, and are in the zip", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const bends = () => saved(page, () => page.getByRole("button", { name: /^Bends \(\.csv\) of/ }).first().click());
    const text = (file) => Buffer.from(file.bytes).toString("utf8");
    const plain = await bends();
    assert.match(plain.name, / bends\.csv$/);
    assert.match(text(plain), /^#,[^\n]*\r\n/);
    assert.match(text(plain), /positive by the right-hand rule/);
    await page.getByRole("checkbox", { name: "Opposite sign of rotation" }).check();
    await page.getByRole("checkbox", { name: /^Fed from .* first$/ }).check();
    const told = text(await bends());
    assert.match(told, /positive against the right-hand rule \(flipped\)/);
    // The page's own table is in the same order as the file's.
    const shown = await page.locator("table.bends tbody tr td:nth-child(2)").allTextContents();
    const rows = told.trim().split("\r\n").filter((line) => /^\d/.test(line)).map((line) => Number(line.split(",")[2]).toFixed(2));
    assert.deepEqual(shown, rows);
    const points = await saved(page, () => page.getByRole("button", { name: /^Points \(\.csv\) of/ }).first().click());
    assert.match(text(points), /point,what,x_mm,y_mm,z_mm/);
    const all = readZip((await saved(page, () => page.getByRole("button", { name: "All files in one (.zip)" }).click())).bytes);
    for (const end of [" bends.csv", " points.csv", ".svg", ".stl", ".3mf", ".json"]) {
      assert.ok(Object.keys(all).some((name) => name.endsWith(end)), `${end} in ${Object.keys(all)}`);
    }
  });
});
