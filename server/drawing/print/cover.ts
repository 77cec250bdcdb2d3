/** The first page: what is made, the two sheets, what the work comes to, the job in its order. */
import { area, rectangle } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, indented, paragraph, space, stacked } from './blocks.ts';
import { asPart, type FlowPart } from './flow.ts';
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
        'Two sheets in one print. Sheet 1 takes the work to the finished lattice. Then the lattice is measured, the measured figures go into the file as “measured”, and sheet 2 is printed again from it: infill follows the lattice as it came out, not the drawing.',
        text,
        width,
        typefaces,
      ),
      space(1.5),
      paragraph(
        'Not tested in wood: cut a test notch and a test cell first. Lengths are tip to tip, bevels inside the wood from the axis, left and right seen from end 1. Where a caliper figure stands, the caliper governs.',
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

const panelColumns = ({ figure }: PrintContext): PrintColumn<PlanPanel>[] => [
  { title: 'panel', strong: true, cell: ({ name }) => name },
  { title: 'copies', align: 'right', strong: true, cell: ({ copies }) => String(copies) },
  { title: 'edge', cell: ({ edge }) => edge },
  { title: 'edge length', align: 'right', cell: ({ perimeterMm }) => figure(perimeterMm) },
  { title: 'nodes', align: 'right', cell: ({ nodes }) => String(nodes) },
  { title: 'strips', align: 'right', cell: ({ strips }) => String(strips) },
  { title: 'infill', align: 'right', cell: ({ infill }) => String(infill.make) },
  { title: 'cells filled', cell: ({ cells }) => cells.map(({ shape, needed }) => `${needed} ${shape}`).join(', ') },
];

const stepColumns: PrintColumn<PlanStep>[] = [
  { title: '', tick: true },
  { title: '', align: 'right', strong: true, cell: ({ order }) => String(order) },
  { title: 'step', strong: true, cell: ({ title }) => title },
  { title: 'sheet', cell: ({ sheet }) => (sheet === 'to the lattice' ? '1, to the lattice' : '2, after measuring') },
  { title: 'by hand', align: 'right', cell: ({ handsOnMin }) => (handsOnMin === null ? '' : minutesText(handsOnMin)) },
  { title: 'then wait', align: 'right', cell: ({ waitH }) => (waitH === null ? '' : `${waitH} h`) },
];

/** "45 min", "3 h 20 min". */
export function minutesText(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  return hours === 0 ? `${whole} min` : `${hours} h ${whole % 60} min`;
}
