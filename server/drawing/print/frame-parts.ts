/** The frames: their members, and what fills their grooves, each to tick off. */
import type { PlanFrame } from '../../shop/sections/work-sections.ts';
import { paperAngle } from '../sheet/paper-figures.ts';
import type { FlowPart } from './flow.ts';
import type { PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';

export function frameParts({ plan, width, typefaces, figure }: PrintContext): FlowPart[] {
  const columns: PrintColumn<PlanFrame['members'][number]>[] = [
    { title: '', tick: true },
    { title: 'mark', strong: true, cell: ({ mark }) => mark },
    { title: 'length', align: 'right', strong: true, cell: ({ lengthMm }) => figure(lengthMm) },
    { title: 'inner edge', align: 'right', cell: ({ innerMm }) => figure(innerMm) },
    { title: 'wide', align: 'right', cell: ({ widthMm }) => figure(widthMm) },
    { title: 'ends', cell: ({ ends }) => ends.map(paperAngle).join(' / ') },
    { title: 'make', align: 'right', strong: true, cell: ({ make }) => String(make) },
  ];
  const fillings = (frame: PlanFrame): PrintColumn<PlanFrame['groovePieces'][number]>[] => [
    { title: '', tick: true },
    { title: 'mark', strong: true, cell: ({ mark }) => mark },
    { title: 'length', align: 'right', strong: true, cell: ({ lengthMm }) => figure(lengthMm) },
    { title: 'ripped to', cell: ({ widthMm }) => `${figure(widthMm)} × ${figure(frame.jointWidthMm)}` },
    { title: 'make', align: 'right', strong: true, cell: ({ make }) => String(make) },
  ];
  return plan.frames.flatMap((frame) => {
    const joint = `${frame.corners}, ${frame.joint} ${figure(frame.jointDepthMm)} deep, ${figure(frame.jointWidthMm)} wide`;
    const filled = frame.bearing === 'border' ? 'Border in the groove' : 'Fillers in the groove';
    return [
      printTable(`Frame of ${frame.panel}: ${frame.stock}, ${joint}`, columns, frame.members, width, typefaces),
      ...(frame.groovePieces.length === 0
        ? []
        : [printTable(`${filled} of ${frame.panel}`, fillings(frame), frame.groovePieces, width, typefaces)]),
    ];
  });
}
