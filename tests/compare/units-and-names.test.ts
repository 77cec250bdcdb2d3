/** Units, decimals and a new name are no change of the design; a change is told in the units of the new version. 1 in = 25.4 mm. */
import { describe, expect, test } from 'vitest';
import { changeReport } from '../../server/compare/change-report.ts';
import { compareDesigns } from '../../server/compare/compare-designs.ts';
import { writeChangeText } from '../../server/compare/write-change-text.ts';
import { versionOf } from './versions.ts';

const tray = (units: 'mm' | 'in', pitch: string, more = ''): string => {
  const as = (millimetres: number): string =>
    units === 'mm' ? String(millimetres) : `${String(millimetres / 25.4)}in`;
  return `units ${units}
strip ash { wood white_ash  section face ${as(3)} depth ${as(10)}  lengths ${as(900)} at 4 EUR }
strip rail { wood walnut  section face ${as(20)} depth ${as(20)}  lengths ${as(900)} }
bench shop { bevels 30, 45, 60  kerf ${as(3)}  pitch_error ${as(0.05)}  pitch_scatter ${as(0.02)}  pin pitches ${as(40)} }
grid mesh { square pitch ${pitch} of ash fit ${as(0.05)} }
motif cross for square { piece brace from corner 1 to corner 3 }
panel blade { grid mesh shape 5 x 4 cells edge framed frame { of rail corners mitred groove ${as(6)} fillers } fill square with cross of ash }
kit class { panel blade students 3 }
${more}`;
};
const inMillimetres = tray('mm', '40');
const inInches = tray('in', `${String(40 / 25.4)}in`);

test('the same design in inches is the same', () => {
  expect(compareDesigns(versionOf(inMillimetres), versionOf(inInches)).sections).toEqual([]);
  expect(compareDesigns(versionOf(inMillimetres), versionOf(inInches)).same).toBe(true);
  expect(compareDesigns(versionOf(inInches), versionOf(inMillimetres)).same).toBe(true);
});

test('a panel that is called otherwise is that alone: no sentence, label or step of it is a change', () => {
  const renamed = inMillimetres.replaceAll('blade', 'wing');
  const change = compareDesigns(versionOf(inMillimetres), versionOf(renamed));
  expect(change.sections).toEqual([]);
  expect(changeReport(change).summary[0]).toBe('Panel blade is now called wing.');
});

describe('a change of a file in inches', () => {
  const change = compareDesigns(versionOf(inMillimetres), versionOf(tray('in', '1.75in')));
  const told = writeChangeText(changeReport(change));
  test('has no millimetre in it', () => {
    expect(told).not.toMatch(/\bmm\b|mm²/);
  });
  test('gives lengths in thousandths of an inch: a strip of 5 pitches', () => {
    // 5 cells of pitch p less a face, with two grooves less the end gap, longer by 5 · (1.75 − 40 / 25.4) = 0.876
    expect(told).toContain('0.876 longer');
  });
});
