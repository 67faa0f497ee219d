// The words of the page in another language: none is missing and none is left over, here in the tables and then in the browser.

import assert from "node:assert/strict";
import { test } from "node:test";
import { table } from "../../www/words/german/table.js";
import { startEngine } from "../page/site.mjs";
import { wordsOfPage } from "./words.mjs";

const { engine } = await startEngine();
const vocabulary = JSON.parse(engine.vocabulary());
const presets = JSON.parse(engine.presets());

const holes = (text) => [...text.matchAll(/\{\w+\}/g)].map(([hole]) => hole).sort();
const hasLetters = (text) => typeof text === "string" && /\p{L}/u.test(text);

/** Every word of the engine's tables that the page shows, each with where it is from. */
function wordsOfEngine() {
  const found = new Map();
  const put = (where, ...texts) => texts.filter(hasLetters).forEach((text) => found.set(text, where));
  for (const [key, { label, hint }] of Object.entries(vocabulary.quantities)) put(key, label, hint);
  for (const [code, { title, meaning }] of Object.entries(vocabulary.findings)) put(code, title, meaning);
  for (const { path, label, formula, source, range } of vocabulary.results) put(path, label, formula, source, range);
  put("severities", ...Object.values(vocabulary.severities));
  put("cautions", ...vocabulary.cautions);
  put("first_fill", ...vocabulary.first_fill.flat());
  for (const list of ["fittings", "tubes"]) for (const { label, source } of presets[list]) put(list, label, source);
  for (const { fitting } of presets.fittings) put("fittings", fitting.name);
  for (const list of ["materials", "printers", "coolants", "pumps", "parts"]) {
    for (const { name, way, base, cautions, source } of presets[list]) put(list, name, way, base, cautions, source);
  }
  for (const { label, about } of presets.demos) put("demos", label, about);
  return found;
}

test("German has a row for every word of the page, and none that the page does not say", () => {
  const words = wordsOfPage();
  const keys = new Set(words.map(({ key }) => key));
  assert.ok(keys.size > 700, "the page's words were not found");
  assert.deepEqual(words.filter(({ key }) => !Object.hasOwn(table.words, key)).map(({ key, at }) => `${at} ${key}`), []);
  assert.deepEqual(Object.keys(table.words).filter((key) => !keys.has(key)), []);
});

test("what is filled into German words is what is filled into the English ones", () => {
  const kinds = new Map(wordsOfPage().map(({ key, kind }) => [key, kind]));
  for (const [key, words] of Object.entries(table.words)) {
    assert.deepEqual(holes(words), holes(key), key);
    assert.equal(words, words.trim(), key);
    if (kinds.get(key) === "count") assert.equal(words.split("|").length, 2, `${key}: German has two forms`);
    // A template's words go into markup as they are.
    if (kinds.get(key) === "template") assert.doesNotMatch(words, /[<>]|&(?!#?\w+;)|"/, key);
  }
  for (const [english, german] of table.sentences) assert.deepEqual(holes(german), holes(english), english);
});

test("German has a row for every word of the engine's tables, and none that they do not hold", () => {
  const words = wordsOfEngine();
  assert.ok(words.size > 700);
  assert.deepEqual([...words].filter(([text]) => !Object.hasOwn(table.engine, text)), []);
  assert.deepEqual(Object.keys(table.engine).map((key) => key.replace(/^result:/, "")).filter((key) => !words.has(key)), []);
});

test("German has every message of a finding", () => {
  const messages = Object.values(vocabulary.findings).flatMap(({ messages }) => messages);
  assert.ok(messages.length > 100);
  const known = new Set(table.sentences.map(([english]) => english));
  assert.deepEqual(messages.filter((message) => !known.has(message)), []);
  assert.equal(known.size, table.sentences.length, "a sentence stands twice");
});

test("every range of a quantity is one of the forms that are told in German", () => {
  const forms = table.sentences.map(([english]) => english).filter((english) => /^(from|above) \{low\}/.test(english))
    .map((english) => new RegExp(`^${english.replace(/\{\w+\}/g, ".+")}$`));
  for (const [key, { range }] of Object.entries(vocabulary.quantities)) if (range) assert.ok(forms.some((form) => form.test(range)), `${key}: ${range}`);
});

test("no word of German is English that was forgotten", () => {
  const same = [...Object.entries(table.words), ...Object.entries(table.engine), ...table.sentences].filter(([english, german]) => english === german && /\p{L}{4}/u.test(english));
  // Names, symbols, citations, and words that are the same in both.
  const known = /^(Tubewright|Station|Radius|Material|plus|Filament|filament|System|system|Normal|warm|laminar|turbulent|Zoom|[A-Z]+\d*|.*\b(1[789]|20)\d\d\b.*|Definition|.*\{\d\}.*)$/s;
  assert.deepEqual(same.map(([english]) => english).filter((english) => !known.test(english)), []);
});
