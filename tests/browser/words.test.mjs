// The words of the page in another language: none is missing and none is left over, here in the tables and then in the browser.

import assert from "node:assert/strict";
import { test } from "node:test";
import { Sentences } from "../../www/words/sentences.js";
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
  const known = /^(Tubewright|Station|Radius|Material|plus|Filament|filament|System|system|Normal|warm|laminar|turbulent|Zoom|[A-Z]+\d*|.*\b(1[789]|20)\d\d\b.*|Definition|null|.*\{\w+\}.*)$/s;
  assert.deepEqual(same.map(([english]) => english).filter((english) => !known.test(english)), []);
});

test("a sentence of the engine is told with the builder's names as they are, whatever they say", () => {
  const sentences = new Sentences(table.sentences, (word) => (Object.hasOwn(table.engine, word) ? table.engine[word] : undefined), (number) => number.replace(/[.,]/g, (mark) => (mark === "," ? "." : ",")));
  const told = [
    ["no port carries “Coil and corner 2, then none”.", "kein Anschluss trägt „Coil and corner 2, then none“."],
    ["fit the tubes in this order: “a and b”, then “c to d”. “a and b” and “c to d” go straight in, when every part stands.",
      "die Rohre in dieser Reihenfolge einbauen: „a and b“, dann „c to d“. „a and b“ und „c to d“ gehen gerade hinein, wenn jedes Bauteil steht."],
    ["corner 1 and the end of the tube at “1.5 and 2.5” leave 3.5 mm for their bends, which need 1,234.5 mm. Move them apart.",
      "Ecke 1 und das Rohrende an „1.5 and 2.5“ lassen 3,5 mm für ihre Bögen, die 1.234,5 mm brauchen. Sie auseinanderrücken."],
    ["near coil 1 the curve bends the tube of 12 mm to a radius of 3.5 mm; at least 6.001 mm is needed. Move point 2 by 3 mm, to 12.5, 3, 4.25.",
      "nahe Wendel 1 biegt die Kurve das Rohr von 12 mm auf einen Radius von 3,5 mm; nötig ist mindestens 6,001 mm. Punkt 2 um 3 mm verschieben, auf 12,5; 3; 4,25."],
    ["the wall is 0.4 mm; 0.5 mm is the least for the printer “medium resin”. A bore of 11 mm or less leaves it.",
      "die Wand hat 0,4 mm; 0,5 mm ist das Mindeste für den Drucker „mittlerer Harzdrucker“. Ein Innendurchmesser bis 11 mm lässt sie."],
  ];
  for (const [english, german] of told) assert.equal(sentences.of(english), german);
  assert.equal(sentences.of("what no template says"), undefined);
});
