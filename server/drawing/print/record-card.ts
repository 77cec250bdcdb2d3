/** The card on which the finished lattice is written down: empty lines for what was measured. */
import { measure, type Measure, words } from '../../../grammar/words.ts';
import { hasSingleLines } from '../../design/builders/grid-check.ts';
import { type Block, blockOf, paragraph, space } from './blocks.ts';
import type { LengthUnit, StripStock } from '../../design/design-model.ts';
import { millimetresIn } from '../../design/values/quantity.ts';
import { latticesMade } from '../../shop/lattices-made.ts';
import { gridsMade } from '../../shop/sections/plan-parts.ts';
import { isImperial } from '../../words/figures.ts';
import { asPart, type FlowPart } from './flow.ts';
import { openLine, textAt } from '../sheet/sheet-lines.ts';
import { letterSizes, type PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';

/** How finely the lattice is measured. */
const finest = (units: LengthUnit): Measure => measure.given(isImperial(units) ? millimetresIn.in / 200 : 0.1);

interface Reading {
  readonly what: string;
  readonly drawn: string;
}

export function recordParts(context: PrintContext): FlowPart[] {
  const { plan, say, width, typefaces } = context;
  if (plan.grids.length === 0) return [];
  return [
    asPart(
      paragraph(
        say(
          words`Measure in three places, in each direction of the strips, to ${finest(plan.units)}. Write the means into the file: in the grid, “measured” with the face and the cells; then print part 2 again.`,
        ),
        { size: letterSizes.text },
        width,
        typefaces,
      ),
    ),
    printTable('The lattice as it came out', measureColumns, measures(context), width, typefaces),
    asPart(space(6)),
    asPart(signatures(context)),
  ];
}

function measures({ plan, drawn, figures }: PrintContext): Reading[] {
  const lattice = plan.grids.flatMap(({ name, tenSidesMm, check }) => {
    const families = gridsMade(drawn.design).find((made) => made.name === name)?.grid.families ?? [];
    return [
      ...(hasSingleLines({ families })
        ? [{ what: `${name}: ${check.what}`, drawn: figures.length(check.mm) }]
        : families.map((_, index) => ({
            what: `${name}: 10 cells, family ${index + 1}`,
            drawn: figures.length(tenSidesMm),
          }))),
      {
        what: `${name}: strip face`,
        drawn: [...new Set(families.map(({ stock }) => figures.fine(stock.face)))].join(', '),
      },
      {
        what: `${name}: depth after flushing`,
        drawn: [...new Set(families.map(({ stock }) => figures.length(finishedDepth(plan, stock))))].join(', '),
      },
    ];
  });
  const lattices = latticesMade(drawn).map(({ panel }) => ({ what: `${panel.name}: both diagonals`, drawn: 'equal' }));
  const saws = plan.benches.map(({ name, kerfMm }) => ({
    what: `${name}: kerf of a test cut`,
    drawn: kerfMm === null ? '' : figures.fine(kerfMm),
  }));
  return [...saws, ...lattice, ...lattices];
}

/** As the milling section has it: the section's depth less what both faces are flushed by. */
const finishedDepth = ({ mill }: PrintContext['plan'], { name, depth }: StripStock): number =>
  mill.find(({ stock }) => stock === name)?.finishedDepthMm ?? depth;

const measureColumns: PrintColumn<Reading>[] = [
  { title: 'what', cell: ({ what }) => what },
  { title: 'drawn', align: 'right', strong: true, cell: ({ drawn }) => drawn },
  { title: 'measured, first', toFill: true },
  { title: 'second', toFill: true },
  { title: 'third', toFill: true },
];

function signatures({ width }: PrintContext): Block {
  const third = width / 3;
  const lines = ['date', 'measured by', 'moisture of the wood, %'].flatMap((name, index) => [
    openLine('rule', [
      { x: index * third, y: 6 },
      { x: (index + 1) * third - 5, y: 6 },
    ]),
    textAt(name, { x: index * third, y: 10 }, { size: letterSizes.small, look: 'quiet' }),
  ]);
  return blockOf(12, lines);
}
