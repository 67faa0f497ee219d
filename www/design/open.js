// The design out of a file that a person opens: refused with words before anything is touched.

import { say } from "../words/say.js";

/** @import { EngineLink } from "../engine/link.js" */

// A design at every bound of the engine stays far below this, bytes; an archive also holds the tubes' meshes.
export const MOST_BYTES = 16 * 1024 * 1024;
const MOST_ARCHIVE_BYTES = 400e6;

/** What the file chooser offers. */
export const ACCEPTED = ".json,.3mf,.zip,application/json,model/3mf,application/zip";

/**
 * The design's canonical text. Throws an `Error` with plain words where the file cannot hold one.
 * @param {File} file
 * @param {EngineLink} link
 * @returns {Promise<string>}
 */
export async function designOf(file, link) {
  const archive = /\.(3mf|zip)$/i.test(file.name);
  const most = archive ? MOST_ARCHIVE_BYTES : MOST_BYTES;
  if (file.size > most) {
    throw new Error(say`It is ${Math.round(file.size / 1e6)} MB; ${archive ? say`an archive` : say`a design`} is never over ${Math.floor(most / 1e6)} MB. Choose a design saved by this page (.json), or a 3MF file of it.`);
  }
  if (file.size === 0) throw new Error(say`It is empty. Choose a design saved by this page (.json).`);
  return link.ask("designIn", new Uint8Array(await file.arrayBuffer()));
}
