/** What the preview tells of each mark: the same figures as the plan, in the units of the file. */
import { counted } from '../../../grammar/words.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import type { MemberKind } from '../../drawing/displays/member-display.ts';
import { numbersText } from '../../drawing/displays/mark-display.ts';
import { rolesOf } from '../../drawing/shared-words.ts';
import type { PieceEnd } from '../../lattice/laid-panel.ts';
import type { MarkedKinds, MarkedPiece, MarkedStrip } from '../../shop/marks/marked-kinds.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { MarkCard } from '../preview-messages.ts';
import { angleText, lengthText } from '../../words/figures.ts';

type Fact = MarkCard['facts'][number];

/** Finds the file of a range of the design, and the offsets there. */
export type WordsFinder = (range: SourceRange) => MarkCard['words'];

/** One card a mark, pieces before strips. */
export function markCards({ pieces, strips }: MarkedKinds, units: LengthUnit, wordsAt: WordsFinder): MarkCard[] {
  return [
    ...pieces.map((piece) => pieceCard(piece, units, wordsAt)),
    ...strips.flatMap((strip) => stripCard(strip, units, wordsAt)),
  ];
}

/** One card a member of a frame or a lamination of a band. */
export const memberCards = (members: readonly MemberKind[], units: LengthUnit, wordsAt: WordsFinder): MarkCard[] =>
  members.map(({ mark, of: whole, length, cutLength, width, ends, stock, make, range }) => ({
    mark,
    heading: whole,
    facts: [
      fact('Length', lengthText(length, units, 'length')),
      ...(cutLength > length ? [fact('Cut to', lengthText(cutLength, units, 'length'))] : []),
      fact('Width', lengthText(width, units, 'length')),
      fact('Ends', ends),
      fact('Stock', stock),
      fact('Number', `${make} to make`),
    ],
    words: wordsAt(range),
  }));

function pieceCard(piece: MarkedPiece, units: LengthUnit, wordsAt: WordsFinder): MarkCard {
  const { mark, shape, groups, whole, trimmed } = piece;
  const [left, right] = shape.edges;
  const edges =
    left === right
      ? lengthText(left, units, 'length')
      : `${lengthText(left, units, 'length')} and ${lengthText(right, units, 'length')}`;
  const [first, second] = shape.ends.map(endText);
  return {
    mark,
    heading: rolesOf(piece).join(', '),
    facts: [
      fact('Length', lengthText(shape.length, units, 'length')),
      fact('Long edges', edges),
      fact('Bevels', first === second ? `${first} both ends` : `${first} and ${second}`),
      fact('Section', `${lengthText(shape.stock.face, units)} × ${lengthText(shape.stock.depth, units)}`),
      fact('Stock', shape.stock.name),
      fact('Number', numbersText(piece)),
      ...(trimmed > 0 ? [fact('Of these', `${whole} whole, ${trimmed} trimmed`)] : []),
    ],
    words: wordsAt(groups[0]?.group.range ?? { start: 0, end: 0 }),
  };
}

function stripCard(strip: MarkedStrip, units: LengthUnit, wordsAt: WordsFinder): MarkCard[] {
  return strip.groups.slice(0, 1).map(({ group: { grid, family, stock, length, notches, hand, range } }) => ({
    mark: strip.mark,
    heading: `strip of ${grid}, direction ${family}`,
    facts: [
      fact('Length', lengthText(length, units, 'length')),
      fact(
        'Notches',
        counted(
          notches.reduce((total, { count }) => total + count, 0),
          'notch',
          'notches',
        ),
      ),
      ...(hand === null ? [] : [fact('Hand', hand)]),
      fact('Section', `${lengthText(stock.face, units)} × ${lengthText(stock.depth, units)}`),
      fact('Stock', stock.name),
      fact('Number', numbersText(strip)),
    ],
    words: wordsAt(range),
  }));
}

const fact = (name: string, value: string): Fact => ({ name, value });

const endText = ({ bevels }: PieceEnd): string => (bevels === null ? 'fitted' : bevels.map(angleText).join('/'));
