// Small sums typed into a number's field: "120/2 + 6.5", "3 x 25,4", "1 1/2 in". Nothing but numbers, the four ways to
// reckon, brackets and units of length.

/** One of each unit of length that may be typed, mm. @type {Record<string, number>} */
const MILLIMETRES = { mm: 1, cm: 10, m: 1000, in: 25.4, inch: 25.4, '"': 25.4, "″": 25.4, "”": 25.4 };
const TOKEN = /\s*(?:(\d+(?:[.,]\d*)?(?:e[+-]?\d+)?|[.,]\d+)|(mm|cm|m|inch|in|["″”])|([-+*/()]))/iy;
// Deeper brackets are no sum that a person typed.
const DEEPEST = 20;

/** @typedef {number | string} Token a number, or a sign, or `=` and a unit */
/** @typedef {{ value: number, powers: number }} Value `powers` of length: 0 a plain number, 1 a length in mm */

/**
 * The value of a sum; none where the text is none.
 * @param {string} text
 * @param {number | undefined} unit what a number without a unit counts, mm; none where the field's quantity is no length
 * @returns {number | undefined} mm for a length
 */
export function sumOf(text, unit) {
  const plain = text.replaceAll(/[−–]/g, "-").replaceAll(/[×·]|(?<=\s)x(?=\s)/g, "*").replaceAll("÷", "/").replaceAll("½", " 1/2").replaceAll("¼", " 1/4").replaceAll("¾", " 3/4");
  const tokens = tokensOf(plain);
  if (!tokens || tokens.length === 0) return undefined;
  const reader = new Reader(tokens, unit ?? 1);
  const found = reader.terms(0);
  if (!found || !reader.done || (found.powers === 1 && unit === undefined)) return undefined;
  const value = found.powers === 1 ? found.value : found.value * (unit ?? 1);
  return Number.isFinite(value) ? value + 0 : undefined;
}

/** @param {string} text */
function tokensOf(text) {
  /** @type {Token[]} */
  const tokens = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.trimEnd().length) {
    const found = TOKEN.exec(text);
    if (!found) return undefined;
    const [, number, unit, sign] = found;
    tokens.push(number !== undefined ? Number(number.replace(",", ".")) : unit !== undefined ? `=${unit.toLowerCase()}` : sign);
  }
  return tokens;
}

/** Reads tokens from the left. Each part gives nothing where it is none. */
class Reader {
  #at = 0;

  /**
   * @param {Token[]} tokens
   * @param {number} unit what a plain number counts where it is added to a length, mm
   */
  constructor(tokens, unit) {
    this.tokens = tokens;
    this.unit = unit;
  }

  get done() {
    return this.#at === this.tokens.length;
  }

  /**
   * @param {number} depth
   * @returns {Value | undefined}
   */
  terms(depth) {
    let sum = this.#factors(depth);
    while (sum && (this.#next === "+" || this.#next === "-")) {
      const sign = this.#take() === "+" ? 1 : -1;
      const more = this.#factors(depth);
      sum = more && this.#added(sum, { ...more, value: sign * more.value });
    }
    return sum;
  }

  /** @param {number} depth */
  #factors(depth) {
    let product = this.#signed(depth);
    while (product && (this.#next === "*" || this.#next === "/")) {
      const times = this.#take() === "*";
      const more = this.#signed(depth);
      product = more && (times ? multiplied(product, more) : divided(product, more));
    }
    return product;
  }

  /**
   * @param {number} depth
   * @returns {Value | undefined}
   */
  #signed(depth) {
    const sign = this.#next === "-" || this.#next === "+" ? this.#take() : "+";
    const value = this.#one(depth);
    return value && (sign === "-" ? { ...value, value: -value.value } : value);
  }

  /**
   * @param {number} depth
   * @returns {Value | undefined}
   */
  #one(depth) {
    const first = this.#take();
    if (first === "(") {
      if (depth >= DEEPEST) return undefined;
      const inside = this.terms(depth + 1);
      return inside && this.#take() === ")" ? this.#withUnit(inside) : undefined;
    }
    return typeof first === "number" ? this.#withUnit({ value: this.#fraction(first), powers: 0 }) : undefined;
  }

  /**
   * The fraction that a number is or has, as inches are written: 1/4 in, 1 1/2 in.
   * @param {number} first
   */
  #fraction(first) {
    const [a, b, c] = this.tokens.slice(this.#at, this.#at + 3);
    if (!Number.isInteger(first)) return first;
    if (a === "/" && typeof b === "number" && b !== 0 && isUnit(c)) {
      this.#at += 2;
      return first / b;
    }
    if (typeof a !== "number" || b !== "/" || typeof c !== "number" || a >= c) return first;
    this.#at += 3;
    return first + a / c;
  }

  /**
   * @param {Value} value
   * @returns {Value | undefined}
   */
  #withUnit(value) {
    const next = this.#next;
    if (!isUnit(next)) return value;
    this.#take();
    return value.powers === 0 ? { value: value.value * MILLIMETRES[next.slice(1)], powers: 1 } : undefined;
  }

  /**
   * @param {Value} a
   * @param {Value} b
   * @returns {Value}
   */
  #added(a, b) {
    if (a.powers === b.powers) return { value: a.value + b.value, powers: a.powers };
    const length = (/** @type {Value} */ { value, powers }) => (powers === 1 ? value : value * this.unit);
    return { value: length(a) + length(b), powers: 1 };
  }

  get #next() {
    return this.tokens[this.#at];
  }

  #take() {
    return this.tokens[this.#at++];
  }
}

/**
 * @param {Token | undefined} token
 * @returns {token is string}
 */
function isUnit(token) {
  return typeof token === "string" && token.startsWith("=");
}

/**
 * @param {Value} a
 * @param {Value} b
 * @returns {Value | undefined} none for an area
 */
function multiplied(a, b) {
  const powers = a.powers + b.powers;
  return powers > 1 ? undefined : { value: a.value * b.value, powers };
}

/**
 * @param {Value} a
 * @param {Value} b
 * @returns {Value | undefined}
 */
function divided(a, b) {
  const powers = a.powers - b.powers;
  return powers < 0 || b.value === 0 ? undefined : { value: a.value / b.value, powers };
}
