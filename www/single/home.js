// Where the parts come from in the page that is one single file: out of itself.

import { scriptAddress } from "../engine/trusted.js";

/** Whether the parts are files of a site. */
export const HOSTED = false;

/** The mark's address. */
export const MARK = `data:image/svg+xml;base64,${partCalled("mark")}`;

/** The engine, compiled once for its thread and for the view. */
export async function engineModule() {
  const packed = Uint8Array.from(atob(partCalled("engine")), (letter) => letter.charCodeAt(0));
  const plain = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(plain).arrayBuffer());
}

/** A new thread for the engine. */
export function startThread() {
  const code = new Blob([partCalled("thread")], { type: "text/javascript" });
  return new Worker(scriptAddress(URL.createObjectURL(code)));
}

/** @param {string} name */
function partCalled(name) {
  return document.getElementById(`part-${name}`)?.textContent?.trim() ?? "";
}
