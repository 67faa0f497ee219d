// The page in another language: everything that it says is said in it, the work is the same, and English is as it was.

import assert from "node:assert/strict";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { test } from "node:test";
import { passesAxe } from "./axe.mjs";
import { bench, keptDesign, saved, settled, shot } from "./bench.mjs";
import { namesIn, outsideOfBrackets, speakPseudo } from "./pseudo.mjs";
import { SITE } from "./site.mjs";
import { walk } from "./walk.mjs";

const its = bench();
const GERMAN = { "tubewright.language": "de" };

/** Opens every fold and card, as often as they hold others. */
async function unfoldAll(page) {
  for (let round = 0; round < 3; round += 1) {
    await page.evaluate(() => {
      for (const button of document.querySelectorAll(".fold[aria-expanded=false]")) button.click();
      for (const details of document.querySelectorAll("details:not([open])")) details.open = true;
    });
    await settled(page);
  }
  await page.waitForFunction(() => !document.querySelector(".asked-of [role=status]") && document.querySelectorAll(".plot-figure").length === 3);
}

/** The same, but for what the states unfold themselves. */
async function unfoldFirst(page) {
  await unfoldAll(page);
  await page.evaluate(() => { for (const details of document.querySelectorAll(".what-if, .plate, [id$=-cuts]")) details.open = false; });
}

/** Opens another design by its place in the menu: 0 is blank, then the demos. */
async function startFrom(page, place) {
  await page.locator("[popovertarget=start]").click();
  await page.locator(".menu .choice").nth(place).click();
  await settled(page);
}

/** What the tests type themselves beside the design. */
const TYPED = ["My own", "other.json", "bad.json"];

/** Fails on words that were not looked up. */
async function saysAll(page, state) {
  const design = await keptDesign(page);
  assert.deepEqual(await outsideOfBrackets(page, [...namesIn(design), ...TYPED]), [], `in state “${state}”`);
}

const TOOLS = { designs: 1, share: 3 };

/** What can come up beside the demos, reached without any word of the page. */
const STATES = {
  blank: async (page) => startFrom(page, 0),
  "blank things": async (page) => {
    await startFrom(page, 0);
    for (const id of ["fittings", "ports", "runs", "keep_outs", "keep_outs-cylinder", "parts", "leak-test", "print-service"]) await page.locator(`#add-${id}`).click();
    for (const kind of ["", "-through", "-coil"]) await page.locator(`#add-at-runs-0-route${kind}`).click();
    await page.locator("#choose-fittings").selectOption("own");
    await page.locator("#add-fittings").click();
  },
  "to mend": async (page) => {
    await page.locator("#at-ports-0-at-0").fill("12 kg");
    await page.locator("#at-ports-0-name").fill("");
    await page.locator("#at-runs-0-tube-bore").fill("40");
    await page.locator("#at-runs-0-bend_radius").fill("-3");
    await page.locator("#at-clearance").fill("1e9");
    await page.locator("#open-file").setInputFiles({ name: "bad.json", mimeType: "application/json", buffer: Buffer.from("") });
    await page.locator(".notice").first().waitFor();
  },
  findings: async (page) => {
    await page.locator("#at-runs-0-bend_radius").fill("4");
    await page.locator("#at-runs-0-tube-outer_diameter").fill("13");
    await page.locator("#at-loop-fault_c").fill("95");
    await page.locator("#at-loop-flow_l_per_h").fill("900");
    await page.locator("#at-runs-0-ends-trim").evaluate((field) => { field.value = "0.2"; field.dispatchEvent(new InputEvent("input", { bubbles: true })); });
    await settled(page);
  },
  "what if": async (page) => {
    await page.locator(".what-if > summary").click();
    await page.locator("#what-if-outer_diameters").fill("10, 12");
    await page.locator("#what-if-bores").fill("8, 9, 12");
    await page.locator(".variants tbody").nth(4).waitFor();
    await page.locator(".variants-chart .dot").first().focus();
    await page.locator("#what-if-bores").fill("8, ten");
  },
  "on the plate": async (page) => {
    await page.locator(".plate > summary").click();
    await page.locator(".stance-card").nth(1).waitFor();
    await page.locator("#way-1-stand").click();
    await settled(page);
    await page.locator(".notice").first().waitFor();
  },
  "own figures": async (page) => {
    for (const place of ["process-material", "process-printer", "loop-coolant", "loop-pump"]) await page.locator(`#at-${place}-own`).click();
    for (const key of ["hdt_180_c", "strength_mpa", "expansion_um_per_m_k"]) await page.locator(`#at-process-material-${key}`).fill("");
    await settled(page);
  },
  "leak test": async (page) => {
    await page.locator("#add-leak-test").click();
    await page.locator("#at-loop-leak_test-start_kpa").fill("90");
    await page.locator("#at-loop-leak_test-end_kpa").fill("40");
    await page.locator("#at-loop-leak_test-volume_ml").fill("400");
    await settled(page);
  },
  coupon: async (page) => {
    await page.locator("#add-fit").click();
    await settled(page);
    for (const [end, measured] of [[0, "11.93"], [1, "11.98"], [2, "12.04"]]) await page.locator(`#at-process-fit-outer-${end}-measured`).fill(measured);
    await page.locator("#at-process-fit-length-0-measured").fill("59.8");
    await page.locator("#add-fitted").click();
    await settled(page);
  },
  pieces: async (page) => {
    await page.locator("#at-ports-1-at-0").fill("600");
    await settled(page);
    await page.locator("#at-runs-0-cuts > summary").click();
    await page.locator("#at-runs-0-cuts-find").click();
    await page.locator("table.pieces").waitFor();
    await settled(page);
  },
  "the drawing": async (page) => {
    await page.locator(".preview .moves button").nth(1).click();
    await page.locator(".drawing").waitFor();
    await page.locator("[name=lengths]").nth(1).check();
    await page.locator("#at-ports-0-at-0").fill("1 1/2 + 10 mm");
  },
  designs: async (page) => {
    await page.evaluate(() => localStorage.setItem("tubewright.damaged.2026-11-01T10:00:00.000Z", "{"));
    await page.locator("#at-name").fill("My own");
    await startFrom(page, 1);
    await page.locator(".tools > button").nth(TOOLS.designs).click();
    await page.locator("#designs .title").nth(1).waitFor();
  },
  share: async (page) => {
    await page.locator(".tools > button").nth(TOOLS.share).click();
    await page.locator("svg.code").waitFor();
  },
  "where from": async (page) => {
    await page.locator('.service tr[data-result="flow/loss_kpa"] .where').click();
    await page.locator("#where-from[open]").waitFor();
  },
  compared: async (page) => {
    const design = await keptDesign(page);
    design.ports[0].at[0] += 4;
    design.runs[0].bend_radius = 30;
    design.runs[0].route = [];
    await page.locator("#compare-file").setInputFiles({ name: "other.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify({ ...design, name: "other.json" })) });
    await page.locator("#compared").waitFor();
  },
};

test("no demo has a word outside of the language, with everything unfolded", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await unfoldAll(page);
    await saysAll(page, "first visit");
    const demos = (await page.locator(".menu .choice").count()) - 2;
    assert.ok(demos >= 7);
    for (let demo = 1; demo <= demos; demo += 1) {
      await startFrom(page, demo);
      await unfoldAll(page);
      await saysAll(page, `demo ${demo}`);
    }
  }, { kept: GERMAN, prepare: speakPseudo });
});

walk(its, "no word is outside of the language", STATES, saysAll, { ready: unfoldFirst, kept: GERMAN, prepare: speakPseudo });

test("the main job in German: ports, a tube, its file, and the language stays", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    assert.equal(await page.locator("html").getAttribute("lang"), "en");
    await page.getByRole("combobox", { name: "Language" }).selectOption("Deutsch");
    await page.getByRole("button", { name: "Beginnen mit…" }).waitFor();
    await settled(page);
    assert.equal(await page.locator("html").getAttribute("lang"), "de");
    await page.getByRole("button", { name: "Beginnen mit…" }).click();
    await page.getByRole("button", { name: /^Einem leeren Entwurf/ }).click();
    await page.getByRole("textbox", { name: "Name des Entwurfs" }).fill("Gehäuse");
    await page.getByRole("button", { name: "Verschraubung hinzufügen" }).click();
    for (const [index, [x, z]] of [["0", "0"], ["80,5", "60"]].entries()) {
      await page.getByRole("button", { name: "Anschluss hinzufügen" }).click();
      const port = page.locator("[data-list=ports]").nth(index);
      await port.getByRole("textbox", { name: "x", exact: true }).fill(x);
      await port.getByRole("textbox", { name: "y", exact: true }).fill("0");
      await port.getByRole("textbox", { name: "z", exact: true }).fill(z);
    }
    await page.locator("[data-list=ports]").last().locator("label", { hasText: "−x" }).click();
    await page.getByRole("button", { name: "Leitung hinzufügen" }).click();
    await settled(page);
    await page.locator("#result .figures").first().waitFor();
    assert.match(await page.locator(".standing").innerText(), /^1 Leitung/);
    // Numbers to read have a decimal comma, and so has the field that it was typed in.
    assert.match(await page.locator("#result .runs-table td.figure").first().innerText(), /^\d+,\d$/);
    assert.equal(await page.locator("#at-ports-1-at-0").inputValue(), "80,5");
    assert.equal((await keptDesign(page)).ports[1].at[0], 80.5);
    const { name, bytes } = await saved(page, () => page.locator(".file-list button", { hasText: "STL" }).first().click());
    assert.match(name, /\.stl$/);
    assert.ok(bytes.length > 10_000);
    await page.reload();
    await page.getByRole("button", { name: "Beginnen mit…" }).waitFor();
    await settled(page);
    assert.equal((await keptDesign(page)).name, "Gehäuse");
    await page.getByRole("button", { name: /^Rückgängig: / }).click();
    await settled(page);
    assert.equal((await keptDesign(page)).runs.length, 0, "the steps came along");
    await page.getByRole("combobox", { name: "Sprache" }).selectOption("English");
    await page.getByRole("button", { name: "Start from…" }).waitFor();
    assert.equal(await page.locator("html").getAttribute("lang"), "en");
  });
});

test("a finding is told in German with the builder's names as they are", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-runs-0-name").fill("Coil and corner");
    await page.locator("#at-runs-0-bend_radius").fill("4");
    await page.locator("#result .note.stop").first().waitFor();
    await settled(page);
    const words = await page.locator("#result .note.stop p").first().innerText();
    assert.match(words, /^Stopp: Coil and corner: ein Biegeradius von 4 mm faltet ein Rohr von 12 mm in sich\. Mindestens 6,\d+ mm nehmen; 24 mm ist üblich\.$/);
    await page.locator("#at-runs-0-bend_radius").fill("-4");
    const mend = page.locator("#at-runs-0-bend_radius-notes", { hasText: "Beheben" });
    await mend.waitFor();
    assert.match(await mend.innerText(), /Beheben: Biegeradius: -4 mm liegt außerhalb des Bereichs\. Eine Zahl von 0 bis 100\.000 mm angeben\./);
  }, { kept: GERMAN });
});

test("without its table the page stays in English, and where nothing is kept the language stays", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    assert.equal(await page.locator("html").getAttribute("lang"), "en");
    await page.evaluate(() => { Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }; });
    await page.locator("#at-name").fill("Not kept");
    await page.getByRole("combobox", { name: "Language" }).selectOption("Deutsch");
    await page.locator(".notice", { hasText: "The language stays as it is" }).waitFor();
    assert.equal(await page.getByRole("combobox", { name: "Language" }).inputValue(), "en");
    assert.equal(await page.locator("#at-name").inputValue(), "Not kept");
  }, { kept: GERMAN, quiet: false, prepare: (page) => page.route("**/words/german/table.js", (route) => route.abort()) });
});

test("the page in one file speaks German from a disk, and asks for nothing", async () => {
  await its.withPage(async (page) => {
    await page.goto(pathToFileURL(path.join(SITE, "tubewright.html")).href);
    await settled(page);
    await page.getByRole("combobox", { name: "Language" }).selectOption("Deutsch");
    await page.getByRole("button", { name: "Beginnen mit…" }).waitFor();
    await settled(page);
    assert.match(await page.locator("#result").innerText(), /Warnung: .* ist spröde\./);
  }, { elsewhere: true });
});

test("nothing of German is asked for in English, and a browser in German is spoken to in German", async () => {
  const asked = [];
  const watch = (page) => page.on("request", (request) => asked.push(request.url()));
  await its.withPage(async (page) => {
    await settled(page);
    assert.ok(asked.length > 50 && !asked.some((url) => url.includes("/german/")), asked.join("\n"));
  }, { prepare: watch });
  const context = await its.browser.newContext({ locale: "de-CH", serviceWorkers: "block" });
  const page = await context.newPage();
  await page.goto(its.url);
  await page.getByRole("button", { name: "Beginnen mit…" }).waitFor();
  await context.close();
});

const LOOKED_AT = {
  demo: async () => {}, loop: async (page) => startFrom(page, 2), blank: STATES["blank things"], findings: STATES.findings, "what if": STATES["what if"],
  "on the plate": STATES["on the plate"], coupon: STATES.coupon, "leak test": STATES["leak test"], pieces: STATES.pieces, designs: STATES.designs,
};

walk(its, "axe finds nothing in German, and nothing is too wide", LOOKED_AT, async (page, state) => {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  assert.ok(over <= 0, `the page is ${over} px too wide`);
  await shot(page, `german-${state}`);
  await page.setViewportSize({ width: 320, height: 800 });
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  assert.ok(wide <= 320, `the page is ${wide} px wide at 320 px`);
  await passesAxe(page, `${state}, German, 320 px`);
  await shot(page, `german-${state}-320`, { fullPage: true });
}, { kept: GERMAN });
