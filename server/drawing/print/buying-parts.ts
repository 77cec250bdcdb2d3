/** What is bought and milled: sticks and boards by stock, sheets, and what of it has a price. */
import type { PlanStock } from '../../shop/shop-plan.ts';
import type { PlanMill, PlanSheet } from '../../shop/sections/work-sections.ts';
import { sheetsStanding } from '../../shop/writers/text/object-text.ts';
import { fixed } from '../../words/figures.ts';
import type { FlowPart } from './flow.ts';
import { remarks } from './remarks.ts';
import type { PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';
import { countOrNone, moneyOrNone } from './optional-figures.ts';

/** Sticks of one length to buy, or to take from the rack. */
interface Purchase {
  readonly what: string;
  readonly count: number;
  readonly lengthMm: number;
  readonly from: string;
  readonly rejects: number;
  readonly price: number | null;
  readonly cost: number | null;
  readonly currency: string | null;
}

export function buyingParts(context: PrintContext): FlowPart[] {
  const { plan, width, typefaces } = context;
  const table = <Row>(title: string, columns: readonly PrintColumn<Row>[], rows: readonly Row[]): FlowPart[] =>
    rows.length === 0 ? [] : [printTable(title, columns, rows, width, typefaces)];
  const problems = [...plan.mill, ...plan.sheets, ...plan.stock].flatMap((each) => each.problems);
  return [
    ...table('Sticks to have', purchaseColumns(context), plan.stock.flatMap(purchases)),
    ...table('To mill, in one run a stock', millColumns(context), plan.mill),
    ...table(
      'Boards to rip',
      boardColumns(context),
      plan.mill.filter(({ boards }) => boards !== null),
    ),
    ...table('Sheets', sheetColumns(context), plan.sheets),
    ...remarks([...new Set(problems)], context),
  ];
}

/** What is bought, rejects in it, then what the rack gives. */
const purchases = ({ stock, buy, rack, currency }: PlanStock): Purchase[] => [
  ...buy.map((each) => ({ what: stock, ...each, from: 'to buy', currency })),
  ...rack.map((each) => ({ what: stock, ...each, rejects: 0, from: 'the rack', currency })),
];

const purchaseColumns = ({ figures }: PrintContext): PrintColumn<Purchase>[] => [
  { title: '', tick: true },
  { title: 'stock', strong: true, cell: ({ what }) => what },
  { title: 'sticks', align: 'right', strong: true, cell: ({ count }) => String(count) },
  { title: 'length', align: 'right', cell: ({ lengthMm }) => figures.size(lengthMm) },
  { title: 'from', cell: ({ from }) => from },
  { title: 'for rejects', align: 'right', cell: ({ rejects }) => (rejects === 0 ? '' : String(rejects)) },
  { title: 'each', align: 'right', cell: ({ price, currency }) => moneyOrNone(price, currency) },
  { title: 'cost', align: 'right', strong: true, cell: ({ cost, currency }) => moneyOrNone(cost, currency) },
];

const millColumns = ({ figures }: PrintContext): PrintColumn<PlanMill>[] => [
  { title: '', tick: true },
  { title: 'stock', strong: true, cell: ({ stock }) => stock },
  { title: 'face', align: 'right', strong: true, cell: ({ faceMm }) => figures.fine(faceMm) },
  { title: 'depth', align: 'right', strong: true, cell: ({ depthMm }) => figures.length(depthMm) },
  { title: 'flushed to', align: 'right', cell: ({ finishedDepthMm }) => figures.length(finishedDepthMm) },
  { title: 'sticks', align: 'right', cell: ({ sticks }) => countOrNone(sticks) },
  { title: 'rejects', align: 'right', cell: ({ rejectsPct }) => `${rejectsPct} %` },
  { title: 'to mill', align: 'right', strong: true, cell: ({ millSticks }) => countOrNone(millSticks) },
];

const boardColumns = ({ figures }: PrintContext): PrintColumn<PlanMill>[] => {
  const of =
    (words: (boards: NonNullable<PlanMill['boards']>) => string) =>
    ({ boards }: PlanMill): string =>
      boards === null ? '' : words(boards);
  return [
    { title: '', tick: true },
    { title: 'for', strong: true, cell: ({ stock }) => stock },
    { title: 'boards', align: 'right', strong: true, cell: of(({ boards }) => String(boards)) },
    {
      title: 'thick × wide × long',
      cell: of(({ thicknessMm, widthMm, lengthMm }) => [thicknessMm, widthMm, lengthMm].map(figures.size).join(' × ')),
    },
    { title: 'thickness gives', cell: of(({ thicknessGives }) => thicknessGives) },
    { title: 'rip kerf', align: 'right', cell: of(({ ripKerfMm }) => figures.fine(ripKerfMm)) },
    { title: 'strips a board', align: 'right', cell: of((each) => `${each.stripsPerBoard} × ${each.lengthsPerBoard}`) },
    { title: 'cost', align: 'right', cell: of(({ cost, currency }) => moneyOrNone(cost, currency)) },
  ];
};

const sheetColumns = ({ figures }: PrintContext): PrintColumn<PlanSheet>[] => [
  { title: '', tick: true },
  { title: 'sheet', strong: true, cell: ({ sheet }) => sheet },
  { title: 'count', align: 'right', strong: true, cell: ({ count }) => String(count) },
  { title: 'layout', cell: ({ layout }) => layout },
  { title: 'size', cell: ({ widthMm, heightMm }) => `${figures.size(widthMm)} × ${figures.size(heightMm)}` },
  {
    title: 'gives',
    cell: ({ pieces }) =>
      pieces
        .map(({ n, what, widthMm, heightMm }) => `${n} × ${what} ${figures.size(widthMm)} × ${figures.size(heightMm)}`)
        .join(', '),
  },
  { title: 'used', align: 'right', cell: ({ usedPct }) => `${fixed(usedPct, 1)} %` },
  { title: 'all together', cell: sheetsStanding },
  { title: 'cost', align: 'right', cell: ({ cost, currency }) => moneyOrNone(cost, currency) },
];
