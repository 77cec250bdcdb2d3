/** The finished object: whether it closes and moves, what it weighs, how it hangs, how it is finished. */
import type { PlanMassPart, PlanSpan } from '../../shop/sections/object-sections.ts';
import { movementLines } from '../../shop/writers/text/work-text.ts';
import { paragraph, space, stacked } from './blocks.ts';
import { remarks } from './remarks.ts';
import { asPart, type FlowPart } from './flow.ts';
import { massText } from './optional-figures.ts';
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
  const { mass, finish } = plan;
  return [
    ...(mass.parts.length === 0
      ? []
      : [printTable(`Mass of a copy: ${massText(mass.perCopyG)}`, massColumns, mass.parts, width, typefaces)]),
    ...remarks(mass.notes, context),
    ...told('Finish', finish?.order ?? [], context),
    ...told('Hanging', hangingLines(context), context),
  ];
}

const massColumns: PrintColumn<PlanMassPart>[] = [
  { title: 'part', strong: true, cell: ({ part }) => part },
  { title: 'material', cell: ({ material }) => material },
  { title: 'count', align: 'right', cell: ({ count }) => String(count) },
  { title: 'mass', align: 'right', strong: true, cell: ({ massG }) => massText(massG) },
  { title: 'weighed', toFill: true },
];

function hangingLines({ plan: { hanging }, figure }: PrintContext): string[] {
  if (hanging === null) return [];
  const span = (what: string, each: PlanSpan | null): string[] =>
    each === null
      ? []
      : [
          `${what}: ${figure(each.lengthMm)} long, upper edge ${figure(each.heightMm)} above the work’s origin, from ${figure(each.fromMm)} to ${figure(each.toMm)} seen from the front`,
        ];
  const holes = hanging.drill.map(({ xMm, yMm }) => `${figure(xMm)} (height ${figure(yMm)})`);
  return [
    `Load ${massText(hanging.loadG)}; ${hanging.fixings} fixings × ${massText(hanging.eachG)} ÷ ${hanging.safety} carry ${massText(hanging.carriesG)}: ${hanging.verdict}`,
    ...span('Cleat', hanging.cleat),
    ...span('Spacer', hanging.spacer),
    ...(holes.length === 0 ? [] : [`Holes from the cleat’s left end, seen from behind: ${holes.join(', ')}`]),
    ...hanging.notes,
  ];
}
