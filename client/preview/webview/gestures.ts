/** Wheel, pointer and keys on the picture → zoom, pan, fit, point, choose, and steps between views. */
import type { PageElements } from './page-elements.ts';
import type { PagePoint } from './camera.ts';

export interface GestureListeners {
  /** Enlarge by `factor` about a point of the canvas; about its middle where that is null. */
  readonly onZoom: (factor: number, at: PagePoint | null) => void;
  readonly onPan: (dx: number, dy: number) => void;
  /** An arrow key: which way the paper goes, in pixels. */
  readonly onArrow: (dx: number, dy: number) => void;
  readonly onFit: () => void;
  /** The pointer rests on a point, or (null) left the canvas. */
  readonly onPoint: (at: PagePoint | null) => void;
  /** A click; null for Enter, which means what is pointed at or selected already. */
  readonly onChoose: (at: PagePoint | null) => void;
  /** Go through the views. */
  readonly onStep: (steps: number) => void;
  readonly onMeasure: () => void;
  readonly onTable: () => void;
  readonly onDrop: () => void;
}

const zoomStep = 1.25;
const panStep = 48;
/** Zoom for one pixel of wheel travel; a common wheel notch is 100 pixels. */
const wheelZoom = 1.0018;
/** Pixels in a line and in a page of wheel travel, by `WheelEvent.deltaMode`. */
const wheelUnits = [1, 16, 400];
/** A pointer that moves less than this between press and release has clicked, in pixels. */
const clickTravel = 4;

export function listenForGestures(elements: PageElements, listeners: GestureListeners): void {
  listenForPointer(elements.canvas, listeners);
  elements.zoomIn.addEventListener('click', () => listeners.onZoom(zoomStep, null));
  elements.zoomOut.addEventListener('click', () => listeners.onZoom(1 / zoomStep, null));
  elements.fit.addEventListener('click', () => listeners.onFit());
  elements.measure.addEventListener('click', () => listeners.onMeasure());
  elements.tabled.addEventListener('click', () => listeners.onTable());
  window.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const isOnPicture = event.target === elements.canvas || event.target === document.body;
    const actions = isOnPicture ? { ...pictureKeys(listeners), ...pageKeys(listeners) } : pageKeys(listeners);
    const action = actions[event.key];
    if (!action || event.target instanceof HTMLInputElement || event.target instanceof HTMLSelectElement) return;
    event.preventDefault();
    action();
  });
}

type Keys = Partial<Record<string, () => void>>;

/** Keys that mean the same everywhere on the page but in a field. */
const pageKeys = ({ onStep, onDrop }: GestureListeners): Keys => ({
  PageDown: () => onStep(1),
  PageUp: () => onStep(-1),
  Escape: onDrop,
});

function pictureKeys({ onZoom, onArrow, onFit, onMeasure, onTable, onChoose }: GestureListeners): Keys {
  return {
    '+': () => onZoom(zoomStep, null),
    '=': () => onZoom(zoomStep, null),
    '-': () => onZoom(1 / zoomStep, null),
    '0': onFit,
    m: onMeasure,
    t: onTable,
    Enter: () => onChoose(null),
    ArrowLeft: () => onArrow(panStep, 0),
    ArrowRight: () => onArrow(-panStep, 0),
    ArrowUp: () => onArrow(0, panStep),
    ArrowDown: () => onArrow(0, -panStep),
  };
}

function listenForPointer(canvas: HTMLCanvasElement, { onZoom, onPan, onPoint, onChoose }: GestureListeners): void {
  const pointOf = ({ offsetX, offsetY }: MouseEvent): PagePoint => ({ x: offsetX, y: offsetY });
  let pressed: PagePoint | null = null;
  let last: PagePoint | null = null;
  let hasMoved = false;
  canvas.addEventListener(
    'wheel',
    (event) => {
      event.preventDefault();
      onZoom(wheelZoom ** (-event.deltaY * (wheelUnits[event.deltaMode] ?? 1)), pointOf(event));
    },
    { passive: false },
  );
  canvas.addEventListener('pointerdown', (event) => {
    if (event.button !== 0) return;
    [pressed, last, hasMoved] = [pointOf(event), pointOf(event), false];
    canvas.setPointerCapture(event.pointerId);
  });
  canvas.addEventListener('pointermove', (event) => {
    const at = pointOf(event);
    if (!pressed || !last) {
      onPoint(at);
      return;
    }
    hasMoved ||= Math.hypot(at.x - pressed.x, at.y - pressed.y) >= clickTravel;
    if (!hasMoved) return;
    onPan(at.x - last.x, at.y - last.y);
    last = at;
  });
  canvas.addEventListener('pointerup', (event) => {
    const isClick = pressed !== null && !hasMoved;
    pressed = null;
    if (isClick) onChoose(pointOf(event));
  });
  canvas.addEventListener('pointercancel', () => (pressed = null));
  canvas.addEventListener('pointerleave', () => onPoint(null));
}
