/** Places where the strips of a grid can't be lapped: too many at one node, or bodies that run into one another. */
import { maximum, minimum } from '../../geometry/numbers.ts';
import { type Words, joined, measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { cross, dot, type Point, scale } from '../../geometry/point.ts';
import { clipToHalfPlanes, type HalfPlane, signedArea } from '../../geometry/polygons.ts';
import { areaTolerance, placeTolerance } from '../../geometry/tolerance.ts';
import {
  areParallel,
  type LineFamily,
  lineOffset,
  linesBetween,
  lineThrough,
  meetingPoint,
} from '../grid/grid-lines.ts';
import { mostInOneLap } from '../motif/motif-laps.ts';

/** One strip that passes near a node. */
interface Passing {
  readonly lines: LineFamily;
  readonly offset: number;
}

/** The first trouble at any of the nodes. */
export function gridTroubles(families: readonly LineFamily[], nodes: readonly Point[]): Problem[] {
  for (const node of nodes) {
    const trouble = troubleAt(node, families);
    if (trouble) return [trouble];
  }
  return [];
}

function troubleAt(node: Point, families: readonly LineFamily[]): Problem | null {
  const through = families.flatMap((lines): Passing[] => {
    const index = lineThrough(lines, node);
    return index === null ? [] : [{ lines, offset: lineOffset(lines, index) }];
  });
  if (through.length > mostInOneLap) return crowded(through, node);
  for (const one of through) {
    const beside = besides(one, families, node);
    if (beside) return overlapping(one, beside, node);
    for (const two of through) {
      if (two.lines.number <= one.lines.number) continue;
      const third = thirdBody(one, two, through, families);
      if (third) return withoutCommonPoint([one, two, third], node);
    }
  }
  return null;
}

/** A strip of a parallel family, or of the same one, whose body lies in that of `one`. */
function besides(one: Passing, families: readonly LineFamily[], node: Point): Passing | null {
  const reach = dot(one.lines.normal, node);
  for (const lines of families.filter((each) => areParallel(each, one.lines))) {
    const way = Math.sign(dot(lines.normal, one.lines.normal));
    const room = (lines.face + one.lines.face) / 2 - placeTolerance;
    const near = linesBetween(lines, way * reach - room, way * reach + room).map((index) => lineOffset(lines, index));
    const other = near.find((offset) => lines !== one.lines || Math.abs(offset - one.offset) > placeTolerance);
    if (other !== undefined) return { lines, offset: other };
  }
  return null;
}

/** A strip that reaches into the lap of two others without passing their node. */
function thirdBody(
  one: Passing,
  two: Passing,
  through: readonly Passing[],
  families: readonly LineFamily[],
): Passing | null {
  const lap = lapOf(one, two);
  for (const lines of families) {
    if (areParallel(lines, one.lines) || areParallel(lines, two.lines)) continue;
    const reaches = lap.map((corner) => dot(lines.normal, corner));
    const half = lines.face / 2;
    const own = through.find((each) => each.lines === lines)?.offset;
    const near = linesBetween(lines, minimum(reaches) - half, maximum(reaches) + half)
      .map((index): Passing => ({ lines, offset: lineOffset(lines, index) }))
      .filter(({ offset }) => own === undefined || Math.abs(offset - own) > placeTolerance);
    const found = near.find((each) => signedArea(clipToHalfPlanes(lap, bodyOf(each))) > areaTolerance);
    if (found) return found;
  }
  return null;
}

const bodyOf = ({ lines, offset }: Passing): HalfPlane[] => [
  { normal: lines.normal, reach: offset + lines.face / 2 },
  { normal: scale(lines.normal, -1), reach: -(offset - lines.face / 2) },
];

/** The common part of two crossing bodies. */
function lapOf(one: Passing, two: Passing): Point[] {
  const corner = (a: number, b: number): Point =>
    meetingPoint(one.lines, one.offset + (a * one.lines.face) / 2, two.lines, two.offset + (b * two.lines.face) / 2);
  const ring = [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
  return cross(one.lines.normal, two.lines.normal) > 0 ? ring : ring.reverse();
}

const directions = (strips: readonly Passing[]): Words =>
  joined(
    strips.map(({ lines }) => measure.fineAngle(lines.family.direction)),
    ', ',
  );

/** Said at the last family of those that meet: taking it out mends the others. */
const wordsOf = (strips: readonly Passing[]) =>
  strips.reduce((last, each) => (each.lines.number > last.lines.number ? each : last)).lines.family.range;

const crowded = (strips: readonly Passing[], node: Point): Problem =>
  problemAt(
    'tooManyAtNode',
    wordsOf(strips),
    words`${strips.length} strips (${directions(strips)}) meet in one point at ${measure.place(node)}; no more than ${mostInOneLap} can be lapped there. Give one family another offset.`,
  );

function overlapping(one: Passing, other: Passing, node: Point): Problem {
  const apart = Math.abs(dot(other.lines.normal, node) - other.offset);
  return problemAt(
    'stripsOverlap',
    wordsOf([one, other]),
    words`Two strips at ${directions([one])} lie ${measure.given(apart)} from centre to centre, and their faces need ${measure.given((one.lines.face + other.lines.face) / 2)}. Move them apart.`,
  );
}

const withoutCommonPoint = (strips: readonly Passing[], node: Point): Problem =>
  problemAt(
    'stripsOverlap',
    wordsOf(strips),
    words`Three strips (${directions(strips)}) share wood near ${measure.place(node)} without a common node, and no lap can be cut for that. Move one family so that the three meet in one point, or further apart than their faces.`,
  );
