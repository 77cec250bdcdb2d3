/** How the work hangs: what its fixings carry, where cleat and spacer lie hidden, where to drill. Masses g, lengths mm. */
import { minimum } from '../../geometry/numbers.ts';
import { type Words, measure, words } from '../../../grammar/words.ts';
import type { Hanging, Work } from '../../design/work-model.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import type { LaidPanel, Polygon } from '../../lattice/laid-panel.ts';
import { longestRunWithin } from './chords.ts';
import type { PlanHanging, PlanMass, PlanSpan } from './object-sections.ts';
import { placedParts } from '../placed-parts.ts';
import { planLength } from './plan-rounding.ts';

/** Width of the cleat's board, and of the spacer's: common practice. */
export const cleatWidth = 40;
/** How far its ends stay behind the edge: common practice. */
const hiddenBy = 20;

/** From the cleat's end to its outermost hole; common practice. */
const endDistance = 25;

/** Heights that are tried. */
const levels = 100;

/** A cleat at least this share of the work's width does not rock. Common practice. */
const leastShare = 1 / 3;

const caution =
  'What a fixing holds is its maker’s word for sound material: read its data sheet, find studs or the right plug, and follow local codes; for public places or heavy work ask a licensed fitter.';

/** Null where the work does not hang. */
export function planHanging(
  work: Work | null,
  panels: readonly LaidPanel[],
  mass: PlanMass,
): PlanHanging<Words> | null {
  if (!work?.hanging) return null;
  const { fixings, each, safety, height } = work.hanging;
  const load = mass.perCopyG;
  const shapes = rearmost(work, panels);
  const middle = mass.centre?.yMm ?? middleOf(shapes);
  const cleat = height === null ? highestCleat(shapes, middle) : spanAt(shapes, height);
  const carries = (fixings * each) / safety;
  return {
    loadG: load,
    fixings,
    eachG: each,
    safety,
    carriesG: Math.floor(carries),
    verdict: load === null ? 'not known' : carries >= load ? 'holds' : 'too weak',
    fixingsNeeded: load === null ? null : Math.ceil((load * safety) / each),
    cleat,
    spacer: lowestSpacer(shapes, middle),
    drill: cleat ? drillPlaces(cleat, fixings) : [],
    notes: notesFor(work.hanging, cleat, mass),
  };
}

/** Edges of what lies against the wall and carries the cleat, where they lie in the work. */
export function rearmost(work: Work, panels: readonly LaidPanel[]): (readonly Polygon[])[] {
  const placed = placedParts(work, panels);
  const lowest = minimum(placed.map(({ layer }) => layer));
  return placed.filter(({ layer }) => layer === lowest).map(({ rings }) => rings);
}

function middleOf(shapes: readonly (readonly Polygon[])[]): number {
  const { bottom, top } = boundsOf(shapes.flat(2));
  return (bottom + top) / 2;
}

/** The run for a cleat whose upper edge is at `height`, its ends hidden; null where nothing is left. */
function spanAt(shapes: readonly (readonly Polygon[])[], height: number): PlanSpan | null {
  const run = longestRunWithin(shapes, height - cleatWidth, height);
  if (!run || run[1] - run[0] <= 2 * hiddenBy) return null;
  const [from, to] = [run[0] + hiddenBy, run[1] - hiddenBy];
  return {
    heightMm: planLength(height),
    fromMm: planLength(from),
    toMm: planLength(to),
    lengthMm: planLength(to - from),
  };
}

/** The runs at levels from one height to another, in that order, each worked out when it is asked for. */
function* spansBetween(shapes: readonly (readonly Polygon[])[], from: number, to: number): Generator<PlanSpan> {
  for (let level = 1; level <= levels; level += 1) {
    const span = spanAt(shapes, from + ((to - from) * level) / (levels + 1));
    if (span) yield span;
  }
}

/** As high as a cleat fits that is long enough, above the centre of mass; else the longest there. */
function highestCleat(shapes: readonly (readonly Polygon[])[], middle: number): PlanSpan | null {
  const { left, right, top } = boundsOf(shapes.flat(2));
  const tooShort: PlanSpan[] = [];
  for (const span of spansBetween(shapes, top - hiddenBy, middle)) {
    if (span.lengthMm >= leastShare * (right - left)) return span;
    tooShort.push(span);
  }
  return longest(tooShort);
}

/** As low as a spacer fits, below the centre of mass: it keeps the work upright, and needs no length. */
function lowestSpacer(shapes: readonly (readonly Polygon[])[], middle: number): PlanSpan | null {
  const { bottom } = boundsOf(shapes.flat(2));
  for (const lowest of spansBetween(shapes, bottom + hiddenBy + cleatWidth, middle)) return lowest;
  return null;
}

const longest = (spans: readonly PlanSpan[]): PlanSpan | null =>
  spans.reduce<PlanSpan | null>((best, span) => (best && best.lengthMm >= span.lengthMm ? best : span), null);

/** Evenly from end to end, counted from the cleat's left end as it is seen from behind. */
function drillPlaces({ heightMm, lengthMm }: PlanSpan, fixings: number): PlanHanging<Words>['drill'] {
  const yMm = planLength(heightMm - cleatWidth / 2);
  if (fixings === 1) return [{ xMm: planLength(lengthMm / 2), yMm }];
  const end = Math.min(endDistance, lengthMm / 4);
  const step = (lengthMm - 2 * end) / (fixings - 1);
  return Array.from({ length: fixings }, (_, index) => ({ xMm: planLength(end + index * step), yMm }));
}

function notesFor({ height }: Hanging, cleat: PlanSpan | null, mass: PlanMass): Words[] {
  const notes: Words[] = [];
  if (mass.perCopyG === null) notes.push('The mass is not known, so neither is whether the fixings carry it.');
  if (!cleat)
    notes.push(
      height === null
        ? 'No cleat fits behind the work; place its parts, or hang it another way.'
        : words`No cleat fits behind the work at ${measure.given(height)}; choose another height.`,
    );
  else
    notes.push(
      words`For a cleat ${measure.size(cleatWidth)} wide, its upper edge at the height given; the spacer at the bottom is as thick as the cleat is deep off the wall.`,
    );
  if (cleat && mass.centre && cleat.heightMm <= mass.centre.yMm)
    notes.push('The cleat lies below the centre of mass: the work would tip. Choose a greater height.');
  if (cleat && mass.centre && (mass.centre.xMm < cleat.fromMm || mass.centre.xMm > cleat.toMm))
    notes.push('The centre of mass does not lie over the cleat: the work would tilt. Move the cleat or the parts.');
  return [...notes, caution];
}
