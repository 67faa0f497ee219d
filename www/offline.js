// The page without a network: its files are kept by the browser, and a newer page waits until it is asked for.

import { HOSTED } from "./engine/home.js";
import { scriptAddress } from "./engine/trusted.js";
import { say } from "./words/say.js";

/** @import { App } from "./app.js" */

/**
 * Keeps the page's files, and says when there are newer ones. A browser that keeps none loses nothing but that.
 * @param {App} app
 */
export async function workOffline(app) {
  if (!HOSTED || !/^https?:$/.test(location.protocol) || !("serviceWorker" in navigator)) return;
  try {
    const registration = await navigator.serviceWorker.register(scriptAddress(new URL("sw.js", document.baseURI).href));
    if (registration.waiting) tell(app, registration.waiting);
    registration.addEventListener("updatefound", () => {
      const fresh = registration.installing;
      fresh?.addEventListener("statechange", () => {
        if (fresh.state === "installed" && navigator.serviceWorker.controller) tell(app, fresh);
      });
    });
    await navigator.serviceWorker.ready;
    // For the tests: from here on the page comes without a network.
    app.root.dataset.offline = "ready";
  } catch {
    // Closed to this page, as in some private windows.
  }
}

/**
 * @param {App} app
 * @param {ServiceWorker} fresh
 */
function tell(app, fresh) {
  const use = () => {
    navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
    fresh.postMessage("take over");
  };
  app.say("newer", {
    kind: "word", text: say`A newer Tubewright is ready. Your designs stay as they are.`, action: { label: say`Load it now`, run: use },
  });
}
