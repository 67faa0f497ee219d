// The lines of a PDF as they lie on its pages, in millimetres: a reader of as much of ISO 32000 as a browser's own
// printing needs. Object streams and content streams are inflated; of the drawing operators those that move, draw lines
// and set the matrix are followed, also into forms.

import { inflateSync } from "node:zlib";

const MM = 25.4 / 72;

/**
 * The pages: width, height and the straight strokes on each, mm.
 * @param {Uint8Array} bytes
 */
export function readPdf(bytes) {
  const objects = objectsOf(Buffer.from(bytes));
  const pages = [...objects.values()].filter(({ dict }) => /\/Type\s*\/Page\b/.test(dict));
  return pages.map(({ dict }) => {
    const box = numbers(/\/MediaBox\s*\[([^\]]*)\]/.exec(dict)?.[1] ?? inherited(objects, dict, "MediaBox"));
    const unit = Number(/\/UserUnit\s+([\d.]+)/.exec(dict)?.[1] ?? 1);
    const contents = references(/\/Contents\s*(\[[^\]]*\]|\d+ \d+ R)/.exec(dict)?.[1] ?? "");
    const content = contents.map((id) => objects.get(id)?.stream?.toString("latin1") ?? "").join("\n");
    const strokes = [];
    follow(content, dict, [1, 0, 0, 1, 0, 0], objects, strokes, 0);
    const scale = MM * unit;
    return {
      width: (box[2] - box[0]) * scale, height: (box[3] - box[1]) * scale,
      strokes: strokes.map((points) => points.map(([x, y]) => [x * scale, y * scale])),
    };
  });
}

/** Every object by its number, those inside object streams too. */
function objectsOf(buffer) {
  const text = buffer.toString("latin1");
  const objects = new Map();
  for (const found of text.matchAll(/(?:^|[\r\n])(\d+) 0 obj\b/g)) {
    const from = found.index + found[0].length;
    const end = text.indexOf("endobj", from);
    const starts = text.indexOf("stream", from);
    const has = starts >= 0 && starts < end;
    const dict = text.slice(from, has ? starts : end);
    objects.set(Number(found[1]), { dict, stream: has ? streamAt(buffer, text, starts, dict) : undefined });
  }
  for (const { dict, stream } of [...objects.values()]) {
    if (!/\/Type\s*\/ObjStm\b/.test(dict) || !stream) continue;
    const inside = stream.toString("latin1");
    const first = Number(/\/First\s+(\d+)/.exec(dict)[1]);
    const index = numbers(inside.slice(0, first));
    for (let at = 0; at < index.length; at += 2) {
      const next = index[at + 3] ?? inside.length - first;
      objects.set(index[at], { dict: inside.slice(first + index[at + 1], first + next), stream: undefined });
    }
  }
  return objects;
}

function streamAt(buffer, text, starts, dict) {
  let from = starts + "stream".length;
  if (text[from] === "\r") from += 1;
  from += 1;
  const length = /\/Length\s+(\d+)(?!\s+\d+\s+R)/.exec(dict);
  const to = length ? from + Number(length[1]) : text.indexOf("endstream", from);
  const raw = buffer.subarray(from, to);
  return /\/FlateDecode/.test(dict) ? inflateSync(raw) : raw;
}

function inherited(objects, dict, key) {
  const parent = objects.get(references(/\/Parent\s+(\d+ \d+ R)/.exec(dict)?.[1] ?? "")[0]);
  if (!parent) throw new Error(`the PDF's page has no ${key}`);
  return new RegExp(`/${key}\\s*\\[([^\\]]*)\\]`).exec(parent.dict)?.[1] ?? inherited(objects, parent.dict, key);
}

function numbers(text) {
  return (text.match(/-?\d*\.?\d+/g) ?? []).map(Number);
}

function references(text) {
  return [...text.matchAll(/(\d+) \d+ R/g)].map((found) => Number(found[1]));
}

/** `inner` after `outer`, as `cm` has it. */
function joined([a, b, c, d, e, f], [A, B, C, D, E, F]) {
  return [a * A + b * C, a * B + b * D, c * A + d * C, c * B + d * D, e * A + f * C + E, e * B + f * D + F];
}

function follow(content, dict, start, objects, strokes, depth) {
  let matrix = start;
  const kept = [];
  let path = [];
  let args = [];
  const placed = ([x, y]) => [x * matrix[0] + y * matrix[2] + matrix[4], x * matrix[1] + y * matrix[3] + matrix[5]];
  for (const [token] of content.matchAll(/\((?:\\.|[^\\)])*\)|<[0-9A-Fa-f\s]*>|\/[^\s/<>[\]()]+|-?\d*\.?\d+|[A-Za-z*'"]+/g)) {
    if (/^[-\d.]/.test(token)) args.push(Number(token));
    else if (/^[/(<]/.test(token)) args.push(token);
    else {
      if (token === "q") kept.push(matrix);
      else if (token === "Q") matrix = kept.pop() ?? start;
      else if (token === "cm") matrix = joined(args.slice(-6), matrix);
      else if (token === "m") path.push([placed(args.slice(-2))]);
      else if (token === "l") path.at(-1)?.push(placed(args.slice(-2)));
      else if (token === "S" || token === "s") {
        strokes.push(...path);
        path = [];
      } else if (/^(f|F|f\*|B|B\*|b|b\*|n)$/.test(token)) path = [];
      else if (token === "Do" && depth < 8) {
        const name = String(args.at(-1)).slice(1);
        const form = formNamed(objects, dict, name);
        if (form?.stream && /\/Subtype\s*\/Form\b/.test(form.dict)) {
          const own = /\/Matrix\s*\[([^\]]*)\]/.exec(form.dict);
          const inner = own ? joined(numbers(own[1]), matrix) : matrix;
          follow(form.stream.toString("latin1"), form.dict, inner, objects, strokes, depth + 1);
        }
      }
      args = [];
    }
  }
}

function formNamed(objects, dict, name) {
  const resources = /\/Resources\s+(\d+) \d+ R/.exec(dict);
  const where = resources ? objects.get(Number(resources[1]))?.dict ?? "" : dict;
  const list = /\/XObject\s+(\d+) \d+ R/.exec(where);
  const names = list ? objects.get(Number(list[1]))?.dict ?? "" : where;
  const found = new RegExp(`/${name}\\s+(\\d+) \\d+ R`).exec(names);
  return found ? objects.get(Number(found[1])) : undefined;
}
