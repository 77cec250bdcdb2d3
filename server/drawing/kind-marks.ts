/** The marks of a panel's pieces and strips; what is sawn from a blank goes by the marks of the blank's own strips. */
import type { Design } from '../design/design.ts';
import { add, cross, direction, dot, type Point, scale, subtract } from '../geometry/point.ts';
import { kindLengthTolerance, sameLength } from '../geometry/tolerance.ts';
import { type GridMove, movedPoint } from '../lattice/grid/grid-symmetries.ts';
import type { LaidPanel, Placement, StripGroup } from '../lattice/laid-panel.ts';
import type { MarkedKinds } from '../shop/marks/marked-kinds.ts';
import type { NestedBlank } from '../shop/blanks/nest-blanks.ts';

/** The parts of an analysis that say which mark is where, and what words are in. */
export interface MarkedDesign {
  readonly design: Pick<Design, 'units'>;
  readonly kinds: MarkedKinds;
  readonly blanks: readonly NestedBlank[];
}

/** Strips of one group and one mark, where they lie. */
export interface MarkedStrips {
  readonly mark: string;
  readonly placements: readonly Placement[];
  /** Whether the strip is part of a blank's, which is longer. */
  readonly isSawn: boolean;
}

/** The mark of every group of this panel that is made for it. */
export function marksOf<Group>(
  laid: LaidPanel,
  marked: readonly {
    readonly mark: string;
    readonly groups: readonly { readonly panel: LaidPanel; readonly group: Group }[];
  }[],
): Map<Group, string> {
  const own = marked.flatMap(({ mark, groups }) =>
    groups.filter(({ panel }) => panel === laid).map(({ group }) => [group, mark] as const),
  );
  return new Map(own);
}

/**
 * The strips of a group by their marks. Those of a panel of which none is made have the marks of the blank's strips in
 * which they lie in the first place where the panel is sawn; an empty mark is left where no blank has a place for it.
 */
export function stripsByMark(laid: LaidPanel, design: MarkedDesign): (group: StripGroup) => MarkedStrips[] {
  const own = marksOf(laid, design.kinds.strips);
  const from = sawnFrom(laid, design);
  return (group) => {
    const mark = own.get(group);
    if (mark !== undefined) return [{ mark, placements: group.placements, isSawn: false }];
    const byMark = new Map<string, Placement[]>();
    for (const placement of group.placements) {
      const found = from([1 / 4, 3 / 4].map((share) => pointOn(placement, share * group.length)));
      byMark.set(found, [...(byMark.get(found) ?? []), placement]);
    }
    return [...byMark].map(([each, placements]) => ({ mark: each, placements, isSawn: true }));
  };
}

const pointOn = ({ at, turn }: Placement, place: number): Point => add(at, scale(direction(turn), place));

/** Finds the mark of the blank's strip on whose axis these points of a strip of the panel lie. */
function sawnFrom(laid: LaidPanel, design: MarkedDesign): (points: readonly Point[]) => string {
  const place = firstPlace(laid, design.blanks);
  if (!place) return () => '';
  const marks = marksOf(place.blank, design.kinds.strips);
  return (points) => {
    const there = points.map((point) => movedPoint(point, place.move));
    const strip = place.blank.strips.find((group) =>
      group.placements.some((each) => there.every((point) => lies(point, each, group.length))),
    );
    return (strip && marks.get(strip)) ?? '';
  };
}

function firstPlace(
  laid: LaidPanel,
  blanks: readonly NestedBlank[],
): { readonly blank: LaidPanel; readonly move: GridMove } | null {
  const places = blanks.flatMap(({ packing, laid: made }) =>
    packing.blanks.flatMap((filled, index) => {
      const blank = made[index];
      const place = filled.places.find(({ cutOut }) => cutOut.name === laid.panel.name);
      return blank && place ? [{ blank, move: place.move }] : [];
    }),
  );
  return places[0] ?? null;
}

/** Whether a point lies on the axis of a strip. */
function lies(point: Point, { at, turn }: Placement, length: number): boolean {
  const [along, out] = [direction(turn), subtract(point, at)];
  const reach = dot(out, along);
  return sameLength(cross(along, out), 0) && reach > -kindLengthTolerance && reach < length + kindLengthTolerance;
}
