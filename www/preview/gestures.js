// Mouse, touch, wheel and keys on the preview's canvas. The page's own scrolling always comes first: the wheel zooms
// only with the control key or once the canvas has the focus, and a finger going up or down scrolls the page.

/** @import { Handles } from "./handles.js" */
/** @import { Preview } from "./host.js" */

// One wheel notch (100 of its units) zooms by about a tenth.
const WHEEL = 0.001;
const KEY_TURN = 24;
// How far a pointer may wander before a press is no click, CSS pixels.
const STILL = 3;
// To the right and up.
/** @type {Record<string, readonly [number, number] | undefined>} */
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

/**
 * @param {HTMLCanvasElement} canvas
 * @param {Preview} preview
 * @param {Handles} handles
 */
export function listen(canvas, preview, handles) {
  /** @type {Map<number, { x: number, y: number }>} */
  const fingers = new Map();
  let panning = false;
  /** The pointer that has hold of a handle. @type {number | undefined} */
  let holding;
  /** Where a press began that may become a click. @type {{ x: number, y: number } | undefined} */
  let pressed;

  canvas.addEventListener("pointerdown", (event) => {
    canvas.setPointerCapture(event.pointerId);
    const plain = event.button === 0 && !event.shiftKey && fingers.size === 0;
    if (plain && holding === undefined && handles.press(...placeIn(canvas, event), event.pointerType)) {
      holding = event.pointerId;
      return;
    }
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    panning = event.button !== 0 || event.shiftKey;
    pressed = plain ? { x: event.clientX, y: event.clientY } : undefined;
  });
  canvas.addEventListener("pointermove", (event) => {
    if (event.pointerId === holding) return handles.move(...placeIn(canvas, event));
    const was = fingers.get(event.pointerId);
    if (!was) {
      if (event.buttons === 0) canvas.dataset.over = handles.under(...placeIn(canvas, event));
      return;
    }
    if (pressed && Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) > STILL) pressed = undefined;
    const [dx, dy] = [event.clientX - was.x, event.clientY - was.y];
    const other = [...fingers].find(([id]) => id !== event.pointerId)?.[1];
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    if (other) pinch(canvas, preview, was, { x: event.clientX, y: event.clientY }, other);
    else if (panning) preview.act((view) => view.pan(dx, dy));
    else preview.act((view) => view.orbit(dx, dy));
  });
  canvas.addEventListener("pointerup", (event) => {
    fingers.delete(event.pointerId);
    if (event.pointerId === holding) {
      holding = undefined;
      handles.release();
    } else if (pressed) handles.click(...placeIn(canvas, event));
    pressed = undefined;
  });
  canvas.addEventListener("pointerleave", () => handles.left());
  canvas.addEventListener("pointercancel", (event) => {
    fingers.delete(event.pointerId);
    pressed = undefined;
    if (event.pointerId !== holding) return;
    holding = undefined;
    handles.cancel();
  });
  // A finger on a handle drags it; anywhere else one that goes up or down scrolls the page.
  canvas.addEventListener("touchstart", (event) => {
    const [touch] = event.touches;
    if (event.touches.length === 1 && handles.gripAt(...placeIn(canvas, touch), "touch")) event.preventDefault();
  }, { passive: false });
  canvas.addEventListener("dblclick", (event) => handles.doubleClick(...placeIn(canvas, event)));
  canvas.addEventListener("contextmenu", (event) => event.preventDefault());
  canvas.addEventListener("wheel", (event) => {
    if (!event.ctrlKey && document.activeElement !== canvas) return;
    event.preventDefault();
    const [x, y] = within(canvas, event.clientX, event.clientY);
    const notch = event.deltaMode === 0 ? event.deltaY : event.deltaY * 33;
    preview.act((view) => view.zoom(Math.exp(-notch * WHEEL), x, y));
  }, { passive: false });
  canvas.addEventListener("keyup", (event) => handles.axisKey(event.key, false));
  canvas.addEventListener("blur", () => handles.noKey());
  canvas.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey) return;
    if (handleKey(event, handles)) return event.preventDefault();
    if (event.altKey) return;
    const move = keyMove(event.key, event.shiftKey);
    if (!move) return;
    event.preventDefault();
    preview.act(move);
  });
}

/**
 * What a key does to the handles; `true` where it does something.
 * @param {KeyboardEvent} event
 * @param {Handles} handles
 */
function handleKey({ key, altKey, shiftKey }, handles) {
  const arrow = ARROWS[key];
  if (arrow && altKey) handles.nudge(arrow, shiftKey ? 10 : 1);
  else if (handles.axisKey(key, true)) return true;
  else if (altKey) return false;
  else if (key === "Enter" || key === " ") handles.next(shiftKey ? -1 : 1);
  else if (key === "Escape") return handles.cancel() || handles.letGo();
  else return false;
  return true;
}

/**
 * What a key does to the view.
 * @param {string} key
 * @param {boolean} shift
 * @returns {((view: import("../engine.js").View) => void) | undefined}
 */
function keyMove(key, shift) {
  const arrow = ARROWS[key];
  if (arrow) {
    const [dx, dy] = [arrow[0] * KEY_TURN, -arrow[1] * KEY_TURN];
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

/**
 * Where a pointer is on the canvas: CSS pixels from its top left.
 * @param {HTMLCanvasElement} canvas
 * @param {{ clientX: number, clientY: number }} at
 * @returns {[number, number]}
 */
function placeIn(canvas, { clientX, clientY }) {
  const box = canvas.getBoundingClientRect();
  return [clientX - box.left, clientY - box.top];
}
