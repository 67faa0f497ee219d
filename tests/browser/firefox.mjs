// The same page in Firefox, as Debian ships it, driven by WebDriver BiDi: one browser and one server for a file of
// tests. Without a graphics card Firefox gives no WebGL here, so the drawing stands in for the solid preview.

import assert from "node:assert/strict";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";
import { after, before } from "node:test";
import puppeteer from "puppeteer-core";
import { settled } from "./bench.mjs";
import { SITE, serveSite } from "./site.mjs";

const SHOTS = path.join(SITE, "../screenshots");
const AGO = 30_000;

/** Starts Firefox and the server before the tests of a file and ends them after. */
export function firefoxBench() {
  const its = { url: "", browser: null, server: null };
  before(async () => {
    its.server = await serveSite();
    its.url = its.server.url;
    its.browser = await launch({});
  });
  after(async () => {
    await its.browser?.close();
    await its.server?.close();
  });

  /** Runs `work` on the page in storage of its own; fails on what the page logs as an error. `elsewhere`: the test opens it. */
  its.withPage = async (work, { quiet = true, elsewhere = false, browser = its.browser } = {}) => {
    const context = await browser.createBrowserContext();
    const faults = [];
    const open = async (url) => {
      const page = await context.newPage();
      page.on("console", (message) => {
        if (message.type() === "error") faults.push(`console: ${message.text()}`);
      });
      page.on("pageerror", (error) => faults.push(`page: ${error.message}`));
      if (url) await page.goto(url);
      return page;
    };
    try {
      await work(await open(elsewhere ? null : its.url), open);
      if (quiet) assert.deepEqual(faults, [], "the page logged errors");
    } finally {
      await context.close();
    }
  };

  /** The same in a Firefox that was started with other preferences. */
  its.withPreferences = async (preferences, work) => {
    const browser = await launch(preferences);
    try {
      await its.withPage(work, { browser, quiet: false });
    } finally {
      await browser.close();
    }
  };
  return its;
}

function launch(preferences) {
  return puppeteer.launch({
    browser: "firefox", executablePath: process.env.FIREFOX ?? "/usr/bin/firefox-esr", headless: true,
    defaultViewport: { width: 1440, height: 900 },
    // Nobody asks for what the page loads; to be told of each of its files takes Firefox as long as to load them.
    networkEnabled: false,
    extraPrefsFirefox: {
      "browser.download.folderList": 2, "browser.download.dir": downloads(), "browser.download.useDownloadDir": true,
      "browser.helperApps.neverAsk.saveToDisk": "*/*", "browser.download.alwaysOpenPanel": false, ...preferences,
    },
  });
}

let folder = "";

/** Where this process's files are saved to. */
function downloads() {
  if (!folder) {
    folder = fs.mkdtempSync(path.join(os.tmpdir(), "tubewright-firefox-"));
    process.once("exit", () => fs.rmSync(folder, { recursive: true, force: true }));
  }
  return folder;
}

/** Presses the button called so, once it is there and takes a press. Told by its words, since asking Firefox's tree of access takes seconds. */
export async function press(page, name) {
  const found = await page.waitForFunction((wanted) => [...document.querySelectorAll("button:enabled")].find((one) =>
    (one.getAttribute("aria-label") ?? one.textContent).replace(/\s+/g, " ").trim() === wanted && one.checkVisibility()), { timeout: AGO }, name);
  await found.click();
}

/** Types over what a field holds. */
export async function put(page, field, text) {
  await page.locator(field).wait();
  await page.$eval(field, (input) => {
    input.focus();
    input.select();
  });
  await page.keyboard.type(text);
  await settled(page);
}

/** The text of what a selector finds, once there is such a thing whose words fit. */
export async function says(page, selector, words) {
  await page.waitForFunction(
    (where, pattern, flags) => [...document.querySelectorAll(where)].some((one) => new RegExp(pattern, flags).test(one.innerText)),
    { timeout: AGO }, selector, words.source, words.flags);
}

/** Clicks, and gives the name and bytes of the file that comes of it. */
export async function savedFile(click) {
  const before = new Set(fs.readdirSync(downloads()));
  await click();
  // Firefox writes under other names first: a file is whole once it is there twice in a row, alone and no larger.
  let last = "";
  for (let waited = 0; waited < AGO; waited += 100) {
    const fresh = fs.readdirSync(downloads()).filter((one) => !before.has(one));
    const size = fresh.length === 1 ? fs.statSync(path.join(downloads(), fresh[0]), { throwIfNoEntry: false })?.size ?? 0 : 0;
    const seen = size > 0 && !fresh[0].endsWith(".part") ? `${fresh[0]} ${size}` : "";
    if (seen && seen === last) return { name: fresh[0], bytes: new Uint8Array(fs.readFileSync(path.join(downloads(), fresh[0]))) };
    last = seen;
    await new Promise((done) => { setTimeout(done, 100); });
  }
  assert.fail("nothing was saved");
}

/** Keeps a picture of the page in target/screenshots where the variable SHOTS asks for pictures. */
export async function pictured(page, name) {
  if (!process.env.SHOTS) return;
  fs.mkdirSync(SHOTS, { recursive: true });
  await page.screenshot({ path: path.join(SHOTS, `firefox-${name}.png`) });
}
