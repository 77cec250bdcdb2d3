/** The steps of the job in words: boxes to tick, the settings of each, its gate, and what to watch. */
import { writeWords } from '../../../words/write-words.ts';
import type { LengthUnit } from '../../../design/design-model.ts';
import type { PlanSetting, PlanStock, ShopPlan } from '../../shop-plan.ts';
import { textTable, type Column } from '../text-table.ts';
import type { PlanStep, SheetName } from '../../sections/work-sections.ts';
import { proofText } from '../../stock/proof-text.ts';
import { stepOfStock } from '../../steps/job-steps.ts';
import { markRanges } from '../../marks/mark-ranges.ts';
import { buyingText, rackLine } from './buying-text.ts';
import { indented } from './figures-text.ts';
import { type LengthFigures, angleText, percentText, lengthFigures } from '../../../words/figures.ts';

/** The steps of one of the two sheets. */
export const stepsText = (plan: ShopPlan, sheet: SheetName): string =>
  plan.steps
    .filter((step) => step.sheet === sheet)
    .map((step) => stepText(step, plan))
    .join('\n\n');

function stepText(step: PlanStep, plan: ShopPlan): string {
  const { order, title, tasks, settings, handsOnMin, waitH, gate, caution } = step;
  const own = plan.settings.filter((setting) => settings.includes(setting.order) && hasFigures(setting));
  const words = lengthFigures(plan.units);
  const parts = [
    ...tasks.map((task) => `[ ] ${task}`),
    ...sticksOfStep(title, plan).map((stock) => stockText(stock, words, plan.units)),
    textTable(settingColumns(own, words), own, words),
    ...(waitH === null ? [] : [`Wait ${hours(waitH)} before the next step.`]),
    ...(caution === null ? [] : [`Take care: ${caution}`]),
    ...(gate === null ? [] : [`GATE [ ] ${gate}`]),
  ];
  const time = handsOnMin === null ? '' : `, ${Math.ceil(handsOnMin)} min`;
  const shown = parts.filter((part) => part !== '').map((part) => indented(part, '   '));
  return [`${order}. ${title}${time}`, ...shown].join('\n');
}

/** A mallet has nothing to set. */
const hasFigures = ({ angle, stopMm, caliperMm }: PlanSetting): boolean =>
  angle !== null || stopMm !== null || caliperMm !== null;

/** Sticks stand where they are cut. */
const sticksOfStep = (title: string, plan: ShopPlan): PlanStock[] =>
  plan.stock.filter(({ stock }) => stepOfStock(stock, plan) === title);

const hours = (value: number): string => `${Math.round(value * 10) / 10} h`;

/** Each stick with its cuts; what is wrong or unproven is said. */
function stockText(plan: PlanStock, words: LengthFigures, units: LengthUnit): string {
  const { stock, sticks, sticksUsed, wastePct, kerfMm, problems } = plan;
  const lines = sticks.map(
    (stick) =>
      `    [ ] ${stick.count} × ${words.length(stick.lengthMm)}${stick.onHand ? ' from the rack' : ''}: ${stick.cuts.map(({ mark, lengthMm, n }) => `${n} × ${mark} at ${words.length(lengthMm)}`).join(', ')}; left over ${words.length(stick.offcutMm)}`,
  );
  const buying = buyingText(plan, words.length);
  const rack = rackLine(plan, units);
  const head =
    sticksUsed === 0
      ? `${stock}: no sticks planned`
      : `${stock}: ${sticksUsed} sticks (${writeWords(proofText(plan), words.units)}), kerf ${words.fine(kerfMm)} between pieces, ${percentText(wastePct / 100)} waste`;
  return [
    head,
    ...(buying === '' ? [] : [`    [ ] ${buying}`]),
    ...lines,
    ...(rack === '' ? [] : [`    The rack then holds: ${rack}`]),
    ...problems.map((problem) => `    ${problem}`),
  ].join('\n');
}

/** The columns that any of these settings fills. */
function settingColumns(settings: readonly PlanSetting[], words: LengthFigures): Column<PlanSetting>[] {
  return allSettingColumns.filter(({ cell }) => settings.some((setting) => cell(setting, words) !== ''));
}

/** Keys are set finer than all else. */
const figureOf = ({ step }: PlanSetting, length: number | null, words: LengthFigures): string =>
  length !== null && step === 'cut keys' ? words.key(length) : optional(length, words);

/** Empty where there is none. */
const optional = (length: number | null | undefined, words: LengthFigures): string =>
  length == null ? '' : words.length(length);

const allSettingColumns: readonly Column<PlanSetting>[] = [
  { title: '', right: true, cell: (setting) => String(setting.order) },
  { title: 'tool', cell: (setting) => setting.jig ?? setting.tool },
  { title: 'angle', right: true, cell: ({ angle }) => (angle === null ? '' : angleText(angle)) },
  {
    title: 'stop',
    right: true,
    cell: (setting, words) => figureOf(setting, setting.notching?.firstStopMm ?? setting.stopMm, words),
  },
  { title: 'pin along', right: true, cell: ({ notching }, words) => optional(notching?.pinPitchMm, words) },
  { title: 'square', right: true, cell: ({ notching }, words) => optional(notching?.pinSquareMm, words) },
  { title: 'from', cell: ({ notching }) => notching?.from ?? '' },
  { title: 'notches', right: true, cell: ({ notching }) => (notching ? String(notching.notches) : '') },
  { title: 'height', right: true, cell: ({ notching }, words) => optional(notching?.bladeHeightMm, words) },
  { title: 'passes', right: true, cell: ({ notching }) => String(notching?.passes ?? '') },
  { title: 'caliper', right: true, cell: (setting, words) => figureOf(setting, setting.caliperMm, words) },
  { title: 'flip', cell: ({ flip }) => (flip ? 'flip' : '') },
  { title: 'pieces', right: true, cell: (setting) => String(setting.pieces) },
  { title: 'marks', cell: (setting) => markRanges(setting.marks) },
];
