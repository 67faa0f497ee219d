// Copying for the person.

/**
 * Copies a text, and says whether the browser let it.
 * @param {string} text
 */
export async function copied(text) {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
