/** What the edge of a panel faces in the assembled work, in the panel's own coordinates. Lengths mm. */
import type { Meeting, Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import type { Placement, WorkPart } from '../../design/work-model.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { type Point, subtract, turned } from '../../geometry/point.ts';
import { outlineOf, placedRing, ringsOf } from '../placed-parts.ts';
import { partName } from '../work/plan-work.ts';
import { contoursOf } from './part-contours.ts';

/** A thing that the panel is fitted to, wherever it lies beside the panel, and how much more the saw leaves along it. */
export interface FacedPart {
  readonly rings: readonly (readonly Point[])[];
  readonly leave: number;
}

/** One for each meeting whose thing stands in the work with the panel; the panel's every place is looked at. */
export function facedParts(panel: Panel, { work }: Pick<Design, 'work'>): FacedPart[] {
  const placements = work?.placements ?? [];
  const own = placements.filter(({ part }) => part.kind === 'panel' && part.panel.name === panel.name);
  return panel.meets.flatMap((meeting) => {
    const others = placements.filter(({ part }) => isMet(part, meeting));
    const rings = own.flatMap((place) =>
      others
        .filter((other) => other !== place)
        .flatMap((other) => ringsOfPart(other.part).map((ring) => unplaced(placedRing(ring, other), place))),
    );
    return rings.length === 0 ? [] : [{ rings, leave: meeting.leave }];
  });
}

function isMet(part: WorkPart, { other }: Meeting): boolean {
  if (other.kind === 'outline') return outlineOf(part)?.name === other.name;
  return part.kind === other.kind && partName(part) === other.name;
}

const ringsOfPart = (part: WorkPart): readonly (readonly Point[])[] =>
  part.kind === 'panel' ? contoursOf(part.panel).map(flattenContour) : ringsOf(part, []);

/** Undoes a placement: p ↦ M·R(−turn)·(p − at). */
function unplaced(ring: readonly Point[], { at, turn, mirrored }: Placement): Point[] {
  const points = ring.map((point) => turned(subtract(point, at), -turn));
  return mirrored ? points.map(({ x, y }) => ({ x, y: -y })).reverse() : points;
}
