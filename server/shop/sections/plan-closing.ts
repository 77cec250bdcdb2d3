/** Does it close, in words: differences of pin settings against the fit of each panel. Lengths mm. */
import { type Words, joined, measure, words } from '../../../grammar/words.ts';
import type { Bench } from '../../design/design-model.ts';
import { maximum, sum } from '../../geometry/numbers.ts';
import type { LaidPanel, StripGroup } from '../../lattice/laid-panel.ts';
import { closingOf, driftOfSettings, mostNotchesThatClose } from './closing.ts';
import type { PlanClosing } from './object-sections.ts';
import { planLength } from './plan-rounding.ts';
import type { PlanSetting } from '../shop-plan.ts';

/**
 * One entry a panel with notched strips, where the bench states what its settings scatter. All rows of one pitch are
 * notched at one setting of the pin, and then an error of the pin only scales the lattice; the pin counts as set twice
 * where the plan's own settings come back to a pitch.
 */
export function planClosing(
  panels: readonly LaidPanel[],
  settings: readonly PlanSetting[],
  bench: Bench | null,
): PlanClosing<Words>[] {
  if (!bench || (bench.pitchError === null && bench.pitchScatter === null)) return [];
  const error = bench.pitchError ?? 0;
  return panels.flatMap(({ panel, strips }) => {
    const notches = maximum([0, ...strips.map(longestRow)]);
    if (notches === 0) return [];
    const apart = comesBackToAPitch(settings) ? [0, error] : [0];
    const { fit, name } = panel.grid;
    const scatter = bench.pitchScatter ?? 0;
    const closing = closingOf({ location: bench.indexing, settings: apart, scatter }, notches, fit);
    return [
      {
        panel: panel.name,
        grid: name,
        notches,
        indexing: bench.indexing,
        driftMm: planLength(closing.drift),
        spreadMm: planLength(closing.spread),
        fitMm: planLength(closing.allowance),
        verdict: closing.verdict,
        text: joined([verdictText(closing.verdict, panel.name), ...resetText(bench, error, notches, fit)], ' '),
      },
    ];
  });
}

/** Notches of one slant along a strip. */
function longestRow({ notches }: StripGroup): number {
  const slants = [...new Set(notches.map(({ angle }) => angle))];
  return maximum([
    0,
    ...slants.map((slant) => sum(notches.filter(({ angle }) => angle === slant).map(({ count }) => count))),
  ]);
}

function comesBackToAPitch(settings: readonly PlanSetting[]): boolean {
  const pitches = settings.flatMap(({ step, notching }) =>
    step === 'notch strips' ? (notching?.pinPitchMm ?? []) : [],
  );
  const runs = pitches.filter((pitch, index) => pitch !== pitches[index - 1]);
  return new Set(runs).size < runs.length;
}

function verdictText(verdict: PlanClosing<Words>['verdict'], name: string): Words {
  const panel = measure.name('panel', name);
  switch (verdict) {
    case 'closes':
      return words`${panel} closes with the pin set once for each pitch, as planned.`;
    case 'tight':
      return words`${panel} closes; some crossings will want pressing.`;
    case 'apart':
      return words`${panel} will not close: its strips are notched at settings that differ by more than the fit takes up.`;
  }
}

/** What becomes of it if the pin is set anew between two strips; and what an error common to all does. */
function resetText({ indexing, pitchError }: Bench, error: number, notches: number, fit: number): Words[] {
  if (pitchError === null || indexing === 'stop') return [];
  const drift = driftOfSettings(error, notches);
  const most = mostNotchesThatClose(error, fit);
  const anew =
    most < notches
      ? words`Set anew in between, the last of ${notches} notches would lie ${measure.fine(drift)} off, beyond the fit (good to ${most} notches): do not touch the pin until all strips of a pitch are done.`
      : words`Even set anew in between, the last of ${notches} notches would lie only ${measure.fine(drift)} off.`;
  const common = words`An error common to all strips only scales the lattice, here by ${measure.fine(drift)}: measure it, and let frame and infill follow.`;
  return [anew, common];
}
