// Light or dark: as the system says, or as the person chose with the button.

const KEY = "tubewright.theme";
/** @typedef {"system" | "light" | "dark"} Choice */
/** @type {Choice[]} */
const CHOICES = ["system", "light", "dark"];
const system = matchMedia("(prefers-color-scheme: dark)");
// With colours of the person's own the page has no say in them, and the system says whether they are dark.
const own = matchMedia("(forced-colors: active)");

/** @returns {Choice} */
export function chosenTheme() {
  const set = document.documentElement.dataset.theme;
  return CHOICES.find((choice) => choice === set) ?? "system";
}

/** The theme in force. @returns {"light" | "dark"} */
export function themeInForce() {
  const chosen = chosenTheme();
  if (chosen !== "system" && !own.matches) return chosen;
  return system.matches ? "dark" : "light";
}

/** Goes on to the next choice, and keeps it where the browser lets it. */
export function nextTheme() {
  const next = CHOICES[(CHOICES.indexOf(chosenTheme()) + 1) % CHOICES.length];
  document.documentElement.dataset.theme = next;
  try {
    localStorage.setItem(KEY, next);
  } catch {
    // A theme that is not kept is no loss worth words.
  }
}

/**
 * Takes up the kept choice, and calls back when the system's changes.
 * @param {() => void} listener
 */
export function startTheme(listener) {
  let kept = null;
  try {
    kept = localStorage.getItem(KEY);
  } catch {
    // As above.
  }
  document.documentElement.dataset.theme = CHOICES.find((choice) => choice === kept) ?? "system";
  for (const query of [system, own]) query.addEventListener("change", listener);
}
