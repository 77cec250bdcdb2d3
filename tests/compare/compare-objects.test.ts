/** Blanks, bands, pours and boards: the figures that a maker asks for, worked out by hand. */
import { describe, expect, test } from 'vitest';
import { changeReport } from '../../server/compare/change-report.ts';
import { analyse } from '../../server/analyse.ts';
import { compareDesigns } from '../../server/compare/compare-designs.ts';
import type { DesignChange } from '../../server/compare/design-change.ts';
import { changeFaults } from './change-schema.ts';
import { coasterText, type CoasterWords } from './objects-text.ts';
import { versionOf } from './versions.ts';

const changeOf = (old: CoasterWords, now: CoasterWords): DesignChange =>
  compareDesigns(versionOf(coasterText(old)), versionOf(coasterText(now)));
const factOf = ({ objects }: DesignChange, name: string, what: string) =>
  objects.find(({ newName }) => newName === name)?.facts.find((fact) => fact.what === what);
const summaryOf = (change: DesignChange): string => changeReport(change).summary.join('\n');

test('the design is sound', () => {
  expect(analyse(coasterText()).problems).toEqual([]);
});

test('one more panel from a blank: one more place taken', () => {
  const change = changeOf({}, { taken: 3 });
  expect(factOf(change, 'cast', 'places taken by coaster')).toEqual({
    ...{ what: 'places taken by coaster', unit: null },
    ...{ old: 2, new: 3 },
  });
  expect(summaryOf(change)).toContain('Blank cast: to make 1 → 2, places taken by coaster 2 → 3.');
});

test('of two laminations of 1 mm, mitred, the inner one has sides of 78 mm, the outer one of 80 as it had alone', () => {
  const change = changeOf({}, { laminations: 2 });
  expect(factOf(change, 'rim', 'laminations')).toMatchObject({ old: 1, new: 2 });
  expect(factOf(change, 'rim', 'length of the outer lamination')).toBeUndefined();
  expect(factOf(change, 'rim', 'length of all laminations')).toMatchObject({ unit: 'mm', old: 320, new: 632 });
});

test('8 mm in a mould of 40 × 20 mm are 6.4 mL in place of 4.8 mL; of 1.1 g/mL 7.04 g', () => {
  const change = changeOf({}, { layers: 'layer 6  layer 2' });
  expect(factOf(change, 'foot', 'layers')).toMatchObject({ old: 1, new: 2 });
  expect(factOf(change, 'foot', 'volume')).toMatchObject({ unit: 'mL', old: 4.8, new: 6.4 });
  expect(factOf(change, 'foot', 'mass of resin')?.new).toBeCloseTo(7.04, 2);
  expect(factOf(change, 'foot', 'depth poured in layer 2')).toMatchObject({ unit: 'mm', old: null, new: 2 });
  expect(summaryOf(change)).toMatch(/Pour foot: layers 1 → 2, .*depth poured in layer 2 2\.00 mm/);
});

test('a board 10 mm wider has 1000 mm² more and weighs more', () => {
  const change = changeOf({}, { board: '210 x 100' });
  expect(factOf(change, 'plate', 'area')).toMatchObject({ unit: 'mm²', old: 20000, new: 21000 });
  // 6 mm × 680 kg/m³: 81.6 g and 85.68 g
  expect(factOf(change, 'plate', 'mass')?.old).toBeCloseTo(81.6, 2);
  expect(factOf(change, 'plate', 'mass')?.new).toBeCloseTo(85.68, 2);
});

test('renamed, new and gone', () => {
  const renamed = changeOf({}, { foot: 'stem' });
  expect(renamed.objects).toEqual([{ sort: 'pour', change: 'changed', oldName: 'foot', newName: 'stem', facts: [] }]);
  expect(summaryOf(renamed)).toContain('Pour stem was called foot.');
  const without = coasterText().replace(/^pour .*$/m, '');
  const came = compareDesigns(versionOf(without), versionOf(coasterText()));
  expect(summaryOf(came)).toMatch(
    /Pour foot is new: castings 1, resin clear, layers 1, depth poured in layer 1 6\.00 mm/,
  );
  expect(summaryOf(compareDesigns(versionOf(coasterText()), versionOf(without)))).toContain('Pour foot is gone.');
});

test('a panel under another name is no change of the blank that it is sawn from, nor of its band', () => {
  expect(changeOf({}, { panel: 'mat' }).objects).toEqual([]);
});

describe('in the report', () => {
  const change = changeOf({ packing: '6 EUR' }, { taken: 3, layers: 'layer 8', packing: '9 USD' });
  const { tables } = changeReport(change);

  test('they have a table of their own, each row about its object, and are not told twice', () => {
    const table = tables.find(({ title }) => title === 'Blanks, bands, pours and boards');
    expect(table?.rows.map(({ cells }) => cells)).toContainEqual(['pour foot', 'volume, mL', '4.80', '6.40']);
    expect(table?.rows[0]?.subject).toEqual({ sort: 'blank', old: 'cast', new: 'cast' });
    const others = tables.find(({ title }) => title === 'Everything else');
    expect(others?.rows.map(({ cells: [section] }) => section)).not.toContain('pours');
  });

  test('the currency is named where money changes', () => {
    expect(change.old.currency).toBe('EUR');
    expect(change.new.currency).toBe('USD');
    const rows = tables.find(({ title }) => title === 'Everything else')?.rows ?? [];
    expect(rows.map(({ cells: [section] }) => section)).toContain('cost, EUR → USD');
  });

  test('the JSON keeps to the schema', () => {
    expect(changeFaults({ ...change, reuse: null })).toEqual([]);
  });
});

test('the price of a copy is told in its currency: 6 and 9 EUR, and 40 % of the price kept, make 10 and 15', () => {
  const dearer = changeOf({ packing: '6 EUR' }, { packing: '9 EUR' });
  expect(summaryOf(dearer)).toContain('Price of a copy: 10.00 EUR → 15.00 EUR (+5.00).');
  const elsewhere = changeOf({ packing: '6 EUR' }, { packing: '9 USD' });
  expect(summaryOf(elsewhere)).toContain('Price of a copy: 10.00 EUR → 15.00 USD.');
});
