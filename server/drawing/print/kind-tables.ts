/** The lists of strips and of pieces, one row a mark. */
import type { PlanPiece, PlanPieceEnd, PlanStrip } from '../../shop/shop-plan.ts';
import { angleText } from '../../words/figures.ts';
import type { FlowTable } from './flow.ts';
import type { PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';

export function stripTable({ plan, figures, width, typefaces }: PrintContext): FlowTable {
  const columns: PrintColumn<PlanStrip>[] = [
    { title: '', tick: true },
    { title: 'mark', strong: true, cell: ({ mark }) => mark },
    { title: 'length', align: 'right', strong: true, cell: ({ lengthMm }) => figures.length(lengthMm) },
    { title: 'notches', align: 'right', cell: ({ notches }) => String(notches.length) },
    { title: 'hand', cell: ({ hand }) => hand ?? '' },
    { title: 'stock', cell: ({ stock }) => stock },
    ...countColumns,
    { title: 'for', cell: forPanels },
  ];
  return printTable('All strips', columns, plan.strips, width, typefaces);
}

export function pieceTable({ plan, figures, width, typefaces }: PrintContext): FlowTable {
  const columns: PrintColumn<PlanPiece>[] = [
    { title: '', tick: true },
    { title: 'mark', strong: true, cell: ({ mark }) => mark },
    { title: 'length', align: 'right', strong: true, cell: ({ lengthMm }) => figures.length(lengthMm) },
    { title: 'edges', align: 'right', cell: ({ edgesMm }) => edgesMm.map(figures.length).join(' / ') },
    { title: 'end 1', cell: ({ ends }) => bevels(ends[0]) },
    { title: 'end 2', cell: ({ ends }) => bevels(ends[1]) },
    ...countColumns,
    { title: 'for', cell: forPanels },
  ];
  return printTable('All pieces', columns, plan.pieces, width, typefaces);
}

const countColumns: PrintColumn<PlanStrip | PlanPiece>[] = [
  { title: 'needed', align: 'right', cell: ({ make }) => String(make) },
  { title: '+\u00a0spare', align: 'right', cell: ({ spare }) => String(spare) },
  { title: '=\u00a0cut', align: 'right', strong: true, cell: ({ total }) => String(total) },
];

const bevels = ({ bevels: both }: PlanPieceEnd): string =>
  both === null ? 'fitted' : both[0] === both[1] ? angleText(both[0]) : both.map(angleText).join(' / ');

const forPanels = ({ panels }: PlanStrip | PlanPiece): string =>
  Object.entries(panels)
    .map(([name, count]) => `${name} ${count}`)
    .join(', ');
