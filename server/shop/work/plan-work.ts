/** The assembled work as the plan writes it: size, box, what meets edge to edge and what lies on what. Lengths mm, areas mm². */
import type { Design } from '../../design/design.ts';
import type { WorkPart } from '../../design/work-model.ts';
import { maximum, sum } from '../../geometry/numbers.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { areaTolerance } from '../../geometry/tolerance.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { panelDepth, pourDepth } from '../lines/work-depth.ts';
import type { PlanWork } from '../sections/object-sections.ts';
import { type PlacedPart, placedParts } from '../placed-parts.ts';
import { planArea, planLength } from '../sections/plan-rounding.ts';
import { facingOf, sharedArea } from './facing.ts';

/** Padding on every side of the work in its box: common practice. */
const padding = 30;

/** Null where nothing is placed. */
export function planWork(design: Design, panels: readonly LaidPanel[]): PlanWork | null {
  const { work } = design;
  if (!work) return null;
  const placed = placedParts(work, panels);
  if (placed.length === 0) return null;
  const { left, right, bottom, top } = boundsOf(placed.flatMap(({ rings }) => rings.flat()));
  const [width, height, depth] = [right - left, top - bottom, depthOf(placed, design)];
  return {
    name: work.name,
    copies: work.copies,
    parts: countsOf(placed),
    widthMm: planLength(width),
    heightMm: planLength(height),
    depthMm: planLength(depth),
    boxMm: [width, height, depth].map((size) => planLength(size + 2 * padding)),
    joints: jointsOf(placed, design),
    rests: restsOf(placed),
  };
}

export function partName(part: WorkPart): string {
  switch (part.kind) {
    case 'panel':
      return part.panel.name;
    case 'board':
      return part.board.name;
    case 'pour':
      return part.pour.name;
  }
}

function partDepth(part: WorkPart, design: Design): number {
  switch (part.kind) {
    case 'panel':
      return panelDepth(part.panel, design);
    case 'board':
      return part.board.sheet.thickness;
    case 'pour':
      return pourDepth(part.pour);
  }
}

/** The deepest part of every layer, one on the other. */
function depthOf(placed: readonly PlacedPart[], design: Design): number {
  const layers = [...new Set(placed.map(({ layer }) => layer))];
  return sum(
    layers.map((layer) =>
      maximum(placed.filter((each) => each.layer === layer).map(({ part }) => partDepth(part, design))),
    ),
  );
}

function countsOf(placed: readonly PlacedPart[]): PlanWork['parts'] {
  const names = [...new Set(placed.map(({ part }) => partName(part)))];
  return names.map((part) => ({ part, placed: placed.filter((each) => partName(each.part) === part).length }));
}

/** Every two parts of one layer that touch, overlap or nearly meet. */
function jointsOf(placed: readonly PlacedPart[], design: Design): PlanWork['joints'] {
  return pairsOf(placed).flatMap(([one, two]): PlanWork['joints'] => {
    const facing = one.layer === two.layer ? facingOf(one.rings, two.rings) : null;
    if (!facing) return [];
    const depth = Math.min(partDepth(one.part, design), partDepth(two.part, design));
    return [
      {
        parts: [partName(one.part), partName(two.part)],
        at: { xMm: planLength(facing.at.x), yMm: planLength(facing.at.y) },
        overlapMm: planLength(facing.overlap),
        gapMm: planLength(facing.gap),
        contactMm: planLength(facing.contact),
        contactMm2: planArea(facing.contact * depth),
      },
    ];
  });
}

/** What lies in front of what, where no third part lies between. */
function restsOf(placed: readonly PlacedPart[]): PlanWork['rests'] {
  return placed.flatMap((front) => {
    const behind = placed
      .filter(({ layer }) => layer < front.layer)
      .map((back) => ({ back, area: sharedArea(front.rings, back.rings) }))
      .filter(({ area }) => area > areaTolerance);
    const nearest = maximum(behind.map(({ back }) => back.layer));
    return behind
      .filter(({ back }) => back.layer === nearest)
      .map(({ back, area }) => ({ part: partName(front.part), on: partName(back.part), areaMm2: planArea(area) }));
  });
}

const pairsOf = <Item>(items: readonly Item[]): (readonly [Item, Item])[] =>
  items.flatMap((one, index) => items.slice(index + 1).map((two) => [one, two] as const));
