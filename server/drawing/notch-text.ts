/** Notches in words: one line a setting of the saw, with the places in runs, from end 1. */
import { figure, measure, words } from '../../grammar/words.ts';
import type { LengthUnit } from '../design/design-model.ts';
import { sameAngle, sameLength } from '../geometry/tolerance.ts';
import type { NotchRun } from '../lattice/laid-panel.ts';
import { placesOfRun } from '../lattice/strips/notch-runs.ts';
import { lengthFigures } from '../words/figures.ts';
import { writeWords } from '../words/write-words.ts';

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

/** "from above, 60°, 5.00 deep, 3.05 mm wide" */
export const settingText = ({ from, angle, depth, width }: NotchRun, units: LengthUnit): string =>
  writeWords(
    words`from ${from}, ${measure.angle(angle)}, ${figure.fine(depth)} deep, ${measure.fine(width)} wide`,
    units,
  );

/** Two lines a setting: what it is, and where. */
export const notchLines = (runs: readonly NotchRun[], units: LengthUnit): string[] =>
  notchSettings(runs).flatMap((setting) => [
    `Notch ${settingText(setting[0], units)}`,
    `    at ${setting.map((run) => runText(run, units)).join('; ')}`,
  ]);

/** "26.0, then every 40.00 × 8 to 346.0": 9 notches; inches have their unit at the end. */
export function runText(run: NotchRun, units: LengthUnit): string {
  const figures = lengthFigures(units);
  const end = (place: number): string => writeWords(words`${figure.length(place)}`, units);
  const places = placesOfRun(run);
  const [first] = places;
  const last = places.at(-1);
  if (first === undefined || last === undefined) return '';
  if (places.length < 3) return [...places.slice(0, -1).map(figures.length), end(last)].join(', ');
  return `${figures.length(first)}, then every ${figures.pin(run.step)} × ${places.length - 1} to ${end(last)}`;
}
