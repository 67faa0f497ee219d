// The page worked by keyboard alone.

import assert from "node:assert/strict";

/** What the focused control is called, by its label or its own words. */
function nameInFocus() {
  const element = document.activeElement;
  if (!element || element === document.body) return "";
  const label = "labels" in element && element.labels?.[0];
  const legend = element.type === "radio" ? element.closest("fieldset")?.querySelector("legend") : null;
  const words = element.getAttribute("aria-label") ?? (label || element).textContent ?? "";
  return [legend?.textContent, words].filter(Boolean).join(" ").replace(/\s+/g, " ").trim();
}

/**
 * Presses Tab until the control called `name` has the focus, and sees that its focus can be seen.
 * @param {string | RegExp} name
 */
export async function tabTo(page, name, { most = 120, back = false } = {}) {
  const seen = [];
  for (let press = 0; press < most; press += 1) {
    await page.keyboard.press(back ? "Shift+Tab" : "Tab");
    const found = await page.evaluate(nameInFocus);
    seen.push(found);
    if (typeof name === "string" ? found === name : name.test(found)) {
      await focusIsSeen(page, found);
      return;
    }
  }
  assert.fail(`Tab never reached ${name}; it went over: ${seen.join(" | ")}`);
}

/** Types over whatever the focused field holds. */
export async function typeOver(page, text) {
  await page.keyboard.press("Control+a");
  await page.keyboard.type(text);
}

/** The focused control is in sight, not under the foot of the page, and has an outline (WCAG 2.2, 2.4.7 and 2.4.11). */
async function focusIsSeen(page, name) {
  const state = await page.evaluate(() => {
    const element = document.activeElement;
    const drawn = element.matches(".sides input") ? element.nextElementSibling : element;
    const box = drawn.getBoundingClientRect();
    const foot = document.querySelector(".foot")?.getBoundingClientRect();
    const style = getComputedStyle(drawn);
    return {
      outlined: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2,
      wholly: !foot || foot.height === 0 || box.top < foot.top || box.height === 0,
    };
  });
  assert.ok(state.outlined, `the focus on “${name}” cannot be seen`);
  assert.ok(state.wholly, `“${name}” is hidden by the foot of the page`);
}
