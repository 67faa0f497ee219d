// Where the page's own parts come from: files beside it. The page that is one single file has another module in this
// one's place.

import { scriptAddress } from "./trusted.js";
import { say } from "../words/say.js";

/** Whether the parts are files of a site. */
export const HOSTED = true;

/** The mark's address. */
export const MARK = "mark.svg";

/** The engine, compiled once for its thread and for the view. */
export async function engineModule() {
  const response = await fetch(new URL("../engine_bg.wasm", import.meta.url));
  if (!response.ok) throw new Error(say`the engine's file could not be read (${response.status})`);
  // A server that does not know the file's type must not keep the page from starting.
  const typed = response.headers.get("content-type")?.startsWith("application/wasm");
  return typed ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer());
}

/** A new thread for the engine. */
export function startThread() {
  return new Worker(scriptAddress(new URL("./worker.js", import.meta.url).href), { type: "module" });
}
