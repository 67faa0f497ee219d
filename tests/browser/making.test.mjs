// What the tubes are made of and what runs through them: shipped figures and one's own, and what follows in service.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, drawn, keptDesign, keptText, settled, shot } from "./bench.mjs";
import { tabTo, typeOver } from "./keyboard.mjs";

const its = bench();

/** Chooses a shipped thing by its name. */
async function choose(page, place, name) {
  await page.locator(`#at-${place}`).selectOption({ label: name });
  await settled(page);
}

/** Makes a shipped thing one's own. */
async function own(page, place) {
  await page.locator(`#at-${place}-own`).click();
  await settled(page);
}

/** What a line of the first run's results in service says. */
function told(page, key) {
  return page.locator(`.service tr[data-result="${key}"]`).first().innerText();
}

/** The report of the design that is kept, from the engine itself. */
function report(page) {
  return keptText(page).then((text) => page.evaluate(async (text) => {
    const engine = await import("/engine.js");
    return JSON.parse(engine.report(text));
  }, text));
}

test("PLA softens in a fault: a stop at the material, mended by one press", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await choose(page, "process-material", "PLA");
    const stop = page.locator("#making .note.stop");
    assert.match(await stop.innerText(), /PLA/);
    assert.match(await stop.innerText(), /°C/);
    assert.equal(await page.locator("#result .note.stop").getByRole("button", { name: /^Go to/ }).innerText(), "Go to material");
    const field = page.locator("#at-process-material");
    assert.equal(await field.getAttribute("aria-invalid"), "true");
    assert.match(await field.getAttribute("aria-describedby"), /at-process-material-notes/);
    assert.match(await page.locator("#making .mind").first().innerText(), /softens/, "its cautions stand beside it");
    assert.match(await told(page, "heat/limit_c"), /too much/);

    await stop.getByRole("button", { name: /^Apply this fix/ }).click();
    await settled(page);
    assert.equal(await page.locator("#making .note.stop").count(), 0);
    const { material } = (await keptDesign(page)).process;
    assert.notEqual(material.name, "PLA");
    assert.equal(await page.locator("#at-process-material option:checked").innerText(), material.name, "the choice shows what the fix took");
    assert.match(await told(page, "heat/limit_c"), /\d+\sK left/);
  });
});

test("a material made one's own: each figure is a field, an empty one is not known, a shipped one is a choice away", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await choose(page, "process-material", "PETG");
    await own(page, "process-material");
    assert.equal(await page.evaluate(() => document.activeElement.id), "at-process-material-name");
    const petg = (await keptDesign(page)).process.material;
    for (const key of Object.keys(petg)) assert.equal(await page.locator(`#at-process-material-${key}`).count(), 1, `a field for ${key}`);
    assert.equal(petg.source, "", "the figures are the builder's now");

    const deflection = page.locator("#at-process-material-hdt_180_c");
    await deflection.fill("120");
    await page.locator("#at-process-material-glass_c").fill("130");
    await settled(page);
    assert.equal(await page.locator("#making .note.stop").count(), 0, "a stiff one is no stop");
    await deflection.fill("50");
    await settled(page);
    assert.ok((await page.locator("#making .note.stop").count()) > 0, "a soft one is");

    await deflection.fill("");
    await page.locator("#at-process-material-glass_c").fill("");
    await page.locator("#at-process-material-strength_mpa").fill(" ");
    await page.locator("#at-process-material-way").selectOption("");
    await page.locator("#at-process-material-semicrystalline").check();
    await settled(page);
    const { material } = (await keptDesign(page)).process;
    assert.deepEqual([material.hdt_180_c, material.glass_c, material.strength_mpa, material.way, material.semicrystalline], [null, null, null, null, true]);
    assert.equal(await deflection.getAttribute("placeholder"), "not known");
    assert.match(await told(page, "strength/pressure_kpa"), /not known: needs Tensile strength/);
    await page.locator('.service tr[data-result="heat/limit_c"] .link').first().click();
    await page.waitForFunction(() => document.activeElement.id === "at-process-material-hdt_180_c");

    const which = page.locator("#at-process-material-which");
    await which.selectOption({ label: "ABS" });
    await settled(page);
    assert.equal((await keptDesign(page)).process.material.name, "ABS");
    await page.locator("#at-process-material").selectOption({ label: `${material.name} (own figures)` });
    await settled(page);
    assert.deepEqual((await keptDesign(page)).process.material, material, "one's own figures are not lost to a look at a shipped one");
  });
});

test("what is no number is told at its figure, and the figures unfold to show it", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await own(page, "process-material");
    await page.locator("#at-process-material-modulus_mpa").fill("about 2000");
    await settled(page);
    const field = page.locator("#at-process-material-modulus_mpa");
    assert.equal(await field.getAttribute("aria-invalid"), "true");
    assert.match(await page.locator("#at-process-material-modulus_mpa-notes").innerText(), /MPa/);
    assert.equal(await page.locator("#result .note.mend").getByRole("button").innerText(), "Go to tensile modulus of own high-temperature resin");
    await page.reload();
    await settled(page);
    assert.ok(await field.isVisible(), "what has to be mended is not folded away");
    await field.fill("-1");
    await settled(page);
    assert.match(await page.locator("#at-process-material-modulus_mpa-notes").innerText(), /above 0/);
  });
});

test("strength: twice the safety factor is half the pressure, and the panel says what the engine says", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const before = (await report(page)).runs[0].service;
    await page.locator("#at-process-factors > summary").click();
    await page.locator("#at-process-factors-safety").fill(String(2 * (await keptDesign(page)).process.factors.safety));
    await settled(page);
    const { strength, heat, flow, seals } = (await report(page)).runs[0].service;
    assert.ok(Math.abs(strength.allowed_kpa / before.strength.allowed_kpa - 0.5) < 1e-9);
    const numbers = async (key) => ((await told(page, key)).match(/\d+(\.\d+)?/g) ?? []).map(Number);
    const [pressure, allowed, left] = await numbers("strength/pressure_kpa");
    assert.deepEqual([pressure, allowed, left], [strength.pressure_kpa, strength.allowed_kpa, strength.allowed_kpa - strength.pressure_kpa].map(Math.round));
    const { fault_c } = (await keptDesign(page)).loop;
    assert.deepEqual(await numbers("heat/limit_c"), [fault_c, heat.limit_c, heat.limit_c - fault_c]);
    assert.equal((await numbers("flow/loss_kpa"))[0], Number(flow.loss_kpa.nominal.toFixed(2)));
    assert.equal((await numbers("seals/*/squeeze_percent"))[0], Math.round(seals[0].squeeze_percent.nominal));
    await page.locator("summary", { hasText: "Stress allowed" }).click();
    const factors = await page.locator(".allowance li").allInnerTexts();
    assert.equal(factors.length, 1 + strength.factors.length);
    assert.match(factors.at(-1), /safety: × 0\.125 .*common practice/);
  });
});

test("a coolant of which nothing follows says what is missing; its viscosity is enough", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await own(page, "loop-coolant");
    await page.locator("#at-loop-coolant-base").selectOption("");
    await settled(page);
    assert.equal((await keptDesign(page)).loop.coolant.base, null);
    assert.match(await told(page, "flow/loss_kpa"), /not known: needs Made of or Viscosity/);
    await page.locator("#at-loop-coolant-viscosity_mpa_s").fill("1,2");
    await settled(page);
    assert.equal((await keptDesign(page)).loop.coolant.viscosity_mpa_s, 1.2);
    assert.match(await told(page, "flow/loss_kpa"), /kPa/);
  });
});

test("an own printer's tolerance, which way is up, and the loop's temperatures and pressures", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await own(page, "process-printer");
    await page.locator("#at-process-printer-tolerance").fill("");
    await page.locator("#at-loop-up").getByRole("radio", { name: "\u2212z" }).check();
    for (const [key, text] of [["cold_c", "22"], ["working_c", "38"], ["fault_c", "58"], ["pressure_kpa", "40"], ["test_kpa", "90"]]) await page.locator(`#at-loop-${key}`).fill(text);
    await settled(page);
    const { process, loop } = await keptDesign(page);
    assert.equal(process.printer.tolerance, null);
    assert.deepEqual([loop.up, loop.cold_c, loop.working_c, loop.fault_c, loop.pressure_kpa, loop.test_kpa], [[0, 0, -1], 22, 38, 58, 40, 90]);
    assert.match(await told(page, "heat/growth_mm"), /22 to 58/);
    await page.locator("#at-loop-up").getByRole("radio", { name: "other" }).check();
    await page.locator("#at-loop-up-2").fill("0");
    await settled(page);
    assert.match(await page.locator("#at-loop-up-notes").innerText(), /points nowhere/);
  });
});

test("by keyboard: a material is made one's own and a figure typed", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-process-material").focus();
    await tabTo(page, /^Make it my own: Material/);
    await page.keyboard.press("Enter");
    await settled(page);
    await typeOver(page, "resin from the blue bottle");
    await tabTo(page, /^Heat deflection at 1.8 MPa/);
    await drawn(page);
    assert.match(await page.locator(".foot").innerText(), /data sheet/, "the hint says where to look it up");
    await typeOver(page, "77");
    await settled(page);
    const { material } = (await keptDesign(page)).process;
    assert.deepEqual([material.name, material.hdt_180_c], ["resin from the blue bottle", 77]);
  });
});

test("a design that an earlier page kept opens with what it did not know filled in", async () => {
  let kept;
  await its.withPage(async (page) => {
    await settled(page);
    kept = await keptDesign(page);
  });
  delete kept.process.factors;
  delete kept.process.service;
  for (const key of ["cold_c", "test_kpa", "up", "heat_w", "pump", "parts"]) delete kept.loop[key];
  kept.process.material = { name: "mine", density_g_per_cm3: 1.1, source: "" };
  await its.withPage(async (page) => {
    await settled(page);
    assert.equal(await page.locator("#at-loop-test_kpa").inputValue(), "100");
    await page.locator("#at-process-factors > summary").click();
    await page.locator("#at-process-factors-safety").fill("5");
    await settled(page);
    const { process, loop } = await keptDesign(page);
    assert.deepEqual([process.factors.safety, loop.up, process.material.name], [5, [0, 0, 1], "mine"]);
  }, { kept: { "tubewright.design.1": JSON.stringify(kept) } });
});

test("a print service's prices: typed in, told in the totals and on the plate, mended where they are none, and taken away", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const line = (key) => page.locator(`tr[data-result="/totals/${key}"]`);
    const { totals: { cost }, runs } = await report(page);
    assert.ok((await line("cost").innerText()).includes(cost.toFixed(2)), "the material's cost is told");
    assert.equal(await line("service_price").count(), 0);

    await page.locator("#add-print-service").click();
    await settled(page);
    assert.equal(await page.evaluate(() => document.activeElement.id), "at-process-service-price_per_cm3");
    assert.match(await line("service_price").innerText(), /not known: needs Price a cm³/);
    await page.locator("#at-process-service-price_per_cm3").fill("0.5");
    await page.locator("#at-process-service-setup").fill("4");
    await settled(page);
    const pieces = runs.flatMap((run) => run.pieces);
    const sum = pieces.reduce((all, piece) => all + (piece.material_mm3 / 1000) * 0.5 + 4, 0);
    assert.ok((await line("service_price").innerText()).includes(sum.toFixed(2)), "each piece's material and set-up");

    await page.locator(".plate > summary").click();
    await page.waitForFunction(() => document.querySelector(".plate-answer")?.getAttribute("data-stale") === "false");
    const [first] = pieces;
    assert.ok((await page.locator(".service-price").innerText()).includes(((first.material_mm3 / 1000) * 0.5 + 4).toFixed(2)));
    const [low, high] = (await page.locator(".stance-cost").first().innerText()).match(/\d+\.\d+/g).map(Number);
    assert.equal(low, Number(runs[0].cost.toFixed(2)), "from the tube alone");
    assert.ok(high >= low * 1.19, "to supports and waste");
    await page.locator(".stance-cost .where").first().click();
    await page.locator("#where-from dl").first().waitFor();
    assert.match(await page.locator("#where-from").innerText(), /common practice, no source/);
    await page.keyboard.press("Escape");
    await shot(page, "service-price");

    await page.locator("#at-process-service-minimum").fill("1000");
    await settled(page);
    assert.match(await line("service_price").innerText(), /1000\.00\s+the least order/);
    await page.locator("#at-process-service-setup").fill("-4");
    await settled(page);
    assert.equal(await page.locator("#at-process-service-setup").getAttribute("aria-invalid"), "true");
    await page.locator("#print-service-remove").click();
    await settled(page);
    assert.equal((await keptDesign(page)).process.service, null);
    assert.equal(await line("service_price").count(), 0);
  });
});
