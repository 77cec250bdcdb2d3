/** Settings of saw and jigs that a version adds, drops or moves. */
import { samePlanFigure } from '../geometry/tolerance.ts';
import type { PlanSetting } from '../shop/shop-plan.ts';
import type { SettingChange } from './design-change.ts';

/** Where the stop of a setting stands: the first notch's for a row of notches. */
const stopOf = ({ notching, stopMm }: PlanSetting): number | null => notching?.firstStopMm ?? stopMm;
const pinOf = ({ notching }: PlanSetting): number | null => notching?.pinPitchMm ?? null;

/** Everything that is set but stop and pin, which are what moves from version to version. */
const toolKey = ({ step, tool, jig, angle, flip, notching }: PlanSetting): string =>
  JSON.stringify([step, tool, jig, angle, flip, notching && [notching.from, notching.bladeHeightMm]]);

const sameFigure = (a: number | null, b: number | null): boolean =>
  a === null || b === null ? a === b : samePlanFigure(a, b);

const sameSetting = (a: PlanSetting, b: PlanSetting): boolean =>
  sameFigure(stopOf(a), stopOf(b)) &&
  sameFigure(pinOf(a), pinOf(b)) &&
  sameFigure(a.notching?.notches ?? null, b.notching?.notches ?? null);

/**
 * Settings are matched by everything that is set, then by all but stop and pin: of several, in the order of those.
 * Equal settings for equally many pieces are no change, whatever the marks are called.
 */
export function compareSettings(old: readonly PlanSetting[], now: readonly PlanSetting[]): SettingChange[] {
  const keys = [...new Set([...now, ...old].map(toolKey))];
  return keys.flatMap((key) => {
    const before = inOrder(old.filter((setting) => toolKey(setting) === key));
    const after = inOrder(now.filter((setting) => toolKey(setting) === key));
    const kept = before.flatMap((setting) => {
      const twin = after.findIndex((other) => sameSetting(setting, other));
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

/** In the order of stop, pin, notches and pieces, so that the order of the bench does not matter. */
const inOrder = (settings: readonly PlanSetting[]): PlanSetting[] =>
  [...settings].sort((a, b) => {
    const [one, two] = [figuresOf(a), figuresOf(b)];
    const index = one.findIndex((figure, place) => figure !== two[place]);
    return (one[index] ?? 0) - (two[index] ?? 0);
  });

const figuresOf = (setting: PlanSetting): number[] => [
  stopOf(setting) ?? 0,
  pinOf(setting) ?? 0,
  setting.notching?.notches ?? 0,
  setting.pieces,
];

function changeOf(old: PlanSetting | undefined, now: PlanSetting | undefined): SettingChange {
  const { step = '', tool = '', jig = null, angle = null } = now ?? old ?? {};
  return {
    change: old && now ? 'changed' : now ? 'new' : 'gone',
    step,
    tool: jig ?? tool,
    angle,
    oldStopMm: old ? stopOf(old) : null,
    newStopMm: now ? stopOf(now) : null,
    oldPinMm: old ? pinOf(old) : null,
    newPinMm: now ? pinOf(now) : null,
    oldPieces: old?.pieces ?? 0,
    newPieces: now?.pieces ?? 0,
  };
}
