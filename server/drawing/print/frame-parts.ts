/** The frames: their members, and what fills their grooves, each to tick off. */
import { figure, words } from '../../../grammar/words.ts';
import type { PlanFrame } from '../../shop/sections/work-sections.ts';
import { angleText } from '../../words/figures.ts';
import type { FlowPart } from './flow.ts';
import type { PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';

export function frameParts({ plan, width, typefaces, figures, say }: PrintContext): FlowPart[] {
  const columns: PrintColumn<PlanFrame['members'][number]>[] = [
    { title: '', tick: true },
    { title: 'mark', strong: true, cell: ({ mark }) => mark },
    { title: 'length', align: 'right', strong: true, cell: ({ lengthMm }) => figures.length(lengthMm) },
    { title: 'inner edge', align: 'right', cell: ({ innerMm }) => figures.length(innerMm) },
    { title: 'wide', align: 'right', cell: ({ widthMm }) => figures.length(widthMm) },
    { title: 'ends', cell: ({ ends }) => ends.map(angleText).join(' / ') },
    { title: 'make', align: 'right', strong: true, cell: ({ make }) => String(make) },
  ];
  const fillings = (frame: PlanFrame): PrintColumn<PlanFrame['groovePieces'][number]>[] => [
    { title: '', tick: true },
    { title: 'mark', strong: true, cell: ({ mark }) => mark },
    { title: 'length', align: 'right', strong: true, cell: ({ lengthMm }) => figures.length(lengthMm) },
    { title: 'ripped to', cell: ({ widthMm }) => `${figures.length(widthMm)} × ${figures.length(frame.jointWidthMm)}` },
    { title: 'make', align: 'right', strong: true, cell: ({ make }) => String(make) },
  ];
  return plan.frames.flatMap((frame) => {
    const deep = figure.length(frame.jointDepthMm);
    const wide = figure.length(frame.jointWidthMm);
    const joint = say(words`${frame.corners}, ${frame.joint} ${deep} deep, ${wide} wide`);
    const filled = frame.bearing === 'border' ? 'Border in the groove' : 'Fillers in the groove';
    return [
      printTable(`Frame of ${frame.panel}: ${frame.stock}, ${joint}`, columns, frame.members, width, typefaces),
      ...(frame.groovePieces.length === 0
        ? []
        : [printTable(`${filled} of ${frame.panel}`, fillings(frame), frame.groovePieces, width, typefaces)]),
    ];
  });
}
