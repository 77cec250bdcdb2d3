/** How large the picture of a panel is, caption and marks counted in, in coordinates with y turned down. */
import type { Drawing } from './drawing.ts';
import { type Caption, captionFor, captionWidth } from './svg-caption.ts';

/** White space around everything drawn: room for the marks at the strips' ends. */
const margin = 14;

export interface PictureArea {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The whole picture and the caption under the panel; `source` names the design's file. */
export function pictureFrame(drawing: Drawing, source: string): { page: PictureArea; caption: Caption } {
  const { bounds } = drawing;
  const width = Math.max(bounds.right - bounds.left, captionWidth(drawing, source)) + 2 * margin;
  const left = (bounds.left + bounds.right - width) / 2;
  const caption = captionFor(drawing, source, left + margin, -bounds.bottom + margin);
  const top = -bounds.top - margin;
  return { page: { left, top, width, height: caption.bottom + margin / 2 - top }, caption };
}
