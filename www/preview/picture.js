// The picture as a file: what the preview shows, twice as fine, with the design's name and what is seen in words below.

import { download } from "../result/download.js";
import { wordsOf } from "../words/errors.js";
import { say } from "../words/say.js";
import { described } from "./described.js";

/** @import { App } from "../app.js" */

const TIMES = 2;
/** The colours that the view itself draws on and with: paper, name, words, line between. */
const COLOURS = { light: ["#ffffff", "#1b2224", "#4d5759", "#cdd2ce"], dark: ["#101415", "#e7ebe9", "#abb5b3", "#343c3e"] };
const FACE = 'system-ui, "Segoe UI", "DejaVu Sans", sans-serif';
// Of the picture as it is seen, CSS pixels.
const MARGIN = 12;
const NAME = { size: 16, line: 22, weight: 600 };
const WORDS = { size: 13, line: 18, weight: 400 };
const MOST_LINES = 6;

/** @param {App} app */
export async function savePicture(app) {
  const { solid } = app.preview;
  /** @type {HTMLCanvasElement | undefined} */
  let sheet;
  const words = described(solid.description);
  const drawn = solid.large(TIMES, (canvas) => {
    sheet = captioned(canvas, app.store.design.name.trim(), words, solid.theme);
  });
  if (!drawn || !sheet) {
    const text = say`No picture was made: the graphics are lost at the moment. Press again once the preview is back, or choose the drawing.`;
    app.say("file", { kind: "trouble", text });
    return;
  }
  try {
    const blob = await pngOf(sheet);
    const name = await app.link.ask("fileName", app.text, JSON.stringify({ kind: "design" }));
    download(new Uint8Array(await blob.arrayBuffer()), name.replace(/\.json$/, ".png"));
    app.say("file", undefined);
  } catch (error) {
    app.say("file", { kind: "trouble", text: say`No picture was made: ${wordsOf(error)}` });
  }
}

/**
 * A copy of a picture with words below it.
 * @param {HTMLCanvasElement} picture
 * @param {string} name
 * @param {string} words
 * @param {"light" | "dark"} theme
 */
function captioned(picture, name, words, theme) {
  const [paper, ink, soft, line] = COLOURS[theme];
  // Device pixels of the copy that a CSS pixel of what is seen has.
  const fine = picture.width / Math.max(1, picture.clientWidth);
  const sheet = document.createElement("canvas");
  const room = picture.width - 2 * MARGIN * fine;
  const lines = [
    ...(name ? wrapped(sheet, name, NAME, fine, room).map((text) => ({ text, kind: NAME, colour: ink })) : []),
    ...wrapped(sheet, words, WORDS, fine, room).map((text) => ({ text, kind: WORDS, colour: soft })),
  ];
  const high = lines.reduce((sum, { kind }) => sum + kind.line, 2 * MARGIN) * fine;
  sheet.width = picture.width;
  sheet.height = picture.height + Math.ceil(high);
  const context = flat(sheet);
  context.fillStyle = paper;
  context.fillRect(0, 0, sheet.width, sheet.height);
  context.drawImage(picture, 0, 0);
  context.fillStyle = line;
  context.fillRect(0, picture.height, sheet.width, Math.max(1, Math.round(fine)));
  let down = picture.height + MARGIN * fine;
  for (const { text, kind, colour } of lines) {
    context.font = fontOf(kind, fine);
    context.fillStyle = colour;
    context.textBaseline = "middle";
    context.fillText(text, MARGIN * fine, down + (kind.line * fine) / 2, room);
    down += kind.line * fine;
  }
  return sheet;
}

/**
 * A text in lines that have room.
 * @param {HTMLCanvasElement} sheet
 * @param {string} text
 * @param {typeof NAME} kind
 * @param {number} fine
 * @param {number} room
 */
function wrapped(sheet, text, kind, fine, room) {
  const context = flat(sheet);
  context.font = fontOf(kind, fine);
  /** @type {string[]} */
  const lines = [];
  for (const word of text.split(/\s+/)) {
    const longer = lines.length > 0 ? `${lines[lines.length - 1]} ${word}` : word;
    if (lines.length > 0 && context.measureText(longer).width <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.length > MOST_LINES ? [...lines.slice(0, MOST_LINES - 1), `${lines[MOST_LINES - 1]} …`] : lines;
}

/**
 * @param {typeof NAME} kind
 * @param {number} fine
 */
function fontOf({ size, weight }, fine) {
  return `${weight} ${size * fine}px ${FACE}`;
}

/** @param {HTMLCanvasElement} sheet */
function flat(sheet) {
  const context = sheet.getContext("2d");
  if (!context) throw new Error(say`the browser has no room for it`);
  return context;
}

/**
 * @param {HTMLCanvasElement} sheet
 * @returns {Promise<Blob>}
 */
function pngOf(sheet) {
  return new Promise((done, failed) => {
    sheet.toBlob((blob) => (blob ? done(blob) : failed(new Error(say`the browser has no room for it`))), "image/png");
  });
}
