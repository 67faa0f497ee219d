// A tube on its plate, from the side and from above, at its true width; parts of the bore that lie too flat are hatched.

import { html, nothing, svg } from "../words/html.js";
import { short } from "../words/numbers.js";
import { against, sizeWords } from "./against.js";
import { say, within } from "../words/say.js";

/** @import { Stances, Xyz } from "../engine/messages.js" */
/** @import { Way } from "./plate.js" */

/** @typedef {{ name: string, up: 1 | 2 }} Side */

/** @type {Side[]} */
const SIDES = [{ name: say`From the side`, up: 2 }, { name: say`From above`, up: 1 }];

/**
 * @param {Stances} answer
 * @param {Way} way
 */
export function platePicture(answer, way) {
  const words = say`${answer.run} on the plate, ${within(way.name)}: ${sizeWords(way.stance)}; ${against(answer, way.stance).map((part) => part.words).join("; ")}.`;
  const { flats, cups } = way.stance;
  return html`<figure class="on-plate">
    <div class="on-plate-views" role="img" aria-label=${words}>${SIDES.map((side) => view(answer, way, side))}</div>
    <figcaption>${way.name}, in a room of ${answer.volume_mm.map((edge) => short(edge, 0)).join(" × ")} mm; the dashes are its margins.
      ${flats.length > 0 ? html`<span class="legend"><svg viewBox="0 0 24 10" width="24" height="10" aria-hidden="true"><path class="flat" d="M0 5h24"/></svg> bore too flat</span>` : nothing}
      ${cups.length > 0 ? html`<span class="legend"><svg viewBox="0 0 10 10" width="10" height="10" aria-hidden="true"><circle class="cup" cx="5" cy="5" r="4"/></svg> traps resin</span>` : nothing}
    </figcaption>
  </figure>`;
}

/**
 * @param {Stances} answer
 * @param {Way} way
 * @param {Side} side
 */
function view(answer, { stance }, { name, up }) {
  const { volume_mm: volume, room_mm: room, outer_diameter } = answer;
  const { box_mm: box, path, flats, cups } = stance;
  // Both views share the scale and show all of the room, and of a tube that sticks out of it.
  const low = [0, 0, 0].map((edge, axis) => Math.min(edge, box.min[axis]));
  const high = volume.map((edge, axis) => Math.max(edge, box.max[axis]));
  const most = Math.max(...high.map((edge, axis) => edge - low[axis]));
  const rim = 0.04 * most;
  const tallest = Math.max(high[1] - low[1], high[2] - low[2]);
  const [wide, tall] = [high[0] - low[0], high[up] - low[up]];
  const point = (/** @type {Xyz} */ at) => `${(at[0] - low[0]).toFixed(2)} ${(high[up] - at[up]).toFixed(2)}`;
  const rect = (/** @type {string} */ kind, /** @type {number} */ inset) => svg`<rect class=${kind} x=${inset - low[0]} y=${high[up] - volume[up] + inset}
    width=${Math.max(0, volume[0] - 2 * inset)} height=${Math.max(0, volume[up] - 2 * inset)}/>`;
  const line = (/** @type {{ at_mm: Xyz }[]} */ points) => `M${points.map(({ at_mm }) => point(at_mm)).join("L")}`;
  const marks = cups.map((cup) => between(path, cup.from_mm, cup.to_mm)).filter((points) => points.length > 0).map((points) => lowest(points));
  return html`<div class="view"><svg viewBox="${-rim} ${tall - tallest - rim} ${wide + 2 * rim} ${tallest + 2 * rim}" preserveAspectRatio="xMidYMax meet" aria-hidden="true">
      ${rect("volume", 0)} ${rect("margin", (volume[0] - room[0]) / 2)}
      ${up === 2 ? svg`<path class="base" d="M${-low[0]} ${high[2]}h${volume[0]}"/>` : nothing}
      <path class="edge" d=${line(path)} stroke-width=${outer_diameter}/>
      <path class="skin" d=${line(path)} stroke-width=${0.86 * outer_diameter}/>
      ${flats.map((span) => svg`<path class="flat" d=${line(between(path, span.from_mm, span.to_mm))} stroke-width=${0.5 * outer_diameter}/>`)}
      ${marks.map((at) => svg`<circle class="cup" cx=${at[0] - low[0]} cy=${high[up] - at[up]} r=${0.32 * outer_diameter}/>`)}
    </svg><span class="view-name" aria-hidden="true">${name}</span></div>`;
}

/**
 * The part of a path between two arc lengths, its ends laid between the points that are there.
 * @param {{ s_mm: number, at_mm: Xyz }[]} path
 * @param {number} from
 * @param {number} to
 */
function between(path, from, to) {
  const at = (/** @type {number} */ s) => {
    const next = Math.max(1, path.findIndex((one) => one.s_mm >= s));
    const [a, b] = [path[next - 1], path[next]];
    const share = (s - a.s_mm) / Math.max(b.s_mm - a.s_mm, 1e-9);
    return { s_mm: s, at_mm: /** @type {Xyz} */ (a.at_mm.map((part, axis) => part + share * (b.at_mm[axis] - part))) };
  };
  if (path.length < 2) return [];
  return [at(from), ...path.filter((one) => one.s_mm > from && one.s_mm < to), at(to)];
}

/** @param {{ at_mm: Xyz }[]} points */
function lowest(points) {
  return points.reduce((low, one) => (one.at_mm[2] < low.at_mm[2] ? one : low)).at_mm;
}
