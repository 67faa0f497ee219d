// The start of the page in its language: compiles the engine once, for its thread and for the view, and shows the kept design or a demo.

import init, { View } from "./engine.js";
import { App } from "./app.js";
import { blankDesign } from "./design/fresh.js";
import { isDesignShaped } from "./design/shape.js";
import { Store } from "./design/store.js";
import { whole } from "./design/whole.js";
import { Shelf } from "./keep/shelf.js";
import { begun } from "./keep/begin.js";
import { freshWord } from "./keep/slots.js";
import { EngineLink } from "./engine/link.js";
import { engineModule } from "./engine/home.js";
import { workOffline } from "./offline.js";
import { startTheme } from "./preview/theme.js";
import { presetsInWords, vocabularyInWords } from "./words/engine-words.js";
import { readPresets } from "./words/presets.js";
import { Vocabulary } from "./words/vocabulary.js";

/** @import { Design } from "./design/types.js" */
/** @import { Presets } from "./words/presets.js" */

export async function start() {
  /** @type {App | undefined} */
  let app;
  startTheme(() => app?.themeChanged());
  const module = engineModule();
  const link = new EngineLink(module, {
    onEdition: (answer) => app?.take(answer),
    onTrouble: (words, again) => app?.engineTrouble(words, again),
  });
  // The view is a second instance of the module; without it the drawing stands in.
  const view = module.then((compiled) => init({ module_or_path: compiled })).then(() => undefined, (error) => error);
  const ready = await link.start();
  const words = new Vocabulary(vocabularyInWords(JSON.parse(ready.vocabulary)));
  const presets = presetsInWords(readPresets(ready.presets));
  const shelf = new Shelf();
  const { state, steps, words: news } = begun(shelf, words);
  const first = state ?? { id: freshWord(), design: whole((await firstDesign(link, presets)) ?? blankDesign(words), words), untouched: true };
  app = new App({
    root: /** @type {HTMLElement} */ (document.getElementById("page")), store: new Store(first, steps), shelf, words, presets, link,
  });
  if (news) app.say("kept", { kind: "trouble", text: news });
  app.start();
  const fault = await view;
  // The form is painted first: making the view holds the page up for as long as the graphics take to start.
  await new Promise((painted) => requestAnimationFrame(() => setTimeout(painted, 0)));
  app.preview.solid.open((canvas) => {
    if (fault) throw fault;
    return new View(canvas);
  });
  workOffline(app);
}

/**
 * The first demo, written out in full.
 * @param {EngineLink} link
 * @param {Presets} presets
 * @returns {Promise<Design | undefined>}
 */
async function firstDesign(link, presets) {
  const [demo] = presets.demos;
  if (!demo) return undefined;
  const design = JSON.parse(await link.ask("normalise", JSON.stringify(demo.design)));
  return isDesignShaped(design) ? design : undefined;
}
