/** Wheel, pointer, buttons and keys → zoom, pan, fit, point and choose. */
import type { PageElements } from './page-elements.ts';
import type { PagePoint } from './view.ts';

export interface GestureListeners {
  /** Enlarge by `factor` about a point of the canvas; about its middle where that is null. */
  readonly onZoom: (factor: number, at: PagePoint | null) => void;
  readonly onPan: (dx: number, dy: number) => void;
  readonly onFit: () => void;
  /** The pointer rests on a point, or (null) left the canvas. */
  readonly onPoint: (at: PagePoint | null) => void;
  readonly onChoose: (at: PagePoint) => void;
}

const zoomStep = 1.25;
const panStep = 48;
/** Zoom for one pixel of wheel travel; a common wheel notch is 100 pixels. */
const wheelZoom = 1.0018;
/** Pixels in a line and in a page of wheel travel, by `WheelEvent.deltaMode`. */
const wheelUnits = [1, 16, 400];

export function listenForGestures(elements: PageElements, listeners: GestureListeners): void {
  listenForPointer(elements.canvas, listeners);
  elements.zoomIn.addEventListener('click', () => listeners.onZoom(zoomStep, null));
  elements.zoomOut.addEventListener('click', () => listeners.onZoom(1 / zoomStep, null));
  elements.fit.addEventListener('click', () => listeners.onFit());
  window.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.target instanceof HTMLSelectElement) return;
    const action = keyActions(listeners)[event.key];
    if (!action) return;
    event.preventDefault();
    action();
  });
}

function keyActions({ onZoom, onPan, onFit }: GestureListeners): Partial<Record<string, () => void>> {
  return {
    '+': () => onZoom(zoomStep, null),
    '=': () => onZoom(zoomStep, null),
    '-': () => onZoom(1 / zoomStep, null),
    '0': onFit,
    ArrowLeft: () => onPan(panStep, 0),
    ArrowRight: () => onPan(-panStep, 0),
    ArrowUp: () => onPan(0, panStep),
    ArrowDown: () => onPan(0, -panStep),
  };
}

function listenForPointer(canvas: HTMLCanvasElement, { onZoom, onPan, onPoint, onChoose }: GestureListeners): void {
  const pointOf = ({ offsetX, offsetY }: MouseEvent): PagePoint => ({ x: offsetX, y: offsetY });
  let dragged: PagePoint | null = null;
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
    dragged = pointOf(event);
    canvas.setPointerCapture(event.pointerId);
  });
  canvas.addEventListener('pointermove', (event) => {
    const at = pointOf(event);
    if (dragged) onPan(at.x - dragged.x, at.y - dragged.y);
    else onPoint(at);
    if (dragged) dragged = at;
  });
  for (const end of ['pointerup', 'pointercancel'] as const) canvas.addEventListener(end, () => (dragged = null));
  canvas.addEventListener('pointerleave', () => onPoint(null));
  canvas.addEventListener('dblclick', (event) => onChoose(pointOf(event)));
}
