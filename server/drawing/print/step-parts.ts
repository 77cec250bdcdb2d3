/** The steps of the job: what to do, care to take, settings in the order of the bench, and the gate before the next step. */
import type { PlanSetting } from '../../shop/shop-plan.ts';
import type { PlanStep } from '../../shop/sections/work-sections.ts';
import { angleText, type LengthFigures, minutesText, plain } from '../../words/figures.ts';
import { area, rectangle, textAt } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, indented, paragraph, space, stacked } from './blocks.ts';
import { asPart, type FlowPart } from './flow.ts';
import { markRanges } from '../../shop/marks/mark-ranges.ts';
import { letterSizes, type PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';

const boxSize = 4.4;

/** The parts of one step, from its heading to its gate; `own` are tables of what is made in it. */
export function stepParts(step: PlanStep, own: readonly FlowPart[], context: PrintContext): FlowPart[] {
  const { plan, figures, width, typefaces } = context;
  const settings = plan.settings.filter(({ order }) => step.settings.includes(order));
  const notching = settings.filter((setting) => setting.notching !== null);
  const others = settings.filter((setting) => setting.notching === null);
  const gate = step.gate === null ? null : gateBlock(step.gate, context);
  const figure = step.title === 'cut keys' ? figures.key : figures.length;
  const tables = [
    ...(notching.length > 0 ? [{ columns: notchColumns(figures), rows: notching }] : []),
    ...(others.length > 0 ? [{ columns: settingColumns(figure, others), rows: others }] : []),
  ];
  const lines: Block[] = [
    heading(step, context),
    ...(step.caution === null ? [] : [cautionBlock(step.caution, context), space(1.5)]),
    ...step.tasks.map((task) => ticked(paragraph(task, { size: letterSizes.text }, width - 7, typefaces))),
  ];
  const isLast = (index: number): boolean => index === tables.length - 1;
  return [
    ...lines.map((block, index) =>
      asPart({ ...block, keepsWithNext: index < lines.length - 1 || own.length + tables.length > 0 || gate !== null }),
    ),
    ...own,
    ...tables.map(({ columns, rows }, index) =>
      printTable(
        { text: `${step.order}  ${step.title}`, atStart: false },
        columns,
        rows,
        width,
        typefaces,
        isLast(index) ? gate : null,
      ),
    ),
    ...(tables.length === 0 && gate ? [asPart(gate)] : []),
    asPart(space(4)),
  ];
}

function heading({ order, title, handsOnMin, waitH }: PlanStep, { width, typefaces }: PrintContext): Block {
  const times = [
    ...(handsOnMin === null ? [] : [minutesText(handsOnMin)]),
    ...(waitH === null ? [] : [`then wait ${plain(waitH, 1)} h`]),
  ].join(', ');
  const look = { size: letterSizes.heading + 1.5, look: 'strong' };
  const text = paragraph(`${order}  ${title}`, look, width - 60, typefaces);
  const items = [...text.items, textAt(times, { x: width, y: look.size }, { size: letterSizes.text, anchor: 'end' })];
  return blockOf(text.height + 0.5, times === '' ? text.items : items, true);
}

/** Beside its step, in a box that is seen before the figures are. */
function cautionBlock(caution: string, { width, typefaces }: PrintContext): Block {
  const text = stacked([
    paragraph('Take care', { size: letterSizes.text, look: 'strong' }, width - 8, typefaces),
    paragraph(caution, { size: letterSizes.text }, width - 8, typefaces),
  ]);
  const inner = indented(stacked([space(1.5), text, space(1.5)]), 5);
  return blockOf(inner.height, [
    area('box', rectangle(0, 0, width, inner.height)),
    area('arrow', rectangle(0, 0, 2.5, inner.height)),
    ...inner.items,
  ]);
}

function ticked(block: Block): Block {
  const moved = indented(block, 7);
  return blockOf(Math.max(moved.height, boxSize) + 1.5, [
    area('box', rectangle(0, 0.4, boxSize, boxSize)),
    ...moved.items,
  ]);
}

export function gateBlock(gate: string, { width, typefaces }: Pick<PrintContext, 'width' | 'typefaces'>): Block {
  const text = paragraph(`Gate: ${gate}`, { size: letterSizes.figure, look: 'strong' }, width - 9, typefaces);
  const inner = indented(text, 8);
  return stacked([
    space(2),
    blockOf(inner.height, [area('box', rectangle(0, 0.2, boxSize + 0.8, boxSize + 0.8)), ...inner.items]),
  ]);
}

type Figure = (millimetres: number) => string;

const optional = (length: number | null, figure: Figure): string => (length === null ? '' : figure(length));

/** Only columns that some setting has a figure for. */
function settingColumns(figure: Figure, settings: readonly PlanSetting[]): PrintColumn<PlanSetting>[] {
  const columns: (PrintColumn<PlanSetting> & { readonly has?: (setting: PlanSetting) => boolean })[] = [
    { title: '', tick: true },
    { title: '', align: 'right', cell: ({ order }) => String(order) },
    { title: 'tool', cell: ({ tool, jig }) => jig ?? tool },
    {
      title: 'angle',
      align: 'right',
      strong: true,
      has: ({ angle }) => angle !== null,
      cell: ({ angle }) => (angle === null ? '' : angleText(angle)),
    },
    { title: 'flip', has: ({ flip }) => flip, cell: ({ flip }) => (flip ? 'flip' : '') },
    {
      title: 'toe to stop',
      align: 'right',
      has: ({ stopMm }) => stopMm !== null,
      cell: ({ stopMm }) => optional(stopMm, figure),
    },
    {
      title: 'caliper',
      align: 'right',
      strong: true,
      has: ({ caliperMm }) => caliperMm !== null,
      cell: ({ caliperMm }) => optional(caliperMm, figure),
    },
    { title: 'pieces', align: 'right', cell: ({ pieces }) => String(pieces) },
    { title: 'marks', strong: true, cell: ({ marks }) => markRanges(marks) },
  ];
  return columns.filter(({ has }) => has === undefined || settings.some(has));
}

const notchColumns = (figures: LengthFigures): PrintColumn<PlanSetting>[] => [
  { title: '', tick: true },
  { title: '', align: 'right', cell: ({ order }) => String(order) },
  { title: 'angle', align: 'right', strong: true, cell: ({ angle }) => (angle === null ? '' : angleText(angle)) },
  { title: 'from', cell: ({ notching }) => notching?.from ?? '' },
  {
    title: 'first stop',
    align: 'right',
    strong: true,
    cell: ({ notching }) => optional(notching?.firstStopMm ?? null, figures.length),
  },
  {
    title: 'pin',
    align: 'right',
    strong: true,
    cell: ({ notching }) => optional(notching?.pinPitchMm ?? null, figures.pin),
  },
  {
    title: 'pin, square',
    align: 'right',
    cell: ({ notching }) => optional(notching?.pinSquareMm ?? null, figures.pin),
  },
  { title: 'notches', align: 'right', cell: ({ notching }) => String(notching?.notches ?? '') },
  {
    title: 'blade height',
    align: 'right',
    cell: ({ notching }) => optional(notching?.bladeHeightMm ?? null, figures.fine),
  },
  { title: 'strips', align: 'right', cell: ({ pieces }) => String(pieces) },
  { title: 'marks', strong: true, cell: ({ marks }) => markRanges(marks) },
];
