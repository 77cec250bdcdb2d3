/** The settings of the job as the plan writes them, for the bench that the file describes. */
import type { Bench } from '../design/design-model.ts';
import type { NotchSetting, Setting } from './jigs/setting.ts';
import { workSettings } from './jigs/work-settings.ts';
import type { MarkedKinds } from './marked-kinds.ts';
import { planAngle, planLength } from './plan-rounding.ts';
import type { PlanSetting } from './shop-plan.ts';

/** Strips are counted one to a pass, and infill blanks are cut to length without an extra, while a bench says neither. */
const oneAtATime = { gang: 1, trim: 0 };

/** The first bench that states its kerf is the one that notches. */
export function planSettings(kinds: MarkedKinds, benches: readonly Bench[]): PlanSetting[] {
  const kerf = benches.find((bench) => bench.kerf !== null)?.kerf ?? null;
  return workSettings(kinds, { kerf, ...oneAtATime }).settings.map(planSetting);
}

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
    marks: [...marks],
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
