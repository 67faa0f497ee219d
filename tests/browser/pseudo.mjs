// A language made for the tests: every word that the page looks up comes back in brackets, so that what is outside of them
// was never looked up.

import { table } from "../../www/words/german/table.js";

const bracketed = (text) => `⟦${text}⟧`;
const rows = (words) => Object.fromEntries(Object.keys(words).map((key) => [key, key.split("|").map(bracketed).join("|")]));

/** Serves the made language in place of German's table, and has the page choose it. */
export async function speakPseudo(page) {
  const made = {
    words: rows(table.words), decimal: ",", sentences: table.sentences.map(([english]) => [english, bracketed(english)]),
    files: Object.fromEntries(Object.keys(table.files).map((key) => [key, bracketed(key.replace(/^[a-z]+:(?! )/, ""))])), quotes: table.quotes,
    engine: Object.fromEntries(Object.keys(table.engine).map((key) => [key, bracketed(key.replace(/^result:/, ""))])),
  };
  await page.route("**/words/german/table.js", (route) => route.fulfill({ contentType: "text/javascript; charset=utf-8", body: `export const table = ${JSON.stringify(made)};` }));
}

/**
 * What stands between tags and in spoken attributes outside of brackets, and holds letters that are neither names nor signs.
 * Brackets may open in one text and close in a later one: words can hold markup.
 */
export function outsideOfBrackets(page, names) {
  return page.evaluate((names) => {
    const SIGNS = /^(x|y|z|a|b|mm|in|cm³|cm³\/min|g|m|K|W|h|min|s|L\/h|kPa|MPa|mPa·s|mL|MB|kB|°C|g\/cm³|kg\/m³|m\/s|J|J\/\(kg·K\)|mbar·L\/s|°\/mm|µm\/\(m·K\)|µm|STL|3MF|A[34]|svg|Tubewright|English|Deutsch)$/;
    const known = [...names].sort((one, other) => other.length - one.length);
    const found = new Set();
    let depth = 0;
    const take = (text, where) => {
      let plain = "";
      for (const letter of text) {
        if (letter === "⟦") depth += 1;
        plain += depth > 0 ? " " : letter;
        if (letter === "⟧") depth -= 1;
      }
      for (const name of known) plain = plain.replaceAll(name, " ");
      const words = plain.split(/[\s,;:"„“”×→]+/);
      const bare = (word) => word.replace(/^[+−(.]*[\d.,]*|[.,)]*$/g, "");
      if (words.some((word) => /\p{L}/u.test(word) && !SIGNS.test(word) && !SIGNS.test(bare(word)))) found.add(`${where}: ${text.trim().replace(/\s+/g, " ").slice(0, 160)}`);
    };
    const skip = (element) => element.closest("[lang=en]:not(html), script, style, noscript");
    // Pictures cut and break their words, so what they say is looked at in their files.
    const inPicture = (element) => element.closest("svg.plot, .sheet svg");
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node; node = texts.nextNode()) {
      const parent = node.parentElement;
      if (parent && !skip(parent) && !inPicture(parent)) take(node.data, parent.closest("[id]")?.id || parent.tagName);
    }
    if (depth !== 0) found.add(`brackets that do not close: ${depth}`);
    for (const element of document.querySelectorAll("[aria-label], [title], [placeholder], [alt]")) {
      if (skip(element)) continue;
      for (const name of ["aria-label", "title", "placeholder", "alt"]) take(element.getAttribute(name) ?? "", `${name} of ${element.id || element.tagName}`);
    }
    return [...found];
  }, names);
}

/** Every text of a design: what a builder typed. */
export function namesIn(design) {
  const found = new Set();
  const walk = (value) => {
    if (typeof value === "string" && value !== "") {
      found.add(value);
      value.split("\n").forEach((line) => line && found.add(line.slice(0, 60)));
    } else if (value && typeof value === "object") Object.values(value).forEach(walk);
  };
  walk(design);
  return [...found];
}
