// Nothing leaves the machine: the policy forbids it, nothing is asked of another place, no cookie is set, and the page says so.

import assert from "node:assert/strict";
import fs from "node:fs";
import path from "node:path";
import { test } from "node:test";
import { bench, saved, settled } from "./bench.mjs";
import { SITE } from "./site.mjs";

const its = bench();

/** The directives of a policy. */
function directives(html) {
  const [, policy] = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(html);
  return new Map(policy.split(";").map((one) => one.trim().split(/\s+/)).map(([name, ...values]) => [name, values]));
}

test("the page's own policy lets in nothing but its own files, and no code out of text", () => {
  for (const [file, own] of [["index.html", "'self'"], ["tubewright.html", ""]]) {
    const policy = directives(fs.readFileSync(path.join(SITE, file), "utf8"));
    assert.deepEqual(policy.get("default-src"), ["'none'"], file);
    for (const [name, values] of policy) {
      for (const value of values) {
        assert.ok(!["'unsafe-inline'", "'unsafe-eval'", "*", "https:", "http:"].includes(value), `${file}: ${name} ${value}`);
        assert.ok(value === "'none'" || value === own || /^'(sha256-[A-Za-z0-9+/=]+|wasm-unsafe-eval|script)'$|^(data|blob):$|^(lit-html|tubewright)$/.test(value), `${file}: ${name} ${value}`);
      }
    }
    assert.ok(policy.get("script-src").includes("'wasm-unsafe-eval'"));
    assert.deepEqual(policy.get("require-trusted-types-for"), ["'script'"]);
  }
});

test("a whole session sets no cookie, asks nothing elsewhere, and what tries to is stopped", async () => {
  await its.withPage(async (page, context) => {
    await settled(page);
    await page.locator("#at-ports-0-at-0").fill("44");
    await settled(page);
    await saved(page, () => page.getByRole("button", { name: "Save", exact: true }).click());
    assert.deepEqual(await context.cookies(), []);
    assert.match(await page.locator(".private").innerText(), /leaves this machine.*no cookie/s);
  });
  await its.withPage(async (page) => {
    await settled(page);
    const stopped = await page.evaluate(async () => {
      const tried = [];
      addEventListener("securitypolicyviolation", (event) => tried.push(event.effectiveDirective));
      await fetch("http://127.0.0.1:1/").catch(() => undefined);
      const image = new Image();
      image.src = "http://127.0.0.1:1/x.png";
      // What a test calls itself is let through; what the page does later is not.
      const evaluated = await new Promise((done) => setTimeout(() => {
        try {
          done(globalThis.eval("1") === 1);
        } catch {
          done(false);
        }
      }));
      await new Promise((done) => setTimeout(done, 200));
      return { tried, evaluated };
    });
    assert.ok(stopped.tried.includes("connect-src") && stopped.tried.includes("img-src"), stopped.tried.join());
    assert.equal(stopped.evaluated, false);
  }, { quiet: false });
});
