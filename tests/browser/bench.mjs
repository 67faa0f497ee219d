// One browser and one server for a file of tests, and a page that watches itself: no console error, no failed
// request, nothing asked of anywhere but the page's own origin.

import assert from "node:assert/strict";
import fs from "node:fs";
import path from "node:path";
import { after, before } from "node:test";
import { chromium } from "playwright-core";
import { SITE, serveSite, SOFTWARE } from "./site.mjs";

const SHOTS = path.join(SITE, "../screenshots");

/** Starts browser and server before the tests of a file and ends them after. */
export function bench({ args = [] } = {}) {
  const its = { url: "", browser: null };
  let server;
  before(async () => {
    server = await serveSite();
    its.url = server.url;
    its.browser = await chromium.launch({
      executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium",
      args: ["--disable-quic", ...SOFTWARE, ...args],
    });
  });
  after(async () => {
    await its.browser?.close();
    await server?.close();
  });

  /**
   * Opens the page in a profile of its own, runs `work`, and fails on anything that the page must never do.
   * `kept`: what the browser's storage holds beforehand. `quiet: false` where errors are what is tested. `size: null` takes the window's own.
   * `workers: "allow"` lets the page keep its files, which takes a moment that only the tests of that need; `elsewhere`: the page is opened by the test itself.
   */
  its.withPage = async (work, { size = [1440, 900], scheme = "light", kept = {}, quiet = true, workers = "block", elsewhere = false, prepare } = {}) => {
    const context = await its.browser.newContext({
      viewport: size && { width: size[0], height: size[1] }, colorScheme: scheme, acceptDownloads: true, serviceWorkers: workers,
    });
    const page = await context.newPage();
    const faults = [];
    page.on("console", (message) => {
      if (message.type() === "error") faults.push(`console: ${message.text()}`);
    });
    page.on("pageerror", (error) => faults.push(`page: ${error.message}`));
    page.on("request", (request) => {
      const { origin, protocol } = new URL(request.url());
      if (!elsewhere && `${origin}/` !== its.url && protocol !== "blob:" && protocol !== "data:") faults.push(`request to ${request.url()}`);
    });
    page.on("response", (response) => {
      if (response.status() >= 400) faults.push(`${response.status()} ${response.url()}`);
    });
    if (Object.keys(kept).length > 0) {
      await page.addInitScript((items) => {
        if (sessionStorage.getItem("put")) return;
        sessionStorage.setItem("put", "yes");
        for (const [key, value] of Object.entries(items)) localStorage.setItem(key, value);
      }, kept);
    }
    await prepare?.(page, context);
    try {
      if (!elsewhere) await page.goto(its.url);
      await work(page, context, faults);
      if (quiet) assert.deepEqual(faults, [], "the page logged errors or asked for something elsewhere");
    } finally {
      await context.close();
    }
  };
  return its;
}

/** Waits until the engine has made every edit that it was asked for and answered everything about the design as it is. */
export async function settled(page) {
  await page.waitForFunction(() => {
    const root = document.getElementById("page");
    return root?.dataset.sent !== undefined && root.dataset.sent === root.dataset.answered && Number(root.dataset.editing ?? 0) === 0;
  });
  await drawn(page);
}

/** Opens the demo of four tubes, waits until all are made, and gives it. */
export async function openLoop(page) {
  await settled(page);
  await page.getByRole("button", { name: "Start from…" }).click();
  await page.locator(".menu .choice", { hasText: "A loop of four tubes" }).click();
  await page.waitForFunction(() => document.querySelectorAll(".file-list li").length === 4);
  await settled(page);
  return keptDesign(page);
}

/** Waits until what was asked to be drawn has been. */
export async function drawn(page) {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

/** Waits until the page is drawn and, where the variable SHOTS asks for pictures to be looked at, keeps one in target/screenshots. */
export async function shot(page, name, options = {}) {
  await drawn(page);
  if (!process.env.SHOTS) return;
  fs.mkdirSync(SHOTS, { recursive: true });
  await page.screenshot({ path: path.join(SHOTS, `${name}.png`), ...options });
}

/** The design that the page keeps in the browser's storage. */
export function keptDesign(page) {
  return page.evaluate(() => {
    const own = sessionStorage.getItem("tubewright.own");
    return JSON.parse(localStorage.getItem(`tubewright.kept.1.${own}`) ?? "null")?.design ?? null;
  });
}

/** The same as the text that the engine can be given. */
export async function keptText(page) {
  return JSON.stringify(await keptDesign(page));
}

/** Clicks, and gives the name and bytes of the file that comes of it. */
export async function saved(page, click) {
  const [download] = await Promise.all([page.waitForEvent("download"), click()]);
  return { name: download.suggestedFilename(), bytes: new Uint8Array(fs.readFileSync(await download.path())) };
}

/** Is run in a page before its own modules: keeps its threads where `killThread` finds them. */
export function keepThreads() {
  const Real = Worker;
  globalThis.threads = [];
  globalThis.Worker = class extends Real {
    constructor(...given) {
      super(...given);
      globalThis.threads.push(this);
    }
  };
}

/** Tells the page that its last thread has ended: a worker's own error is all that it is told of that. */
export function killThread(page) {
  return page.evaluate(() => globalThis.threads.at(-1).dispatchEvent(new ErrorEvent("error", { message: "killed", cancelable: true })));
}
