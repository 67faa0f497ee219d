// What the view tells of the picture: the handles that can be taken hold of, and the tube at a place.

/** @import { Xyz } from "../engine/messages.js" */
/** @import { Preview } from "./host.js" */

/** @typedef {{ apex: Xyz, inward: Xyz, factor: number, radius: number }} Slide how a bend's middle moves with its radius */
/**
 * A handle of the selected run: `point`, where a station is; `radius`, the middle of a corner's bend.
 * @typedef {{ kind: "point" | "radius", station: number, at: Xyz, seen: [number, number], slide?: Slide }} Grip
 */
/**
 * A place on a tube; `corner`: where a new one would go, `before` being how many stations come before it.
 * @typedef {{ run: string, at: Xyz, corner: { at: Xyz, direction: Xyz, before: number } | null }} Spot
 */

// How near to a handle a press takes hold of it, CSS pixels: a finger hides what it points at.
/** @type {Record<string, number | undefined>} */
const REACH = { mouse: 10, pen: 14, touch: 24 };
// In a small picture a bend's middle is all but at its corner, which is wanted more often: by so much it must be nearer.
const ASIDE = 4;

/**
 * @param {Preview} solid
 * @returns {Grip[]}
 */
export function gripsOf(solid) {
  return JSON.parse(solid.ask((view) => view.handles()) ?? "[]");
}

/**
 * The handle that a pointer takes hold of.
 * @param {Grip[]} grips
 * @param {number} x
 * @param {number} y
 * @param {string} pointer its type
 * @returns {Grip | undefined}
 */
export function nearest(grips, x, y, pointer) {
  const reach = REACH[pointer] ?? 10;
  const off = (/** @type {Grip} */ { seen }) => Math.hypot(seen[0] - x, seen[1] - y);
  const rank = (/** @type {Grip} */ grip) => off(grip) + (grip.kind === "radius" ? ASIDE : 0);
  return grips.filter((grip) => off(grip) <= reach).sort((one, other) => rank(one) - rank(other))[0];
}

/**
 * The tube at a place of the canvas.
 * @param {Preview} solid
 * @param {number} x
 * @param {number} y
 * @returns {Spot | null}
 */
export function spotAt(solid, x, y) {
  return JSON.parse(solid.ask((view) => view.pick(x, y)) ?? "null");
}

/**
 * The middle of the straight after a station of the selected run, or of its longest straight.
 * @param {Preview} solid
 * @param {number | undefined} station
 * @returns {Spot | null}
 */
export function straightAfter(solid, station) {
  return JSON.parse(solid.ask((view) => view.straightAfter(station)) ?? "null");
}
