/** The sticks of one stock, each drawn with its cuts, and what of it is bought. */
import { counted, figure, words } from '../../../grammar/words.ts';
import { append, maximum } from '../../geometry/numbers.ts';
import { buyingText, rackLine } from '../../shop/writers/text/buying-text.ts';
import type { PlanStock } from '../../shop/shop-plan.ts';
import { proofText } from '../../shop/stock/proof-text.ts';
import { fixed } from '../../words/figures.ts';
import type { PageItem } from '../page/page-model.ts';
import { textWidth } from '../page/typeface.ts';
import { area, openLine, rectangle, textAt } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, paragraph, space, stacked } from './blocks.ts';
import { asPart, type FlowPart } from './flow.ts';
import { letterSizes, type PrintContext } from './print-context.ts';

type Stick = PlanStock['sticks'][number];

const barHeight = 8;
const boxSize = 4.4;
/** Sticks with as many tick boxes, each its own; more have one box for all. */
const mostBoxes = 8;

export function stickParts(stock: PlanStock, context: PrintContext): FlowPart[] {
  const { width, typefaces, say } = context;
  const longest = Math.max(0, maximum(stock.sticks.map(({ lengthMm }) => lengthMm)));
  const head = stacked([
    space(2),
    paragraph(`${stock.stock}: ${sticksText(stock)}`, { size: letterSizes.heading, look: 'strong' }, width, typefaces),
    paragraph(
      say(
        words`${proofText(stock)}; kerf ${figure.fine(stock.kerfMm)} between pieces, ${figure.given(stock.endTrimMm)} off each end first, ${fixed(stock.wastePct, 1)} % waste`,
      ),
      { size: letterSizes.text },
      width,
      typefaces,
    ),
    ...[
      stock.buy.length + stock.rack.length > 0 ? buyingText(stock, (length) => say(words`${figure.size(length)}`)) : '',
      rackText(stock, context),
    ]
      .filter((text) => text !== '')
      .map((text) => paragraph(text, { size: letterSizes.text }, width, typefaces)),
    ...stock.problems.map((problem) =>
      paragraph(problem, { size: letterSizes.text, look: 'strong' }, width, typefaces),
    ),
    space(1.5),
  ]);
  return [
    asPart({ ...head, keepsWithNext: stock.sticks.length > 0 }),
    ...stock.sticks.map((stick) => asPart(stickBlock(stick, stock, longest, context))),
  ];
}

const sticksText = ({ sticksUsed }: PlanStock): string => counted(sticksUsed, 'stick');

function rackText(stock: PlanStock, { plan }: PrintContext): string {
  const line = rackLine(stock, plan.units);
  return line === '' ? '' : `The rack then holds: ${line}`;
}

function stickBlock(stick: Stick, stock: PlanStock, longest: number, context: PrintContext): Block {
  const { width, typefaces, say } = context;
  const boxes = stick.count <= mostBoxes ? stick.count : 1;
  const room = width - boxes * (boxSize + 1.5) - 2;
  const cuts = stick.cuts.map((cut) => cutText(cut, stock, context)).join(', ');
  const text = paragraph(
    say(
      words`${stick.count} of ${figure.size(stick.lengthMm)}${stick.onHand ? ', on hand' : ''}: ${cuts}; left over ${figure.length(stick.offcutMm)}`,
    ),
    { size: letterSizes.figure, look: 'strong' },
    room,
    typefaces,
  );
  const ticks = Array.from({ length: boxes }, (_, index) =>
    area('box', rectangle(width - (index + 1) * (boxSize + 1.5), 0.6, boxSize, boxSize)),
  );
  const bar = stickBar(stick, stock, longest, text.height + 0.8, context);
  return blockOf(text.height + barHeight + 5, [...text.items, ...ticks, ...bar]);
}

/** "14 × A1"; with its length where the stock cuts the mark to several, as keys are longer. */
function cutText({ mark, lengthMm, n }: Stick['cuts'][number], { sticks }: PlanStock, { say }: PrintContext): string {
  const lengths = new Set(
    sticks.flatMap(({ cuts }) => cuts.filter((cut) => cut.mark === mark).map((cut) => cut.lengthMm)),
  );
  return lengths.size > 1 ? say(words`${n} × ${mark} of ${figure.key(lengthMm)}`) : `${n} × ${mark}`;
}

/** The stick drawn to the scale at which the longest of its stock is as wide as the page. */
function stickBar(
  stick: Stick,
  { kerfMm, endTrimMm }: PlanStock,
  longest: number,
  top: number,
  { width, typefaces }: PrintContext,
): PageItem[] {
  const scale = width / longest;
  const items: PageItem[] = [area('waste', rectangle(0, top, stick.lengthMm * scale, barHeight))];
  let place = endTrimMm;
  for (const { mark, lengthMm, n } of stick.cuts) {
    const pieces = Array.from({ length: n }, (_, index) => place + index * (lengthMm + kerfMm));
    append(
      items,
      pieces.map((left) => area('wood', rectangle(left * scale, top, lengthMm * scale, barHeight), { cut: mark })),
    );
    place += n * (lengthMm + kerfMm);
    const end = (place - kerfMm) * scale;
    append(
      items,
      runLabels(
        mark,
        pieces.map((left) => left * scale),
        lengthMm * scale,
        top,
        typefaces,
      ),
    );
    items.push(
      openLine('edge', [
        { x: end, y: top - 1 },
        { x: end, y: top + barHeight + 1 },
      ]),
    );
  }
  return items;
}

/** The mark in every piece where it has room, else once over the run with the number, else not at all: the line says it. */
function runLabels(
  mark: string,
  lefts: readonly number[],
  pieceWidth: number,
  top: number,
  typefaces: PrintContext['typefaces'],
): PageItem[] {
  const look = { size: letterSizes.text, look: 'strong', anchor: 'middle' } as const;
  const y = top + barHeight / 2 + 1.5;
  const fits = (text: string, room: number): boolean => textWidth(text, look, typefaces) + 1.5 <= room;
  if (fits(mark, pieceWidth)) return lefts.map((left) => textAt(mark, { x: left + pieceWidth / 2, y }, look));
  const [first = 0] = lefts;
  const run = (lefts.at(-1) ?? first) + pieceWidth - first;
  const label = `${lefts.length} × ${mark}`;
  if (!fits(label, run)) return [];
  const middle = first + run / 2;
  const width = textWidth(label, look, typefaces) + 1.5;
  return [
    area('bare', rectangle(middle - width / 2, top + 1.2, width, barHeight - 2.4)),
    textAt(label, { x: middle, y }, look),
  ];
}
