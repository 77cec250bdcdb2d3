/** Columns for settings, sticks, milling, steps, time, money, weight and the class. */
import type { PlanMassPart } from '../../sections/object-sections.ts';
import type { PlanSetting, ShopPlan } from '../../shop-plan.ts';
import type { Column } from '../text-table.ts';
import type { PlanCostLine, PlanLabour, PlanMaterial, PlanMill, PlanStep } from '../../sections/work-sections.ts';
import { figure, optionalFigure, text } from './csv-columns.ts';

export const settingColumns: readonly Column<PlanSetting>[] = [
  figure('order', ({ order }) => order),
  text('step', ({ step }) => step),
  text('tool', ({ tool }) => tool),
  text('jig', ({ jig }) => jig ?? ''),
  optionalFigure('angle', ({ angle }) => angle),
  optionalFigure('stop_mm', ({ stopMm }) => stopMm),
  optionalFigure('caliper_mm', ({ caliperMm }) => caliperMm),
  text('flip', ({ flip }) => (flip ? 'flip' : '')),
  text('notched_from', ({ notching }) => notching?.from ?? ''),
  optionalFigure('pin_along_mm', ({ notching }) => notching?.pinPitchMm ?? null),
  optionalFigure('pin_square_mm', ({ notching }) => notching?.pinSquareMm ?? null),
  optionalFigure('notches', ({ notching }) => notching?.notches ?? null),
  optionalFigure('blade_height_mm', ({ notching }) => notching?.bladeHeightMm ?? null),
  optionalFigure('passes', ({ notching }) => notching?.passes ?? null),
  figure('pieces', ({ pieces }) => pieces),
  text('marks', ({ marks }) => marks.join('; ')),
  text('gate', ({ gate }) => gate ?? ''),
];

/** One cut of one kind of stick; `stick` counts them from 1 inside a stock. */
export interface CutRow {
  readonly stock: string;
  readonly stick: number;
  readonly count: number;
  readonly lengthMm: number;
  readonly onHand: boolean;
  readonly mark: string;
  readonly cutMm: number;
  readonly n: number;
  readonly offcutMm: number;
}

export const cutRows = ({ stock }: ShopPlan): CutRow[] =>
  stock.flatMap(({ stock: name, sticks }) =>
    sticks.flatMap(({ cuts, count, lengthMm, onHand, offcutMm }, index) =>
      cuts.map(({ mark, lengthMm: cutMm, n }) => ({
        stock: name,
        stick: index + 1,
        count,
        lengthMm,
        onHand,
        mark,
        cutMm,
        n,
        offcutMm,
      })),
    ),
  );

export const cutColumns: readonly Column<CutRow>[] = [
  text('stock', ({ stock }) => stock),
  figure('stick', ({ stick }) => stick),
  figure('sticks_cut_so', ({ count }) => count),
  figure('stick_mm', ({ lengthMm }) => lengthMm),
  text('from', ({ onHand }) => (onHand ? 'rack' : 'bought')),
  text('mark', ({ mark }) => mark),
  figure('cut_mm', ({ cutMm }) => cutMm),
  figure('cuts_in_one_stick', ({ n }) => n),
  figure('left_over_mm', ({ offcutMm }) => offcutMm),
];

export const millColumns: readonly Column<PlanMill>[] = [
  text('stock', ({ stock }) => stock),
  figure('face_mm', ({ faceMm }) => faceMm),
  figure('depth_mm', ({ depthMm }) => depthMm),
  figure('finished_depth_mm', ({ finishedDepthMm }) => finishedDepthMm),
  optionalFigure('sticks', ({ sticks }) => sticks),
  figure('rejects_percent', ({ rejectsPct }) => rejectsPct),
  optionalFigure('sticks_to_mill', ({ millSticks }) => millSticks),
  optionalFigure('boards', ({ boards }) => boards?.boards ?? null),
  optionalFigure('board_thickness_mm', ({ boards }) => boards?.thicknessMm ?? null),
  optionalFigure('board_width_mm', ({ boards }) => boards?.widthMm ?? null),
  optionalFigure('board_length_mm', ({ boards }) => boards?.lengthMm ?? null),
  optionalFigure('strips_in_a_board', ({ boards }) => boards?.stripsPerBoard ?? null),
  optionalFigure('cost', ({ boards }) => boards?.cost ?? null),
  text('currency', ({ boards }) => boards?.currency ?? ''),
];

/** With an empty column to write down what it took. */
export const stepColumns: readonly Column<PlanStep>[] = [
  figure('order', ({ order }) => order),
  text('sheet', ({ sheet }) => sheet),
  text('step', ({ title }) => title),
  text('tasks', ({ tasks }) => tasks.join('\n')),
  optionalFigure('hands_on_min', ({ handsOnMin }) => handsOnMin),
  optionalFigure('wait_h', ({ waitH }) => waitH),
  text('gate', ({ gate }) => gate ?? ''),
  text('caution', ({ caution }) => caution ?? ''),
  text('actual_min', () => ''),
];

export const labourColumns: readonly Column<PlanLabour['lines'][number]>[] = [
  text('step', ({ step }) => step),
  figure('minutes_each', ({ minutesEach }) => minutesEach),
  text('per', ({ per }) => per),
  figure('units', ({ units }) => units),
  figure('minutes', ({ minutes }) => minutes),
  text('actual_min', () => ''),
];

/** What the price is made of: `materials` of the edition, then sums of `cost.csv` for a copy. */
export const materialColumns = (currency: string | null): readonly Column<PlanMaterial>[] => [
  text('line', ({ line }) => line),
  optionalFigure('length_mm', ({ lengthMm }) => lengthMm),
  figure('quantity', ({ quantity }) => quantity),
  text('unit', ({ unit }) => unit),
  figure('price', ({ price }) => price),
  figure('price_is_for', ({ per }) => per),
  figure('cost_of_edition', ({ cost }) => cost),
  text('currency', () => currency ?? ''),
];

/** A sum that the price comes to; of one copy unless it says otherwise. */
interface TotalRow {
  readonly what: string;
  readonly amount: number | null;
}

export const totalRows = ({ cost, labour }: Pick<ShopPlan, 'cost' | 'labour'>): TotalRow[] => [
  { what: 'minutes of the edition', amount: labour.handsOnMin },
  { what: 'copies', amount: cost.copies },
  { what: 'cost', amount: cost.costPerCopy },
  { what: 'price before tax', amount: cost.pricePerCopy },
  { what: 'tax', amount: cost.taxPerCopy },
  { what: 'the buyer pays', amount: cost.buyerPaysPerCopy },
  { what: 'least without commission, before tax', amount: cost.direct?.pricePerCopy ?? null },
  { what: 'price of the edition before tax', amount: cost.editionPrice },
];

export const totalColumns: readonly Column<TotalRow>[] = [
  text('what', ({ what }) => what),
  optionalFigure('amount', ({ amount }) => amount),
];

export const costColumns = (currency: string | null): readonly Column<PlanCostLine>[] => [
  text('kind', ({ kind }) => kind),
  text('what', ({ what }) => what),
  figure('one_copy', ({ perCopy }) => perCopy),
  text('currency', () => currency ?? ''),
  text('actual', () => ''),
];

export const massColumns: readonly Column<PlanMassPart>[] = [
  text('part', ({ part }) => part),
  text('material', ({ material }) => material),
  figure('number', ({ count }) => count),
  optionalFigure('mass_g', ({ massG }) => massG),
];

/** One mark in the bags or in the teacher's box. */
export interface KitRow {
  readonly place: string;
  readonly mark: string;
  readonly n: number;
  readonly spare: number;
  readonly label: string;
}

export const kitRows = ({ kit }: ShopPlan): KitRow[] =>
  kit
    ? [
        ...kit.bag.map(({ mark, n, spare, label }) => ({ place: 'each bag', mark, n, spare, label })),
        ...kit.teacherBox.map(({ mark, n }) => ({ place: 'teacher’s box', mark, n: 0, spare: n, label: '' })),
      ]
    : [];

export const kitColumns: readonly Column<KitRow>[] = [
  text('place', ({ place }) => place),
  text('mark', ({ mark }) => mark),
  figure('needed', ({ n }) => n),
  figure('spare', ({ spare }) => spare),
  text('label', ({ label }) => label),
];

export const cautionColumns: readonly Column<ShopPlan['cautions'][number]>[] = [
  text('step', ({ step }) => step),
  text('text', (caution) => caution.text),
];
