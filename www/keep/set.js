// A file of several designs.

const FORMAT = "tubewright-designs";
// Where such a file says what it is, characters.
const EARLY = 200;

/**
 * The text of a file of designs.
 * @param {unknown[]} designs
 */
export function setText(designs) {
  return new TextEncoder().encode(JSON.stringify({ format: FORMAT, version: 1, designs }, undefined, 1));
}

/**
 * The name of such a file of today.
 */
export function setName() {
  return `${FORMAT}-${new Date().toISOString().slice(0, 10)}.json`;
}

/**
 * The designs in a file of several; none where it is no such file.
 * @param {string} text
 * @returns {any[] | undefined}
 */
export function designsIn(text) {
  try {
    const value = JSON.parse(text);
    return value?.format === FORMAT && Array.isArray(value.designs) ? value.designs : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Whether a file says that it is one of several designs.
 * @param {File} file
 */
export async function isSet(file) {
  return new RegExp(`"format"\\s*:\\s*"${FORMAT}"`).test(await file.slice(0, EARLY).text());
}
