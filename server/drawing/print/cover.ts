/** The first page: what is made, the two parts of the print, what the work comes to, the job in its order. */
import { minutesText, plain } from '../../words/figures.ts';
import { area, rectangle } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, indented, paragraph, space, stacked } from './blocks.ts';
import { asPart, type FlowPart } from './flow.ts';
import { partNames } from './page-frame.ts';
import { letterSizes, type PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';
import type { PlanPanel } from '../../shop/shop-plan.ts';
import type { PlanStep } from '../../shop/sections/work-sections.ts';

const titleSize = 13;

export function coverParts(context: PrintContext): FlowPart[] {
  const { plan, width, typefaces } = context;
  const text = { size: letterSizes.text };
  return [
    ...[
      paragraph(plan.title ?? 'Shop plan', { size: titleSize, look: 'strong' }, width, typefaces),
      paragraph(`${plan.source}, text ${plan.revision}`, { size: letterSizes.heading }, width, typefaces),
      space(3),
      ...(plan.incomplete ? [incompleteNotice(context), space(3)] : []),
      paragraph(
        'One print in two parts. Part 1 takes the work to the finished lattice. Then measure the lattice, write what you measured into the file as “measured”, and print part 2 again: the infill follows the lattice as it came out, not the drawing.',
        text,
        width,
        typefaces,
      ),
      space(1.5),
      paragraph(
        'Not tested in wood: cut a test notch and a test cell first. Lengths are tip to tip, bevels inside the wood from the axis, left and right seen from end 1. Where a caliper figure is given, the caliper governs.',
        { ...text, look: 'strong' },
        width,
        typefaces,
      ),
    ].map(asPart),
    printTable('Panels, one copy of each', panelColumns(context), plan.panels, width, typefaces),
    ...(plan.steps.length === 0 ? [] : [printTable('The job in its order', stepColumns, plan.steps, width, typefaces)]),
  ];
}

function incompleteNotice({ width, typefaces }: PrintContext): Block {
  const text = paragraph(
    'INCOMPLETE: the file has errors, and what they touch is missing here. Don’t cut from this print.',
    { size: letterSizes.heading, look: 'strong' },
    width - 8,
    typefaces,
  );
  const inner = indented(stacked([space(3), text, space(3)]), 4);
  return blockOf(inner.height, [area('box', rectangle(0, 0, width, inner.height)), ...inner.items]);
}

const panelColumns = ({ figures }: PrintContext): PrintColumn<PlanPanel>[] => [
  { title: 'panel', strong: true, cell: ({ name }) => name },
  { title: 'copies', align: 'right', strong: true, cell: ({ copies }) => String(copies) },
  { title: 'edge', cell: ({ edge }) => edge },
  { title: 'edge length', align: 'right', cell: ({ perimeterMm }) => figures.length(perimeterMm) },
  { title: 'nodes', align: 'right', cell: ({ nodes }) => String(nodes) },
  { title: 'strips', align: 'right', cell: ({ strips }) => String(strips) },
  { title: 'infill', align: 'right', cell: ({ infill }) => String(infill.make) },
  { title: 'cells filled', cell: ({ cells }) => cells.map(({ shape, needed }) => `${needed} ${shape}`).join(', ') },
];

const stepColumns: PrintColumn<PlanStep>[] = [
  { title: '', tick: true },
  { title: '', align: 'right', strong: true, cell: ({ order }) => String(order) },
  { title: 'step', strong: true, cell: ({ title }) => title },
  { title: 'part', cell: ({ sheet }) => (sheet === partNames[1] ? `1, ${sheet}` : `2, ${sheet}`) },
  { title: 'by hand', align: 'right', cell: ({ handsOnMin }) => (handsOnMin === null ? '' : minutesText(handsOnMin)) },
  { title: 'then wait', align: 'right', cell: ({ waitH }) => (waitH === null ? '' : `${plain(waitH, 1)} h`) },
];
