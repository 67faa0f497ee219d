// The files that people read in the page's language: no word of them is left in English, and the German sheet reads and prints.

import assert from "node:assert/strict";
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { unzipSync } from "fflate";
import { table } from "../../www/words/german/table.js";
import { startEngine } from "../page/site.mjs";
import { passesAxe } from "./axe.mjs";
import { bench, keptDesign, saved, settled, shot } from "./bench.mjs";
import { readPdf } from "./pdf.mjs";
import { namesIn } from "./pseudo.mjs";

const its = bench();
const { engine } = await startEngine();
const vocabulary = JSON.parse(engine.vocabulary());
const demos = JSON.parse(engine.presets()).demos.map(({ design }) => design);
const GERMAN = { "tubewright.language": "de" };

/** A row in brackets, but for what its places are filled with: that must come in brackets by itself, or be a name or a number. */
const bracketed = (english) => english.replace(/^plate:/, "").split(/(\{\w+\})/).map((part) => (/^\{\w+\}$/.test(part) || !/\p{L}/u.test(part) ? part : `⟦${part}⟧`)).join("");
const made = {
  language: "qaa", decimal: ",", quotes: ["„", "“"],
  words: Object.fromEntries([...table.sentences.map(([english]) => english), ...Object.keys(table.files)].map((english) => [english, bracketed(english)])),
};

/** Letters that are no words: units, names of things that all languages share, and files, which keep their English names. */
const SIGNS = /^(x|y|z|mm|cm³|mL|MB|g|m|K|s|°C|L\/h|kPa|MPa|µm|STL|3MF|Tubewright|coupons\/|coupon\.3mf|\/|-piece-\d-of-\d|compensated|[\d.,]+e-\d+)$/;

/** The stretches of a sheet's text outside of brackets that hold letters. */
function wordsOutside(html, names) {
  const known = [...names].sort((one, other) => other.length - one.length);
  const plain = (text) => text.replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&quot;/g, '"').replace(/&amp;/g, "&");
  const spoken = [...html.matchAll(/ aria-label="([^"]*)"/g)].map(([, text]) => text);
  const texts = html.replace(/<style>[\s\S]*?<\/style>/, "").split(/<[^>]*>/);
  const found = new Set();
  for (const text of [...texts, ...spoken].map(plain)) {
    let rest = text;
    for (const name of known) rest = rest.replaceAll(name, " ");
    for (let before = ""; before !== rest; ) {
      before = rest;
      rest = rest.replace(/⟦[^⟦⟧]*⟧/g, " ");
    }
    const words = rest.split(/[\s,;:()„“”×→±%°–−.]+/).filter((word) => /\p{L}/u.test(word) && !SIGNS.test(word));
    if (words.length > 0) found.add(text.trim());
  }
  return [...found];
}

function sheetOf(design, words, more = {}) {
  const request = { kind: "pack", deviation: 0.2, words, ...more };
  return new TextDecoder().decode(unzipSync(engine.exportFile(JSON.stringify(design), JSON.stringify(request)))["sheet.html"]);
}

/** Designs that say what the demos do not, each with what is asked for beside. */
function further() {
  const [first] = demos;
  const change = (edit) => {
    const design = structuredClone(first);
    edit(design);
    return design;
  };
  const process = JSON.parse(engine.normalise(JSON.stringify(first))).process;
  return {
    "in pieces": change((design) => {
      design.ports[1].at = design.ports[1].at.map((value) => (typeof value === "number" ? value + 300 : value));
      design.runs[0].route = [];
      design.runs[0].cuts = [{ at: 120 }];
    }),
    "too large": change((design) => { design.process = { ...design.process, printer: { ...process.printer, name: "mine", build_volume: [40, 40, 40] } }; }),
    "cannot be made": change((design) => {
      design.runs.push({ ...structuredClone(design.runs[0]), name: "other", bend_radius: 3 });
      design.fittings[0].tube_diameter += 1;
    }),
    compensated: change((design) => {
      design.process = { ...process, fit: {
        material: process.material.name, printer: process.printer.name,
        outer: [{ nominal: 12, measured: 12.07 }, { nominal: 12, measured: 12.1 }, { nominal: 12.05, measured: 12.13 }],
        bore: [{ nominal: 8, measured: 7.94 }], length: [{ nominal: 60, measured: 59.77 }],
      } };
    }),
    ...Object.fromEntries(["PLA", "PA12, laser-sintered"].map((name) => [name, change((design) => { design.process = { ...design.process, material: name }; })])),
    trimmed: change((design) => {
      design.runs[0].ends = { ...design.runs[0].ends, trim: 2, seat_mark: false, chamfer_length: 0 };
      design.fittings[0].seal = null;
      design.loop = { ...design.loop, fault_c: 95, flow_l_per_h: 900, pressure_kpa: 400 };
    }),
  };
}

test("German has a row for everything that files say, and none that they do not", () => {
  const said = new Set([...vocabulary.files, ...vocabulary.cautions, ...vocabulary.first_fill.flat()].filter((text) => text !== ""));
  assert.ok(vocabulary.files.length > 100);
  assert.deepEqual([...said].filter((text) => !Object.hasOwn(table.files, text)), []);
  const shared = new Set(Object.keys(table.engine));
  assert.deepEqual(Object.keys(table.files).filter((text) => !said.has(text) && !shared.has(text)), []);
  const holes = (text) => [...text.matchAll(/\{\w+\}/g)].map(([hole]) => hole).sort();
  for (const [english, german] of Object.entries(table.files)) assert.deepEqual(holes(german), holes(english), english);
  const known = new Set(table.sentences.map(([english]) => english));
  assert.deepEqual(vocabulary.files.filter((text) => known.has(text)), [], "one English, two rows");
});

test("no word of a sheet is outside of the language: the demos", () => {
  for (const design of demos) assert.deepEqual(wordsOutside(sheetOf(design, made), namesIn(design)), [], design.name);
});

for (const [state, design] of Object.entries(further())) {
  test(`no word of a sheet is outside of the language: ${state}`, () => {
    assert.deepEqual(wordsOutside(sheetOf(design, made), namesIn(design)), []);
  });
}

test("the German pack is the same files, its sheet in German, and in English nothing changes", async () => {
  const take = async (page) => {
    await settled(page);
    return unzipSync((await saved(page, () => page.locator("#pack").click())).bytes);
  };
  let english;
  await its.withPage(async (page) => { english = await take(page); });
  await its.withPage(async (page) => {
    const german = await take(page);
    const design = await keptDesign(page);
    assert.deepEqual(Object.keys(german), Object.keys(english), "files keep their names");
    const differ = Object.keys(german).filter((name) => Buffer.compare(german[name], english[name]) !== 0);
    assert.deepEqual(differ.filter((name) => /\.(stl|3mf|csv|json)$/.test(name)), [], "what programs read is the same");
    const plain = sheetOf(design, undefined, { deviation: 0.01 });
    assert.equal(new TextDecoder().decode(english["sheet.html"]), plain, "English sends no words");
    const sheet = new TextDecoder().decode(german["sheet.html"]);
    const numbers = (html) => [...html.matchAll(/ data-(?:box|cm3|low|triangles|band|file|plate)="[^"]*"/g)].map(([attribute]) => attribute);
    assert.deepEqual(numbers(sheet), numbers(plain), "what programs read of the sheet is the same");
    assert.match(sheet, /<html lang="de">/);
    const folder = await mkdtemp(join(tmpdir(), "sheet-"));
    const read = await page.context().newPage();
    try {
      await writeFile(join(folder, "sheet.html"), german["sheet.html"]);
      await read.goto(pathToFileURL(join(folder, "sheet.html")).href);
      const faults = await read.evaluate(() => new DOMParser().parseFromString(new XMLSerializer().serializeToString(document), "application/xml").querySelectorAll("parsererror").length);
      assert.equal(faults, 0, "it is XML");
      assert.match(await read.locator("caption").first().innerText(), /^Was zu drucken ist$/);
      assert.match(await read.locator("tbody tr").first().locator("td").nth(2).innerText(), /^\d+,\d × \d+,\d × \d+,\d$/);
      for (const width of [1100, 320]) {
        await read.setViewportSize({ width, height: 900 });
        await passesAxe(read, `the German sheet at ${width} px`);
        assert.ok(await read.evaluate(() => document.documentElement.scrollWidth <= innerWidth), `too wide at ${width} px`);
        await shot(read, `sheet-german-${width}`, { fullPage: true });
      }
      await read.emulateMedia({ media: "print" });
      await read.setViewportSize({ width: 696, height: 1020 });
      await shot(read, "sheet-german-print", { fullPage: true });
      const pages = readPdf(await read.pdf({ preferCSSPageSize: true, printBackground: true }));
      assert.ok(pages.length >= 2 && pages.length <= 12, `${pages.length} pages`);
    } finally {
      await read.close();
      await rm(folder, { recursive: true });
    }
  }, { kept: GERMAN });
});
