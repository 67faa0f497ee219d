// Starts the page: first its language, since modules take their words as they are loaded, then the page itself.

import { showFailure } from "./failure.js";
import { wordsOf } from "./words/errors.js";
import { startLanguage } from "./words/language.js";
import { say } from "./words/say.js";

begin().catch((error) => showFailure(wordsOf(error)));

async function begin() {
  await startLanguage();
  const starting = document.querySelector(".starting");
  if (starting) starting.textContent = say`Tubewright is starting…`;
  const { start } = await import("./start.js");
  await start();
}
