/** Which piece lies under a point of the page. */
import type { Camera } from '../webview-messages.ts';
import { onPanel, type PagePoint, type PageSize } from './camera.ts';
import { isThing, placeAt, placeCount, type PreparedDrawing, type PreparedKind } from './prepared-drawing.ts';
import { drawingMatrix, matrixOf } from './transforms.ts';

/** One placed thing: a kind, and the number of its placement. */
export interface Picked {
  readonly kind: PreparedKind;
  readonly index: number;
}

/** The thing painted last under `at`, of the layers that are shown; null over an opening or beside the drawing. */
export function pick(
  context: CanvasRenderingContext2D,
  { layers }: PreparedDrawing,
  hidden: ReadonlySet<string>,
  camera: Camera,
  size: PageSize,
  at: PagePoint,
): Picked | null {
  const point = onPanel(camera, at, size);
  for (const { layer, kinds, clip } of [...layers].reverse()) {
    if (!isThing(layer) || hidden.has(layer.name)) continue;
    if (clip) {
      context.setTransform(...drawingMatrix(camera, size, 1));
      if (!context.isPointInPath(clip, at.x, at.y, 'evenodd')) continue;
    }
    for (const kind of [...kinds].reverse()) {
      const index = placementAt(context, kind, camera, size, at, point);
      if (index !== null) return { kind, index };
    }
  }
  return null;
}

function placementAt(
  context: CanvasRenderingContext2D,
  kind: PreparedKind,
  camera: Camera,
  size: PageSize,
  at: PagePoint,
  point: PagePoint,
): number | null {
  const { path, reach, places } = kind;
  for (let index = placeCount(kind) - 1; index >= 0; index--) {
    const across = (places[4 * index] ?? 0) - point.x;
    const up = (places[4 * index + 1] ?? 0) - point.y;
    if (across * across + up * up > reach * reach) continue;
    context.setTransform(...matrixOf(placeAt(kind, index), camera, size, 1));
    if (context.isPointInPath(path, at.x, at.y, 'evenodd')) return index;
  }
  return null;
}
