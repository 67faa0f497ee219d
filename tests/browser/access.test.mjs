// WCAG 2.2 AA as far as a program can tell, in each state of the page, light and dark, down to 320 px.

import assert from "node:assert/strict";
import { test } from "node:test";
import { passesAxeBothWays } from "./axe.mjs";
import { bench, keptDesign, settled } from "./bench.mjs";
import { contrastRatio } from "./left-open.mjs";
import { walk } from "./walk.mjs";

const its = bench();
/** The states of the page that look different, and how to get there from the demo. */
const STATES = {
  demo: async () => {},
  loop: async (page) => {
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: "Demo" }).nth(1).click();
  },
  "clear tubes": async (page) => {
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: "A loop of four tubes" }).click();
    await page.locator("#at-process-material").selectOption({ label: "clear resin" });
  },
  "what if": async (page) => {
    await page.locator(".what-if > summary").click();
    await page.locator("#what-if-outer_diameters").fill("10, 12");
    await page.locator("#what-if-bores").fill("8, 9, ten");
    await page.locator("#what-if-bores").fill("8, 9, 12, ten");
    await page.locator(".variants tbody").nth(4).waitFor();
    await page.locator(".variants-chart .dot").first().focus();
  },
  "on the plate": async (page) => {
    const design = await keptDesign(page);
    design.runs[0].stance = { up: [0, 1, 0] };
    await page.locator("#open-file").setInputFiles({ name: "own.json", mimeType: "application/json", buffer: Buffer.from(JSON.stringify(design)) });
    await settled(page);
    await page.locator(".plate > summary").click();
    await page.locator(".stance-card").nth(1).waitFor();
    await page.locator("#way-0-look").focus();
  },
  blank: async (page) => {
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.getByRole("button", { name: /^A blank design/ }).click();
  },
  menu: async (page) => {
    await page.getByRole("button", { name: "Start from…" }).click();
  },
  errors: async (page) => {
    await page.locator("#at-ports-0-at-0").fill("12 kg");
    await page.locator("#at-runs-0-tube-bore").fill("40");
    await page.getByRole("button", { name: "Add a port" }).click();
    await page.locator("#open-file").setInputFiles({ name: "bad.json", mimeType: "application/json", buffer: Buffer.from("[") });
    await page.locator(".notice").waitFor();
  },
  findings: async (page) => {
    await page.locator("#at-runs-0-bend_radius").fill("4");
    await page.locator("#at-runs-0-tube-outer_diameter").fill("13");
  },
  shapes: async (page) => {
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: "A coil round a reservoir" }).click();
    await page.getByRole("button", { name: "Add a point" }).click();
    await page.getByRole("button", { name: "Add a corner" }).click();
    await page.locator("#at-runs-0-route-0-coil-axis").getByRole("radio", { name: "other" }).check();
    await page.locator("#at-runs-0-dress").getByRole("checkbox").check();
  },
  "shapes to mend": async (page) => {
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.locator(".menu .choice", { hasText: "A coil round a reservoir" }).click();
    await page.locator("#at-runs-0-route-0-coil-centre-0").fill("x");
    await page.locator("#at-runs-0-route-0-coil-turns").fill("");
    await page.locator("#at-runs-0-route-0-coil-pitch").fill("-4");
    await page.locator("#at-runs-0-dress").getByRole("checkbox").check();
    await page.locator("#at-runs-0-dress-depth").fill("400");
  },
  "own figures": async (page) => {
    for (const place of ["process-material", "process-printer", "loop-coolant", "loop-pump"]) await page.locator(`#at-${place}-own`).click();
    for (const key of ["hdt_180_c", "strength_mpa", "expansion_um_per_m_k"]) await page.locator(`#at-process-material-${key}`).fill("");
    await page.locator("#at-process-factors > summary").click();
    await page.locator("#add-parts").click();
    await page.locator("#at-loop-up").getByRole("radio", { name: "other" }).check();
  },
  "own figures to mend": async (page) => {
    await page.locator("#at-process-material-own").click();
    await page.locator("#at-process-material-hdt_180_c").fill("warm");
    await page.locator("#at-process-factors > summary").click();
    await page.locator("#at-process-factors-safety").fill("0");
    await page.locator("#at-loop-test_kpa").fill("-1");
    await page.locator("#at-loop-pump-own").click();
    await page.locator("#add-pump-points").click();
    await page.locator("#at-loop-pump-points-0-head_m").fill("-1");
    await page.locator("#choose-parts").selectOption("own");
    await page.locator("#add-parts").click();
  },
  "leak test": async (page) => {
    await page.locator("#add-leak-test").click();
    await page.locator("#at-loop-leak_test-end_kpa").fill("40");
    await page.locator("#at-loop-leak_test-start_kpa").fill("90");
    await page.locator(".first-fill > summary").click();
    await page.locator(".plot-figure summary").first().click();
  },
  coupon: async (page) => {
    await page.locator("#add-fit").click();
    await settled(page);
    for (const [end, measured] of [[0, "11.93"], [1, "11.98"], [2, "12.04"], [3, "22"]]) await page.locator(`#at-process-fit-outer-${end}-measured`).fill(measured);
    await page.locator("#at-process-fit-bore-0-measured").fill("wide");
    await page.locator("#add-fitted").click();
  },
  "coupon read": async (page) => {
    await page.locator("#add-fit").click();
    await settled(page);
    for (const [end, measured] of [[0, "11.93"], [1, "11.98"], [2, "12.04"]]) await page.locator(`#at-process-fit-outer-${end}-measured`).fill(measured);
    await page.locator("#at-process-fit-length-0-measured").fill("59.8");
    await settled(page);
    await page.locator("#compensated").uncheck();
  },
  "asked of files": async (page) => {
    await settled(page);
    await page.locator(".asked-of > summary").first().click();
    await page.locator(".asked-list").first().waitFor();
  },
  "where from": async (page) => {
    await settled(page);
    await page.locator('.service tr[data-result="flow/loss_kpa"] .where').click();
    await page.getByRole("dialog").waitFor();
  },
  designs: async (page) => {
    await settled(page);
    await page.evaluate(() => localStorage.setItem("tubewright.damaged.2026-11-01T10:00:00.000Z", "{"));
    await page.locator("#at-name").fill("My own");
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.getByRole("button", { name: /^A blank design/ }).click();
    await settled(page);
    await page.getByRole("button", { name: "Designs", exact: true }).click();
    await page.locator("#designs .title").nth(1).waitFor();
  },
  share: async (page) => {
    await settled(page);
    await page.getByRole("button", { name: "Share", exact: true }).click();
    await page.locator("svg.code").waitFor();
  },
  pieces: async (page) => {
    await page.locator("#at-ports-1-at-0").fill("600");
    await settled(page);
    await page.locator("#at-runs-0-cuts > summary").click();
    await page.getByRole("button", { name: /^Find the fewest pieces/ }).click();
    await page.locator("table.pieces").waitFor();
    await page.locator("#at-runs-0-cuts-0-at").fill("3");
    await settled(page);
    await page.locator("#at-runs-0-cuts .note.stop").first().waitFor();
    await page.locator(".plate > summary").click();
    await page.locator(".stance-card").first().waitFor();
  },
  "how to measure": async (page) => {
    await page.getByRole("button", { name: "How to measure" }).first().click();
    await page.locator("#measure").waitFor();
  },
  glossary: async (page) => {
    await page.getByRole("button", { name: "What the words mean" }).first().click();
    await page.locator("#glossary").waitFor();
  },
  "a sum in inches": async (page) => {
    await page.getByRole("radio", { name: "inches" }).check();
    await page.locator("#at-ports-0-at-0").fill("1 1/2 + 10 mm");
  },
  everything: async (page) => {
    await page.getByRole("button", { name: "Unfold fitting" }).first().click();
    await page.locator("#at-fittings-0").getByRole("radio", { name: "Elbow" }).check();
    await page.getByRole("button", { name: "Add a box" }).click();
    await page.getByRole("button", { name: "Add a cylinder" }).click();
    await page.locator("#at-ports-0").getByRole("radio", { name: "other" }).check();
    await page.locator("#at-process-material-own").click();
    await page.locator("summary", { hasText: "Tube ends" }).first().click();
    await page.getByRole("button", { name: "Drawing", exact: true }).click();
  },
};

walk(its, "axe finds nothing, light and wide, dark and 320 px", STATES, (page, state) =>
  passesAxeBothWays(page, state, { fullPage: !["menu", "where from", "glossary"].includes(state) }));

for (const scheme of ["light", "dark"]) {
  test(`edges, marks and the focus stand out by 3 : 1, words by 4.5 : 1 (${scheme})`, async () => {
    await its.withPage(async (page) => {
      await settled(page);
      const colours = await page.evaluate(() => {
        const probe = document.body.appendChild(document.createElement("i"));
        const names = ["paper", "sheet", "well", "ink", "soft", "edge", "copper", "copper-ink", "copper-wash", "stop", "stop-wash", "care", "care-wash", "note", "note-wash", "fine"];
        const read = Object.fromEntries(names.map((name) => {
          probe.style.color = `var(--${name})`;
          return [name, getComputedStyle(probe).color.match(/[\d.]+/g).slice(0, 3).map(Number)];
        }));
        probe.remove();
        return read;
      });
      const holds = (one, other, least) => {
        const ratio = contrastRatio(colours[one], colours[other]);
        assert.ok(ratio >= least, `${one} on ${other}: ${ratio.toFixed(2)} for ${least}`);
      };
      for (const ground of ["paper", "sheet", "well"]) {
        for (const words of ["ink", "soft", "copper", "stop", "fine"]) holds(words, ground, 4.5);
        for (const drawn of ["edge", "copper", "stop", "care", "note", "fine"]) holds(drawn, ground, 3);
      }
      for (const wash of ["stop-wash", "care-wash", "note-wash", "copper-wash"]) for (const words of ["ink", "soft", "copper"]) holds(words, wash, 4.5);
      for (const kind of ["stop", "care", "note"]) holds(kind, `${kind}-wash`, 3);
      holds("copper-ink", "copper", 4.5);
    }, { scheme });
  });
}

test("landmarks, one first heading, and skip links that skip", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    assert.equal(await page.locator("h1").count(), 1);
    assert.equal(await page.locator("main").count(), 1);
    await page.keyboard.press("Tab");
    assert.match(await page.evaluate(() => document.activeElement.textContent), /Skip to the form/);
    await page.keyboard.press("Enter");
    await page.keyboard.press("Tab");
    assert.equal(await page.evaluate(() => document.activeElement.id), "at-name");
  });
});

test("the theme button goes round and is kept", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const button = page.getByRole("button", { name: /^Theme:/ });
    const ground = () => page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const light = await ground();
    await button.click();
    await button.click();
    await page.waitForFunction((was) => getComputedStyle(document.documentElement).backgroundColor !== was, light);
    await page.reload();
    await settled(page);
    assert.notEqual(await ground(), light);
  });
});
