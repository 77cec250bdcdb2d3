/** The parts of the assembled work where they stand: outlines as polygons in the work's frame. Lengths mm. */
import type { SourceRange } from '../../grammar/tree/source-range.ts';
import type { Outline } from '../design/design-model.ts';
import type { Placement, Work, WorkPart } from '../design/work-model.ts';
import { flattenContour } from '../geometry/flatten-path.ts';
import { add, type Point, turned } from '../geometry/point.ts';
import { areaOf } from '../geometry/polygons.ts';
import type { LaidPanel, Polygon } from '../lattice/laid-panel.ts';
import { mouldRings } from './pours/mould-content.ts';

export interface PlacedPart {
  readonly part: WorkPart;
  readonly layer: number;
  /** The words that place it. */
  readonly range: SourceRange;
  /** Outer rings counter-clockwise, holes clockwise. */
  readonly rings: readonly Polygon[];
}

/** Every placement whose part has an outline; a panel that could not be laid out has none. */
export const placedParts = ({ placements }: Work, panels: readonly LaidPanel[]): PlacedPart[] =>
  placements.flatMap((placement) => {
    const rings = ringsOf(placement.part, panels);
    return rings.length === 0
      ? []
      : [
          {
            part: placement.part,
            layer: placement.layer,
            range: placement.range,
            rings: rings.map((ring) => placedRing(ring, placement)),
          },
        ];
  });

/** A part's outline in its own frame. */
export function ringsOf(part: WorkPart, panels: readonly LaidPanel[]): readonly Polygon[] {
  switch (part.kind) {
    case 'panel':
      return panels.find(({ panel }) => panel.name === part.panel.name)?.region ?? [];
    case 'board':
      return part.board.outline.contours.map(flattenContour);
    case 'pour':
      return mouldRings(part.pour.mould);
  }
}

/** The outline that a part has by name; null where it has a size or a shape of its own. */
export function outlineOf(part: WorkPart): Outline | null {
  switch (part.kind) {
    case 'panel':
      return part.panel.shape.kind === 'outline' ? part.panel.shape.outline : null;
    case 'board':
      return part.board.outline;
    case 'pour':
      return part.pour.mould.kind === 'outline' ? part.pour.mould.outline : null;
  }
}

/** p ↦ R(turn)·M·p + at; a mirrored ring is walked backwards, so that it turns the way it did. */
export function placedRing(ring: Polygon, { at, turn, mirrored }: Placement): Point[] {
  const points = mirrored ? ring.map(({ x, y }) => ({ x, y: -y })).reverse() : ring;
  return points.map((point) => add(turned(point, turn), at));
}

/** Centre of the area inside rings: Σ over edges of (p + q)(p × q) / 6A. Null for no area. */
export function centroidOf(rings: readonly Polygon[]): Point | null {
  const area = areaOf(rings);
  if (area === 0) return null;
  let [x, y] = [0, 0];
  for (const ring of rings) {
    ring.forEach((point, index) => {
      const next = ring[(index + 1) % ring.length] ?? point;
      const twice = point.x * next.y - point.y * next.x;
      x += (point.x + next.x) * twice;
      y += (point.y + next.y) * twice;
    });
  }
  return { x: x / (6 * area), y: y / (6 * area) };
}
