// Where the words of a markup template are: its text between tags, and the attributes that people see or hear. A segment's
// key is its English with holes numbered: "Remove {0}". The tests find the keys with the same code.

/** Stands for a hole while a template is one string; no template holds it. */
const HOLE = "\u0000";
const SPOKEN = new Set(["aria-label", "aria-roledescription", "title", "placeholder", "alt", "label"]);

/** @typedef {{ start: number, end: number, key: string, holes: number[] }} Segment a stretch of the joined template, the key of what it says, which of the template's holes are in it */

/**
 * A template as one string.
 * @param {readonly string[]} strings
 */
export function joined(strings) {
  return strings.join(HOLE);
}

/**
 * The segments of a joined template that say something.
 * @param {string} text
 * @returns {Segment[]}
 */
export function segmentsIn(text) {
  return stretches(text).map(([from, to]) => segment(text, from, to)).filter((one) => /\p{L}/u.test(one.key.replace(/\{\d+\}/g, "")));
}

/**
 * A template in other words: its strings, and for each hole which of the values goes there.
 * @param {readonly string[]} strings
 * @param {(key: string) => string | undefined} words
 * @returns {{ strings: string[], order: number[] }}
 */
export function reworded(strings, words) {
  const text = joined(strings);
  let made = "";
  let done = 0;
  /** @type {number[]} */
  const order = [];
  let hole = 0;
  /** @param {string} part as it is */
  const keep = (part) => {
    made += part;
    for (const letter of part) if (letter === HOLE) order.push(hole++);
  };
  for (const { start, end, key, holes } of segmentsIn(text)) {
    keep(text.slice(done, start));
    const other = words(key);
    if (other === undefined) keep(text.slice(start, end));
    else {
      made += other.replace(/\{(\d+)\}/g, (_, number) => {
        order.push(holes[Number(number)]);
        return HOLE;
      });
      hole += holes.length;
    }
    done = end;
  }
  keep(text.slice(done));
  return { strings: made.split(HOLE), order };
}

/**
 * A key of words outside markup, and the white space round them, which belongs to what they are put into.
 * @param {readonly string[]} strings
 * @returns {{ before: string, key: string, after: string }}
 */
export function keyOf(strings) {
  const text = strings.reduce((all, part, at) => (at === 0 ? part : `${all}{${at - 1}}${part}`), "");
  const [, before = "", key = "", after = ""] = /^(\s*)([\s\S]*?)(\s*)$/.exec(text) ?? [];
  return { before, key, after };
}

/**
 * Text between tags, and the values of attributes with words.
 * @param {string} text
 * @returns {[from: number, to: number][]}
 */
function stretches(text) {
  /** @type {[number, number][]} */
  const found = [];
  let at = 0;
  while (at < text.length) {
    const tag = text.indexOf("<", at);
    const end = tag < 0 ? text.length : tag;
    if (end > at) found.push([at, end]);
    if (tag < 0) break;
    at = text.startsWith("<!--", tag) ? after(text, "-->", tag) : throughTag(text, tag, found);
  }
  return found;
}

/**
 * @param {string} text
 * @param {number} start of a tag
 * @param {[number, number][]} found
 * @returns {number} where the tag has ended
 */
function throughTag(text, start, found) {
  const part = /\s*(?:>|([^\s=>]+)(?:=("[^"]*"|'[^']*'|[^\s>]*))?)/y;
  part.lastIndex = start + 1;
  for (;;) {
    const match = part.exec(text);
    if (!match) return text.length;
    const [whole, name, value] = match;
    if (name === undefined) return part.lastIndex;
    if (SPOKEN.has(name) && value && /^["']/.test(value)) {
      const end = match.index + whole.length - 1;
      found.push([end - (value.length - 2), end]);
    }
  }
}

/**
 * @param {string} text
 * @param {string} mark
 * @param {number} from
 */
function after(text, mark, from) {
  const at = text.indexOf(mark, from);
  return at < 0 ? text.length : at + mark.length;
}

/**
 * @param {string} text
 * @param {number} from
 * @param {number} to
 * @returns {Segment}
 */
function segment(text, from, to) {
  const part = text.slice(from, to);
  const start = from + (part.length - part.trimStart().length);
  const end = Math.max(start, to - (part.length - part.trimEnd().length));
  const first = text.slice(0, start).split(HOLE).length - 1;
  /** @type {number[]} */
  const holes = [];
  const key = text.slice(start, end).replace(/\s+/g, " ").replaceAll(HOLE, () => `{${holes.push(first + holes.length) - 1}}`);
  return { start, end, key, holes };
}
