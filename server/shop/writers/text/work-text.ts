/** Closing, movement, weight, time, price and class in words. */
import { counted } from '../../../../grammar/words.ts';
import type { LengthUnit } from '../../../design/design-model.ts';
import type { ShopPlan } from '../../shop-plan.ts';
import { textTable, type Column } from '../text-table.ts';
import type { PlanCost, PlanCostLine, PlanKit, PlanStep } from '../../sections/work-sections.ts';
import {
  lengthFigure,
  lengthText,
  massText,
  massFigure,
  massUnit,
  moneyFigure,
  moneyText,
  hoursText,
  lengthFigures,
} from '../../../words/figures.ts';

export const closingText = ({ fit }: ShopPlan): string => fit.map(({ text }) => text).join('\n');

/** One line a size. */
export const movementLines = ({ movement, units }: Pick<ShopPlan, 'movement' | 'units'>): string[] =>
  movement.map(
    ({ what, stock, wood, sizeMm, text }) =>
      `${what} of ${stock} (${wood}), ${lengthText(sizeMm, units, 'length')}, ${text}`,
  );

const massOf = (mass: number | null, units: LengthUnit): string =>
  mass === null ? 'not known' : massFigure(mass, units);

const massColumns: readonly Column<ShopPlan['mass']['parts'][number]>[] = [
  { title: 'part', cell: ({ part }) => part },
  { title: 'material', cell: ({ material }) => material },
  { title: 'number', right: true, cell: ({ count }) => String(count) },
  { title: ({ units }) => massUnit(units), right: true, cell: ({ massG }, { units }) => massOf(massG, units) },
];

export function weightText({ mass: { parts, perCopyG, centre, notes }, units }: ShopPlan): string {
  if (parts.length === 0) return '';
  const place = centre
    ? `, its centre ${lengthFigure(centre.xMm, units)} right of and ${lengthFigure(centre.yMm, units)} above the work’s origin`
    : '';
  return [
    textTable(massColumns, parts, lengthFigures(units)),
    '',
    `One copy: ${perCopyG === null ? 'not known' : massText(perCopyG, units)}${place}.`,
    ...notes,
  ].join('\n');
}

const timeColumns: readonly Column<PlanStep>[] = [
  { title: 'step', cell: ({ title }) => title },
  { title: 'min', right: true, cell: ({ handsOnMin }) => (handsOnMin === null ? '' : String(Math.ceil(handsOnMin))) },
  { title: 'wait h', right: true, cell: ({ waitH }) => (waitH === null ? '' : String(Math.round(waitH * 10) / 10)) },
  { title: 'actual', cell: () => '________' },
];

/** Empty where no minutes are stated. */
export function timeText({ steps, labour: { handsOnMin, waitH, elapsedDays, hoursPerDay, lines } }: ShopPlan): string {
  if (handsOnMin === null) return '';
  const others = lines.filter(({ step }) => !steps.some(({ title }) => title === step));
  return [
    textTable(timeColumns, steps),
    ...others.map(({ step, minutes }) => `${step}: ${Math.ceil(minutes)} min, a step that this job does not have`),
    '',
    `${hoursText(handsOnMin)} hands on for the edition, ${hoursText(60 * waitH)} of waiting: ${counted(elapsedDays ?? 0, 'day')} of ${hoursPerDay} h.`,
  ].join('\n');
}

function costColumns(currency: string | null): Column<PlanCostLine>[] {
  return [
    { title: 'one copy', cell: ({ what }) => what },
    {
      title: currency ?? '',
      right: true,
      cell: ({ perCopy }) => moneyFigure(perCopy, currency),
    },
    { title: 'actual', cell: () => '________' },
  ];
}

export function costText({ cost }: ShopPlan): string {
  const { lines, currency, problems } = cost;
  const table = textTable(costColumns(currency), lines);
  return [...(table === '' ? [] : [table, '', ...totals(cost)]), ...problems].join('\n');
}

function totals({
  currency,
  copies,
  costPerCopy,
  pricePerCopy,
  taxPerCopy,
  buyerPaysPerCopy,
  direct,
  editionPrice,
}: PlanCost): string[] {
  const money = (amount: number | null): string => moneyText(amount ?? 0, currency);
  const isTaxed = taxPerCopy !== null && taxPerCopy !== 0;
  const tax = isTaxed ? ` before tax; the buyer pays ${money(buyerPaysPerCopy)}` : '';
  const least = direct
    ? [
        `Sold without commission it must bring at least ${money(direct.pricePerCopy)}${isTaxed ? `, ${money(direct.buyerPaysPerCopy)} with tax` : ''}; below the seller’s price it undersells the seller.`,
      ]
    : [];
  const edition = copies > 1 ? [`The edition of ${copies}: ${money(editionPrice)}.`] : [];
  return [`A copy costs ${money(costPerCopy)} and sells for ${money(pricePerCopy)}${tax}.`, ...least, ...edition];
}

const spareColumns: readonly Column<PlanKit['spares'][number]>[] = [
  { title: 'mark', cell: ({ mark }) => mark },
  { title: 'needed', right: true, cell: ({ needed }) => String(needed) },
  { title: 'spares per bag', right: true, cell: ({ perBag }) => String(perBag) },
  { title: 'pooled', right: true, cell: ({ pooled }) => String(pooled) },
  { title: 'as stated', right: true, cell: ({ stated }) => (stated ? String(stated.total) : '') },
  { title: 'sure to', right: true, cell: ({ stated }) => (stated ? `${stated.surePct} %` : '') },
  { title: 'least box', right: true, cell: ({ stated }) => String(stated?.leastBox ?? '') },
];

export function kitText({ kit }: ShopPlan): string {
  if (!kit) return '';
  return [
    `${kit.students} students, ${kit.panel} each.`,
    '',
    `Pieces to make so that with ${kit.confidencePct} % certainty nobody in the class is short of a mark if ${kit.breakagePct} % break:`,
    textTable(spareColumns, kit.spares),
    '',
    'Card for the student:',
    ...kit.card.map((line, index) => `${index + 1}. ${line}`),
    ...kit.problems,
  ].join('\n');
}
