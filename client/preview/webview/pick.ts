/** Which piece lies under a point of the page. */
import type { View } from '../webview-messages.ts';
import { matrixOf } from './painter.ts';
import { placesOf, type PreparedDrawing, type PreparedKind } from './prepared-drawing.ts';
import { onPanel, type PagePoint, type PageSize } from './view.ts';

/** The strip or piece painted last under `at`; null over an opening or beside the panel. */
export function pick(
  context: CanvasRenderingContext2D,
  { layers }: PreparedDrawing,
  view: View,
  size: PageSize,
  at: PagePoint,
): PreparedKind | null {
  const point = onPanel(view, at, size);
  for (const { layer, kinds } of [...layers].reverse()) {
    if (layer.kind === 'region' || layer.kind === 'outline' || layer.kind === 'note') continue;
    const found = kinds.find((kind) => covers(context, kind, view, size, at, point));
    if (found) return found;
  }
  return null;
}

function covers(
  context: CanvasRenderingContext2D,
  { kind, path, reach }: PreparedKind,
  view: View,
  size: PageSize,
  at: PagePoint,
  point: PagePoint,
): boolean {
  for (const place of placesOf(kind)) {
    if (Math.hypot(place.x - point.x, place.y - point.y) > reach) continue;
    context.setTransform(...matrixOf(place, view, size, 1));
    if (context.isPointInPath(path, at.x, at.y, 'evenodd')) return true;
  }
  return false;
}
