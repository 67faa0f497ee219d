// What comes out of the page, read back by plain readers written from the formats' own descriptions.

import { strFromU8, unzipSync } from "fflate";

/**
 * A binary STL: 80 bytes of header, a count, then 50 bytes a triangle (a normal, three corners, a word that says nothing).
 * @param {Uint8Array} bytes
 */
export function readStl(bytes) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = view.getUint32(80, true);
  if (bytes.length !== 84 + 50 * count) throw new Error(`${bytes.length} bytes do not hold ${count} triangles`);
  const triangles = [];
  for (let at = 84; at < bytes.length; at += 50) {
    triangles.push([0, 1, 2].map((corner) => [0, 1, 2].map((axis) => view.getFloat32(at + 12 + 12 * corner + 4 * axis, true))));
  }
  return facts(triangles);
}

/**
 * A 3MF: a zip with a model part. Gives the unit and each object's mesh.
 * @param {Uint8Array} bytes
 */
export function read3mf(bytes) {
  const parts = unzipSync(bytes);
  const name = Object.keys(parts).find((part) => part.endsWith(".model"));
  const model = strFromU8(parts[name]);
  const unit = /<model[^>]*\bunit="(\w+)"/.exec(model)?.[1];
  const objects = [...model.matchAll(/<object\b([^>]*)>([\s\S]*?)<\/object>/g)].map(([, head, body]) => {
    const corners = [...body.matchAll(/<vertex\s+x="([^"]+)"\s+y="([^"]+)"\s+z="([^"]+)"/g)].map((found) => found.slice(1).map(Number));
    const triangles = [...body.matchAll(/<triangle\s+v1="(\d+)"\s+v2="(\d+)"\s+v3="(\d+)"/g)].map((found) =>
      found.slice(1).map((index) => corners[Number(index)]));
    return { name: /\bname="([^"]*)"/.exec(head)?.[1], ...facts(triangles) };
  });
  return { unit, parts: Object.keys(parts), objects };
}

/** The files of a zip by name. */
export function readZip(bytes) {
  return unzipSync(bytes);
}

/** How many triangles, whether every edge is met once from each side, the bounds, and the volume by the divergence theorem. */
function facts(triangles) {
  const sides = new Map();
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  let volume = 0;
  for (const corners of triangles) {
    const [a, b, c] = corners;
    volume += (a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0])) / 6;
    const keys = corners.map(String);
    for (let at = 0; at < 3; at += 1) {
      const [from, to] = [keys[at], keys[(at + 1) % 3]];
      sides.set(`${from}|${to}`, (sides.get(`${from}|${to}`) ?? 0) + 1);
      for (let axis = 0; axis < 3; axis += 1) {
        low[axis] = Math.min(low[axis], corners[at][axis]);
        high[axis] = Math.max(high[axis], corners[at][axis]);
      }
    }
  }
  let open = 0;
  for (const [side, times] of sides) {
    const [from, to] = side.split("|");
    if (times !== 1 || sides.get(`${to}|${from}`) !== 1) open += 1;
  }
  return { count: triangles.length, open, low, high, volume };
}
