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

/** Letters that are no words: units, sizes, names of things that all languages share, and files, which keep their English names. */
const SIGNS = /^(x|y|z|mm|cm³|mL|MB|g|m|m\/s|K|s|°C|L\/h|kPa|MPa|µm|STL|3MF|R\d*|[A-Z]\d|Tubewright|\/|-piece-\d-of-\d|compensated|[\d.,]+e-?\d+)$/;

/** What a page or a picture says outside of brackets that holds letters. Words may be broken into lines, and cut where there is no room. */
function wordsOutside(markup, names) {
  const known = [...names].sort((one, other) => other.length - one.length);
  const spoken = [...markup.matchAll(/ aria-label="([^"]*)"/g)].map(([, text]) => text);
  const texts = markup.replace(/<style>[\s\S]*?<\/style>/, "").split(/<[^>]*>/);
  let rest = [...texts, ...spoken].join("\n").replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&quot;/g, '"').replace(/&amp;/g, "&");
  rest = rest.replace(/\bcoupons\/[^:\n]* coupon\.3mf/g, " ");
  const broken = (name) => new RegExp(name.split(/\s+/).map((word) => word.replace(/[^\p{L}\d]/gu, "\\$&")).join("\\s+"), "g");
  for (const name of known) rest = rest.replace(broken(name), " ");
  rest = rest.replace(/⟦[^⟦⟧\n]*…/g, " ");
  for (let before = ""; before !== rest; ) {
    before = rest;
    rest = rest.replace(/⟦[^⟦⟧]*⟧/g, " ");
  }
  const cut = (line) => line.trim().endsWith("…") && known.some((name) => name.startsWith(line.trim().slice(0, -1)));
  const words = rest.split("\n").filter((line) => !cut(line)).flatMap((line) => line.split(/[\s,;:()„“”×→±%–−.]+/));
  return [...new Set(words.filter((word) => /\p{L}/u.test(word) && !SIGNS.test(word) && !/^\p{L}{1,3}…$/u.test(word)))];
}

function file(design, request) {
  return new TextDecoder().decode(engine.exportFile(JSON.stringify(design), JSON.stringify(request)));
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

/** Words of a design that are no names. */
const CHOICES = ["right", "left", "resin", "powder", "filament"];
const DESIGNS = { ...Object.fromEntries(demos.map((design) => [design.name, design])), ...further() };

for (const [state, design] of Object.entries(DESIGNS)) {
  test(`no word of a file is outside of the language: ${state}`, () => {
    const names = namesIn(JSON.parse(engine.normalise(JSON.stringify(design)))).filter((name) => !CHOICES.includes(name));
    assert.deepEqual(wordsOutside(sheetOf(design, made), names), [], "the sheet");
    for (const { name, made: isMade } of JSON.parse(engine.report(JSON.stringify(design))).runs) {
      if (!isMade) continue;
      assert.deepEqual(wordsOutside(file(design, { kind: "drawing", run: name, words: made }), names), [], `the drawing of ${name}`);
    }
    for (const kind of ["loss-plot", "margins-plot", "stiffness-plot"]) for (const width of [320, 760]) {
      assert.deepEqual(wordsOutside(file(design, { kind, width, words: made }), names), [], `${kind}, ${width}`);
    }
  });
}

test("no German word of a drawing or plot is cut, and no number of a drawing is another", () => {
  const german = { language: "de", decimal: table.decimal, quotes: table.quotes, words: { ...Object.fromEntries(table.sentences), ...table.files } };
  for (const design of demos) for (const kind of ["loss-plot", "margins-plot", "stiffness-plot"]) for (const width of [320, 760]) {
    const [english, told] = [undefined, german].map((words) => file(design, { kind, width, words }));
    assert.ok(told.split("…").length <= english.split("…").length, `${design.name}, ${kind}, ${width}`);
  }
  for (const design of demos) for (const { name } of design.runs) {
    const [english, told] = [undefined, german].map((words) => file(design, { kind: "drawing", run: name, words }));
    assert.equal(told.split("…").length, english.split("…").length, `${design.name}, ${name}`);
    const values = (svg) => [...svg.matchAll(/data-dimension="[^"]*"(?: data-row="[^"]*")? data-value="[^"]*"/g)].map(([all]) => all).sort();
    assert.deepEqual(values(told), values(english), `${design.name}, ${name}`);
    assert.match(told, /Wand /);
    assert.doesNotMatch(told.replace(/<style>.*?<\/style>/s, ""), />[^<]*\d\.\d[^<]*<\/tspan>/, "decimals have a comma");
  }
});

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
      assert.ok(await read.evaluate(() => document.documentElement.scrollWidth <= innerWidth), "no table is wider than A4");
      await shot(read, "sheet-german-print", { fullPage: true });
      const pages = readPdf(await read.pdf({ preferCSSPageSize: true, printBackground: true }));
      assert.ok(pages.length >= 2 && pages.length <= 12, `${pages.length} pages`);
    } finally {
      await read.close();
      await rm(folder, { recursive: true });
    }
  }, { kept: GERMAN });
});
