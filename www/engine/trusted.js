// What the page's policy lets through: the address of the engine's thread, and pictures that the engine wrote itself.

import { say } from "../words/say.js";

/** @typedef {{ createScriptURL(url: string): any, createHTML(text: string): any }} Policy */

/**
 * The address of a script of the page's own, where a page insists on trusted ones: beside it, or made by itself.
 * @param {string} url
 */
export function scriptAddress(url) {
  return policy().createScriptURL(url);
}

/**
 * A picture that the engine drew, as an element that can be put into the page. The engine escapes every word that a
 * person gave, and a picture that holds anything but drawing is refused all the same.
 * @param {Uint8Array} bytes SVG
 * @returns {SVGSVGElement}
 */
export function pictureOf(bytes) {
  const text = policy().createHTML(new TextDecoder().decode(bytes));
  const { documentElement: root } = new DOMParser().parseFromString(text, "image/svg+xml");
  if (!(root instanceof SVGSVGElement) || [root, ...root.querySelectorAll("*")].some(doesMore)) throw new Error(say`the picture is none`);
  return document.importNode(root, true);
}

/** @param {Element} element */
function doesMore(element) {
  return !(element instanceof SVGElement) || /^(script|foreignObject|a|image|use)$/i.test(element.localName) ||
    element.getAttributeNames().some((name) => name.startsWith("on") || name.includes("href"));
}

/** @returns {Policy} */
function policy() {
  const rules = { createScriptURL: own, createHTML: (/** @type {string} */ text) => text };
  /** @type {{ createPolicy(name: string, rules: Policy): Policy } | undefined} */
  const policies = /** @type {any} */ (globalThis).trustedTypes;
  made ??= policies ? policies.createPolicy("tubewright", rules) : rules;
  return made;
}
/** @type {Policy | undefined} */
let made;

/** @param {string} url */
function own(url) {
  // No page can come by a blob of another origin.
  const { origin, protocol } = new URL(url);
  if (protocol !== "blob:" && origin !== location.origin) throw new TypeError(`${url} is no script of this page`);
  return url;
}
