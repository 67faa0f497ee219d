// Mouse, touch, wheel and keys on the preview's canvas. The page's own scrolling always comes first: the wheel zooms
// only with the control key or once the canvas has the focus, and a finger going up or down scrolls the page.

/** @import { Preview } from "./host.js" */

// One wheel notch (100 of its units) zooms by about a tenth.
const WHEEL = 0.001;
const KEY_TURN = 24;

/**
 * @param {HTMLCanvasElement} canvas
 * @param {Preview} preview
 */
export function listen(canvas, preview) {
  /** @type {Map<number, { x: number, y: number }>} */
  const fingers = new Map();
  let panning = false;

  canvas.addEventListener("pointerdown", (event) => {
    canvas.setPointerCapture(event.pointerId);
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    panning = event.button !== 0 || event.shiftKey;
  });
  canvas.addEventListener("pointermove", (event) => {
    const was = fingers.get(event.pointerId);
    if (!was) return;
    const [dx, dy] = [event.clientX - was.x, event.clientY - was.y];
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (other) pinch(canvas, preview, was, { x: event.clientX, y: event.clientY }, other);
    else if (panning) preview.act((view) => view.pan(dx, dy));
    else preview.act((view) => view.orbit(dx, dy));
  });
  for (const end of /** @type {const} */ (["pointerup", "pointercancel"])) {
    canvas.addEventListener(end, (event) => fingers.delete(event.pointerId));
  }
  canvas.addEventListener("contextmenu", (event) => event.preventDefault());
  canvas.addEventListener("wheel", (event) => {
    if (!event.ctrlKey && document.activeElement !== canvas) return;
    event.preventDefault();
    const [x, y] = within(canvas, event.clientX, event.clientY);
    const notch = event.deltaMode === 0 ? event.deltaY : event.deltaY * 33;
    preview.act((view) => view.zoom(Math.exp(-notch * WHEEL), x, y));
  }, { passive: false });
  canvas.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const move = keyMove(event.key, event.shiftKey);
    if (!move) return;
    event.preventDefault();
    preview.act(move);
  });
}

/**
 * What a key does to the view.
 * @param {string} key
 * @param {boolean} shift
 * @returns {((view: import("../engine.js").View) => void) | undefined}
 */
function keyMove(key, shift) {
  const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[key];
  if (way) {
    const [dx, dy] = way.map((part) => part * KEY_TURN);
    return shift ? (view) => view.pan(dx, dy) : (view) => view.orbit(dx, dy);
  }
  if (key === "+" || key === "=") return (view) => view.zoom(1.2, 0.5, 0.5);
  if (key === "-") return (view) => view.zoom(1 / 1.2, 0.5, 0.5);
  if (key === "0") return (view) => view.fit();
  return undefined;
}

/**
 * Two fingers: their distance zooms, their middle moves.
 * @param {HTMLCanvasElement} canvas
 * @param {Preview} preview
 * @param {{ x: number, y: number }} was
 * @param {{ x: number, y: number }} now
 * @param {{ x: number, y: number }} other
 */
function pinch(canvas, preview, was, now, other) {
  const before = Math.hypot(was.x - other.x, was.y - other.y);
  const after = Math.hypot(now.x - other.x, now.y - other.y);
  const [x, y] = within(canvas, (now.x + other.x) / 2, (now.y + other.y) / 2);
  preview.act((view) => {
    view.pan((now.x - was.x) / 2, (now.y - was.y) / 2);
    if (before > 1 && after > 1) view.zoom(after / before, x, y);
  });
}

/**
 * A point of the window as fractions of the canvas.
 * @param {HTMLCanvasElement} canvas
 * @param {number} x
 * @param {number} y
 */
function within(canvas, x, y) {
  const box = canvas.getBoundingClientRect();
  return [(x - box.left) / box.width, (y - box.top) / box.height];
}
