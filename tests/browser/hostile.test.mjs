// A design whose every string is hostile, through the page, a link and every file of the pack: nothing runs, nothing
// breaks, no cell is a formula, no name leads out of a folder.

import assert from "node:assert/strict";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { bench, keptDesign, saved, settled } from "./bench.mjs";
import { readZip } from "./meshes.mjs";

const its = bench();

const RUN = "globalThis.ran=1";
const HOSTILE = [
  `"><img src=x onerror="${RUN}"><script>${RUN}</script>`,
  `' onfocus='${RUN}' autofocus tabindex='0`,
  `<svg onload="${RUN}"><foreignObject><iframe srcdoc="&lt;script&gt;parent.ran=1&lt;/script&gt;">`,
  `</style><style>*{display:none}</style>`,
  `=HYPERLINK("https://example.invalid/?"&A1,"open")`,
  `..\\..\\../../etc/passwd`,
  `]]></metadata><!ENTITY x SYSTEM "file:///etc/passwd">&x;`,
  `مضخة המשאבה \${${RUN}} {{${RUN}}}`,
  `-2+3+cmd|' /C calc'!A0`,
  `CON.txt . .`,
];

/** The loop demo with all its names, notes and sources made hostile, references following. */
function hostile(design) {
  let count = 0;
  const next = () => {
    count += 1;
    return `${HOSTILE[count % HOSTILE.length]} ${count}`;
  };
  const named = new Map();
  const renamed = (list) => (name) => named.get(`${list}/${name}`);
  for (const list of ["fittings", "ports", "runs", "keep_outs"]) {
    for (const thing of design[list]) {
      const name = next();
      named.set(`${list}/${thing.name}`, name);
      thing.name = name;
    }
  }
  for (const port of design.ports) port.fitting = renamed("fittings")(port.fitting);
  for (const run of design.runs) {
    run.from = renamed("ports")(run.from);
    run.to = renamed("ports")(run.to);
    for (const station of run.route) {
      for (const point of [station.corner, station.through, station.coil?.centre]) {
        for (const at of point ?? []) if (at?.of) at.of = renamed("ports")(at.of);
      }
    }
  }
  design.name = next();
  design.notes = HOSTILE.join("\n");
  const { material, printer } = design.process;
  const { coolant, pump, parts } = design.loop;
  for (const thing of [material, printer, coolant, pump, ...(parts ?? [])]) {
    if (typeof thing !== "object" || thing === null) continue;
    for (const key of ["name", "source", "cautions"]) if (typeof thing[key] === "string") thing[key] = next();
  }
  return count;
}

/** Whether anything of it ran or stands as markup in a page. */
const came = (page) => page.evaluate(() => ({
  ran: globalThis.ran, hidden: getComputedStyle(document.body).display === "none",
  made: document.querySelectorAll("img[src=x], iframe, foreignObject, [onfocus], [onload], [onerror]").length,
}));
const NOTHING = { ran: undefined, hidden: false, made: 0 };

/** The records of a table of comma-separated text (RFC 4180). */
function records(text) {
  const rows = [[]];
  for (const [, quoted, plain, end] of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r?\n|$)/g)) {
    rows.at(-1).push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end !== ",") rows.push([]);
    if (end === "") break;
  }
  return rows;
}

async function opened(page) {
  await settled(page);
  await page.getByRole("button", { name: "Start from…" }).click();
  await page.locator(".menu .choice", { hasText: "A loop of four tubes" }).click();
  await page.waitForFunction(() => document.querySelectorAll(".file-list li").length === 4);
  await settled(page);
  const design = await keptDesign(page);
  assert.ok(hostile(design) > 15);
  await page.locator("#open-file").setInputFiles({ name: "hostile.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(design)) });
  await page.waitForFunction((name) => document.getElementById("at-name").value === name, design.name);
  await settled(page);
  assert.equal(await page.locator(".standing").innerText().then((words) => /4 runs/.test(words)), true, "the engine takes it: it is only words");
  return design;
}

test("every panel and dialog shows hostile words as words", async () => {
  await its.withPage(async (page) => {
    await opened(page);
    await page.evaluate(() => document.querySelectorAll("details").forEach((fold) => { fold.open = true; }));
    await settled(page);
    for (const name of ["Designs", "Share"]) {
      await page.getByRole("button", { name, exact: true }).click();
      await page.locator("dialog[open]").waitFor();
      assert.deepEqual(await came(page), NOTHING, name);
      await page.keyboard.press("Escape");
    }
    await page.getByRole("button", { name: "Drawing", exact: true }).click();
    await page.getByRole("button", { name: /^Where does/ }).first().click();
    await settled(page);
    assert.deepEqual(await came(page), NOTHING);
    const link = await page.evaluate(() => document.getElementById("share-link")?.value ?? "");
    if (link) assert.ok(/^[\x21-\x7e]*$/.test(link), "a link is plain letters");
    await page.keyboard.press("Escape");
    await page.emulateMedia({ media: "print" });
    assert.deepEqual(await came(page), NOTHING);
  });
});

test("every file of its pack is whole, and nothing in it runs or leads elsewhere", async () => {
  await its.withPage(async (page) => {
    const design = await opened(page);
    const pack = await saved(page, () => page.locator("#pack").click());
    assert.ok(/^[^/\\]+\.zip$/.test(pack.name) && !pack.name.startsWith("."), pack.name);
    const files = readZip(pack.bytes);
    const names = Object.keys(files);
    for (const name of names) {
      assert.ok(name.split("/").every((part) => /^[^-.\s\\:*?"<>|\p{Cc}][^\\:*?"<>|\p{Cc}]*$/u.test(part) && !/[. ]$/.test(part)), name);
    }
    for (const ending of [".3mf", ".stl", ".json", ".csv", ".svg", ".html"]) assert.ok(names.some((name) => name.endsWith(ending)), ending);
    const text = (bytes) => new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    // The page itself parses no text as markup: its policy forbids it.
    const reader = await page.context().newPage();
    const parsed = (words, kind) => reader.evaluate(([source, type]) => {
      const read = new DOMParser().parseFromString(source, type);
      return { broken: read.querySelector("parsererror")?.textContent ?? "", made: read.querySelectorAll("script, img[src=x], iframe, foreignObject, [onload], [onerror], [onfocus]").length };
    }, [words, kind]);
    const cells = [];
    for (const name of names) {
      const bytes = files[name];
      if (name.endsWith(".svg")) assert.deepEqual(await parsed(text(bytes), "image/svg+xml"), { broken: "", made: 0 }, name);
      if (name.endsWith(".json")) assert.equal(JSON.parse(text(bytes)).name, design.name, name);
      if (name.endsWith(".3mf")) {
        for (const [part, inside] of Object.entries(readZip(bytes))) {
          if (/\.(model|rels|xml)$/.test(part)) assert.deepEqual(await parsed(text(inside), "application/xml"), { broken: "", made: 0 }, `${name}: ${part}`);
        }
      }
      if (name.endsWith(".csv")) {
        const found = records(text(bytes)).flat();
        cells.push(...found);
        for (const cell of found) assert.ok(!/^\s*[=+\-@\t]/.test(cell) || /^-?[\d.]+$/.test(cell), `${name}: ${cell}`);
      }
    }
    assert.ok(cells.some((cell) => HOSTILE.some((words) => cell.includes(words))), "the tables do hold such words");

    const folder = fs.mkdtempSync(path.join(os.tmpdir(), "tubewright-hostile-"));
    const sheet = await page.context().newPage();
    const asked = [];
    sheet.on("request", (request) => asked.push(request.url()));
    try {
      fs.writeFileSync(path.join(folder, "sheet.html"), files["sheet.html"]);
      const url = pathToFileURL(path.join(folder, "sheet.html")).href;
      await sheet.goto(url);
      assert.deepEqual(await came(sheet), NOTHING);
      assert.deepEqual(asked, [url], "the sheet asks for nothing");
      assert.ok((await sheet.locator("body").innerText()).includes(HOSTILE[0]), "the words stand there as words");
    } finally {
      await sheet.close();
      fs.rmSync(folder, { recursive: true });
    }
  });
});

test("a name of a hundred thousand letters is refused where it stands, and stays there", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const long = "x".repeat(100_000);
    await page.locator("#at-ports-0-name").fill(long);
    await settled(page);
    assert.equal((await page.locator("#at-ports-0-name").inputValue()).length, 100_000);
    const words = await page.$eval("#at-ports-0-name", (input) => (input.getAttribute("aria-describedby") ?? "").split(" ").map((id) => document.getElementById(id)?.innerText).join(" "));
    assert.match(words, /100000 characters are too many/);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth), "nothing is pushed off the page");
    await page.locator("#at-name").fill("z".repeat(190));
    await settled(page);
    assert.ok(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth));
  });
});
