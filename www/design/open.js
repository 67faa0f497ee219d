// Reading a design file that a person opens: refused with words before anything is touched.

// A design at every bound of the engine stays far below this, bytes.
const MOST_BYTES = 16 * 1024 * 1024;

/**
 * The file's text. Throws an `Error` with plain words where it cannot be a design.
 * @param {File} file
 * @returns {Promise<string>}
 */
export async function readDesignFile(file) {
  if (file.size > MOST_BYTES) {
    throw new Error(`“${file.name}” is ${Math.round(file.size / 1e6)} MB; a design is never over 16 MB. Choose a design saved by this page (.json).`);
  }
  if (file.size === 0) throw new Error(`“${file.name}” is empty. Choose a design saved by this page (.json).`);
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Error(`“${file.name}” is not a text file. Choose a design saved by this page (.json).`);
  }
}
