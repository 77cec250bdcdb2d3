/** The page of each way in which a blank is filled: where its cut-outs lie, which cells get infill, how it goes together. */
import { counted } from '../../../grammar/words.ts';
import { jobStep } from '../../shop/steps/job-steps.ts';
import type { PlanBlank } from '../../shop/sections/object-sections.ts';
import { angleText } from '../../words/figures.ts';
import { assemblyOrder } from '../assembly-order.ts';
import { drawBlank } from '../draw-blank.ts';
import { space } from './blocks.ts';
import { asPart, type FlowPart, type Section } from './flow.ts';
import { blankPicture } from './panel-picture.ts';
import type { PrintContext } from './print-context.ts';
import { remarks } from './remarks.ts';
import { gateBlock } from './step-parts.ts';
import { printTable, type PrintColumn } from './table.ts';

/** Share of a page that the blank's picture may take. */
const pictureShare = 0.5;

export const blankSections = (height: number, context: PrintContext): Section[] =>
  context.drawn.blanks.flatMap((nested) =>
    drawBlank(nested, context.drawn, context.drawn.design.title).map((drawing, index): Section => {
      const planned = context.plan.blanks.filter(({ name }) => name === nested.blank.name)[index];
      const laid = nested.laid[index];
      const caption = [`${drawing.heading}, seen from the front; not to scale. Thick lines are the saw lines.`];
      return {
        title: `Blank ${drawing.name}`,
        part: 1,
        parts: [
          asPart(blankPicture(drawing, caption, height * pictureShare, context)),
          ...remarks(planned ? blankLines(planned) : [], context),
          ...(laid ? remarks(assemblyOrder(laid, context.drawn.kinds, context.plan.units), context) : []),
          asPart(space(2)),
          ...(planned ? placeParts(planned, context) : []),
        ],
      };
    }),
  );

const blankLines = ({ copies, cells, infill, places }: PlanBlank): string[] => [
  `${counted(copies, 'blank')} to make like this, ${counted(places.length, 'cut-out')} in each.`,
  `Infill goes into the ${counted(cells, 'cell')} drawn with it, ${counted(infill.make, 'piece')} to a blank; every other cell stays open.`,
];

/** Moves count from the blank's middle. */
function placeParts({ places }: PlanBlank, { figures, width, typefaces }: PrintContext): FlowPart[] {
  const columns: PrintColumn<PlanBlank['places'][number]>[] = [
    { title: '', tick: true },
    { title: 'cut-out', strong: true, cell: ({ panel }) => panel },
    { title: 'origin, right of the middle', align: 'right', cell: ({ move }) => figures.length(move.dx) },
    { title: 'above the middle', align: 'right', cell: ({ move }) => figures.length(move.dy) },
    { title: 'turned', align: 'right', cell: ({ move }) => angleText(move.turn) },
    { title: 'sawn from', cell: ({ move }) => (move.mirror ? 'the back' : 'the front') },
  ];
  const { gate } = jobStep('fill the lattice');
  const tail = gate === null ? null : gateBlock(gate, { width, typefaces });
  return [printTable('Cut-outs on the lattice', columns, places, width, typefaces, tail)];
}
