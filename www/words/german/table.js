// German: all rows in one table. The glossary that they keep to stands in DEVELOPERS.md.

import { DRAWING } from "./drawing.js";
import { FILLING } from "./filling.js";
import { FINDINGS } from "./findings.js";
import { FORM } from "./form.js";
import { GLOSSARY } from "./glossary.js";
import { HINTS } from "./hints.js";
import { KEEPING } from "./keeping.js";
import { LABELS } from "./labels.js";
import { MEASURE } from "./measure.js";
import { MESSAGES } from "./messages.js";
import { NUMBERS } from "./numbers.js";
import { PAGE } from "./page.js";
import { PLOTS } from "./plots.js";
import { PRESETS } from "./presets.js";
import { PREVIEW } from "./preview.js";
import { REFUSALS } from "./refusals.js";
import { RESULT } from "./result.js";
import { SAYINGS } from "./sayings.js";
import { SHEET } from "./sheet.js";
import { TRYING } from "./trying.js";

/** @type {import("../language.js").Table} */
export const table = {
  words: { ...FORM, ...GLOSSARY, ...KEEPING, ...MEASURE, ...PAGE, ...PREVIEW, ...RESULT, ...TRYING },
  engine: { ...LABELS, ...HINTS, ...FINDINGS, ...FILLING, ...NUMBERS, ...PRESETS },
  sentences: [...MESSAGES, ...SAYINGS, ...REFUSALS],
  files: { ...DRAWING, ...FILLING, ...PLOTS, ...PRESETS, ...SHEET },
  decimal: ",",
  quotes: ["„", "“"],
};
