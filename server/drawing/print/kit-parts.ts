/** A class: a label for every bag and for the teacher's box, what is packed and shared, and the student's own card. */
import { counted } from '../../../grammar/words.ts';
import { maximum } from '../../geometry/numbers.ts';
import type { PlanKit } from '../../shop/sections/work-sections.ts';
import { angleText } from '../../words/figures.ts';
import { area, openLine, rectangle, textAt } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, indented, paragraph, space, stacked } from './blocks.ts';
import { asPart, type FlowPart, type Section } from './flow.ts';
import { fullSize } from './piece-cards.ts';
import { letterSizes, type PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';

/** The class's sections, each from a new page; none without a class. */
export function kitSections(context: PrintContext): Section[] {
  const { kit } = context.plan;
  if (kit === null) return [];
  return [
    { title: `Class ${kit.name}`, part: 2, parts: packingParts(kit, context) },
    { title: 'Bag labels', part: 2, parts: bagLabels(kit, context) },
    { title: 'Student card', part: 2, parts: studentCard(kit, context) },
  ];
}

function packingParts(kit: PlanKit, context: PrintContext): FlowPart[] {
  const { width, typefaces } = context;
  const say = (text: string): FlowPart => asPart(paragraph(text, { size: letterSizes.text }, width, typefaces));
  const done = kit.done.length === 0 ? 'nothing' : kit.done.join(', ');
  const { jigs, sets, studentsPerSet } = kit.jigs;
  return [
    say(`${kit.students} students, each builds one ${kit.panel}. Done before the bag is packed: ${done}.`),
    ...kit.problems.map(say),
    printTable('In each bag', bagColumns(context), kit.bag, width, typefaces),
    printTable('In the teacher’s box', boxColumns, kit.teacherBox, width, typefaces),
    printTable(
      `To cut so that nobody is short: ${kit.breakagePct} % break, ${kit.confidencePct} % sure`,
      spareColumns,
      kit.spares,
      width,
      typefaces,
    ),
    ...(jigs.length === 0
      ? []
      : [
          printTable(
            `Jigs: ${counted(sets, 'set')}, ${studentsPerSet} students to a set`,
            jigColumns(context),
            jigs,
            width,
            typefaces,
          ),
        ]),
  ];
}

const bagColumns = ({ figures }: PrintContext): PrintColumn<PlanKit['bag'][number]>[] => [
  { title: '', tick: true },
  { title: 'mark', strong: true, cell: ({ mark }) => mark },
  { title: 'needed', align: 'right', cell: ({ n }) => String(n) },
  { title: '+\u00a0spare', align: 'right', cell: ({ spare }) => String(spare) },
  { title: '=\u00a0in the bag', align: 'right', strong: true, cell: ({ n, spare }) => String(n + spare) },
  { title: 'length', align: 'right', cell: ({ lengthMm }) => figures.length(lengthMm) },
];

const boxColumns: PrintColumn<PlanKit['teacherBox'][number]>[] = [
  { title: '', tick: true },
  { title: 'mark', strong: true, cell: ({ mark }) => mark },
  { title: 'pieces', align: 'right', strong: true, cell: ({ n }) => String(n) },
];

const spareColumns: PrintColumn<PlanKit['spares'][number]>[] = [
  { title: 'mark', strong: true, cell: ({ mark }) => mark },
  { title: 'needed', align: 'right', cell: ({ needed }) => String(needed) },
  { title: 'cut, spares in each bag', align: 'right', cell: ({ perBag }) => String(perBag) },
  { title: 'cut, spares in one box', align: 'right', cell: ({ pooled }) => String(pooled) },
  { title: 'cut, as stated', align: 'right', cell: ({ stated }) => (stated ? String(stated.total) : '') },
  { title: 'which is sure to', align: 'right', cell: ({ stated }) => (stated ? `${stated.surePct} %` : '') },
  { title: 'least box', align: 'right', cell: ({ stated }) => String(stated?.leastBox ?? '') },
];

const jigColumns = ({ figures }: PrintContext): PrintColumn<PlanKit['jigs']['jigs'][number]>[] => [
  { title: '', tick: true },
  { title: 'jig', cell: ({ jig, keys }) => (keys ? `${jig}, keys` : jig) },
  { title: 'angle', align: 'right', strong: true, cell: ({ angle }) => angleText(angle) },
  {
    title: 'toe to stop',
    align: 'right',
    strong: true,
    cell: ({ keys, stopMm }) => figures[keys ? 'key' : 'length'](stopMm),
  },
  {
    title: 'caliper',
    align: 'right',
    strong: true,
    cell: ({ keys, caliperMm }) => (caliperMm === null ? '' : figures[keys ? 'key' : 'length'](caliperMm)),
  },
  { title: 'marks', strong: true, cell: ({ marks }) => marks.join(', ') },
];

const perRow = 2;

/** One card a bag and one for the box, two beside one another, all of a row as high as the highest. */
function bagLabels(kit: PlanKit, context: PrintContext): FlowPart[] {
  const bags = Array.from({ length: kit.students }, (_, index) =>
    bagCard(
      `Bag ${index + 1} of ${kit.students}`,
      kit,
      kit.bag.map(({ label }) => label),
      context,
    ),
  );
  const box = kit.teacherBox.map(({ mark, n }) => `${mark}: ${n}`);
  const cards = [...bags, ...(box.length === 0 ? [] : [bagCard('Teacher’s box', kit, [box.join(', ')], context)])];
  return Array.from({ length: Math.ceil(cards.length / perRow) }, (_, row) =>
    asPart(cardRow(cards.slice(row * perRow, (row + 1) * perRow), context.width / perRow)),
  );
}

const inset = 4;

function bagCard(
  title: string,
  kit: PlanKit,
  lines: readonly string[],
  { plan, width, typefaces }: PrintContext,
): Block {
  const room = width / perRow - 2 * inset;
  const set = (text: string, size: number, look = ''): Block => paragraph(text, { size, look }, room, typefaces);
  return stacked([
    space(inset),
    set(title, letterSizes.mark, 'strong'),
    set(`${kit.name}: one ${kit.panel}`, letterSizes.text),
    space(1),
    ...lines.map((line) => set(line, letterSizes.text)),
    space(1),
    set(`${plan.source} · ${plan.revision}`, letterSizes.small),
    space(inset / 2),
  ]);
}

function cardRow(cards: readonly Block[], width: number): Block {
  const height = maximum(cards.map((card) => card.height));
  return blockOf(
    height,
    cards.flatMap((card, index) => [
      area('fold', rectangle(index * width, 0, width, height)),
      ...indented(card, index * width + inset).items,
    ]),
  );
}

/** What the student has on the bench: the stages to tick off, and the pieces at full size to lay the own ones on. */
function studentCard(kit: PlanKit, context: PrintContext): FlowPart[] {
  const { width, typefaces, drawn, figures } = context;
  const inBag = new Set(kit.bag.map(({ mark }) => mark));
  const boxSize = 4.4;
  const stages = kit.card.map((line, index) => {
    const text = indented(paragraph(`${index + 1}  ${line}`, { size: letterSizes.text }, width - 8, typefaces), 8);
    return asPart(blockOf(text.height + 1.2, [area('box', rectangle(0, 0.3, boxSize, boxSize)), ...text.items]));
  });
  const pieces = drawn.kinds.pieces
    .filter(({ mark }) => inBag.has(mark))
    .map(({ mark, shape }) => {
      const view = indented(fullSize(mark, shape, context), 24);
      return asPart(
        blockOf(view.height + 2, [
          textAt(mark, { x: 0, y: 10 }, { size: letterSizes.mark, look: 'strong' }),
          textAt(figures.length(shape.length), { x: 0, y: 15.5 }, { size: letterSizes.text }),
          ...view.items,
        ]),
      );
    });
  const name = blockOf(13, [
    textAt('name', { x: 0, y: 12 }, { size: letterSizes.small, look: 'quiet' }),
    openLine('rule', [
      { x: 0, y: 8 },
      { x: width / 2, y: 8 },
    ]),
  ]);
  return [asPart(name), ...stages, asPart(space(2)), ...pieces];
}
