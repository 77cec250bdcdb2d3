/** Motifs of the design, with the motifs that fill their parts. */
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { Problem } from '../../grammar/problem.ts';
import type {
  DividerProperty,
  FitOrderProperty,
  MotifDeclaration,
  Name,
  PartFillProperty,
  PieceProperty,
  PlaceSyntax,
} from '../../grammar/syntax-tree.ts';
import { cornersOf, isRepeatable, placeReader } from './build-place.ts';
import type { ReadPlace, Turn } from './build-place.ts';
import { buildTips } from './build-tips.ts';
import type { DesignContext } from './design-context.ts';
import type { CellShape, Motif, MotifPiece, NodePlace, NodeReference, PartFill } from './design-model.ts';
import { reportRepeated } from './pick-properties.ts';
import { readLength } from './read-values.ts';

/** Finds another motif by the name it is used by; null where it is unknown, broken or contains this one. */
export type FindMotif = (name: Name) => Motif | null;

/** The motif a declaration describes. Pieces and fills that are broken are left out. */
export function buildMotif(motif: MotifDeclaration, findMotif: FindMotif, context: DesignContext): Motif {
  reportRepeated(motif, ['node', 'divider', 'piece', 'part fill', 'tip'], context);
  const { shape } = motif.shape;
  const { properties } = motif;
  const nodes = properties.filter((property) => property.kind === 'node');
  const dividers = properties.filter((property) => property.kind === 'divider');
  const readPlace = placeReader(shape, nodes, context);
  for (const node of nodes) readPlace({ kind: 'named', name: node.name, range: node.name.range }, null);
  const pieces = properties.filter((property) => property.kind === 'piece');
  const fills = properties.filter((property) => property.kind === 'part fill');
  const tips = properties.filter((property) => property.kind === 'tip');
  const order = properties.find((property) => property.kind === 'fit_order');
  if (dividers.length === 0 && !motif.incomplete) fills.forEach((fill) => reportUndivided(fill, context));
  return {
    name: motif.name.text,
    range: motif.range,
    nameRange: motif.name.range,
    shape,
    pieces: pieces.flatMap((piece) => writtenOut(piece, cornersOf(shape), readPlace, context)),
    dividers: dividers.flatMap((divider) => pieceOf(divider, null, readPlace) ?? []),
    fills: fills.flatMap((fill) => buildPartFill(fill, findMotif, context) ?? []),
    tips: buildTips(tips, shape, context),
    fitOrder: order ? buildFitOrder(order, context) : [],
  };
}

/** One entry for every corner or edge a piece is repeated at. */
function writtenOut(piece: PieceProperty, corners: number, readPlace: ReadPlace, context: DesignContext): MotifPiece[] {
  const { every } = piece;
  const clause = every[0];
  const doubled = every.find((later, index) => every.findIndex((earlier) => earlier.over === later.over) < index);
  if (doubled) context.report(problemAt('repeatedProperty', doubled.range, 'This is said already. Take it out.'));
  if (!clause) return pieceOf(piece, null, readPlace) ?? [];
  const [first, ...further] = turnsOver(every, corners);
  const written = first && pieceOf(piece, first, readPlace);
  if (!written) return [];
  if (!isRepeatable(piece.from) && !isRepeatable(piece.to)) {
    const message = `Nothing changes from ${clause.over} to ${clause.over}. Write \`${clause.over}\` without its number at one end, or take this out.`;
    context.report(problemAt('unexpectedWord', clause.range, message));
    return [];
  }
  return [...written, ...further.flatMap((turn) => pieceOf(piece, turn, readPlace) ?? [])];
}

/** `every corner` and `every edge` together count apart; one alone counts corner and edge in step. */
function turnsOver(every: PieceProperty['every'], corners: number): Turn[] {
  const numbers = Array.from({ length: corners }, (_, index) => index + 1);
  const both = new Set(every.map(({ over }) => over)).size > 1;
  if (!both) return numbers.map((number) => ({ corner: number, edge: number }));
  return numbers.flatMap((corner) => numbers.map((edge) => ({ corner, edge })));
}

/** A list of one, or null where an end is broken. */
function pieceOf(piece: PieceProperty | DividerProperty, turn: Turn | null, readPlace: ReadPlace): [MotifPiece] | null {
  const from = referenceTo(piece.from, readPlace(piece.from, turn));
  const to = referenceTo(piece.to, readPlace(piece.to, turn));
  return from && to && [{ role: piece.name.text, from, to, range: piece.range }];
}

const referenceTo = (written: PlaceSyntax, place: NodePlace | null): NodeReference | null =>
  place && { name: written.kind === 'named' ? written.name.text : null, place };

function buildPartFill(fill: PartFillProperty, findMotif: FindMotif, context: DesignContext): PartFill | null {
  const motif = findMotif(fill.motif);
  if (!motif) return null;
  const { parts } = fill;
  if (parts !== 'halves' && parts !== 'parts' && parts !== motif.shape) {
    context.report(otherShape(fill.motif, motif, parts));
    return null;
  }
  return {
    parts: parts === 'halves' || parts === 'parts' ? { kind: 'every' } : { kind: 'shape', shape: parts },
    motif,
    tips: buildTips(fill.tips, motif.shape, context),
    range: fill.range,
  };
}

/** A motif used in openings of another shape than its own. */
export function otherShape(used: Name, motif: Motif, shape: CellShape): Problem {
  const message = `The motif \`${motif.name}\` is for a ${motif.shape}, not for a ${shape}. Use a motif for a ${shape}.`;
  const related = [{ range: motif.nameRange, message: `\`${motif.name}\` is given here.` }];
  return problemAt('motifDoesNotFitCell', used.range, message, related);
}

function reportUndivided({ keyword }: PartFillProperty, context: DesignContext): void {
  const message = 'There are no parts to fill. Add a line like `divider diagonal from corner 1 to corner 3`.';
  context.report(problemAt('missingProperty', keyword, message));
}

function buildFitOrder({ roles }: FitOrderProperty, context: DesignContext): Motif['fitOrder'] {
  return roles.map(({ name, key }) => ({
    role: name.text,
    key: key && readLength(key, 'key', 'notNegative', context),
  }));
}
