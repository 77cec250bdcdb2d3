/** Laws of comparing, over random designs. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compareDesigns } from '../../server/compare/compare-designs.ts';
import { coasterText } from './objects-text.ts';
import { mirrored, trayText, unordered, versionOf } from './versions.ts';

/** Small trays that differ in everything a maker would change, one in five with an error in it. */
const words = fc.record({
  side: fc.integer({ min: 30, max: 44 }).map((side) => `${side}mm`),
  radius: fc.integer({ min: 40, max: 90 }).map((radius) => `${radius}mm`),
  copies: fc.integer({ min: 1, max: 3 }),
  panel: fc.constantFrom('tray', 'dish', 'plate'),
  bevels: fc.constantFrom('30, 60', '60', '30, 45, 60'),
  motif: fc.constantFrom(
    'piece arm from corner to hub, every corner',
    'piece ray from corner to hub, every corner',
    'piece bar from corner 1 to mid 2',
    '',
  ),
  extra: fc.constantFrom(
    '',
    'panel side { grid mesh  shape 120 x 90  edge framed  fill triangle with hemp of bass }\n',
    'panel side { grid mesh  shape hexagon 2 cells  edge sawn  copies 2 }\n',
    'strip spare_ash { section face 4mm depth 10mm }\n',
    'panel side { grid mesh  shape nowhere }\n',
  ),
  phase: fc.constantFrom('centred node', 'centred cell', 'centred edge'),
});
/** Small works of blanks, bands, pours and boards. */
const objects = fc.record({
  taken: fc.integer({ min: 1, max: 4 }),
  laminations: fc.integer({ min: 1, max: 2 }),
  layers: fc.constantFrom('layer 6', 'layer 8', 'layer 4  layer 4'),
  board: fc.constantFrom('200 x 100', '210 x 100'),
  foot: fc.constantFrom('foot', 'stem'),
  packing: fc.constantFrom('6 EUR', '9 EUR', '6 USD'),
  panel: fc.constantFrom('coaster', 'mat'),
});
const version = fc.oneof(
  { weight: 3, arbitrary: words.map((each) => versionOf(trayText(each))) },
  { weight: 2, arbitrary: objects.map((each) => versionOf(coasterText(each))) },
);

test('a design compared with itself has not changed', () => {
  fc.assert(
    fc.property(version, (design) => {
      const change = compareDesigns(design, design);
      expect(change).toMatchObject({
        same: true,
        panels: [],
        pieces: { changes: [] },
        strips: { changes: [] },
        settings: [],
        stock: [],
        objects: [],
        sections: [],
      });
    }),
    { numRuns: 25 },
  );
});

test('the other way round it is the mirror image', () => {
  fc.assert(
    fc.property(version, version, (one, two) => {
      const there = compareDesigns(one, two);
      const back = compareDesigns(two, one);
      expect(unordered(mirrored(there))).toEqual(unordered(back));
    }),
    { numRuns: 40 },
  );
});

test('every piece is accounted for: old count and change make the new count', () => {
  fc.assert(
    fc.property(version, version, (one, two) => {
      const { pieces, strips } = compareDesigns(one, two);
      if (one.incomplete || two.incomplete) return;
      const total = (kinds: readonly { readonly total: number }[]): number =>
        kinds.reduce((sum, kind) => sum + kind.total, 0);
      const more = (changes: readonly { readonly more: number }[]): number =>
        changes.reduce((sum, change) => sum + change.more, 0);
      expect(total(one.plan.pieces) + more(pieces.changes)).toBe(total(two.plan.pieces));
      expect(total(one.plan.strips) + more(strips.changes)).toBe(total(two.plan.strips));
    }),
    { numRuns: 25 },
  );
});
