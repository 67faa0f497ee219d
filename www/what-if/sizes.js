// A list of sizes as a person types it: "12, 14, 16". Several things could mean a comma, so what could mean two is asked.

import { readNumber } from "../design/typed.js";
import { decimalMark } from "../words/language.js";
import { say } from "../words/say.js";

/** @typedef {{ sizes: number[], error: string }} Sizes the sizes in the order typed, each once; `error` is empty where all can be read */

/**
 * @param {string} text
 * @returns {Sizes}
 */
export function readSizes(text) {
  /** @type {Set<number>} */
  const sizes = new Set();
  for (const part of partsOf(text)) {
    const value = readNumber(part);
    if (typeof value !== "number") return { sizes: [], error: say`“${part}” is not a size. Give numbers with commas between them, such as 12, 14.5, 16.` };
    if (value <= 0) return { sizes: [], error: say`A size is above 0, and “${part}” is not.` };
    const comma = /^(\d+),(\d+)$/.exec(part);
    if (comma && decimalMark === "." && !text.includes(";")) {
      return { sizes: [], error: say`“${part}” could be ${comma[1]}.${comma[2]}, or ${comma[1]} and ${comma[2]}. Give ${comma[1]}.${comma[2]} with a point, or a space after the comma.` };
    }
    sizes.add(value);
  }
  return { sizes: [...sizes], error: "" };
}

/**
 * The text with a size put into its list, or taken out of it. What cannot be read stays in it as it was typed.
 * @param {string} text
 * @param {number} size
 */
export function toggled(text, size) {
  const parts = partsOf(text);
  const without = parts.filter((part) => readNumber(part) !== size);
  if (without.length < parts.length) return joined(without);
  const after = parts.findIndex((part) => (readNumber(part) ?? 0) > size);
  return joined(after < 0 ? [...parts, String(size)] : parts.toSpliced(after, 0, String(size)));
}

/** @param {readonly (string | number)[]} parts */
export function joined(parts) {
  return parts.join(", ");
}

/**
 * Between semicolons a comma is a decimal one; otherwise a comma before a space separates, and so do several in a word.
 * @param {string} text
 */
function partsOf(text) {
  if (text.includes(";")) return words(text.split(";"));
  return words(text.split(/[,\s]*\s[,\s]*/)).flatMap((word) => {
    const bare = word.replace(/^,+|,+$/g, "");
    return /,.*[,.]|\..*,/.test(bare) ? words(bare.split(",")) : words([bare]);
  });
}

/** @param {string[]} parts */
function words(parts) {
  return parts.map((part) => part.trim()).filter((part) => part !== "");
}
