// The choice of the page's language, beside that of its theme.

import { html } from "./html.js";
import { keepLanguage, language, LANGUAGES } from "./language.js";
import { say } from "./say.js";

/** @import { App } from "../app.js" */

/** @param {App} app */
export function languageChoice(app) {
  /** @param {Event} event */
  const take = (event) => {
    const select = /** @type {HTMLSelectElement} */ (event.target);
    // The page comes anew in the other language, and the work with it: where it is not kept, nothing may be lost for that.
    if (app.keeping.isKept && keepLanguage(select.value)) return location.reload();
    select.value = language();
    app.say("language", { kind: "trouble", text: say`The language stays as it is: changing it loads the page anew, and this browser does not let the page keep your design for that. Save it as a file first.` });
  };
  return html`<select id="language" aria-label="Language" @change=${take}>
    ${LANGUAGES.map(({ code, name }) => html`<option value=${code} lang=${code} ?selected=${code === language()}>${name}</option>`)}
  </select>`;
}
