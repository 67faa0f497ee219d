// The page when it cannot start: why, that the work is kept, and the ways on. Made without anything that may be what failed.

import { copied } from "./clipboard.js";
import { setName, setText } from "./keep/set.js";
import { KEPT, readSlot, slotsAfter } from "./keep/slots.js";
import { download } from "./result/download.js";
import { troubleReport } from "./words/trouble.js";
import { say } from "./words/say.js";

/** @param {string} reason */
export function showFailure(reason) {
  const page = document.getElementById("page");
  if (!page) return;
  const words = document.createElement("p");
  words.setAttribute("role", "alert");
  words.textContent = say`Tubewright could not start: ${reason}. Reload the page; if that does not help, a current browser with WebAssembly will, and so does allowing WebAssembly where it is switched off. Your kept designs are untouched.`;
  const ways = document.createElement("p");
  ways.className = "adder";
  ways.append(button(say`Reload the page`, () => location.reload()), button(say`Copy a report`, (pressed) => void copyReport(reason, pressed)));
  if (slotsAfter(KEPT).length > 0) ways.append(button(say`Save my designs as a file`, saveDesigns));
  const about = document.createElement("p");
  about.className = "source";
  about.textContent = say`The report names the browser and what went wrong, and nothing of your designs.`;
  const all = document.createElement("div");
  all.className = "starting";
  all.append(words, ways, about);
  page.replaceChildren(all);
}

/**
 * @param {string} label
 * @param {(pressed: HTMLButtonElement) => void} press
 */
function button(label, press) {
  const element = document.createElement("button");
  element.type = "button";
  element.textContent = label;
  element.addEventListener("click", () => press(element));
  return element;
}

/**
 * @param {string} reason
 * @param {HTMLButtonElement} pressed
 */
async function copyReport(reason, pressed) {
  const report = troubleReport(reason);
  if (await copied(report)) {
    pressed.textContent = say`Copied`;
    return;
  }
  const field = document.createElement("textarea");
  field.readOnly = true;
  field.rows = 8;
  field.value = report;
  field.setAttribute("aria-label", "The report, to be copied");
  pressed.parentElement?.after(field);
  field.select();
}

/** As they lie: what of them can be read is found out when the file is opened. */
function saveDesigns() {
  const designs = slotsAfter(KEPT).map((id) => {
    const text = readSlot(KEPT + id) ?? "";
    try {
      return JSON.parse(text).design;
    } catch {
      return text;
    }
  });
  download(setText(designs), setName());
}
