// What axe leaves open about contrast, read over: each kind has its reason here and is worked out here, so that none passes unseen.

/** Why axe could not tell, in its own words for it, and what was found when those places were looked at. */
export const REVIEWED = {
  imgNode: "axe takes words in a plot or a drawing for a picture: they stand on its paper or on a bar of it, whose colours are known",
  bgOverlap: "words above something painted, in the same drawing or in a frame of their own: the uppermost that is painted counts",
  elmPartiallyObscured: "a table that scrolls in its frame, or a list beside it: what covers part of it is the frame's edge, not a colour",
  elmPartiallyObscuring: "the same seen from the words on top",
  shortTextContent: "a figure of one digit or a unit of one letter is text like any other",
  pseudoContent: "the line that joins the steps of a list lies behind the number's own disc",
  nonBmp: "an arrow between two names has the names' own colour",
  emptyValue: "an empty field has its example's colour, or nothing to read",
};

/**
 * The ratio of two opaque colours, red, green and blue to 255, as WCAG 2.2 has it: of their relative luminances.
 * @param {readonly number[]} one
 * @param {readonly number[]} other
 */
export function contrastRatio(one, other) {
  const [a, b] = [one, other].map((colour) => {
    const [red, green, blue] = colour.map((part) => part / 255).map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  });
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/**
 * Contrast of an element's words with what they stand on, as WCAG 2.2 reckons it (1.4.3), and what is
 * asked of letters of that size: from the colours of the page's boxes, and in a drawing from the shapes painted before the
 * words that their middle lies in. It is run in the page, and takes nothing from around it but {@link contrastRatio}.
 * @param {Element} element
 * @returns {{ words: string, ratio: number, asked: number }}
 */
export function contrastOf(element) {
  const context = new OffscreenCanvas(1, 1).getContext("2d", { willReadFrequently: true });
  const rgba = (colour) => {
    context.clearRect(0, 0, 1, 1);
    context.fillStyle = colour;
    context.fillRect(0, 0, 1, 1);
    const [r, g, b, a] = context.getImageData(0, 0, 1, 1).data;
    return [r, g, b, a / 255];
  };
  const over = ([r, g, b, a], under) => [r, g, b].map((part, at) => part * a + under[at] * (1 - a));
  /** Colours from the words outwards, the nearest first, up to one that is not seen through. */
  const layers = () => {
    const found = [];
    const add = (colour, opacity = 1) => {
      const [r, g, b, a] = rgba(colour);
      if (a * opacity > 0) found.push([r, g, b, a * opacity]);
      return a * opacity === 1;
    };
    const drawing = element.closest("svg");
    if (drawing && element !== drawing) {
      const box = element.getBoundingClientRect();
      const shapes = [...drawing.querySelectorAll("rect, path, circle, ellipse, polygon")];
      for (const shape of shapes.filter((one) => one.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING && !one.closest("defs, clipPath, pattern")).reverse()) {
        const { fill, fillOpacity, opacity, visibility } = getComputedStyle(shape);
        const matrix = shape.getScreenCTM();
        if (fill === "none" || fill.startsWith("url") || visibility === "hidden" || !matrix) continue;
        const middle = new DOMPoint(box.x + box.width / 2, box.y + box.height / 2).matrixTransform(matrix.inverse());
        if (shape.isPointInFill(middle) && add(fill, Number(fillOpacity) * Number(opacity))) return found;
      }
    }
    for (let box = drawing ?? element; box; box = box.parentElement) if (add(getComputedStyle(box).backgroundColor)) return found;
    found.push([255, 255, 255, 1]);
    return found;
  };
  const empty = element instanceof HTMLInputElement && element.value === "";
  const style = getComputedStyle(element, empty ? "::placeholder" : undefined);
  let opacity = empty ? Number(style.opacity) : 1;
  for (let box = element; box; box = box.parentElement) opacity *= Number(getComputedStyle(box).opacity);
  const [paper, ...between] = layers().reverse();
  const ground = between.reduce((under, layer) => over(layer, under), paper.slice(0, 3));
  const [r, g, b, a] = rgba(element.closest("svg") ? style.fill : style.color);
  // Large letters, as WCAG has it: 24 px, or 18.66 px and bold.
  const size = parseFloat(style.fontSize);
  const asked = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700) ? 3 : 4.5;
  return { words: element.textContent.trim().slice(0, 40), ratio: contrastRatio(ground, over([r, g, b, a * opacity], ground)), asked };
}
