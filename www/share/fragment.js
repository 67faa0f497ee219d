// A whole design in the part of an address after the #, which a browser never sends to a server: its text, compressed,
// in letters that every program leaves as they are.

import { say } from "../words/say.js";

const KEY = "design";
const VERSION = "1";
/** Longest text of a design, as the engine takes it, bytes. */
const MOST_TEXT = 16 * 1024 * 1024;
/** Beyond this no browser's address line is sure to take it, characters. */
export const MOST_LINK = 60_000;
/** Many programs that carry messages cut addresses longer than this, characters; common practice, no source. */
export const CUT_BY_SOME = 8_000;

/**
 * The address of this page with a design in it.
 * @param {string} text the design's canonical text
 * @param {string} page the page's address
 * @returns {Promise<string>}
 */
export async function linkTo(text, page) {
  const dense = new TextEncoder().encode(JSON.stringify(JSON.parse(text)));
  const bytes = await collected(piped(dense, new CompressionStream("deflate-raw")), MOST_TEXT);
  return `${page.split("#")[0]}#${KEY}=${VERSION}.${lettersOf(bytes)}`;
}

/**
 * The text in an address's fragment; none where it holds no design of ours. Throws an `Error` with plain words where
 * it holds one that cannot be read.
 * @param {string} fragment
 * @returns {Promise<string | undefined>}
 */
export async function textIn(fragment) {
  const found = /^#?design=([0-9]+)\.(.*)$/s.exec(fragment);
  if (!found) return undefined;
  const [, version, letters] = found;
  if (version !== VERSION) throw new Error(say`the link was made by a newer page. Reload this one, or ask for the design as a file.`);
  if (letters.length > 20 * MOST_LINK) throw new Error(say`the link is too long to be one of this page's.`);
  const bytes = bytesOf(letters);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(await collected(piped(bytes, new DecompressionStream("deflate-raw")), MOST_TEXT));
  } catch (error) {
    if (error instanceof RangeError) throw new Error(say`what is in the link is larger than any design.`);
    throw new Error(say`the link is not whole. It was cut short or changed on its way; ask for it again, or for the design as a file.`);
  }
}

/**
 * @param {Uint8Array<ArrayBuffer>} bytes
 * @param {GenericTransformStream} through
 * @returns {ReadableStream<Uint8Array>}
 */
function piped(bytes, through) {
  return new Blob([bytes]).stream().pipeThrough(/** @type {ReadableWritablePair<Uint8Array, Uint8Array<ArrayBuffer>>} */ (through));
}

/**
 * Everything that a stream gives, and a `RangeError` as soon as that is more than `most` bytes.
 * @param {ReadableStream<Uint8Array>} stream
 * @param {number} most
 * @returns {Promise<Uint8Array<ArrayBuffer>>}
 */
async function collected(stream, most) {
  const reader = stream.getReader();
  /** @type {Uint8Array[]} */
  const parts = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      void reader.cancel();
      throw new RangeError("too much");
    }
    parts.push(value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/**
 * Base64 for addresses (RFC 4648, section 5), without padding.
 * @param {Uint8Array} bytes
 */
function lettersOf(bytes) {
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

/**
 * @param {string} letters
 * @returns {Uint8Array<ArrayBuffer>}
 */
function bytesOf(letters) {
  // Programs that wrap lines put white space in.
  const plain = letters.replaceAll(/\s|%20|%0A/g, "");
  if (!/^[\w-]+$/.test(plain)) throw new Error(say`the link holds letters that no link of this page has.`);
  const binary = atob(plain.replaceAll("-", "+").replaceAll("_", "/"));
  return Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
}
