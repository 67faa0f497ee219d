// The flat drawing: three views of the design side by side, for where there is no WebGL2 or a drawing reads better.

import { html, nothing, svg } from "../words/html.js";
import { say } from "../words/say.js";

/** @import { Scene, Xyz } from "../engine/messages.js" */

/** @typedef {[number, number]} Flat */
/** @typedef {{ name: string, across: 0 | 1, up: 1 | 2, deep: 0 | 1 | 2 }} Side the axes that go across, up and away */

/** @type {Side[]} */
const SIDES = [
  { name: say`Front: x across, z up`, across: 0, up: 2, deep: 1 },
  { name: say`Side: y across, z up`, across: 1, up: 2, deep: 0 },
  { name: say`Top: x across, y up`, across: 0, up: 1, deep: 2 },
];

/**
 * @param {Scene | undefined} scene
 * @param {string} words
 * @param {string | null} selected
 */
export function drawing(scene, words, selected) {
  const bounds = scene?.bounds;
  const empty = !scene || scene.ports.length + scene.runs.length + scene.keep_outs.length === 0;
  if (empty || !bounds) return html`<p class="nothing">Nothing to draw yet: state two ports and a run between them.</p>`;
  // One scale for all three views: the largest extent of the design, and room round it.
  const most = Math.max(20, ...bounds.max.map((high, axis) => high - bounds.min[axis]));
  return html`<div class="drawing" role="img" aria-label=${words}>
    ${SIDES.map((side) => view(scene, bounds, side, most, selected))}
  </div>`;
}

/**
 * @param {Scene} scene
 * @param {{ min: Xyz, max: Xyz }} bounds
 * @param {Side} side
 * @param {number} most
 * @param {string | null} selected
 */
function view(scene, bounds, side, most, selected) {
  const { across, up } = side;
  const [wide, high] = [bounds.max[across] - bounds.min[across], bounds.max[up] - bounds.min[up]];
  const edge = 0.06 * most;
  /** @type {(point: Xyz) => Flat} */
  const flat = (point) => [point[across] - bounds.min[across], bounds.max[up] - point[up]];
  const bar = niceLength(most / 3);
  const box = [(wide - most) / 2 - edge, (high - most) / 2 - edge, most + 2 * edge, most + 3 * edge].map((part) => part.toFixed(2));
  const [left, foot] = [(wide - most) / 2, (high + most) / 2 + edge];
  return html`<figure>
    <svg viewBox=${box.join(" ")} preserveAspectRatio="xMidYMid meet" aria-hidden="true">
      ${scene.keep_outs.map((keepOut) => blocked(keepOut, flat))}
      ${scene.runs.map((run) => tube(run, flat, selected))}
      ${scene.collars.map((collar) => round(collar.from, collar.to, collar.radius, flat, "collar"))}
      ${scene.ports.map((port) => seat(port, flat, edge))}
      ${scene.runs.length > 1 ? scene.runs.map((run, index) => tag(run, index + 1, flat, edge)) : nothing}
      <g class="scale"><path d="M${left} ${foot}h${bar}M${left} ${foot - edge / 4}v${edge / 2}M${left + bar} ${foot - edge / 4}v${edge / 2}"/>
        <text x=${left + bar + edge / 3} y=${foot + edge / 4} font-size=${edge * 0.9}>${bar} mm</text></g>
    </svg>
    <figcaption>${side.name}</figcaption>
  </figure>`;
}

/**
 * @param {Scene["runs"][number]} run
 * @param {(point: Xyz) => Flat} flat
 * @param {string | null} selected
 */
function tube(run, flat, selected) {
  if (run.centreline.length < 2) return nothing;
  const path = line(run.centreline.map(flat));
  if (!run.made) return svg`<path class="unmade" d=${path}/>`;
  return svg`<g class="tube ${run.name === selected ? "selected" : ""}">
    <path class="skin" d=${path} stroke-width=${run.outer_diameter}/>
    <path class="bore" d=${path} stroke-width=${run.bore}/>
    <path class="middle" d=${path}/>
  </g>`;
}

/**
 * A run's number, on its longest straight: tubes are told apart without colour.
 * @param {Scene["runs"][number]} run
 * @param {number} number
 * @param {(point: Xyz) => Flat} flat
 * @param {number} edge
 */
function tag(run, number, flat, edge) {
  const points = run.centreline.map(flat);
  const far = (/** @type {number} */ at) => Math.hypot(points[at + 1][0] - points[at][0], points[at + 1][1] - points[at][1]);
  const longest = points.slice(1).reduce((best, _, at) => (far(at) > far(best) ? at : best), 0);
  if (points.length < 2) return nothing;
  const [x, y] = [0, 1].map((axis) => (points[longest][axis] + points[longest + 1][axis]) / 2);
  return svg`<g class="tag"><circle cx=${x} cy=${y} r=${edge * 0.55}/>
    <text x=${x} y=${y + edge * 0.27} font-size=${edge * 0.75} text-anchor="middle">${number}</text></g>`;
}

/**
 * @param {Scene["ports"][number]} port
 * @param {(point: Xyz) => Flat} flat
 * @param {number} edge
 */
function seat(port, flat, edge) {
  const [x, y] = flat(port.seat);
  return svg`<g class="port"><circle cx=${x} cy=${y} r=${edge / 5}/><path d=${line([flat(port.seat), flat(port.mouth)])}/></g>`;
}

/**
 * @param {Scene["keep_outs"][number]} keepOut
 * @param {(point: Xyz) => Flat} flat
 */
function blocked({ box, cylinder }, flat) {
  if (cylinder) return round(cylinder.from, cylinder.to, cylinder.radius, flat, "keep-out");
  if (!box) return nothing;
  const [low, high] = [flat(box.min), flat(box.max)];
  return svg`<rect class="keep-out" x=${low[0]} y=${high[1]} width=${high[0] - low[0]} height=${low[1] - high[1]}/>`;
}

/**
 * A round body seen from the side it is seen from: its flank, and its ends where they face the eye.
 * @param {Xyz} from
 * @param {Xyz} to
 * @param {number} radius
 * @param {(point: Xyz) => Flat} flat
 * @param {string} kind
 */
function round(from, to, radius, flat, kind) {
  const [a, b] = [flat(from), flat(to)];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const seen = Math.hypot(dx, dy);
  const long = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]) || 1;
  // An end is a disc that its tilt squeezes along the body's axis.
  const squeezed = radius * Math.sqrt(Math.max(0, 1 - (seen / long) ** 2));
  const turn = (Math.atan2(dy, dx) * 180) / Math.PI;
  return svg`<g class=${kind} transform="translate(${a[0]} ${a[1]}) rotate(${turn})">
    <rect x="0" y=${-radius} width=${seen} height=${2 * radius}/>
    <ellipse cx="0" cy="0" rx=${squeezed} ry=${radius}/><ellipse cx=${seen} cy="0" rx=${squeezed} ry=${radius}/>
  </g>`;
}

/** @param {Flat[]} points */
function line(points) {
  return points.map(([x, y], index) => `${index === 0 ? "M" : "L"}${x.toFixed(2)} ${y.toFixed(2)}`).join("");
}

/**
 * The largest of 1, 2, 5 times a power of ten that is not above a length.
 * @param {number} most
 */
function niceLength(most) {
  const power = 10 ** Math.floor(Math.log10(most));
  return power * ([5, 2].find((times) => times * power <= most) ?? 1);
}
