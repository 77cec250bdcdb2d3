/**
 * The moves of the plane that lay a bare grid on itself, or on the same grid under another phase: what a pattern-matched
 * cut-out may be moved by. Found by computation from the lines alone.
 */
import { add, dot, type Point, subtract, turned } from '../../geometry/point.ts';
import { directionTolerance, rounded, sameAngle, sameLength, stepTolerance } from '../../geometry/tolerance.ts';
import { crossingPair, type LineFamily, meetingPoint } from './grid-lines.ts';
import { type Period, periodOf } from './grid-period.ts';

/** p ↦ R(turn)·M·p + shift; M mirrors y ↦ −y where `mirrored`. `turn` in degrees, in [0, 360). */
export interface GridMove {
  readonly turn: number;
  readonly mirrored: boolean;
  readonly shift: Point;
}

/**
 * What besides the lines must come to lie on its like. `wood`: strips of one stock on one another. `laps`: the layers
 * too, in their order, or in the order that is seen from the back when the move mirrors.
 */
export interface MatchRules {
  readonly wood: boolean;
  readonly laps: boolean;
}

/**
 * Every move that lays the lines of `from` on those of `onto`, up to the translations of `period`, which go on for ever.
 * Null for grids without a period: they have no such moves but rest.
 */
export function movesOnto(
  from: readonly LineFamily[],
  onto: readonly LineFamily[],
  rules: MatchRules,
): { readonly moves: readonly GridMove[]; readonly period: Period } | null {
  const period = periodOf(onto);
  if (!period) return null;
  const moves = [false, true].flatMap((mirrored) =>
    turnsBetween(from, onto, mirrored).flatMap((turn) => {
      const targets = targetsOf(from, onto, { turn, mirrored }, rules);
      return targets ? shiftsOf(targets, period).map((shift) => ({ turn, mirrored, shift })) : [];
    }),
  );
  return { moves, period };
}

/** Where a move takes a point. */
export const movedPoint = (point: Point, { turn, mirrored, shift }: GridMove): Point =>
  add(turnedOver(point, { turn, mirrored }), shift);

type Turn = Pick<GridMove, 'turn' | 'mirrored'>;

const turnedOver = ({ x, y }: Point, { turn, mirrored }: Turn): Point =>
  turned(mirrored ? { x, y: -y } : { x, y }, turn);

/** The turns that may lay the first family on one of the others. */
function turnsBetween(from: readonly LineFamily[], onto: readonly LineFamily[], mirrored: boolean): number[] {
  const [first] = from;
  if (!first) return [];
  const away = mirrored ? -first.family.direction : first.family.direction;
  const turns = onto.flatMap(({ family }) => [0, 180].map((half) => wholeTurn(family.direction + half - away)));
  return turns.filter((turn, index) => turns.findIndex((other) => sameAngle(other, turn)) === index);
}

/** In [0, 360), free of rounding noise. */
function wholeTurn(angle: number): number {
  const turn = rounded(((angle % 360) + 360) % 360, angleDecimals);
  return turn === 360 ? 0 : turn;
}

const angleDecimals = 9;

/** A line family and the residue that the shift must have along its normal. */
interface Target {
  readonly lines: LineFamily;
  readonly residue: number;
}

/** The family that each family comes to lie on, in the order of `onto`; null where one has none, or breaks a rule. */
function targetsOf(
  from: readonly LineFamily[],
  onto: readonly LineFamily[],
  turn: Turn,
  rules: MatchRules,
): Target[] | null {
  const targets = from.flatMap((lines) => {
    const normal = turnedOver(lines.normal, turn);
    const target = onto.find(
      (candidate) =>
        Math.abs(Math.abs(dot(candidate.normal, normal)) - 1) <= directionTolerance &&
        sameLength(candidate.spacing, lines.spacing) &&
        keepsRules(lines, candidate, from.length, turn.mirrored, rules),
    );
    if (!target) return [];
    const sign = Math.sign(dot(target.normal, normal));
    return [{ lines: target, residue: target.offset - sign * lines.offset }];
  });
  const inOrder = onto.flatMap((lines) => targets.find((target) => target.lines === lines) ?? []);
  return targets.length === from.length && inOrder.length === onto.length ? inOrder : null;
}

function keepsRules(
  lines: LineFamily,
  target: LineFamily,
  layers: number,
  mirrored: boolean,
  { wood, laps }: MatchRules,
): boolean {
  if (wood && lines.family.stock.name !== target.family.stock.name) return false;
  if (!sameLength(lines.face, target.face)) return false;
  if (!laps) return true;
  return target.family.layer === (mirrored ? layers - 1 - lines.family.layer : lines.family.layer);
}

/** The shifts that meet every residue at once, one for each class of translations by the period. */
function shiftsOf(targets: readonly Target[], period: Period): Point[] {
  const pair = crossingPair(targets.map(({ lines }) => lines));
  if (!pair) return [];
  const residueOf = (lines: LineFamily): number => targets.find((target) => target.lines === lines)?.residue ?? 0;
  const stepsAcross = (lines: LineFamily, move: Point): number[] =>
    Array.from({ length: Math.round(Math.abs(dot(lines.normal, move)) / lines.spacing) }, (_, step) => step);
  const { base, other } = pair;
  return stepsAcross(base, period.second)
    .flatMap((baseStep) =>
      stepsAcross(other, period.first).map((otherStep) =>
        meetingPoint(
          base,
          residueOf(base) + baseStep * base.spacing,
          other,
          residueOf(other) + otherStep * other.spacing,
        ),
      ),
    )
    .filter((shift) => targets.every((target) => meets(target, shift)));
}

/** Whether a shift lays lines on lines. */
function meets({ lines, residue }: Target, shift: Point): boolean {
  const steps = (dot(lines.normal, shift) - residue) / lines.spacing;
  return Math.abs(steps - Math.round(steps)) <= stepTolerance;
}

/** The move that undoes `move`: laying a place of the blank back on the panel it was taken for. */
export function undone({ turn, mirrored, shift }: GridMove): GridMove {
  const back: Turn = { turn: mirrored ? turn : wholeTurn(-turn), mirrored };
  const there = turnedOver(shift, back);
  return { ...back, shift: subtract({ x: 0, y: 0 }, there) };
}
