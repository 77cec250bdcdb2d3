import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { changeReport } from '../../server/compare/change-report.ts';
import { compareDesigns } from '../../server/compare/compare-designs.ts';
import type { DesignChange } from '../../server/compare/design-change.ts';
import { type TrayWords, trayText, versionOf } from './versions.ts';

const changeOf = (old: TrayWords, now: TrayWords): DesignChange =>
  compareDesigns(versionOf(trayText(old)), versionOf(trayText(now)));

const changeOfTexts = (old: string, now: string): DesignChange => compareDesigns(versionOf(old), versionOf(now));

describe('the sizes of a design', () => {
  test('a smaller side makes every arm shorter, by s/√3 − t (geometry.md), and moves the stop', () => {
    const { pieces, strips, settings, same } = changeOf({}, { side: '38mm' });
    expect(same).toBe(false);
    const [arm, ...others] = pieces.changes;
    expect(others).toEqual([]);
    expect(arm).toMatchObject({ change: 'changed', old: { mark: 'A' }, new: { mark: 'A' } });
    expect(arm?.aspects).toContain('length');
    expect(arm?.longerByMm).toBeCloseTo(-2 / Math.sqrt(3), 3);
    expect(arm?.new?.bevels).toBe(arm?.old?.bevels);
    expect(strips.changes.length).toBeGreaterThan(0);
    expect(settings.some(({ change, oldStopMm, newStopMm }) => change === 'changed' && oldStopMm !== newStopMm)).toBe(
      true,
    );
  });

  test('two copies instead of one count twice, and nothing else changes its size', () => {
    const change = changeOf({}, { copies: 2 });
    expect(change.panels).toMatchObject([{ change: 'changed', drawn: { onlyOld: 0, onlyNew: 0 } }]);
    expect(change.panels[0]?.fields).toEqual(
      ['copies', 'quantity'].map((field) => ({ change: 'changed', path: [field], old: 1, new: 2 })),
    );
    for (const { aspects, old, new: now } of [...change.pieces.changes, ...change.strips.changes]) {
      expect(aspects).toEqual(['count']);
      expect(now?.make).toBe(2 * (old?.make ?? 0));
    }
  });

  test('a shift of the grid under the outline is a change even where the counts agree', () => {
    const square = (phase: string): string => `units mm
strip ash { section face 3 depth 10 }
grid squares { square  pitch 40  of ash }
outline field { rectangle 190 x 190 }
panel pane { grid squares  ${phase}  shape field  edge sawn  tail 6 }
`;
    const change = changeOfTexts(square('node at 10, 10'), square('node at 20, 20'));
    expect(change.same).toBe(false);
    expect(change.panels[0]?.drawn?.onlyOld).toBeGreaterThan(0);
  });
});

describe('kinds', () => {
  test('without its declared tip an arm has other bevels, and is the same arm (67.5/56.25, geometry.md)', () => {
    const lamp = readFileSync(new URL('../../samples/lamp.lap', import.meta.url), 'utf8');
    const { pieces } = changeOfTexts(lamp, lamp.replace(/fill halves with hemp \{[^}]*\}/, 'fill halves with hemp'));
    expect(pieces.changes.map(({ change }) => change)).toEqual(['changed', 'changed']);
    for (const { aspects } of pieces.changes) expect(aspects).toContain('bevels');
    expect(pieces.changes.map(({ new: now }) => now?.bevels).join(' ')).toContain('56.25');
  });

  test('another role for the same wood is the same piece', () => {
    const { pieces } = changeOf({}, { motif: 'piece ray from corner to hub, every corner' });
    expect(pieces.changes).toMatchObject([{ change: 'changed', aspects: ['role', 'mark'], more: 0 }]);
  });

  test('a longer kind that takes a mark moves the marks, not the pieces', () => {
    const extra = `panel wide { grid big  shape round  edge sawn  fill triangle with hemp of bass }
grid big { three_way  side 50mm  of ash  fit 0.05mm }
`;
    const { pieces } = changeOf({}, { extra });
    expect(pieces.changes).toMatchObject([
      { change: 'changed', aspects: ['mark'], old: { mark: 'A' }, new: { mark: 'A2' }, more: 0 },
      { change: 'new', old: null, new: { mark: 'A1' } },
    ]);
  });

  test('a piece that went is gone with its count', () => {
    const { pieces } = changeOf({}, { motif: '' });
    expect(pieces.changes).toMatchObject([{ change: 'gone', new: null }]);
    expect(pieces.changes[0]?.more).toBe(-(pieces.changes[0]?.old?.total ?? NaN));
  });
});

describe('no change at all', () => {
  const base = trayText({ extra: 'panel wide { grid mesh  shape round  edge sawn  copies 2 }\n' });

  test.each([
    ['comments', base.replace('units mm', 'units mm  # as ever')],
    [
      'another order of the declarations',
      base
        .split(/\n(?=strip|bench|grid|motif|outline|panel|title)/)
        .reverse()
        .join('\n'),
    ],
    ['a let and its name', base.replace('side 40mm', 'side pace').replace('units mm', 'units mm\nlet pace = 20mm * 2')],
    ['another unit of the file', base.replace('units mm', 'units cm')],
    ['centimetres', base.replace('40mm', '4cm').replace('72mm', '0.072m')],
  ])('%s', (_, text) => {
    const change = changeOfTexts(base, text);
    expect(change.panels).toEqual([]);
    expect(change).toMatchObject({ same: true, pieces: { changes: [] }, strips: { changes: [] }, sections: [] });
  });

  test('1 in is 25.4 mm (the inch of 1959)', () => {
    expect(changeOf({ side: '50.8mm', radius: '127mm' }, { side: '2in', radius: '5in' }).same).toBe(true);
  });
});

test('the report says what a copy weighs more', () => {
  const { summary } = changeReport(changeOf({}, { copies: 2 }));
  expect(summary.join('\n')).toMatch(/Mass of a copy: [\d.]+ g → [\d.]+ g \(\+[\d.]+\)\./);
});

describe('bad input', () => {
  test('a renamed panel is one panel', () => {
    const { panels, pieces, sections } = changeOf({}, { panel: 'dish' });
    expect(panels).toMatchObject([{ change: 'changed', oldName: 'tray', newName: 'dish', fields: [] }]);
    expect(pieces.changes).toEqual([]);
    expect(sections).toEqual([]);
  });

  test('a renamed panel of another copy count is still one panel', () => {
    const { panels } = changeOf({}, { panel: 'dish', copies: 3 });
    expect(panels).toMatchObject([{ change: 'changed', oldName: 'tray', newName: 'dish' }]);
  });

  test('a broken panel is left out with its pieces, and the rest is compared', () => {
    const extra = 'panel wide { grid mesh  shape round  edge sawn  fill triangle with hemp of bass }\n';
    const change = changeOf({ extra }, { extra: extra.replace('shape round', 'shape oval') });
    expect(change.new.missing.join('\n')).toMatch(/panel wide/);
    expect(change.panels).toEqual([]);
    expect(change.pieces.changes).toEqual([]);
    expect(change.same).toBe(true);
  });

  test('an empty text compares: everything is new, everything is gone', () => {
    const change = changeOfTexts('', trayText());
    expect(change.panels).toMatchObject([{ change: 'new', newName: 'tray' }]);
    expect(change.pieces.changes.every(({ change: what }) => what === 'new')).toBe(true);
    expect(changeOfTexts('', '').same).toBe(true);
  });

  test('where everything is new, or gone, a report says so once, and lists no settings and no figures', () => {
    const begun = changeOfTexts('', trayText());
    expect(begun.settings.length).toBeGreaterThan(5);
    const { summary, tables } = changeReport(begun);
    expect(summary[0]).toBe(
      `Everything is new: its ${begun.settings.length} settings and further figures are in the plan of the new version.`,
    );
    expect(tables.map(({ title }) => title)).toEqual(['Infill pieces', 'Strips']);
    const givenUp = changeReport(changeOfTexts(trayText(), ''));
    expect(givenUp.summary[0]).toMatch(/^Everything is gone: .* in the plan of the old version\.$/);
    expect(changeReport(changeOf({}, { radius: '80mm' })).summary[0]).not.toMatch(/^Everything/);
    expect(changeReport(changeOf({}, { side: '30mm' })).tables.map(({ title }) => title)).toContain('Set-ups');
  });
});
