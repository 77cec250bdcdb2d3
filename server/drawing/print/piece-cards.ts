/** Every kind of infill piece at full size, to lay the part on, and enlarged with its dimensions. */
import { figure, measure, words } from '../../../grammar/words.ts';
import type { PieceShape } from '../../lattice/laid-panel.ts';
import type { MarkedPiece } from '../../shop/marks/marked-kinds.ts';
import { edgeView, faceView, notchStretches } from '../member-views.ts';
import { notchLines } from '../notch-text.ts';
import type { PageItem } from '../page/page-model.ts';
import { dimensionRoom, pieceDimensions, pieceMember } from '../piece-views.ts';
import { brokenAxis } from '../sheet/broken-axis.ts';
import { textWidth } from '../page/typeface.ts';
import { figureSize, heightDimension } from '../sheet/dimensions.ts';
import { angleText } from '../../words/figures.ts';
import { rolesOf } from '../shared-words.ts';
import { area, textAt } from '../sheet/sheet-lines.ts';
import { stockText } from '../sheet-facts.ts';
import { type Block, blockOf, indented, paragraph, space, stacked } from './blocks.ts';
import { kindHead } from './kind-cards.ts';
import { letterSizes, type PrintContext } from './print-context.ts';

/** How many times as large a piece may be drawn. */
const scales = [10, 9, 8, 7, 6, 5, 4, 3, 2, 1.5, 1] as const;
/** The enlarged view with its dimensions stands on the right of the full-size one, where both have room. */
const enlargedWidth = 122;
const enlargedWood = { width: 76, height: 24 };
const left = 2;
const captionHeight = 4;
/** From end 2 to the figure of the face. */
const besideFace = 30;

export function pieceCard(piece: MarkedPiece, context: PrintContext): Block {
  const { shape } = piece;
  const { plan, say, typefaces, width } = context;
  const { units } = plan;
  const what = `${rolesOf(piece).join(', ')}\n${stockText(shape.stock, units)}\n${piece.whole} whole, ${piece.trimmed} trimmed`;
  const text = { size: letterSizes.figure };
  const enlarged = enlargedView(shape, context);
  const room = enlarged ? width - enlargedWidth : width;
  const facts = stacked([
    paragraph(say(words`${measure.length(shape.length)} tip to tip`), { ...text, look: 'strong' }, room, typefaces),
    paragraph(say(words`edges ${figure.length(shape.edges, ' and ')}`), text, room, typefaces),
    ...([0, 1] as const).map((end) => paragraph(endText(shape, end), text, room, typefaces)),
    ...notchLines(shape.notches, units).map((line) =>
      paragraph(line.trim(), { size: letterSizes.small + 0.4 }, room, typefaces),
    ),
  ]);
  const full = fullSize(piece.mark, shape, context);
  const onRight = enlarged && indented(enlarged, width - enlargedWidth);
  const body =
    full.room <= width - enlargedWidth
      ? sideBySide(stacked([full, facts], 2), onRight)
      : stacked([full, sideBySide(facts, onRight)], 2);
  return stacked([kindHead(piece, what, context), body, space(4)]);
}

const sideBySide = (a: Block, b: Block | null): Block =>
  b === null ? a : blockOf(Math.max(a.height, b.height), [...a.items, ...b.items]);

function endText({ ends }: PieceShape, end: 0 | 1): string {
  const { bevels } = ends[end];
  if (bevels === null) return `end ${end + 1}: fitted to its place`;
  const [first, second] = bevels.map(angleText);
  return first === second
    ? `end ${end + 1}: ${first ?? ''}, both sides`
    : `end ${end + 1}: ${first ?? ''} left, ${second ?? ''} right`;
}

/** The face and, under it, the edge, to lay the part on; `room` is the width it takes. */
export function fullSize(
  mark: string,
  shape: PieceShape,
  { width, figures, typefaces }: PrintContext,
): Block & { room: number } {
  const member = pieceMember(shape);
  const axis = brokenAxis(shape.length, 1, left, width - left - 40, notchStretches(member));
  const caption = paragraph('full size: lay the part on', { size: letterSizes.small, look: 'quiet' }, 56, typefaces);
  const middle = caption.height + 2 + shape.stock.face / 2;
  const top = middle + shape.stock.face / 2 + 4;
  const right = left + axis.width + 8;
  const whole = axis.parts.length === 1;
  const outline = shape.outline.map(({ x, y }) => ({ x: left + x, y: middle - y }));
  const items: PageItem[] = [
    ...caption.items,
    ...(whole ? [area('wood', outline, { mark, 'length-mm': shape.length })] : []),
    ...(whole && shape.notches.length === 0 ? [] : faceView(member, axis, middle)),
    ...edgeView(member, axis, top),
    ...heightDimension(right, top, top + shape.stock.depth, right - 7, figures.length(shape.stock.depth)),
  ];
  const room = right + 4 + textWidth(figures.length(shape.stock.depth), { size: figureSize }, typefaces);
  return { ...blockOf(top + shape.stock.depth + 5, items), room };
}

/** As large as it fits with its dimensions, or null where even full size does not. */
function enlargedView(shape: PieceShape, { figures, typefaces }: PrintContext): Block | null {
  const { length, stock, notches } = shape;
  const scale = scales.find((each) => length * each <= enlargedWood.width && stock.face * each <= enlargedWood.height);
  if (scale === undefined) return null;
  const over = notches.length > 0 ? dimensionRoom.overLapped : dimensionRoom.over;
  const middle = captionHeight + over + (stock.face / 2) * scale;
  const faceRoom = besideFace + textWidth(figures.fine(stock.face), { size: figureSize }, typefaces);
  const start = Math.max(8, (enlargedWidth - faceRoom - length * scale) / 2);
  const axis = brokenAxis(length, scale, start, enlargedWood.width, []);
  const member = pieceMember(shape);
  const end = start + length * scale;
  const items: PageItem[] = [
    textAt(
      scale === 1 ? 'with its measures' : `${scale} times as large`,
      { x: 0, y: letterSizes.small },
      { size: letterSizes.small, look: 'quiet' },
    ),
    ...faceView(member, axis, middle),
    textAt('1', { x: start - 4, y: middle + 1.6 }, { size: letterSizes.text, look: 'strong', anchor: 'end' }),
    textAt('2', { x: end + 4, y: middle + 1.6 }, { size: letterSizes.text, look: 'strong' }),
    ...pieceDimensions(shape, axis, middle, figures),
  ];
  return blockOf(middle + (stock.face / 2) * scale + dimensionRoom.under, items);
}
