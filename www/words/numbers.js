// Numbers as the page shows them: a decimal point everywhere, so that they read the same as in the files.

/**
 * A number with so many decimals; a dash where there is none.
 * @param {number | null | undefined} value
 * @param {number} decimals
 */
export function fixed(value, decimals) {
  if (value === null || value === undefined || !Number.isFinite(value)) return "–";
  const text = value.toFixed(decimals);
  // A rounded-away minus would say "-0.0".
  return minus(/^-0(\.0*)?$/.test(text) ? text.slice(1) : text);
}

/**
 * A number with at most so many decimals, and no more than it needs.
 * @param {number} value
 * @param {number} [most]
 */
export function short(value, most = 3) {
  return minus(String(Number(value.toFixed(most))));
}

/**
 * A point in short.
 * @param {readonly number[]} point
 */
export function pointWords(point) {
  return point.map((part) => short(part, 1)).join(", ");
}

/**
 * How many of something: "1 stop", "3 notes".
 * @param {number} count
 * @param {string} one
 * @param {string} [many]
 */
export function counted(count, one, many = `${one}s`) {
  return `${count} ${count === 1 ? one : many}`;
}

/** @param {string} text */
function minus(text) {
  return text.replace("-", "\u2212");
}
