/** The settings of the job as the plan writes them, for the bench that the file describes. */
import type { Words } from '../../../grammar/words.ts';
import type { Bench } from '../../design/design-model.ts';
import type { NotchSetting, Setting } from '../jigs/setting.ts';
import { workSettings } from '../jigs/work-settings.ts';
import type { StepName } from '../../design/names/step-names.ts';
import { inMarkOrder } from '../marks/mark-kinds.ts';
import { membersToCut } from './plan-frames.ts';
import { planAngle, planLength } from './plan-rounding.ts';
import type { PlanSetting, ShopPlan } from '../shop-plan.ts';
import { type CutDesign, otherDemands } from '../stock/stock-demands.ts';
import type { PlanFrame } from './work-sections.ts';

/** The first bench that states its kerf is the one that notches; else the first. */
export const notchingBench = (benches: readonly Bench[]): Bench | null =>
  benches.find(({ kerf }) => kerf !== null) ?? benches[0] ?? null;

/** Strips go one to a pass, and rough pieces of infill have no extra, where a file has no bench. */
const bareHands = { kerf: null, gang: 1, trim: 0, indexing: 'pin' } as const;

export type PlannedSettings = Pick<ShopPlan<Words>, 'settings' | 'changes' | 'byHand'>;

/** The settings for strips, infill and whatever else is cut, the members of `frames` among it. */
export function planSettings(cut: CutDesign, frames: readonly PlanFrame[]): PlannedSettings {
  const bench = notchingBench(cut.design.benches) ?? bareHands;
  const others = { milled: otherDemands(cut), members: frames.flatMap(membersToCut) };
  const { settings, changes, byHand } = workSettings(cut.kinds, bench, others);
  const steps = new Set(settings.map(({ step }) => step));
  return {
    settings: settings.map(planSetting),
    changes: changes.filter(({ step }) => steps.has(step)).map((each) => ({ ...each, model: modelOf(each.step) })),
    byHand: [...byHand],
  };
}

const modelOf = (step: StepName): string =>
  step === 'notch strips'
    ? 'fewest settings of the pin, then fewest of fence, blade height and first stop'
    : 'fewest changes of jig and stop, blunt ends before sharp ones';

function planSetting({
  order,
  step,
  tool,
  jig,
  angle,
  stopMm,
  caliperMm,
  flip,
  marks,
  pieces,
  gate,
  notching,
}: Setting): PlanSetting {
  return {
    order,
    step,
    tool,
    jig,
    angle: angle === null ? null : planAngle(angle),
    stopMm: lengthOrNull(stopMm),
    caliperMm: lengthOrNull(caliperMm),
    flip,
    marks: [...marks].sort(inMarkOrder),
    pieces,
    notching: notching && planNotching(notching),
    gate,
  };
}

const planNotching = (notching: NotchSetting): NonNullable<PlanSetting['notching']> => ({
  from: notching.from,
  firstStopMm: planLength(notching.firstStopMm),
  pinPitchMm: lengthOrNull(notching.pinPitchMm),
  pinSquareMm: lengthOrNull(notching.pinSquareMm),
  notches: notching.notches,
  notchWidthMm: planLength(notching.notchWidthMm),
  bladeHeightMm: planLength(notching.bladeHeightMm),
  passes: notching.passes,
});

const lengthOrNull = (length: number | null): number | null => (length === null ? null : planLength(length));
