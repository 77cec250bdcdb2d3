/** Runs of equal notches written out one by one, for the plan only. */
import { radians } from '../../geometry/point.ts';
import type { NotchRun } from '../../lattice/laid-panel.ts';
import { placesOfRun } from '../../lattice/strips/notch-runs.ts';
import { planAngle, planLength } from './plan-rounding.ts';
import type { PlanNotch } from '../shop-plan.ts';

/**
 * Every notch of `runs` in order along the strip from end 1; two cuts at one place stand in order of
 * their angle. `runMm` is the notch's extent along the axis: width / sin(angle).
 */
export function expandNotches(runs: readonly NotchRun[]): PlanNotch[] {
  return runs
    .flatMap((run) => placesOfRun(run).map((place) => planNotch(run, place)))
    .sort((first, second) => first.atMm - second.atMm || first.angle - second.angle);
}

function planNotch(run: NotchRun, place: number): PlanNotch {
  return {
    atMm: planLength(place),
    widthMm: planLength(run.width),
    runMm: planLength(run.width / Math.sin(radians(run.angle))),
    angle: planAngle(run.angle),
    depthMm: planLength(run.depth),
    from: run.from,
  };
}
