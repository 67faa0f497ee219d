// A report of something that went wrong, to be copied and sent by hand: what, where and in which browser, and nothing of
// the design but how large it is.

/** @import { Design } from "../design/types.js" */

/**
 * @param {string} what
 * @param {Design} [design]
 */
export function troubleReport(what, design) {
  const build = document.querySelector("meta[name=build]")?.getAttribute("content") ?? "not known";
  const size = design
    ? `${design.fittings.length} fittings, ${design.ports.length} ports, ${design.runs.length} runs with ${design.runs.reduce((sum, run) => sum + run.route.length, 0)} stations, ${design.keep_outs.length} keep-outs`
    : "not read";
  return [
    "Tubewright, report of a trouble", `What: ${what}`, `Build: ${build}`, `Page: ${location.protocol === "file:" ? "from a disk" : location.protocol.slice(0, -1)}`,
    `Browser: ${navigator.userAgent}`, `Window: ${innerWidth} x ${innerHeight} at ${devicePixelRatio}`, `WebAssembly: ${typeof WebAssembly}`,
    `Design: ${size}`,
  ].join("\n");
}
