/** Time and money: each line as planned, and beside it an empty field for what it came to. */
import { counted } from '../../../grammar/words.ts';
import type { PlanCostLine, PlanLabour } from '../../shop/sections/work-sections.ts';
import { minutesText, plain } from '../../words/figures.ts';
import type { FlowPart } from './flow.ts';
import { remarks } from './remarks.ts';
import { moneyOrNone } from './optional-figures.ts';
import type { PrintContext } from './print-context.ts';
import { printTable, type PrintColumn } from './table.ts';

interface PriceLine {
  readonly what: string;
  readonly planned: string;
}

export function priceParts(context: PrintContext): FlowPart[] {
  const { plan, width, typefaces } = context;
  const { cost, labour } = plan;
  const elapsed =
    labour.elapsedDays === null
      ? ''
      : `; ${counted(labour.elapsedDays, 'working day')} of ${plain(labour.hoursPerDay, 1)} h with the waits`;
  return [
    ...(labour.lines.length === 0
      ? []
      : [
          printTable('Time for the edition', labourColumns, labour.lines, width, typefaces),
          ...(labour.handsOnMin === null
            ? []
            : remarks([`By hand ${minutesText(labour.handsOnMin)}${elapsed}.`], context)),
        ]),
    ...(cost.lines.length === 0
      ? []
      : [
          printTable(
            `Cost and price of a copy, ${cost.copies} in the edition`,
            priceColumns,
            [...cost.lines.map((line) => costLine(line, cost.currency)), ...totals(context)],
            width,
            typefaces,
          ),
        ]),
    ...(cost.lines.length === 0 ? [] : remarks(cost.problems, context)),
  ];
}

const costLine = ({ what, perCopy }: PlanCostLine, currency: string | null): PriceLine => ({
  what,
  planned: moneyOrNone(perCopy, currency),
});

function totals({ plan: { cost } }: PrintContext): PriceLine[] {
  const lines = [
    { what: 'cost of a copy', amount: cost.costPerCopy },
    { what: 'price of a copy, before tax', amount: cost.pricePerCopy },
    { what: 'tax on it', amount: cost.taxPerCopy },
    { what: 'what the buyer pays', amount: cost.buyerPaysPerCopy },
    { what: 'sold without commission it must bring at least, before tax', amount: cost.direct?.pricePerCopy ?? null },
    { what: 'and with tax', amount: cost.direct?.buyerPaysPerCopy ?? null },
    { what: 'price of the edition, before tax', amount: cost.editionPrice },
  ];
  return lines.flatMap(({ what, amount }) =>
    amount === null ? [] : [{ what: `= ${what}`, planned: moneyOrNone(amount, cost.currency) }],
  );
}

const priceColumns: PrintColumn<PriceLine>[] = [
  { title: 'what', cell: ({ what }) => what },
  { title: 'planned', align: 'right', strong: true, cell: ({ planned }) => planned },
  { title: 'actual', toFill: true },
];

const labourColumns: PrintColumn<PlanLabour['lines'][number]>[] = [
  { title: 'step', strong: true, cell: ({ step }) => step },
  { title: 'each', align: 'right', cell: ({ minutesEach, per }) => `${plain(minutesEach, 2)} min a ${per}` },
  { title: 'times', align: 'right', cell: ({ units }) => String(units) },
  { title: 'planned', align: 'right', strong: true, cell: ({ minutes }) => minutesText(minutes) },
  { title: 'actual', toFill: true },
];
