// What goes into a number of the results: the design's own figures and other results, each as it is now.

import { valueAt, upFrom } from "../design/pointer.js";
import { counted, listed } from "../words/numbers.js";
import { figureAt, figureWords } from "./figure.js";

/** @import { Sheet } from "../form/sheet.js" */

/**
 * `place`: where it is in the design, or in the report where it is a result.
 * @typedef {{ place: string, isResult: boolean, label: string, of: string, value: string }} Input
 */

// More lines than this of one kind say no more.
const MOST = 12;

/**
 * What goes into the result at `path`, whose positions say which run and which end it is about.
 * @param {Sheet} sheet
 * @param {string} path
 * @returns {Input[]}
 */
export function inputsOf(sheet, path) {
  const { words } = sheet;
  const own = words.result(path);
  return own.inputs.flatMap((key) => {
    // A reading can have the same place as what is made of it; the result itself comes of the reading.
    const isResult = words.isResult(key) && key !== own.path;
    const places = isResult ? spread(sheet.report, filled(key, path)) : placesIn(sheet, key, path);
    return places.slice(0, MOST).map((place) => (isResult ? resultInput(sheet, place) : ownInput(sheet, place, key)));
  });
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @returns {Input}
 */
function resultInput(sheet, place) {
  return { place, isResult: true, label: sheet.words.result(place).label, of: nameAround(sheet.report, place), value: figureAt(sheet, place) };
}

/**
 * @param {Sheet} sheet
 * @param {string} place
 * @param {string} key
 * @returns {Input}
 */
function ownInput(sheet, place, key) {
  const { label, unit } = sheet.words.quantity(key);
  const value = known(sheet, place);
  const told = key.endsWith("/route") && Array.isArray(value) ? counted(value.length, "station")
    : Array.isArray(value) ? listed(value.map((one) => figureWords(one, ""))) + (unit ? ` ${unit}` : "")
    : figureWords(value, unit);
  return { place, isResult: false, label, of: nameAround(sheet.design, place), value: told };
}

/**
 * The result's own positions put into a key that names the same lists: the run, and the end of it.
 * @param {string} key
 * @param {string} path
 */
function filled(key, path) {
  const run = /^(?:\/fit)?\/runs\/(\d+)/.exec(path)?.[1];
  const end = /\/seals\/(\d)/.exec(path)?.[1];
  const ofRun = run === undefined ? key : key.replace(/^(\/fit)?\/runs\/\*/, `$1/runs/${run}`);
  return end === undefined ? ofRun : ofRun.replace("/seals/*", `/seals/${end}`);
}

/**
 * Every place that a key with `*` stands for.
 * @param {unknown} whole
 * @param {string} key
 * @returns {string[]}
 */
function spread(whole, key) {
  const at = key.indexOf("/*");
  if (at < 0) return [key];
  const list = valueAt(whole, key.slice(0, at));
  if (!Array.isArray(list)) return [];
  const rest = key.slice(at + 2);
  // The parts of a point are told together.
  if (rest === "") return [key.slice(0, at)];
  return list.flatMap((_, index) => spread(whole, `${key.slice(0, at)}/${index}${rest}`));
}

/**
 * The places of the design that a key stands for: of a run its own ports and their fittings, of an end its own.
 * @param {Sheet} sheet
 * @param {string} key
 * @param {string} path
 */
function placesIn(sheet, key, path) {
  const { design, report } = sheet;
  const name = report?.runs[Number(/^(?:\/fit)?\/runs\/(\d+)/.exec(path)?.[1] ?? -1)]?.name;
  const at = design.runs.findIndex((run) => run.name === name);
  if (at < 0) return spread(design, key).filter((place) => known(sheet, place) !== undefined);
  const ends = [design.runs[at].from, design.runs[at].to];
  const end = /\/seals\/(\d)/.exec(path)?.[1];
  const ports = (end === undefined ? ends : [ends[Number(end)]]).map((port) => design.ports.findIndex((one) => one.name === port));
  const fittings = ports.map((port) => design.fittings.findIndex((one) => one.name === design.ports[port]?.fitting));
  const positions = key.startsWith("/runs/*") ? [at] : key.startsWith("/ports/*") ? ports : key.startsWith("/fittings/*") ? [...new Set(fittings)] : undefined;
  const keys = positions?.map((position) => key.replace("*", String(position))) ?? [key];
  return keys.flatMap((one) => spread(design, one)).filter((place) => known(sheet, place) !== undefined);
}

/** Where a design may hold the name of a shipped thing, and which list that is. @type {[string, "materials" | "printers" | "coolants" | "pumps"][]} */
const SHIPPED = [["/process/material", "materials"], ["/process/printer", "printers"], ["/loop/coolant", "coolants"], ["/loop/pump", "pumps"]];

/**
 * What the design holds at a place; of a shipped thing that stands by its name, the shipped figure.
 * @param {Sheet} sheet
 * @param {string} place
 */
function known(sheet, place) {
  const [holder, list] = SHIPPED.find(([one]) => place.startsWith(`${one}/`)) ?? [];
  const name = holder && valueAt(sheet.design, holder);
  if (holder === undefined || list === undefined || typeof name !== "string") return valueAt(sheet.design, place);
  /** @type {{ name: string }[]} */
  const shipped = sheet.presets[list];
  return valueAt(shipped.find((one) => one.name === name), place.slice(holder.length));
}

/**
 * The name of the nearest thing around a place that has one.
 * @param {unknown} whole
 * @param {string} place
 */
export function nameAround(whole, place) {
  const names = upFrom(place).slice(0, -1).map((one) => /** @type {{ name?: string } | null | undefined} */ (valueAt(whole, one))?.name);
  return names.find(Boolean) ?? "";
}
