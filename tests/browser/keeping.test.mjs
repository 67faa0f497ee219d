// The work is kept: through a reload, half-typed, beside a damaged state, and when another design takes its place.

import assert from "node:assert/strict";
import { test } from "node:test";
import { bench, keptDesign, openLoop, saved, settled, shot } from "./bench.mjs";

const its = bench();

/** Everything on the shelf. */
function kept(page) {
  return page.evaluate(() => Object.entries(localStorage).filter(([key]) => key.startsWith("tubewright.kept.1.")).map(([, text]) => JSON.parse(text)));
}

async function openDesigns(page) {
  await page.getByRole("button", { name: "Designs", exact: true }).click();
  await page.locator("#designs").waitFor();
}

test("a reload gives back what was typed, half-typed values too", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-name").fill("Kept <b>name</b>");
    await page.locator("#at-ports-0-at-0").fill("12.");
    await page.locator("#at-ports-0-at-1").fill("1,2.3");
    await page.locator("#at-ports-0-at-2").fill("");
    await settled(page);
    await page.reload();
    await settled(page);
    assert.equal(await page.locator("#at-name").inputValue(), "Kept <b>name</b>");
    assert.equal(await page.locator("#at-ports-0-at-0").inputValue(), "12");
    assert.equal(await page.locator("#at-ports-0-at-1").inputValue(), "1,2.3");
    assert.equal(await page.locator("#at-ports-0-at-2").inputValue(), "");
    assert.equal(await page.locator("#at-ports-0-at-1").getAttribute("aria-invalid"), "true");
    await page.locator("#at-ports-0-at-1").fill("20,5");
    await settled(page);
    assert.equal(await page.locator("#at-ports-0-at-1").inputValue(), "20,5", "it stays as typed while it has the focus");
    await page.locator("#at-ports-0-at-2").fill("\u221260");
    await settled(page);
    assert.equal(await page.locator("#at-ports-0-at-1").inputValue(), "20.5", "and then says what was understood");
    assert.deepEqual((await keptDesign(page)).ports[0].at, [12, 20.5, -60]);
    assert.equal(await page.locator("[aria-invalid=true]").count(), 0);
  });
});

test("focus and caret stay where they are while the page follows", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const field = page.locator("#at-ports-0-name");
    await field.focus();
    await page.keyboard.press("Home");
    await page.keyboard.type("my ", { delay: 30 });
    await settled(page);
    const caret = await field.evaluate((input) => [document.activeElement === input, input.selectionStart]);
    assert.deepEqual(caret, [true, 3]);
    const design = await keptDesign(page);
    const name = design.ports[0].name;
    assert.ok(name.startsWith("my "));
    assert.equal(design.runs[0].from, name, "a run follows its port's new name");
  });
});

test("reordering keeps the focus on the button, and renaming through another's name keeps references", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const [first, second] = (await keptDesign(page)).ports.map((port) => port.name);
    await page.locator("#at-ports-0").getByRole("button", { name: / down$/ }).focus();
    await page.keyboard.press("Enter");
    await settled(page);
    assert.deepEqual((await keptDesign(page)).ports.map((port) => port.name), [second, first]);
    assert.match(await page.evaluate(() => document.activeElement.textContent), new RegExp(`Move port ${first} down`));

    const before = (await keptDesign(page)).runs[0];
    const field = page.locator("#at-ports-1-name");
    await field.fill(second);
    await settled(page);
    assert.ok(await page.locator("#at-ports-1-name, #at-ports-0-name").evaluateAll((all) => all.some((one) => one.getAttribute("aria-invalid") === "true")), "a name used twice is said");
    await field.fill("other");
    await settled(page);
    const run = (await keptDesign(page)).runs[0];
    assert.deepEqual([run.from, run.to], [before.from, before.to].map((name) => (name === first ? "other" : name)));
  });
});

test("arrow keys step a number by its quantity's step, ten with shift, and never out of its range", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const field = page.locator("#at-runs-0-bend_radius");
    await field.fill("20");
    for (const [keys, value] of [["ArrowUp", 20.5], ["Shift+ArrowUp", 25.5], ["ArrowDown", 25]]) {
      await page.keyboard.press(keys);
      assert.equal(await field.inputValue(), String(value));
    }
    await field.fill("0.25");
    await page.keyboard.press("ArrowDown");
    assert.equal(await field.inputValue(), "0.25", "a radius is never below 0");
    await settled(page);
    assert.equal((await keptDesign(page)).runs[0].bend_radius, 0.25);
  });
});

test("a damaged state is set aside and said, never deleted", async () => {
  const damaged = '{"format":"tubewright-design","version":1,"ports":[{';
  await its.withPage(async (page) => {
    await settled(page);
    assert.match(await page.locator(".notices").innerText(), /could not be read.*set aside/s);
    const kept = await page.evaluate(() => Object.entries(localStorage).filter(([key]) => key.startsWith("tubewright.damaged")));
    assert.deepEqual(kept.map(([, text]) => text), [damaged]);
    assert.ok((await keptDesign(page)).ports.length > 0, "the page starts on the demo");
  }, { kept: { "tubewright.design.1": damaged } });
});

test("another design in its place: undo, named after it, brings the one before back, even after a reload", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-name").fill("My own work");
    await page.getByRole("button", { name: "Start from…" }).click();
    await page.getByRole("button", { name: /^A blank design/ }).click();
    await settled(page);
    assert.equal((await keptDesign(page)).ports.length, 0);
    await page.reload();
    await settled(page);
    assert.equal((await keptDesign(page)).ports.length, 0, "a reload stays with it");
    await page.getByRole("button", { name: "Undo: start from a blank design" }).click();
    await settled(page);
    const design = await keptDesign(page);
    assert.equal(design.name, "My own work");
    assert.ok(design.ports.length > 0);
    assert.equal((await kept(page)).length, 1, "a blank design that nobody touched is no work to keep");
    await page.getByRole("button", { name: "Redo: start from a blank design" }).click();
    await settled(page);
    assert.equal((await keptDesign(page)).ports.length, 0);
  });
});

test("steps back and forth outlast a reload and are called by what they did", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const before = await keptDesign(page);
    const [port] = before.ports;
    await page.locator("#at-ports-0-at-0").fill("41");
    await page.locator("#at-runs-0-bend_radius").fill("21");
    await page.getByRole("button", { name: `Remove port ${port.name}` }).click();
    await settled(page);
    const after = await keptDesign(page);
    for (const name of [`remove the port “${port.name}”`, `bend radius of “${before.runs[0].name}”`, `position x of “${port.name}”`]) {
      // Steps are written when typing rests, and when the page is left.
      await page.reload();
      await settled(page);
      await page.getByRole("button", { name: `Undo: ${name}`, exact: true }).click();
      await settled(page);
    }
    assert.deepEqual(await keptDesign(page), before);
    assert.equal(await page.locator(".tools button", { hasText: /^Undo/ }).getAttribute("aria-disabled"), "true");
    await page.reload();
    await settled(page);
    for (let step = 0; step < 3; step += 1) await page.getByRole("button", { name: /^Redo: / }).click();
    await settled(page);
    assert.deepEqual(await keptDesign(page), after);
  });
});

test("removing is undone, and a corner tied to a removed port keeps its place", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const before = await keptDesign(page);
    await page.getByRole("button", { name: `Remove port ${before.ports[0].name}` }).click();
    await settled(page);
    const without = await keptDesign(page);
    assert.equal(without.ports.length, before.ports.length - 1);
    assert.equal(without.runs[0].from, "");
    for (const station of without.runs[0].route) assert.ok(station.corner.every((part) => typeof part === "number" || part.of !== before.ports[0].name));
    assert.match(await page.evaluate(() => document.activeElement.textContent), /Remove port/, "the focus is not lost");
    await page.getByRole("button", { name: "Undo" }).click();
    await settled(page);
    assert.deepEqual(await keptDesign(page), before);
  });
});

test("a damaged design is set aside where it can be saved as a file", async () => {
  const damaged = '{"stamp":"x","changed":"2026-01-01","design":{"format":"tubewright-design",';
  await its.withPage(async (page) => {
    await settled(page);
    assert.match(await page.locator(".notices").innerText(), /could not be read.*“Designs”/s);
    await openDesigns(page);
    const { name, bytes } = await saved(page, () => page.getByRole("button", { name: /^Save it as a file what was set aside/ }).click());
    assert.match(name, /^set-aside-.*\.json$/);
    assert.equal(Buffer.from(bytes).toString(), damaged);
  }, { kept: { "tubewright.kept.1.abc": damaged, "tubewright.last": "abc" } });
});

test("several designs: opened, copied, removed and put back, all in one file and back again", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-name").fill("First <i>loop</i>");
    await settled(page);
    const first = await keptDesign(page);
    await openLoop(page);
    await page.locator("#at-name").fill("Second");
    await settled(page);
    const second = await keptDesign(page);

    await openDesigns(page);
    /** Waits until the shelf shows these, in any order: it is drawn a moment after a press. */
    const shows = (...titles) => page.waitForFunction((wanted) => {
      const shown = [...document.querySelectorAll("#designs .shelf .title")].map((title) => title.innerText);
      return JSON.stringify(shown.sort()) === wanted;
    }, JSON.stringify(titles.sort()));
    await shows("“Second”", "“First <i>loop</i>”");
    assert.ok(await page.locator("#designs .thumb path.skin").count() >= 5, "each has a picture of its tubes");
    await shot(page, "designs");
    await page.getByRole("button", { name: "Copy “Second”" }).click();
    await shows("“First <i>loop</i>”", "“Second (copy)”", "“Second”");
    const { name, bytes } = await saved(page, () => page.getByRole("button", { name: "Save all in one file" }).click());
    assert.match(name, /^tubewright-designs-\d{4}-\d\d-\d\d\.json$/);
    const set = JSON.parse(Buffer.from(bytes).toString());
    assert.equal(set.designs.length, 3);

    await page.getByRole("button", { name: "Open “First <i>loop</i>”" }).click();
    await settled(page);
    assert.deepEqual(await keptDesign(page), first);
    assert.match(await page.locator(".tools button", { hasText: /^Undo/ }).innerText(), /the design's name/, "it comes with its own steps");

    await openDesigns(page);
    await page.getByRole("button", { name: "Remove “Second”" }).click();
    await page.getByRole("button", { name: "Remove “Second (copy)”" }).click();
    await shows("“First <i>loop</i>”");
    await page.keyboard.press("Escape");
    await page.getByRole("button", { name: "Put it back" }).click();
    assert.equal((await kept(page)).length, 2);

    set.designs.push({ format: "tubewright-design", version: 1, name: "Broken", ports: 3 });
    await page.locator("#take-file").setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(JSON.stringify(set)) });
    await page.locator(".notice", { hasText: "3 designs" }).waitFor();
    assert.match(await page.locator(".notice", { hasText: "3 designs" }).innerText(), /Not taken: “Broken”: /);
    const designs = (await kept(page)).map((entry) => entry.design);
    assert.equal(designs.length, 5);
    assert.equal(designs.filter((design) => JSON.stringify(design) === JSON.stringify(second)).length, 1);
  });
});

test("two tabs with one design never write over each other", async () => {
  await its.withPage(async (page, context) => {
    await settled(page);
    await page.locator("#at-name").fill("Shared");
    await settled(page);
    const other = await context.newPage();
    await other.goto(its.url);
    await settled(other);
    assert.equal((await keptDesign(other)).name, "Shared", "a new tab takes up what was worked on last");
    assert.equal((await kept(page)).length, 1);
    await other.locator("#at-ports-0-at-0").fill("77");
    await settled(other);
    await page.locator(".notice", { hasText: "changed in another tab" }).waitFor();
    await page.locator("#at-ports-0-at-1").fill("66");
    await settled(page);
    assert.match(await page.locator(".notices").innerText(), /Nothing was overwritten/);
    await other.locator("#at-ports-0-at-2").fill("55");
    await settled(other);
    const all = (await kept(page)).map(({ design }) => design.ports[0].at.join());
    const [x, , z] = (await keptDesign(page)).ports[0].at;
    const [, y] = (await keptDesign(other)).ports[0].at;
    assert.deepEqual(all.sort(), [`77,${y},55`, `${x},66,${z}`].sort());
    // Undo in the tab that has the copy goes on in the copy.
    await page.getByRole("button", { name: /^Undo: position y of / }).click();
    await settled(page);
    assert.equal((await kept(page)).length, 2);

    await openDesigns(page);
    await other.locator("#at-name").fill("Shared, by the other");
    await page.locator("#designs .title", { hasText: "“Shared, by the other”" }).waitFor();
  });
});

test("the other tab's design can be shown instead of this one's", async () => {
  await its.withPage(async (page, context) => {
    await settled(page);
    const other = await context.newPage();
    await other.goto(its.url);
    await settled(other);
    await other.locator("#at-name").fill("From over there");
    await settled(other);
    await page.getByRole("button", { name: "Show the other tab's" }).click();
    await settled(page);
    assert.equal((await keptDesign(page)).name, "From over there");
    await page.locator("#at-ports-0-at-0").fill("12");
    await settled(page);
    assert.equal((await kept(page)).length, 1, "it is the same design, changed by one after the other");
  });
});

test("a full store is said and does not stop the work", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.evaluate(() => {
      Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); };
    });
    await page.locator("#at-ports-0-at-0").fill("33");
    await settled(page);
    assert.match(await page.locator(".notices").innerText(), /not kept if you leave.*Save the design/s);
    assert.equal(await page.locator("#at-ports-0-at-0").inputValue(), "33");
  });
});

test("a 3MF file and the archive of everything open again as the design", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-name").fill("From its own file");
    await settled(page);
    const before = await keptDesign(page);
    for (const button of [/^3MF of /, /^All files in one/]) {
      const { name, bytes } = await saved(page, () => page.getByRole("button", { name: button }).first().click());
      await page.getByRole("button", { name: "Start from…" }).click();
      await page.getByRole("button", { name: /^A blank design/ }).click();
      await settled(page);
      assert.notDeepEqual(await keptDesign(page), before);
      await page.locator("#open-file").setInputFiles({ name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
      await page.waitForFunction(() => document.getElementById("at-name").value === "From its own file");
      await settled(page);
      assert.deepEqual(await keptDesign(page), before);
    }
  });
});
