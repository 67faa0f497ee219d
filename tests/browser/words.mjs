// The words of the page, read out of its modules: what stands in templates, what is said outside of them, what is counted.
// The modules are parsed, so that nothing is missed for the way it is written.

import fs from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "acorn";
import { keyOf, joined, segmentsIn } from "../../www/words/segments.js";

const WWW = path.join(path.dirname(fileURLToPath(import.meta.url)), "../../www");
const TEMPLATES = ["html", "svg"];

/** @typedef {{ key: string, kind: "template" | "say" | "count", at: string }} Word */

/** Every word of the page that a person can see or hear, with where it stands. @returns {Word[]} */
export function wordsOfPage() {
  return modules().flatMap((file) => wordsOfModule(fs.readFileSync(path.join(WWW, file), "utf8"), file));
}

/** The page's modules, without those that hold a language's table. */
export function modules() {
  const all = fs.readdirSync(WWW, { recursive: true }).map((file) => String(file).replaceAll("\\", "/"));
  return all.filter((file) => file.endsWith(".js") && !/^(node_modules|vendor|single|types|words\/german)\//.test(file) && file !== "sw.js").sort();
}

/**
 * @param {string} text
 * @param {string} file
 * @returns {Word[]}
 */
export function wordsOfModule(text, file) {
  /** @type {Word[]} */
  const found = [];
  each(parse(text, { ecmaVersion: "latest", sourceType: "module", locations: true }), (node) => {
    const at = `${file}:${node.loc.start.line}`;
    if (node.type === "TaggedTemplateExpression") {
      const strings = node.quasi.quasis.map((part) => part.value.cooked);
      if (TEMPLATES.includes(node.tag.name)) found.push(...segmentsIn(joined(strings)).map(({ key }) => ({ key, kind: "template", at })));
      else if (node.tag.name === "say") found.push({ key: keyOf(strings).key, kind: "say", at });
    } else if (node.type === "CallExpression" && node.callee.name === "counted") {
      const [, one, many] = node.arguments;
      if (one === undefined) return;
      if (one.type !== "Literal" || (many !== undefined && many.type !== "Literal")) throw new Error(`${at}: what is counted must stand there as it is`);
      found.push({ key: `${one.value}|${many?.value ?? `${one.value}s`}`, kind: "count", at });
    }
  });
  return found;
}

/**
 * @param {any} node
 * @param {(node: any) => void} visit
 */
function each(node, visit) {
  if (Array.isArray(node)) return node.forEach((one) => each(one, visit));
  if (typeof node?.type !== "string") return;
  visit(node);
  for (const [name, part] of Object.entries(node)) if (name !== "loc" && typeof part === "object") each(part, visit);
}
