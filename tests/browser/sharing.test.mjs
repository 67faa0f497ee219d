// A link holds the whole design: round and back, beside what is there, bounded, inert, and never sent to a server.

import assert from "node:assert/strict";
import { test } from "node:test";
import zlib from "node:zlib";
import { bench, keptDesign, openLoop, settled, shot } from "./bench.mjs";

const its = bench();

/** A link to a design, made here and not by the page. */
const linkTo = (text) => `${its.url}#design=1.${zlib.deflateRawSync(Buffer.from(text)).toString("base64url")}`;

async function linkOf(page) {
  await page.getByRole("button", { name: "Share", exact: true }).click();
  const link = page.locator("#share-link");
  await link.waitFor();
  return link.inputValue();
}

test("a link carries the loop to another browser, where it stands beside what was there", async () => {
  await its.withPage(async (page) => {
    await openLoop(page);
    const link = await linkOf(page);
    const mine = await keptDesign(page);
    await page.locator("svg.code").waitFor();
    await shot(page, "share");
    assert.ok(link.startsWith(`${its.url}#design=1.`) && link.length < 8_000, `${link.length} characters`);
    const text = zlib.inflateRawSync(Buffer.from(link.split("#design=1.")[1], "base64url")).toString();
    assert.deepEqual(JSON.parse(text), mine, "what is in the link is the design, by another library's reading");

    await its.withPage(async (friend) => {
      await settled(friend);
      await friend.locator("#at-name").fill("My own");
      await settled(friend);
      const asked = [];
      friend.on("request", (request) => asked.push(request.url()));
      await friend.goto(link);
      await friend.waitForFunction((name) => document.getElementById("at-name")?.value === name, mine.name);
      await settled(friend);
      assert.deepEqual(await keptDesign(friend), mine);
      assert.equal(new URL(friend.url()).hash, "", "a reload does not open it again");
      assert.ok(asked.every((url) => !url.includes("design=1.")), "nothing of it is sent");
      await friend.reload();
      await settled(friend);
      assert.deepEqual(await keptDesign(friend), mine);
      await friend.getByRole("button", { name: "Undo: open a linked design" }).click();
      await settled(friend);
      assert.equal((await keptDesign(friend)).name, "My own");
    });
  });
});

test("a link that is broken, too large, newer or no design is refused in words, and the work stays", async () => {
  const bomb = linkTo(`{"format":"tubewright-design","version":1,"notes":"${" ".repeat(40_000_000)}"}`);
  assert.ok(bomb.length < 60_000, "it is short, whatever it grows to");
  const links = [
    [`${its.url}#design=1.%%%`, /letters that no link/],
    [`${its.url}#design=1.AAAA`, /not whole/],
    [`${its.url}#design=2.AAAA`, /newer page/],
    [`${its.url}#design=`, /not whole/],
    [linkTo("{}"), /not opened/],
    [linkTo("not JSON"), /not opened/],
    [bomb, /larger than any design/],
  ];
  await its.withPage(async (page) => {
    await settled(page);
    await page.locator("#at-name").fill("Still here");
    await settled(page);
    const before = await keptDesign(page);
    for (const [link, words] of links) {
      await page.evaluate((hash) => { location.hash = hash; }, new URL(link).hash);
      await page.locator(".notice.trouble", { hasText: words }).waitFor();
      assert.deepEqual(await keptDesign(page), before);
      await page.getByRole("button", { name: "Put this message away" }).last().click();
    }
  });
});

test("a link whose every string is markup runs nothing", async () => {
  const evil = `"><img src=x onerror="globalThis.ran=1"><script>globalThis.ran=1</script><svg onload="globalThis.ran=1">`;
  await its.withPage(async (page) => {
    await settled(page);
    const design = structuredClone(await keptDesign(page));
    design.name = evil;
    design.notes = evil;
    for (const [list, key] of [["fittings", "fitting"], ["ports", "port"], ["runs", "run"]]) for (const [at, thing] of design[list].entries()) thing.name = `${key} ${at} ${evil}`;
    for (const port of design.ports) port.fitting = design.fittings[0].name;
    [design.runs[0].from, design.runs[0].to] = design.ports.map((port) => port.name);
    design.runs[0].route = [];
    await page.evaluate((hash) => { location.hash = hash; }, linkTo(JSON.stringify(design)).split("#")[1]);
    await page.waitForFunction((name) => document.getElementById("at-name").value === name, evil);
    await settled(page);
    await page.getByRole("button", { name: "Designs", exact: true }).click();
    await page.locator("#designs .title").first().waitFor();
    await page.keyboard.press("Escape");
    assert.equal(await page.evaluate(() => globalThis.ran), undefined);
    assert.equal(await page.locator("img[src=x]").count(), 0);
  });
});

test("a design too large for a link says so and names the way out", async () => {
  await its.withPage(async (page) => {
    await settled(page);
    const design = await keptDesign(page);
    // Names whose letters do not compress.
    let seed = 7;
    const noise = () => Array.from({ length: 190 }, () => String.fromCharCode(0x4e00 + ((seed = (seed * 48271) % 2147483647) % 20_000))).join("");
    const more = Array.from({ length: 200 }, () => ({ ...design.ports[0], name: noise() }));
    const text = JSON.stringify({ ...design, name: "Long", ports: [...design.ports, ...more] });
    await page.locator("#open-file").setInputFiles({ name: "long.json", mimeType: "application/json", buffer: Buffer.from(text) });
    await page.waitForFunction(() => document.getElementById("at-name").value === "Long");
    await settled(page);
    await page.getByRole("button", { name: "Share", exact: true }).click();
    await page.locator("#share", { hasText: "too large for a link" }).waitFor();
    assert.match(await page.locator("#share").innerText(), /Save it as a file/);
    assert.equal(await page.locator("#share-link").count(), 0);
  });
});
