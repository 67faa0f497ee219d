// An axis: round numbers that hold all values, and where between its ends a value lies.

/** @typedef {{ ticks: number[], decimals: number, at: (value: number) => number }} Scale `at` is 0 at the first tick and 1 at the last */

// About so many steps from end to end.
const STEPS = 5;
// A least value that is below this share of the greatest lets the axis begin at nothing.
const NEAR_NOTHING = 0.45;

/**
 * @param {readonly number[]} values at least one
 * @returns {Scale}
 */
export function scaleOf(values) {
  let [low, high] = [Math.min(...values), Math.max(...values)];
  if (low > 0 && low < NEAR_NOTHING * high) low = 0;
  if (high < 0 && high > NEAR_NOTHING * low) high = 0;
  // One value alone stands in the middle of something.
  const span = high - low || Math.abs(high) || 1;
  const [from, to] = high > low ? [low, high] : [low - span / 4, high + span / 4];
  const step = roundStep((to - from) / STEPS);
  const [first, last] = [Math.floor(from / step + 1e-9), Math.ceil(to / step - 1e-9)];
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9) + (Number.isInteger(Number((step / 10 ** Math.floor(Math.log10(step) + 1e-9)).toFixed(6))) ? 0 : 1));
  const ticks = Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
  return { ticks, decimals, at: (value) => (value / step - first) / (last - first) };
}

/**
 * The round number next above: 1, 2, 2.5 or 5 times a power of ten.
 * @param {number} step
 */
function roundStep(step) {
  const power = 10 ** Math.floor(Math.log10(step));
  return power * (/** @type {number} */ ([1, 2, 2.5, 5, 10].find((one) => one * power >= step * (1 - 1e-9))));
}
