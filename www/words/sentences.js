// Sentences that the engine fills with names and numbers, in another language: matched against the table's English
// templates piece by piece, never backwards, so that no name however odd makes it take long. Names stay as they are.

/** @typedef {[english: string, other: string]} Sentence both with places such as {port} */
/** @typedef {{ literals: string[], places: string[], other: string }} Template */

/** Places that may hold the name of a shipped thing, which has a row of its own. */
const SHIPPED = ["material", "printer", "name"];

export class Sentences {
  /** @type {Template[]} those with the most words of their own first */
  #templates;
  /** @type {(word: string) => string | undefined} */
  #word;
  /** @type {(number: string) => string} */
  #number;

  /**
   * @param {readonly Sentence[]} sentences
   * @param {(word: string) => string | undefined} word the other language's for a word that stands by itself
   * @param {(number: string) => string} number as the language writes one
   */
  constructor(sentences, word, number) {
    this.#templates = sentences.map(([english, other]) => ({
      literals: english.split(/\{\w+\}/), places: [...english.matchAll(/\{(\w+)\}/g)].map(([, place]) => place), other,
    })).sort((one, two) => two.literals.join("").length - one.literals.join("").length);
    this.#word = word;
    this.#number = number;
  }

  /**
   * The sentence in the other language; none where no template is its.
   * @param {string} text
   * @returns {string | undefined}
   */
  of(text) {
    const quoted = quotedIn(text);
    for (const { literals, places, other } of this.#templates) {
      const found = filledIn(text, literals, quoted);
      if (!found || (isList(literals) && !found.every((part) => this.#isKnown(part)))) continue;
      return other.replace(/\{(\w+)\}/g, (_, place) => this.#part(found[places.indexOf(place)], SHIPPED.includes(place)));
    }
    return undefined;
  }

  /**
   * What a place is filled with: a name, a number with its unit, or words that are a template of their own.
   * @param {string} text
   * @param {boolean} shipped whether a name there may be that of a shipped thing
   * @returns {string}
   */
  #part(text, shipped) {
    const name = /^“([^”]*)”$/.exec(text)?.[1];
    if (name !== undefined) return `„${(shipped && this.#word(name)) || name}“`;
    return this.#word(text) ?? this.of(text) ?? this.#plain(text);
  }

  /**
   * Names and numbers as the language writes them; numbers side by side stay apart where a comma stands in them.
   * @param {string} text
   */
  #plain(text) {
    const row = /^-?[\d.]+(, -?[\d.]+)+$/.test(text) && this.#number("0.1") !== "0.1" ? text.replaceAll(", ", "; ") : text;
    return row.replace(/“([^”]*)”|(?<![\w.])\d+(?:,\d{3})*(?:\.\d+)?(?!\w)/g, (part, name) => (name === undefined ? this.#number(part) : `„${name}“`));
  }

  /** @param {string} text */
  #isKnown(text) {
    return /^(“[^”]*”(, )?)+$/.test(text) || /^[−-]?[\d.,]+( \S+)?$/.test(text) || this.of(text) !== undefined;
  }
}

/**
 * Whether a template is little more than a word between two names, which could stand in a name as well.
 * @param {string[]} literals
 */
function isList(literals) {
  return literals.length === 3 && literals[0] === "" && literals[2] === "" && literals[1].length < 8;
}

/**
 * What the places of a template are filled with; none where the text is not its.
 * @param {string} text
 * @param {string[]} literals
 * @param {Uint8Array} quoted
 */
function filledIn(text, literals, quoted) {
  const last = literals.length - 1;
  if (!text.startsWith(literals[0]) || !text.endsWith(literals[last]) || (last === 0 && text !== literals[0])) return undefined;
  /** @type {string[]} */
  const found = [];
  let at = literals[0].length;
  for (let part = 1; part <= last; part += 1) {
    const end = part === last ? text.length - literals[last].length : outside(text, literals[part], at + 1, quoted);
    if (end <= at) return undefined;
    found.push(text.slice(at, end));
    at = end + literals[part].length;
  }
  return found;
}

/**
 * Where a literal is next outside of quoted names; -1 where it is not.
 * @param {string} text
 * @param {string} literal
 * @param {number} from
 * @param {Uint8Array} quoted
 */
function outside(text, literal, from, quoted) {
  let at = text.indexOf(literal, from);
  while (at >= 0 && quoted[at]) at = text.indexOf(literal, at + 1);
  return at;
}

/**
 * Which letters stand within a quoted name.
 * @param {string} text
 */
function quotedIn(text) {
  const quoted = new Uint8Array(text.length);
  let within = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === "“") within = 1;
    quoted[at] = within;
    if (text[at] === "”") within = 0;
  }
  return quoted;
}
