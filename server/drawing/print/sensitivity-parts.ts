/** How each infill length follows the lattice as it came out: figures to work with by hand, and fields for the answer. */
import type { PlanPiece } from '../../shop/shop-plan.ts';
import type { FlowPart } from './flow.ts';
import type { PrintContext } from './print-context.ts';
import { remarks } from './remarks.ts';
import { printTable, type PrintColumn } from './table.ts';
import { changeFigure, changeStep } from '../../words/figures.ts';

/** Nothing where there is no infill. */
export function sensitivityParts(context: PrintContext): FlowPart[] {
  const { plan, width, typefaces, figures } = context;
  if (plan.pieces.length === 0) return [];
  const { units } = plan;
  const step = changeStep(units);
  const columns: PrintColumn<PlanPiece>[] = [
    { title: 'mark', strong: true, cell: ({ mark }) => mark },
    { title: 'length here', align: 'right', strong: true, cell: ({ lengthMm }) => figures.length(lengthMm) },
    { title: `pitch + ${step}`, align: 'right', cell: ({ perTenth }) => changeFigure(perTenth?.pitchMm, units) },
    { title: `face + ${step}`, align: 'right', cell: ({ perTenth }) => changeFigure(perTenth?.faceMm, units) },
    { title: 'pitch measured', toFill: true },
    { title: 'face measured', toFill: true },
    { title: 'new length', toFill: true },
  ];
  return [
    ...remarks(
      [
        `These lengths hold for the pitch and face at the foot of the page. Ten cells measured, divided by ten, are the pitch. For every ${step} that pitch or face came out larger, add the figure of its column; for smaller, subtract it. Better: write both into the file and print part 2 again.`,
        ...(plan.pieces.some(({ perTenth }) => perTenth === null)
          ? ['Where no figure is given, the piece is fitted to its place: measure it there.']
          : []),
      ],
      context,
    ),
    printTable('Change of each length', columns, plan.pieces, width, typefaces),
  ];
}
