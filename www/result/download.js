// Handing a file to the person: nothing leaves the machine, the browser saves what the engine made.

/**
 * @param {Uint8Array} bytes
 * @param {string} name
 */
export function download(bytes, name) {
  const url = URL.createObjectURL(new Blob([/** @type {Uint8Array<ArrayBuffer>} */ (bytes)], { type: typeOf(name) }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // The browser reads the address when it starts to save, which is after this task.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}

/** @param {string} name */
function typeOf(name) {
  if (name.endsWith(".stl")) return "model/stl";
  if (name.endsWith(".3mf")) return "model/3mf";
  if (name.endsWith(".csv")) return "text/csv";
  if (name.endsWith(".png")) return "image/png";
  if (name.endsWith(".svg")) return "image/svg+xml";
  if (name.endsWith(".zip")) return "application/zip";
  return "application/json";
}
