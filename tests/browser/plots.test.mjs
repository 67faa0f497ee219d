// The plots: drawn for the place they have, told in words that say what the report says, saved, and readable anywhere.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, drawn, keptText, saved, settled } from "./bench.mjs";
import { readZip } from "./meshes.mjs";

const its = bench();
const KINDS = ["loss-plot", "margins-plot", "stiffness-plot"];

/** Waits until every plot is of the design as it is. */
async function plotted(page) {
  await settled(page);
  await page.waitForFunction(() => {
    const { sent } = document.getElementById("page").dataset;
    return document.querySelectorAll(`.plot-figure[data-stale=false][data-edition="${sent}"]`).length === 3;
  });
}

async function openLoop(page) {
  await settled(page);
  await page.getByRole("button", { name: "Start from…" }).click();
  await page.locator(".menu .choice", { hasText: "Demo" }).nth(1).click();
  await plotted(page);
}

/** Words of the plots that the page's own letters carry beyond the picture, and letters that are not the page's. */
function outside(page) {
  return page.evaluate(() => [...document.querySelectorAll(".plot-figure > svg")].flatMap((svg) => {
    const [, , width, height] = svg.getAttribute("viewBox").split(" ").map(Number);
    return [...svg.querySelectorAll("text")].filter((text) => {
      const box = text.getBBox();
      const within = box.x >= -0.5 && box.x + box.width <= width + 0.5 && box.y >= -2 && box.y + box.height <= height + 2;
      return !within || /mono/i.test(getComputedStyle(text).fontFamily);
    }).map((text) => text.textContent);
  }));
}

const plot = (page, kind) => page.locator(`.plot-figure[data-plot="${kind}"]`);

/** The report of the design that is kept, from the engine itself. */
function report(page) {
  return keptText(page).then((text) => page.evaluate(async (text) => JSON.parse((await import("/engine.js")).report(text)), text));
}

/** Whether a text says a number to as many digits as it shows. */
function says(told, value) {
  const [digits] = told.split(".").slice(1);
  return Math.abs(Number(told) - value) <= 0.5 * 10 ** -(digits?.length ?? 0) * 1.001;
}

test("the operating point that the plot tells is the report's, and the page's", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    const { operating } = (await report(page)).loop;
    const told = await plot(page, "loss-plot").locator("svg > desc").textContent();
    const [, flow, pressure, low, high] = /Operating point: ([\d.]+) L\/h at ([\d.]+) kPa; flow ([\d.]+) to ([\d.]+) L\/h/.exec(told);
    assert.ok(says(flow, operating.flow_l_per_h.nominal) && says(pressure, operating.pressure_kpa), told);
    assert.ok(says(low, operating.flow_l_per_h.low) && says(high, operating.flow_l_per_h.high), told);
    const row = await page.locator('#whole-loop tr[data-result="/loop/operating/flow_l_per_h"]').innerText();
    assert.equal(Number(/(\d+)\s*L\/h/.exec(row)[1]), Math.round(operating.flow_l_per_h.nominal));
    assert.match(row, new RegExp(`${operating.pressure_kpa.toFixed(1)} kPa`));

    const image = page.getByRole("img", { name: "Pressure loss against flow" });
    assert.equal(await image.count(), 1, "named for screen readers");
    await plot(page, "loss-plot").locator("summary").click();
    assert.match(await plot(page, "loss-plot").locator(".told").innerText(), /Operating point: /);
    const shares = await page.locator(".shares tbody tr").count();
    assert.equal(shares, (await report(page)).loop.shares.length);
  });
});

test("a part more, and the plot, its words and the share of each follow", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    const before = (await report(page)).loop.operating.flow_l_per_h.nominal;
    await page.locator("#add-parts").click();
    await plotted(page);
    const { operating, shares } = (await report(page)).loop;
    assert.ok(operating.flow_l_per_h.nominal < before);
    const told = await plot(page, "loss-plot").locator("svg > desc").textContent();
    assert.ok(says(/Operating point: ([\d.]+)/.exec(told)[1], operating.flow_l_per_h.nominal));
    const shown = (await page.locator(".shares tbody tr").allInnerTexts()).map((row) => Number(/([\d.]+)\s*$/.exec(row.trim())[1]));
    shares.forEach((share, at) => assert.equal(shown[at], Number(share.share_percent.toFixed(1))));
  });
});

test("without parts the loop says what is not counted, with a way to the place; a pump too weak says so", async () => {
  await its.withPage(async (page) => {
    await plotted(page);
    await page.locator("#whole-loop").getByRole("button", { name: "add your blocks and radiators" }).click();
    await page.waitForFunction(() => document.activeElement?.closest("#at-loop-parts"));
    await page.locator("#at-loop-flow_l_per_h").fill("5000");
    await settled(page);
    assert.match(await page.locator('#whole-loop tr[data-result="/loop/stated/reserve_kpa"]').innerText(), /beyond the pump/);

    await page.locator("#at-loop-pump-own").click();
    await settled(page);
    await page.locator("#at-loop-pump-points-1-flow_l_per_h").fill("100");
    await page.locator("#at-loop-pump-points-1-head_m").fill("3.9");
    await settled(page);
    const { operating, no_operating } = (await report(page)).loop;
    assert.equal(operating, null);
    assert.ok((await page.locator("#whole-loop .note.stop").innerText()).includes(no_operating));
    assert.equal(await page.locator('#whole-loop tr[data-result="/loop/operating/flow_l_per_h"]').count(), 0);
  });
});

test("PLA is over its temperatures in the plot too, and a plot that an edit overtakes is marked", async () => {
  await its.withPage(async (page) => {
    await plotted(page);
    await page.locator("#at-process-material").selectOption({ label: "PLA" });
    await plotted(page);
    const told = await plot(page, "stiffness-plot").locator("svg > desc").textContent();
    assert.match(told, /“PLA”, the design's material: .*? At “fault” OVER by \d+ °C/);
    // The frame after an edit cannot have the next plots yet: they are asked for once everything else is answered.
    const marked = await page.evaluate(async () => {
      const field = document.getElementById("at-loop-flow_l_per_h");
      field.value = "140";
      field.dispatchEvent(new Event("input", { bubbles: true }));
      await new Promise(requestAnimationFrame);
      return document.querySelectorAll(".plot-figure[data-stale=true]").length;
    });
    assert.equal(marked, 3);
    await plotted(page);
    await page.locator("#at-runs-0-tube-bore").fill("wide");
    await settled(page);
    await page.waitForFunction(() => document.querySelectorAll(".plot-figure[data-stale=true]").length === 3);
    assert.match(await plot(page, "loss-plot").innerText(), /before the last change/);
    assert.ok(await plot(page, "loss-plot").getByRole("button").isDisabled());
  });
});

test("they are as wide as their place at any width, with words of one size, and none is drawn in a colour of its own", async () => {
  await its.withPage(async (page) => {
    await plotted(page);
    for (const width of [1280, 700, 320]) {
      await page.setViewportSize({ width, height: 900 });
      await page.waitForFunction(() => {
        const room = Math.floor(document.querySelector(".plots").getBoundingClientRect().width);
        return [...document.querySelectorAll(".plot-figure > svg")].every((svg) => svg.getAttribute("width") === String(Math.max(280, room)));
      });
      assert.ok((await page.evaluate(() => document.documentElement.scrollWidth)) <= width);
      assert.deepEqual(await outside(page), [], `words outside their picture at ${width} px`);
    }
    const ids = await page.evaluate(() => [...document.querySelectorAll("[id]")].map((one) => one.id));
    assert.equal(new Set(ids).size, ids.length, "no id twice");
    const ink = () => page.locator(".plot-figure > svg").first().evaluate((svg) => getComputedStyle(svg).color.match(/\d+/g).map(Number));
    assert.ok((await ink())[0] > 128, "light ink in the dark");
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    assert.ok((await ink())[0] < 128, "dark ink on paper");
  }, { scheme: "dark" });
});

test("each is saved, from its place and from the files, and all are in the archive", async () => {
  await its.withPage(async (page) => {
    await plotted(page);
    const names = [];
    for (const [at, kind] of KINDS.entries()) {
      const one = await saved(page, () => plot(page, kind).getByRole("button", { name: /^Save it/ }).click());
      const other = await saved(page, () => page.locator("#files").getByRole("button", { name: /: plot$/ }).nth(at).click());
      assert.deepEqual(one, other);
      const text = new TextDecoder().decode(one.bytes);
      assert.match(text, /^<svg[^>]*role="img"/);
      assert.doesNotMatch(text, /#[0-9a-f]{3,6}\b|rgb\(|<script|href=/i);
      names.push(one.name);
    }
    assert.equal(new Set(names).size, 3);
    const all = await saved(page, () => page.getByRole("button", { name: "All files in one (.zip)" }).click());
    const held = Object.keys(readZip(all.bytes)).map((name) => name.split("/").at(-1));
    for (const name of names) assert.ok(held.includes(name), `${name} of ${held}`);
  });
});

test("a coolant of which nothing follows has no loss plot, and the words say why", async () => {
  await its.withPage(async (page) => {
    await plotted(page);
    await page.locator("#at-loop-coolant-own").click();
    await page.locator("#at-loop-coolant-base").selectOption("");
    await settled(page);
    await page.waitForFunction(() => /viscosity/.test(document.querySelector('p[data-plot="loss-plot"]')?.textContent ?? ""));
    await drawn(page);
    assert.equal(await page.locator(".plot-figure > svg").count(), 2);
  });
});
