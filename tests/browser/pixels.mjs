// What a picture shows, counted by the browser that decodes it.

/** Hues that the preview uses, in degrees, each told from greys by how far its channels are apart. */
const HUES = { clay: [15, 45], teal: [165, 200], red: [345, 375] };

/**
 * A picture as the browser decodes it, without a rim of so many pixels.
 * @param {import("playwright-core").Page} page
 * @param {Buffer | Uint8Array} png
 */
function decoded(page, png, rim = 0) {
  return page.evaluateHandle(async ([base64, edge]) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
    context.drawImage(bitmap, 0, 0);
    return context.getImageData(edge, edge, bitmap.width - 2 * edge, bitmap.height - 2 * edge);
  }, [Buffer.from(png).toString("base64"), rim]);
}

/**
 * The share of pixels, in a thousand, that two pictures do not have alike: whose channels are apart by more than `by` together.
 * @param {import("playwright-core").Page} page
 */
export async function difference(page, one, other, { by = 24, rim = 0 } = {}) {
  const pictures = await Promise.all([one, other].map((png) => decoded(page, png, rim)));
  return page.evaluate(([a, b, most]) => {
    if (a.width !== b.width || a.height !== b.height) return 1000;
    let count = 0;
    for (let at = 0; at < a.data.length; at += 4) {
      if ([0, 1, 2].reduce((sum, channel) => sum + Math.abs(a.data[at + channel] - b.data[at + channel]), 0) > most) count += 1;
    }
    return (1000 * count) / (a.data.length / 4);
  }, [...pictures, by]);
}

/**
 * Shares, in a thousand, of a picture's pixels by hue, and how many colours there are.
 * @param {import("playwright-core").Page} page
 * @param {Buffer | Uint8Array} png
 */
export async function countPixels(page, png) {
  return page.evaluate(([{ data, width, height }, hues]) => {
    const seen = new Set();
    const count = Object.fromEntries(Object.keys(hues).map((name) => [name, 0]));
    for (let at = 0; at < data.length; at += 4) {
      const [red, green, blue] = data.subarray(at, at + 3);
      seen.add((red << 16) | (green << 8) | blue);
      const [low, high] = [Math.min(red, green, blue), Math.max(red, green, blue)];
      if (high - low < 36) continue;
      const turn = high === red ? (green - blue) / (high - low) : high === green ? 2 + (blue - red) / (high - low) : 4 + (red - green) / (high - low);
      const hue = (60 * turn + 360) % 360;
      for (const [name, [from, to]] of Object.entries(hues)) if ((hue >= from && hue <= to) || (hue + 360 >= from && hue + 360 <= to)) count[name] += 1;
    }
    // A little way in from the corner, for a screen's picture may begin with half a border.
    const inside = 4 * (8 * width + 8);
    const all = data.length / 4;
    const shares = Object.fromEntries(Object.entries(count).map(([name, found]) => [name, (1000 * found) / all]));
    return { ...shares, colours: seen.size, width, height, paper: [...data.subarray(inside, inside + 3)] };
  }, [await decoded(page, png), HUES]);
}
