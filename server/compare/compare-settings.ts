/** Settings of saw and jigs that a version adds, drops or moves. */
import { samePlanFigure } from '../geometry/tolerance.ts';
import type { PlanSetting } from '../shop/shop-plan.ts';
import type { SettingChange } from './design-change.ts';

/** Where the stop of a setting stands: the first notch's for a row of notches. */
const stopOf = ({ notching, stopMm }: PlanSetting): number | null => notching?.firstStopMm ?? stopMm;

/** Everything that is set but the stop, which is what moves from version to version. */
const toolKey = ({ step, tool, jig, angle, flip, notching }: PlanSetting): string =>
  JSON.stringify([
    step,
    tool,
    jig,
    angle,
    flip,
    notching && [notching.from, notching.pinPitchMm, notching.pinSquareMm, notching.bladeHeightMm, notching.notches],
  ]);

const sameStop = (a: number | null, b: number | null): boolean =>
  a === null || b === null ? a === b : samePlanFigure(a, b);

/**
 * Settings are matched by everything that is set, then by all but the stop: of several, in the order of their stops.
 * Equal settings for equally many pieces are no change, whatever the marks are called.
 */
export function compareSettings(old: readonly PlanSetting[], now: readonly PlanSetting[]): SettingChange[] {
  const keys = [...new Set([...now, ...old].map(toolKey))];
  return keys.flatMap((key) => {
    const before = inOrderOfStop(old.filter((setting) => toolKey(setting) === key));
    const after = inOrderOfStop(now.filter((setting) => toolKey(setting) === key));
    const kept = before.flatMap((setting) => {
      const twin = after.findIndex((other) => sameStop(stopOf(setting), stopOf(other)));
      const [other] = twin < 0 ? [] : after.splice(twin, 1);
      return other ? [[setting, other] as const] : [];
    });
    const left = before.filter((setting) => !kept.some(([one]) => one === setting));
    const moved = Array.from(
      { length: Math.max(left.length, after.length) },
      (_, index) => [left[index], after[index]] as const,
    );
    return [...kept.filter(([one, two]) => one.pieces !== two.pieces), ...moved].map(([one, two]) =>
      changeOf(one, two),
    );
  });
}

const inOrderOfStop = (settings: readonly PlanSetting[]): PlanSetting[] =>
  [...settings].sort((a, b) => (stopOf(a) ?? 0) - (stopOf(b) ?? 0));

function changeOf(old: PlanSetting | undefined, now: PlanSetting | undefined): SettingChange {
  const { step = '', tool = '', jig = null, angle = null } = now ?? old ?? {};
  return {
    change: old && now ? 'changed' : now ? 'new' : 'gone',
    step,
    tool: jig ?? tool,
    angle,
    oldStopMm: old ? stopOf(old) : null,
    newStopMm: now ? stopOf(now) : null,
    oldPieces: old?.pieces ?? 0,
    newPieces: now?.pieces ?? 0,
  };
}
