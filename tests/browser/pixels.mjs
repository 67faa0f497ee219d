// What a picture shows, counted by the browser that decodes it.

/** Hues that the preview uses, in degrees, each told from greys by how far its channels are apart. */
const HUES = { clay: [15, 45], teal: [165, 200], red: [345, 375] };

/**
 * Shares, in a thousand, of a picture's pixels by hue, and how many colours there are.
 * @param {import("playwright-core").Page} page
 * @param {Buffer | Uint8Array} png
 */
export function countPixels(page, png) {
  return page.evaluate(async ([base64, hues]) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
    context.drawImage(bitmap, 0, 0);
    const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
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
    const inside = 4 * (8 * bitmap.width + 8);
    const all = data.length / 4;
    const shares = Object.fromEntries(Object.entries(count).map(([name, found]) => [name, (1000 * found) / all]));
    return { ...shares, colours: seen.size, width: bitmap.width, height: bitmap.height, paper: [...data.subarray(inside, inside + 3)] };
  }, [Buffer.from(png).toString("base64"), HUES]);
}
