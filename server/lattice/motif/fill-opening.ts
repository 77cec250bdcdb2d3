/** A motif set into one opening: its dividers, its pieces, and the motifs that fill the divided parts. */
import { append } from '../../geometry/numbers.ts';
import { type Words, measure, words } from '../../../grammar/words.ts';
import type { Motif, MotifPiece, StripStock, TipRule } from '../../design/design-model.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { areaTolerance, isZeroLength, placeTolerance } from '../../geometry/tolerance.ts';
import { cellShapeOf, cornerAngles, isSquareCorner } from '../cells/cell-classes.ts';
import { type CutPiece, cutPiece } from './cut-piece.ts';
import { type Crossing, crossingsOf, lapsOf, mostInOneLap } from './motif-laps.ts';
import { dividedParts } from './divided-parts.ts';
import { type Fold, foldsOf } from './motif-hinges.ts';
import { placeNode, withoutPlace } from '../../design/node-place.ts';
import type { PlacedMember } from './placed-member.ts';
import { type Axis, type EndBevels, endsAtNode, type EndTrouble } from './piece-ends.ts';

export interface FilledPiece extends CutPiece {
  readonly motif: string;
  readonly role: string;
  readonly words: MotifPiece['range'];
  /** Where it is half of a hinge: the same object in both halves. */
  readonly fold: Fold | null;
}

export interface FilledOpening {
  readonly pieces: readonly FilledPiece[];
  readonly problems: readonly Problem[];
}

const deepestFill = 8;

/** Sets `motif` into a convex ring whose corners are numbered from its first point. */
export function fillOpening(
  ring: readonly Point[],
  motif: Motif,
  stock: StripStock,
  tips: readonly TipRule[],
  depth = 0,
): FilledOpening {
  if (depth > deepestFill) return { pieces: [], problems: [tooDeep(motif)] };
  const placed = placeMembers(ring, motif, stock);
  const crossings = crossingsOf(
    placed.members.map(({ axis }) => axis),
    (first, second) => liesAbove(placed.members[first], placed.members[second]),
  );
  const cut = cutMembers(ring, motif, stock, [...tips, ...motif.tips], placed.members, crossings);
  const parts = fillParts(ring, motif, stock, placed.members, depth);
  return {
    pieces: [...cut.pieces, ...parts.flatMap(({ pieces }) => pieces)],
    problems: [
      ...placed.problems,
      ...crowdedLaps(placed.members, crossings),
      ...cut.problems,
      ...parts.flatMap(({ problems }) => problems),
    ],
  };
}

const liesAbove = (first: PlacedMember | undefined, second: PlacedMember | undefined): boolean =>
  first !== undefined && second !== undefined && first.member.above.includes(second.member.role);

function placeMembers(ring: readonly Point[], motif: Motif, stock: StripStock) {
  const problems: Problem[] = [];
  const members = [...motif.dividers, ...motif.pieces].flatMap((member): PlacedMember[] => {
    const axis = axisOf(member, ring, stock);
    if (axis) return [{ member, axis, isDivider: motif.dividers.includes(member) }];
    problems.push(unplaceable(member, motif, ring));
    return [];
  });
  return { members, problems };
}

/** Every member cut to its bevels, faces and laps. */
function cutMembers(
  ring: readonly Point[],
  motif: Motif,
  stock: StripStock,
  tips: readonly TipRule[],
  placed: readonly PlacedMember[],
  crossings: readonly Crossing[],
): FilledOpening {
  const axes = placed.map(({ axis }) => axis);
  const problems: Problem[] = [];
  const folded = foldsOf(motif, placed);
  append(problems, folded.problems);
  const pieces = placed.flatMap(({ member, axis, isDivider }, number): FilledPiece[] => {
    const ends = [axis.from, axis.to].map((node) => bevelsAt(node, number, placed, ring, tips));
    append(
      problems,
      ends.flatMap((end) => end.problems),
    );
    const [first, second] = ends.map(({ bevels }) => bevels);
    if (!first || !second) return [];
    const cut = cutPiece(axis, stock, first, second, ring, lapsOf(number, axes, crossings, stock.depth));
    if (!cut || isZeroLength(cut.shape.length)) {
      problems.push(withoutLength(member));
      return [];
    }
    if (cut.lost > areaTolerance && !isDivider) problems.push(losesWood(member, cut));
    return [
      { ...cut, motif: motif.name, role: member.role, words: member.range, fold: folded.folds.get(number) ?? null },
    ];
  });
  return { pieces, problems };
}

/** The bevels of one member's end at `node`, null where a problem keeps them from being made. */
function bevelsAt(
  node: Point,
  number: number,
  placed: readonly PlacedMember[],
  ring: readonly Point[],
  tips: readonly TipRule[],
): { readonly bevels: EndBevels | null; readonly problems: readonly Problem[] } {
  const ruleOf = (axis: number): TipRule | null => tipRuleOf(placed[axis], node, ring, tips);
  const axes = placed.map(({ axis }) => axis);
  const { ends, troubles } = endsAtNode(node, axes, ring, (axis) => ruleOf(axis)?.angle ?? null);
  const own = troubles.filter((trouble) => trouble.axis === number);
  const member = placed[number]?.member;
  if (own.length > 0 && member)
    return { bevels: null, problems: own.map((trouble) => endProblem(trouble, member, ruleOf(number))) };
  return { bevels: ends.find((end) => end.axis === number) ?? null, problems: [] };
}

/** The tip rule that speaks of a member's end at `node`. */
function tipRuleOf(
  placed: PlacedMember | undefined,
  node: Point,
  ring: readonly Point[],
  tips: readonly TipRule[],
): TipRule | null {
  if (!placed) return null;
  const { member, axis } = placed;
  const isSecond = distance(axis.to, node) <= placeTolerance;
  const here = isSecond ? member.to : member.from;
  const far = isSecond ? axis.from : axis.to;
  return tips.find((rule) => rule.node === here.name && tipSpeaksOf(rule, far, ring)) ?? null;
}

/** Each part between the dividers with the first fill that speaks of it. */
function fillParts(
  ring: readonly Point[],
  motif: Motif,
  stock: StripStock,
  placed: readonly PlacedMember[],
  depth: number,
): FilledOpening[] {
  const dividers = placed.filter(({ isDivider }) => isDivider);
  const { parts, unfinished } = dividedParts(
    ring,
    dividers.map(({ axis }) => axis),
  );
  const problems = unfinished.flatMap((number) => dividers[number]?.member ?? []).map(doesNotCross);
  const filled = parts.flatMap((part) => {
    const fill = motif.fills.find(({ parts: wanted }) => wanted.kind === 'every' || wanted.shape === cellShapeOf(part));
    return fill ? [fillOpening(part, fill.motif, stock, fill.tips, depth + 1)] : [];
  });
  return [{ pieces: [], problems }, ...filled];
}

function axisOf(member: MotifPiece, ring: readonly Point[], stock: StripStock): Axis | null {
  const from = placeNode(member.from.place, ring);
  const to = placeNode(member.to.place, ring);
  return from && to && distance(from, to) > placeTolerance ? { from, to, face: stock.face } : null;
}

/** Whether a tip rule speaks of a piece whose far end lies at `far`. */
function tipSpeaksOf({ corners }: TipRule, far: Point, ring: readonly Point[]): boolean {
  if (corners.kind === 'every') return true;
  const corner = ring.findIndex((point) => distance(point, far) <= placeTolerance);
  if (corner < 0) return false;
  if (corners.kind === 'number') return corner === corners.corner - 1;
  const angle = cornerAngles(ring)[corner] ?? 0;
  if (corners.kind === 'square') return isSquareCorner(angle);
  return !isSquareCorner(angle) && (corners.kind === 'sharp' ? angle < 90 : angle > 90);
}

/** Two pieces are lapped by half, three as a three-way lap; more at one place leave no wood. */
function crowdedLaps(placed: readonly PlacedMember[], crossings: readonly Crossing[]): Problem[] {
  return crossings
    .filter(({ axes }) => axes.length > mostInOneLap)
    .flatMap(({ axes }) => {
      const members = axes.flatMap((number) => placed[number]?.member ?? []);
      const last = members.at(-1);
      if (!last) return [];
      const message = `${members.length} pieces cross at one place (${members.map(({ role }) => role).join(', ')}); no more than ${mostInOneLap} can be lapped there, so end one of them at the crossing.`;
      return [problemAt('piecesOverlap', last.range, message)];
    });
}

function unplaceable(member: MotifPiece, motif: Motif, ring: readonly Point[]): Problem {
  const missing = [member.from, member.to].find(({ place }) => !placeNode(place, ring));
  const why = missing ? withoutPlace(missing.place, ring) : 'both its ends are one place; move one of them';
  const message = `${member.role} of motif ${motif.name} cannot be placed in a cell of ${ring.length} corners: ${why}.`;
  return problemAt('motifDoesNotFitCell', member.range, message);
}

const doesNotCross = ({ role, range }: MotifPiece): Problem =>
  problemAt(
    'dividerDoesNotCross',
    range,
    `${role} ends inside the opening and parts nothing; let it end at an edge, a corner or another divider, or make it a \`piece\`.`,
  );

const tooDeep = (motif: Motif): Problem =>
  problemAt(
    'tooManyLevels',
    motif.nameRange,
    `Motif ${motif.name} fills its parts more than ${deepestFill} levels deep; take a level out.`,
  );

const withoutLength = ({ role, range }: MotifPiece): Problem =>
  problemAt(
    'pieceWithoutLength',
    range,
    `${role} comes out with no length: the pieces at its ends and the edge of its opening leave nothing of it; move one of its nodes or make the cell larger.`,
  );

const losesWood = (member: MotifPiece, cut: CutPiece): Problem =>
  problemAt(
    'pieceLosesWood',
    member.range,
    words`${member.role} reaches over the edge of its opening and loses ${measure.area(cut.lost)} there; end it at a node on the edge.`,
  );

/** A tip leaves the rest of its gaps to the pieces beside it, which may be more than they can have. */
const tipAdvice = ({ declared, low, high }: Extract<EndTrouble, { kind: 'tip' }>, { role }: MotifPiece): Words =>
  low < high
    ? words`A tip of ${measure.fineAngle(declared)} does not fit ${role} here; choose one above ${measure.fineAngle(low)} and below ${measure.fineAngle(high)}.`
    : words`A tip of ${measure.fineAngle(declared)} does not fit ${role} here, nor does any other: a piece beside it would have bevels of more than 180°. Take the tip out, place another piece in the gap, or move the node.`;

function endProblem(trouble: EndTrouble, member: MotifPiece, rule: TipRule | null): Problem {
  switch (trouble.kind) {
    case 'overlap':
      return problemAt(
        'piecesOverlap',
        member.range,
        `${member.role} runs along another piece or the cell's edge from the same node; give it a direction of its own.`,
      );
    case 'crossing':
      return problemAt(
        'tipOutOfRange',
        member.range,
        words`The two bevels of ${member.role} add up to ${measure.fineAngle(trouble.sum)}, more than the 180° a piece has; place another piece beside it or move its node.`,
      );
    case 'tip':
      return problemAt('tipOutOfRange', rule?.range ?? member.range, tipAdvice(trouble, member));
  }
}
