/** Which cell of a cut-out is filled with what: as the finished outline says, though the saw line meets more cells. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { flattenContour } from '../../../server/geometry/flatten-path.ts';
import type { LaidPanel } from '../../../server/lattice/laid-panel.ts';
import { centroidOf } from '../../../server/geometry/polygons.ts';
import { grownContours } from '../../../server/geometry/grow-contours.ts';
import { areaOf } from '../../../server/geometry/polygons.ts';

const shop = `strip ash { section face 3 depth 10  lengths 900 }
grid squares { square  pitch 40  of ash }
motif cross for square { divider diagonal from corner 1 to corner 3 }
motif bar for square { divider other from corner 2 to corner 4 }
outline spot { circle radius 55 }
`;

/** The saw line lies 1.5 outside a panel of whole cells, and so meets a row of cells all round that the panel has not. */
const rules = [
  'fill row 1 square with cross of ash  fill row 2 to 3 square with bar of ash',
  'fill column 1 square with cross of ash  fill column 2 square with bar of ash',
  'fill every 2 rows from 1 square with cross of ash',
  'fill ring 1 square with cross of ash  fill ring 2 square with bar of ash',
  'fill within 30 of rim square with cross of ash',
  'fill inside spot square with bar of ash',
  `map {
    x = cross of ash
    b = bar of ash
    . = open
    row x b . x
    row . x b .
    row b . x x
  }`,
];

/** The filled cells of the 4 × 3 of the finished panel, whose middle is the origin; those beyond its outer strips are sanded away. */
const filledOf = (laid: LaidPanel): string[] =>
  [...laid.filledCells()]
    .map(({ opening, motif, turned }) => ({ ...centroidOf(opening), motif, turned }))
    .filter(({ x, y }) => Math.abs(x) < 80 && Math.abs(y) < 60)
    .map(({ x, y, motif, turned }) => `${motif} ${turned} at ${x.toFixed(3)}, ${y.toFixed(3)}`)
    .sort();

describe.each(rules)('%s', (fills) => {
  const analysis = analyse(`${shop}panel tile { grid squares  shape 4 x 3 cells  edge sawn  ${fills} }
blank cast { grid squares  shape 300 x 240  take tile 1 }`);

  test('fills the same cells of the cut-out as of the panel alone', () => {
    expect(analysis.problems).toEqual([]);
    const [alone] = analysis.panels;
    const [cutOut] = analysis.blanks.flatMap(({ cutOuts }) => cutOuts);
    if (!alone || !cutOut) throw new Error('not laid out');
    expect(filledOf(alone).length).toBeGreaterThan(0);
    expect(filledOf(cutOut.laid)).toEqual(filledOf(alone));
  });
});

test('the saw line is that of the template: the finished line less the band, sharp, and the allowance round it', () => {
  const { blanks, panels, problems } = analyse(`${shop}panel tile { grid squares  shape 4 x 3 cells  edge sawn }
strip walnut { wood walnut  section face 2 depth 10  lengths 900 }
band rim { around tile  of walnut  laminations 3 }
blank cast { grid squares  shape 300 x 240  allowance 1  take tile 1 }`);
  expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  const [cutOut] = blanks.flatMap((nested) => nested.cutOuts);
  // 163 × 123 over the outer strips, 6 of band taken off all round, and 1 of allowance with round corners
  const [width, height] = [163 - 12, 123 - 12];
  const expected = width * height + 2 * (width + height) * 1 + Math.PI;
  expect(areaOf(cutOut?.sawLine ?? [])).toBeCloseTo(expected, 0);
  const [region = []] = panels[0]?.region ?? [];
  const square = region.map((from, index) => ({
    kind: 'line' as const,
    from,
    to: region[(index + 1) % region.length] ?? from,
  }));
  const sand = grownContours([square], -6, 'sharp');
  expect(areaOf(sand.map(flattenContour))).toBeCloseTo(width * height, 3);
});
