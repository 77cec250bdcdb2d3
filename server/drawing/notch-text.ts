/** Notches in words: one line a setting of the saw, with the places in runs. Millimetres from end 1. */
import { sameAngle, sameLength } from '../geometry/tolerance.ts';
import type { NotchRun } from '../lattice/laid-panel.ts';
import { placesOfRun } from '../lattice/strips/notch-runs.ts';
import { paperAngle, type PaperLength } from './sheet/paper-figures.ts';

/** Runs cut at one setting of angle, width, depth and side; no list is empty. */
export type NotchSetting = readonly [NotchRun, ...NotchRun[]];

export function notchSettings(runs: readonly NotchRun[]): NotchSetting[] {
  const settings: [NotchRun, ...NotchRun[]][] = [];
  for (const run of runs) {
    const known = settings.find(([first]) => sameSetting(first, run));
    if (known) known.push(run);
    else settings.push([run]);
  }
  return settings;
}

const sameSetting = (a: NotchRun, b: NotchRun): boolean =>
  a.from === b.from && sameAngle(a.angle, b.angle) && sameLength(a.width, b.width) && sameLength(a.depth, b.depth);

/** "from above, 60°, 5.0 deep, 3.05 wide" */
export const settingText = ({ from, angle, depth, width }: NotchRun, figure: PaperLength): string =>
  `from ${from}, ${paperAngle(angle)}, ${figure(depth)} deep, ${width.toFixed(2)} mm wide`;

/** Two lines a setting: what it is, and where. */
export const notchLines = (runs: readonly NotchRun[], figure: PaperLength): string[] =>
  notchSettings(runs).flatMap((setting) => [
    `Notch ${settingText(setting[0], figure)}`,
    `    at ${setting.map((run) => runText(run, figure)).join('; ')}`,
  ]);

/** "26.0, then every 40.0 × 8 to 346.0": 9 notches. */
export function runText(run: NotchRun, figure: PaperLength): string {
  const places = placesOfRun(run);
  const [first, second] = places;
  const last = places.at(-1);
  if (first === undefined || last === undefined) return '';
  if (second === undefined || places.length < 3) return places.map(figure).join(', ');
  return `${figure(first)}, then every ${figure(run.step)} × ${places.length - 1} to ${figure(last)}`;
}
