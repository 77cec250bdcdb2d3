/** Cards to cut out, one a mark, for the trays on the bench: the same mark as on the drawing and in the table. */
import { figure, words } from '../../../grammar/words.ts';
import { angleText } from '../../words/figures.ts';
import type { PlanPiece, PlanStrip } from '../../shop/shop-plan.ts';
import type { PageItem } from '../page/page-model.ts';
import { movedItems } from '../page/moved-items.ts';
import { area, rectangle, textAt } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, fittingSize } from './blocks.ts';
import { asPart, type FlowPart } from './flow.ts';
import type { PrintContext } from './print-context.ts';

export interface TrayLabel {
  readonly mark: string;
  /** Large beside the mark, such as a count. */
  readonly count: string;
  readonly lines: readonly string[];
}

const perRow = 3;
const cardHeight = 38;
const inset = 3;
const markSize = 13;
const countSize = 7;
const lineSize = 4.4;

export const stripLabel = (strip: PlanStrip, { say }: PrintContext): TrayLabel => ({
  mark: strip.mark,
  count: String(strip.total),
  lines: [
    say(words`${figure.length(strip.lengthMm)} long`),
    `${strip.notches.length} notches${strip.hand === null ? '' : `, ${strip.hand} hand`}`,
    say(words`${strip.stock} ${figure.given([strip.face, strip.depth])}`),
  ],
});

export const pieceLabel = (piece: PlanPiece, { say }: PrintContext): TrayLabel => ({
  mark: piece.mark,
  count: String(piece.total),
  lines: [
    say(words`${figure.length(piece.lengthMm)} long`),
    piece.ends.map(({ bevels }) => (bevels === null ? 'fitted' : bevels.map(angleText).join('/'))).join(' · '),
    say(words`${piece.stock} ${figure.given([piece.face, piece.depth])}`),
  ],
});

/** Rows of three cards with dashed lines to cut along. */
export function labelParts(labels: readonly TrayLabel[], context: PrintContext): FlowPart[] {
  const rows = Array.from({ length: Math.ceil(labels.length / perRow) }, (_, index) =>
    labels.slice(index * perRow, (index + 1) * perRow),
  );
  return rows.map((row) => asPart(cardRow(row, context)));
}

function cardRow(row: readonly TrayLabel[], context: PrintContext): Block {
  const width = context.width / perRow;
  return blockOf(
    cardHeight,
    row.flatMap((label, index) => movedItems(card(label, width, context), index * width, 0)),
  );
}

function card({ mark, count, lines }: TrayLabel, width: number, { plan, typefaces }: PrintContext): PageItem[] {
  const room = width - 2 * inset;
  const fitted = (text: string, look: { size: number; look?: string }, most: number) => ({
    ...look,
    size: fittingSize(text, look, most, typefaces),
  });
  const origin = `${plan.source} · ${plan.revision}`;
  return [
    area('fold', rectangle(0, 0, width, cardHeight), { label: mark }),
    textAt(mark, { x: inset, y: 13.5 }, fitted(mark, { size: markSize, look: 'strong' }, room * 0.58)),
    textAt(
      count,
      { x: width - inset, y: 13.5 },
      { ...fitted(count, { size: countSize, look: 'strong' }, room * 0.38), anchor: 'end' },
    ),
    ...lines.map((line, index) =>
      textAt(line, { x: inset, y: 20 + index * 5.4 }, fitted(line, { size: lineSize }, room)),
    ),
    textAt(origin, { x: inset, y: cardHeight - 2 }, fitted(origin, { size: 2.6 }, room)),
  ];
}
