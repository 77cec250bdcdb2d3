/** The finished object: whether it closes and moves, what it weighs, how it hangs, how it is finished. */
import { figure, type Measure, words } from '../../../grammar/words.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import type { PlanMassPart, PlanSpan } from '../../shop/sections/object-sections.ts';
import { movementLines } from '../../shop/writers/text/work-text.ts';
import { paragraph, space, stacked } from './blocks.ts';
import { remarks } from './remarks.ts';
import { asPart, type FlowPart } from './flow.ts';
import { massOrUnknown } from './optional-figures.ts';
import { letterSizes, type PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';

/** Lines under a heading; nothing where there are no lines. */
function told(title: string, lines: readonly string[], context: PrintContext): FlowPart[] {
  const { width, typefaces } = context;
  if (lines.length === 0) return [];
  const strong = { size: letterSizes.heading, look: 'strong' };
  return [
    asPart({ ...stacked([space(3), paragraph(title, strong, width, typefaces)]), keepsWithNext: true }),
    ...remarks(lines, context),
  ];
}

export function closingParts(context: PrintContext): FlowPart[] {
  const { fit } = context.plan;
  return [
    ...told(
      'Does it close?',
      fit.map(({ text }) => text),
      context,
    ),
    ...told('What moves', movementLines(context.plan), context),
  ];
}

/** Mass, finish and hanging; nothing where the file says nothing of them. */
export function objectParts(context: PrintContext): FlowPart[] {
  const { plan, width, typefaces } = context;
  const { mass, finish, units } = plan;
  return [
    ...(mass.parts.length === 0
      ? []
      : [
          printTable(
            `Mass of a copy: ${massOrUnknown(mass.perCopyG, units)}`,
            massColumns(units),
            mass.parts,
            width,
            typefaces,
          ),
        ]),
    ...remarks(mass.notes, context),
    ...told('Finish', finish?.order ?? [], context),
    ...told('Hanging', hangingLines(context), context),
  ];
}

const massColumns = (units: LengthUnit): PrintColumn<PlanMassPart>[] => [
  { title: 'part', strong: true, cell: ({ part }) => part },
  { title: 'material', cell: ({ material }) => material },
  { title: 'count', align: 'right', cell: ({ count }) => String(count) },
  { title: 'mass', align: 'right', strong: true, cell: ({ massG }) => massOrUnknown(massG, units) },
  { title: 'weighed', toFill: true },
];

function hangingLines({ plan: { hanging, units }, say }: PrintContext): string[] {
  if (hanging === null) return [];
  const long = (millimetres: number): Measure => figure.length(millimetres);
  const span = (what: string, each: PlanSpan | null): string[] =>
    each === null
      ? []
      : [
          say(
            words`${what}: ${long(each.lengthMm)} long, upper edge ${long(each.heightMm)} above the work’s origin, from ${long(each.fromMm)} to ${long(each.toMm)} seen from the front`,
          ),
        ];
  const mass = (grams: number | null): string => massOrUnknown(grams, units);
  const holes = hanging.drill.map(({ xMm, yMm }) => say(words`${long(xMm)} (height ${long(yMm)})`));
  return [
    `Load ${mass(hanging.loadG)}; ${hanging.fixings} fixings × ${mass(hanging.eachG)} ÷ ${hanging.safety} carry ${mass(hanging.carriesG)}: ${hanging.verdict}`,
    ...span('Cleat', hanging.cleat),
    ...span('Spacer', hanging.spacer),
    ...(holes.length === 0 ? [] : [`Holes from the cleat’s left end, seen from behind: ${holes.join(', ')}`]),
    ...hanging.notes,
  ];
}
