// How to measure, drawn: the datum, a port's centre, which way it faces, a fitting, its O-ring's gland.

import { html, svg } from "../words/html.js";
import { say } from "../words/say.js";

/** @typedef {{ title: string, words: string, picture: unknown }} Lesson `words` say all that the picture shows */

/**
 * A dimension: a line with a tick at both ends and a letter beside its middle.
 * @param {[number, number]} from
 * @param {[number, number]} to
 * @param {string} letter
 * @param {[number, number]} [aside] how far the letter stands from the middle
 */
function dimension([x1, y1], [x2, y2], letter, [dx, dy] = [0, -4]) {
  const long = Math.hypot(x2 - x1, y2 - y1) || 1;
  const [nx, ny] = [(4 * (y2 - y1)) / long, (-4 * (x2 - x1)) / long];
  return svg`<g class="dim"><path d="M${x1} ${y1}L${x2} ${y2}M${x1 + nx} ${y1 + ny}L${x1 - nx} ${y1 - ny}M${x2 + nx} ${y2 + ny}L${x2 - nx} ${y2 - ny}"/>
    <text x=${(x1 + x2) / 2 + dx} y=${(y1 + y2) / 2 + dy}>${letter}</text></g>`;
}

/** @param {unknown} body */
function drawn(body) {
  return html`<svg viewBox="0 0 220 140" aria-hidden="true">${body}</svg>`;
}

const datum = svg`
  <path class="faint" d="M40 112h150M40 112V20M40 112l40-34M80 78h110M80 78V20"/>
  <path class="axis" d="M40 112h62m-5-3 5 3-5 3M40 112V58m-3 5 3-5 3 5M40 112l27-23m-6 2 6-2-2 6"/>
  <text class="axis-name" x="106" y="115">x</text><text class="axis-name" x="36" y="53">z</text><text class="axis-name" x="69" y="86">y</text>
  <circle class="spot" cx="40" cy="112" r="4"/><text x="20" y="128">datum: one corner</text>
  <ellipse class="solid" cx="150" cy="52" rx="11" ry="7"/><ellipse class="hole" cx="150" cy="52" rx="6" ry="3.6"/>
  <path class="guide" d="M150 52V98M150 98H63M150 98l-16 14"/><text x="132" y="38">a port</text>`;

const centre = svg`
  <path class="wall" d="M10 14h12v112H10z"/>
  <rect class="solid" x="90" y="34" width="90" height="72" rx="4"/><circle class="hole" cx="135" cy="70" r="24"/>
  <path class="guide" d="M111 70V22M159 70V22M135 34v72M135 70V124"/>
  ${dimension([22, 24], [111, 24], "a", [0, -5])} ${dimension([22, 44], [159, 44], "b", [-40, -4])}
  <circle class="spot" cx="135" cy="70" r="3"/><text x="62" y="122">x = (a + b) / 2</text>`;

const facing = svg`
  <rect class="solid" x="26" y="60" width="70" height="50" rx="3"/><path class="hole" d="M52 60h18v10H52z"/>
  <path class="axis" d="M61 58V18m-4 7 4-7 4 7"/><text x="70" y="28">faces +z</text>
  <rect class="solid" x="136" y="36" width="56" height="74" rx="3"/><path class="hole" d="M136 64h10v18h-10z"/>
  <path class="axis" d="M134 73H104m7-4-7 4 7 4"/><text x="140" y="30">faces −x</text>
  <text x="26" y="128">out of the hole, as the tube leaves</text>`;

const fitting = svg`
  <path class="wall" d="M18 104h184v22H18z"/>
  <path class="cut" d="M74 104V76h-10V34h24v34h6v36zM146 104V76h10V34h-24v34h-6v36z"/>
  <path class="tube" d="M90 12h6v54h-6zM124 12h6v54h-6z"/><path class="guide" d="M110 6v116"/>
  ${dimension([176, 104], [176, 34], say`height`, [4, 4])} ${dimension([48, 34], [48, 68], say`socket`, [-40, 4])}
  ${dimension([64, 26], [156, 26], "", [0, 0])}<text x="160" y="24">collar</text>
  ${dimension([90, 10], [130, 10], "", [0, 0])}<text x="134" y="10">tube</text>
  <path class="guide" d="M156 34h26M40 68h48"/><text x="24" y="120">the part: its seat face</text>`;

const gland = svg`
  <path class="cut" d="M20 20h180v26h-70v-14H90v14H20z"/><path class="tube" d="M20 62h180v16H20z"/>
  <circle class="ring" cx="110" cy="47" r="15"/><path class="guide" d="M10 120h200"/>
  ${dimension([90, 12], [130, 12], say`width`, [24, 3])} ${dimension([138, 120], [138, 32], "", [0, 0])}<text x="142" y="100">half the gland</text>
  ${dimension([66, 32], [66, 62], "", [0, 0])}<text x="22" y="58">section</text><text x="20" y="134">the tube's middle</text>`;

/** @type {readonly Lesson[]} */
export const LESSONS = [
  {
    title: say`One datum for everything`,
    words: say`Choose one corner of the case that you can reach with the calipers, and count every length from it: x to the right, y away from you, z up. A metal edge is better than a plastic panel, which bends.`,
    picture: drawn(datum),
  },
  {
    title: say`The centre of a port, from two edges`,
    words: say`Nobody can measure to the middle of a hole. Measure from the wall to its near edge, a, and to its far edge, b: the centre is halfway. Type it as it is: (31.2 + 49) / 2. Do the same for the other two directions. The height counts at the face that the fitting seats on.`,
    picture: drawn(centre),
  },
  {
    title: say`Which way it faces`,
    words: say`The direction out of the threaded hole, as the tube will leave it. Most ports face along an axis; a tilted one takes three numbers, how far it goes along x, y and z.`,
    picture: drawn(facing),
  },
  {
    title: say`The fitting`,
    words: say`Screw one in by hand. Height: from the seat to the mouth where the tube goes in. Socket: from the mouth down to the shoulder that the tube butts against; a depth rod in the bore tells it. Collar: the widest ring, which your fingers must be able to turn. Tube: the outer diameter that it is made for, as its data sheet says.`,
    picture: drawn(fitting),
  },
  {
    title: say`Its O-ring and gland`,
    words: say`Take the ring out with a wooden pick. Section: how thick the ring itself is, measured without pressing it. Gland: the inner diameter at the floor of the groove that it sits in; width: of that groove. Not sure? Leave them out; then the seal is not judged, and the coupon will tell.`,
    picture: drawn(gland),
  },
];
