// The page's language: English, which stands in the modules, or another, whose table is loaded before they are.

const KEY = "tubewright.language";

/**
 * A language's rows: `words` of the page, `engine`'s and those of `files` by their English, `sentences` that the engine fills,
 * what stands before decimals, and what stands round a quoted name in files.
 * @typedef {{ words: Record<string, string>, engine: Record<string, string>, sentences: readonly import("./sentences.js").Sentence[],
 *   files: Record<string, string>, decimal: string, quotes: readonly [string, string] }} Table
 */

/** The languages that there are, each by its own name. @type {{ code: string, name: string, table?: () => Promise<{ table: Table }> }[]} */
export const LANGUAGES = [
  { code: "en", name: "English" },
  { code: "de", name: "Deutsch", table: () => import("./german/table.js") },
];

/** The words of a key; none while the page is in English. @type {((key: string) => string | undefined) | undefined} */
export let wordsFor;
/** The rows of the language in force; none in English. @type {Table | undefined} */
export let table;
/** What stands before decimals. */
export let decimalMark = ".";
/** Which of the plural forms a count takes: their place in the order of CLDR. @type {(count: number) => number} */
export let pluralFor = (count) => (count === 1 ? 0 : 1);

/** The language in force. */
export function language() {
  return document.documentElement.lang;
}

/** How dates and large numbers are written. */
export function locale() {
  return wordsFor ? language() : "en-GB";
}

/** Loads the language that was chosen here, or else the first of the browser's that there is. Without its table the page stays in English. */
export async function startLanguage() {
  const asked = [kept(), ...navigator.languages.map((tag) => tag.toLowerCase().split("-")[0])];
  const code = asked.find((one) => LANGUAGES.some(({ code }) => code === one));
  const found = LANGUAGES.find((one) => one.code === code);
  if (!found?.table) return;
  try {
    speak(found.code, (await found.table()).table);
  } catch {
    // Cut off from the rest of the page's files: English is all here.
  }
}

/**
 * @param {string} code
 * @param {Table} rows
 */
function speak(code, rows) {
  const rules = new Intl.PluralRules(code);
  const { pluralCategories } = rules.resolvedOptions();
  const forms = ["zero", "one", "two", "few", "many", "other"].filter((form) => pluralCategories.some((one) => one === form));
  table = rows;
  wordsFor = (key) => (Object.hasOwn(rows.words, key) ? rows.words[key] : undefined);
  pluralFor = (count) => forms.indexOf(rules.select(count));
  decimalMark = rows.decimal;
  document.documentElement.lang = code;
}

/**
 * Keeps a choice for the next time that the page is loaded, and says whether the browser lets it.
 * @param {string} code
 */
export function keepLanguage(code) {
  try {
    localStorage.setItem(KEY, code);
    return kept() === code;
  } catch {
    return false;
  }
}

function kept() {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}
