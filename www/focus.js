// Where the focus is: kept through a re-render, and put where a person asked to go.

import { upFrom } from "./design/pointer.js";
import { idOf } from "./form/sheet.js";

const FOCUSABLE = "input, select, textarea, button, summary, a[href], [tabindex]";

/**
 * Renders, and gives the focus and the caret back to where they were if moving an element took them away; what had the
 * focus and was in sight stays in sight, though words that came in above it pushed it down.
 * @param {() => void} draw
 */
export function keepingFocus(draw) {
  const had = document.activeElement;
  const field = had instanceof HTMLInputElement && had.type === "text" ? had : undefined;
  const [start, end] = [field?.selectionStart ?? null, field?.selectionEnd ?? null];
  const seen = had instanceof HTMLElement && had !== document.body && inSight(had);
  draw();
  if (seen && had.isConnected && !inSight(had)) had.scrollIntoView({ block: "nearest", behavior: "instant" });
  if (!(had instanceof HTMLElement) || !had.isConnected || document.activeElement === had || had === document.body) return;
  had.focus({ preventScroll: true });
  field?.setSelectionRange(start, end);
}

/**
 * Whether an element is on the screen and above the foot of the page.
 * @param {HTMLElement} element
 */
function inSight(element) {
  const { top, bottom } = element.getBoundingClientRect();
  const foot = document.querySelector(".foot")?.getBoundingClientRect();
  return bottom > 0 && top < (foot?.height ? foot.top : innerHeight);
}

/**
 * Puts the focus on a place of the design, or the nearest one around it that the page shows.
 * @param {string} pointer
 */
export function focusPlace(pointer) {
  const place = upFrom(pointer).map((one) => document.getElementById(idOf(one))).find(Boolean) ?? document.getElementById("form");
  if (!place) return;
  for (let up = place.parentElement; up; up = up.parentElement) {
    if (up instanceof HTMLDetailsElement) up.open = true;
  }
  if (place instanceof HTMLDetailsElement) place.open = true;
  const target = place.matches(FOCUSABLE) ? place : place.querySelector(`.card-body :is(${FOCUSABLE})`) ?? place.querySelector(FOCUSABLE);
  if (!(target instanceof HTMLElement)) return;
  target.focus({ preventScroll: true });
  target.scrollIntoView({ block: "center", behavior: matchMedia("(prefers-reduced-motion: reduce)").matches ? "instant" : "smooth" });
  if (target instanceof HTMLInputElement && target.type === "text") target.select();
}
