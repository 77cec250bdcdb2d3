/** The pieces and dividers of a motif, each written out: one entry for every corner or edge, and for its mirror image. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { DividerProperty, PieceProperty } from '../../../grammar/tree/motif-syntax.ts';
import type { PlaceSyntax } from '../../../grammar/tree/place-syntax.ts';
import { isRepeatable, type ReadPlace, type Turn } from './build-place.ts';
import type { DesignContext } from '../design-context.ts';
import type { MotifPiece, NodeReference } from '../design-model.ts';
import type { NodeLine, NodePlace } from '../node-place.ts';

/** Every piece a line of the motif stands for; none where an end is broken. */
export function buildPieces(
  piece: PieceProperty,
  corners: number,
  readPlace: ReadPlace,
  context: DesignContext,
): MotifPiece[] {
  const { every, mirrored } = piece;
  const clause = every[0];
  const doubled = [
    ...every.filter((later, index) => every.findIndex((earlier) => earlier.over === later.over) < index),
    ...mirrored.slice(1),
  ];
  for (const { range } of doubled) {
    context.report(problemAt('repeatedProperty', range, 'This is said already. Take it out.'));
  }
  if (!clause) return withImage(piece, null, readPlace, context);
  const [first, ...further] = turnsOver(every, corners);
  const written = first ? withImage(piece, first, readPlace, context) : [];
  if (written.length === 0) return [];
  if (!isRepeatable(piece.from) && !isRepeatable(piece.to)) {
    const message = `Nothing changes from ${clause.over} to ${clause.over}. Write \`${clause.over}\` without its number at one end, or take this out.`;
    context.report(problemAt('unexpectedWord', clause.range, message));
    return [];
  }
  return [...written, ...further.flatMap((turn) => withImage(piece, turn, readPlace, context))];
}

export const buildDivider = (divider: DividerProperty, readPlace: ReadPlace): MotifPiece[] =>
  pieceOf(divider, null, readPlace) ?? [];

/** Reports a piece that should lie above itself, or above one that should lie above it. */
export function checkAbove(members: readonly (PieceProperty | DividerProperty)[], context: DesignContext): void {
  for (const { name, above } of members) {
    for (const clause of above) {
      const other = members.find((member) => member.name.text === clause.name.text);
      const back = other?.above.find((each) => each.name.text === name.text);
      if (clause.name.text === name.text) {
        const message = `\`${name.text}\` cannot lie above itself. Give the pieces that lie above a name of their own.`;
        context.report(problemAt('impossibleLap', clause.name.range, message));
      } else if (other && back && back.range.start < clause.range.start) {
        const message = `\`${other.name.text}\` lies above \`${name.text}\` already. Keep one of the two.`;
        const related = [{ range: back.range, message: 'It is said here first.' }];
        context.report(problemAt('impossibleLap', clause.range, message, related));
      }
    }
  }
}

/** `every corner` and `every edge` together count apart; one alone counts corner and edge in step. */
function turnsOver(every: PieceProperty['every'], corners: number): Turn[] {
  const numbers = Array.from({ length: corners }, (_, index) => index + 1);
  const both = new Set(every.map(({ over }) => over)).size > 1;
  if (!both) return numbers.map((number) => ({ corner: number, edge: number }));
  return numbers.flatMap((corner) => numbers.map((edge) => ({ corner, edge })));
}

/** The piece at one turn and, where it is mirrored, its image. */
function withImage(
  piece: PieceProperty,
  turn: Turn | null,
  readPlace: ReadPlace,
  context: DesignContext,
): MotifPiece[] {
  const [clause] = piece.mirrored;
  const original = pieceOf(piece, turn, readPlace);
  if (!original || !clause) return original ?? [];
  const over = clause.line ? readPlace.line(clause.line, turn) : middleLine(piece, turn);
  if (over) return [...original, ...original.map((each) => mirrorImage(each, over))];
  if (!clause.line) {
    const message =
      'It is not said over what. Write a line, as in `mirrored over corner 1 to centroid`, or repeat the piece with `every corner`.';
    context.report(problemAt('missingProperty', clause.range, message));
  }
  return original;
}

/** From the corner that `every` has come to, or the middle of its edge, through the middle of the opening. */
function middleLine({ every }: PieceProperty, turn: Turn | null): NodeLine | null {
  if (!turn) return null;
  const isOfEdge = every[0]?.over === 'edge';
  const from: NodePlace = isOfEdge
    ? { kind: 'along', edge: turn.edge, fraction: 0.5 }
    : { kind: 'corner', corner: turn.corner };
  return [from, { kind: 'centroid' }];
}

function mirrorImage(piece: MotifPiece, over: NodeLine): MotifPiece {
  const image = ({ name, place }: NodeReference): NodeReference => ({ name, place: { kind: 'mirrored', place, over } });
  return { ...piece, from: image(piece.from), to: image(piece.to) };
}

/** A list of one, or null where an end is broken. */
function pieceOf(piece: PieceProperty | DividerProperty, turn: Turn | null, readPlace: ReadPlace): [MotifPiece] | null {
  const from = referenceTo(piece.from, readPlace(piece.from, turn));
  const to = referenceTo(piece.to, readPlace(piece.to, turn));
  const above = piece.above.map(({ name }) => name.text);
  return from && to && [{ role: piece.name.text, from, to, above, range: piece.range }];
}

const referenceTo = (written: PlaceSyntax, place: NodePlace | null): NodeReference | null =>
  place && { name: written.kind === 'named' ? written.name.text : null, place };
