// What the view tells of its picture, in the page's language: the view tells it in English, in a form that is known.

import { language } from "../words/language.js";
import { counted } from "../words/numbers.js";
import { say } from "../words/say.js";

const EMPTY = "Preview of an empty design: squared paper and the axes x, y and z.";
const TOLD = new RegExp("^Preview of (?:no|(?<tubes>\\d+)) tubes?(?: \\((?<drawn>.*?)\\))?(?:, (?<ports>\\d+) ports?)?(?:, (?<blocked>\\d+) keep-outs?)?\\." +
  "(?: Not made, shown as a dashed line: (?<unmade>.*?)\\.)?(?: Selected: (?<selected>.*?)\\.)?(?<cut> The tubes are cut open along the bore\\.)? Squares of (?<square>[\\d.]+) mm\\.(?: (?<shown>.*))?$", "s");
// What the material lets be seen, by the view's own words.
/** @type {Record<string, string>} */
const SHOWN = {
  "The tubes are clear and the coolant in them shows.": say`The tubes are clear and the coolant in them shows.`,
  "The tubes are clear.": say`The tubes are clear.`,
  "The tubes are translucent and the coolant in them shows.": say`The tubes are translucent and the coolant in them shows.`,
  "The tubes are translucent.": say`The tubes are translucent.`,
  "The coolant in the tubes is shown.": say`The coolant in the tubes is shown.`,
};

/** @param {string} words */
export function described(words) {
  if (language() === "en" || words === "") return words;
  if (words === EMPTY) return say`Preview of an empty design: squared paper and the axes x, y and z.`;
  const told = TOLD.exec(words)?.groups;
  if (!told) return words;
  const { tubes = "0", drawn, ports, blocked, unmade, selected, cut, square, shown = "" } = told;
  const count = counted(Number(tubes), "tube");
  const things = [drawn ? `${count} (${drawn})` : count, ports && counted(Number(ports), "port"), blocked && counted(Number(blocked), "keep-out")].filter(Boolean);
  return [
    say`Preview of ${things.join(", ")}.`, unmade && say`Not made, shown as a dashed line: ${unmade}.`, selected && say`Selected: ${selected}.`,
    cut && say`The tubes are cut open along the bore.`, say`Squares of ${square} mm.`, SHOWN[shown],
  ].filter(Boolean).join(" ");
}
