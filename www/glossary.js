// What the words of the page mean, by where they are met.

import { dialog, openDialog } from "./dialog.js";
import { html } from "./words/html.js";
import { say } from "./words/say.js";

const ID = "glossary";

/** @type {{ title: string, words: [word: string, meaning: string][] }[]} */
const PARTS = [
  {
    title: say`Where the tube goes`, words: [
      [say`Datum`, say`The corner that everything is measured from. Pick one that both rules and calipers reach, such as a corner of the case.`],
      [say`Port`, say`A threaded hole in a part. It has a place, the middle of the hole on the face that the fitting seats on, and a facing, the way straight out of it.`],
      [say`Fitting`, say`What is screwed into the port and takes the tube, sealing it with a ring.`],
      [say`Collar`, say`The fitting's widest ring round the tube. It needs room to be turned.`],
      [say`Socket and stop`, say`The hole in the fitting that the tube slides into, and the shoulder at its bottom that the tube's end rests on.`],
      [say`Lead`, say`Straight tube that has to follow the fitting before the first bend.`],
      [say`Run`, say`One tube, from one port to another, with its corners, points and coils on the way.`],
      [say`Keep-out`, say`Room that no tube may enter: a part of the case, a card, a cable.`],
    ],
  },
  {
    title: say`The tube`, words: [
      [say`Outer diameter and bore`, say`Across the outside, and across the hole. Half of what they differ by is the wall.`],
      [say`Centreline`, say`The line down the middle of the tube. Lengths and bend radii are told along it.`],
      [say`Bend radius`, say`Of the circle that the centreline goes round in a bend. More of it loses less pressure.`],
      [say`Chamfer`, say`The cone at the tube's end that leads it through the ring without cutting it.`],
      [say`Trim`, say`Length that an end is printed longer by, to be sanded off until it fits.`],
      [say`Deviation`, say`How far the file's flat faces may lie from the round skin, at most.`],
    ],
  },
  {
    title: say`In service`, words: [
      [say`Gland and squeeze`, say`The groove that the sealing ring lies in, and the share of its thickness that the tube presses it together by.`],
      [say`Heat deflection`, say`The temperature at which a loaded bar of the material bends by a set amount. Above it a tube slowly gives.`],
      [say`Pressure loss`, say`What pushing the coolant through takes, at a stated flow.`],
      [say`Head`, say`The height of water that a pump can hold up: the pressure it gives, in metres.`],
      [say`Reynolds number`, say`Tells whether the coolant flows in quiet layers (below some 2300) or whirls.`],
    ],
  },
  {
    title: say`Printing`, words: [
      [say`Stance`, say`How a piece stands on the build plate while it is printed.`],
      [say`Cup`, say`A place where the bore holds liquid resin against the vat while it is printed, which pulls at the wall.`],
      [say`Piece and joint`, say`What is printed in one go where a tube is too long for the printer, and the glued place where two pieces meet.`],
      [say`Fit coupon`, say`A small print with ends in several sizes. It shows which size really fits, before a whole tube is printed.`],
      [say`Pack`, say`One download with everything: files, coupon, drawings, and a sheet to order and assemble by.`],
    ],
  },
];

export function glossaryDialog() {
  return dialog(ID, say`What the words mean`, PARTS.map(({ title, words }) => html`<h3>${title}</h3>
    <dl class="glossary">${words.map(([word, meaning]) => html`<div><dt>${word}</dt><dd>${meaning}</dd></div>`)}</dl>`));
}

/** The button that opens it. */
export function glossaryButton() {
  return html`<button type="button" class="link how" aria-haspopup="dialog" @click=${() => openDialog(ID)}>What the words mean</button>`;
}
