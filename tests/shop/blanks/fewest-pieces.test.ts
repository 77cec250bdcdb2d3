/** Among packings on equally few blanks, one that shares as many infill pieces as any: every pair of places tried. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { sum } from '../../../server/geometry/numbers.ts';
import type { Place } from '../../../server/shop/blanks/cut-out.ts';
import { layOutBlank } from '../../../server/shop/blanks/lay-out-blank.ts';
import type { NestedBlank } from '../../../server/shop/blanks/nest-blanks.ts';
import { usualEffort } from '../../../server/machine/search-effort.ts';
import { packDesign } from '../../../server/plan-design.ts';

/** Two tiles whose edges run through cells, on a blank with room to lie apart or side by side. */
const tiles = (shape: string, blank: string): string => `strip ash { wood white_ash  section face 3 depth 10 }
grid squares { square  pitch 40  of ash  fit 0.05 }
motif cross for square {
  piece rise from corner 1 to corner 3
  piece fall from corner 2 to corner 4, above rise
}
panel tile { grid squares  centred node  shape ${shape}  edge sawn  copies 2  fill square with cross of ash }
blank cast { grid squares  shape ${blank}  take tile 2  gap 4  allowance 1 }
`;

const piecesOf = ({ blank, cutOuts }: NestedBlank, places: readonly Place[]): number =>
  sum((layOutBlank(blank, cutOuts, { places, count: 1 })?.pieces ?? []).map(({ count }) => count));

describe.each([
  ['110 x 110', '420 x 130'],
  ['100 x 70', '330 x 180'],
  ['hexagon', '420 x 260'],
] as const)('two tiles of %s on a blank of %s', (shape, blank) => {
  const text = tiles(shape === 'hexagon' ? 'six' : shape, blank) + 'outline six { polygon 6 radius 70 }\n';

  test('share what two of them can share', async () => {
    const [nested] = (await packDesign(analyse(text), usualEffort())).blanks;
    if (!nested) throw new Error('no blank');
    const { places, conflict } = nested.task;
    const pairs = places.flatMap((first, index) =>
      places.slice(index + 1).flatMap((second, more) => (conflict(index, index + 1 + more) ? [] : [[first, second]])),
    );
    expect(pairs.length).toBeGreaterThan(5);
    const counts = pairs.map((pair) => piecesOf(nested, pair));
    const [filled, ...others] = nested.packing.blanks;
    expect(others).toEqual([]);
    expect(piecesOf(nested, filled?.places ?? [])).toBe(Math.min(...counts));
  });
});

test('some pairs share pieces and some do not, so that there is something to choose', () => {
  const [nested] = analyse(tiles('110 x 110', '420 x 130')).blanks;
  const alone = nested?.task.places.map((place) => piecesOf(nested, [place])) ?? [];
  expect(new Set(alone).size).toBe(1);
  const { places = [], conflict = () => true } = nested?.task ?? {};
  const counts = new Set(
    places.flatMap((first, index) =>
      places
        .slice(index + 1)
        .flatMap((second, more) =>
          nested && !conflict(index, index + 1 + more) ? [piecesOf(nested, [first, second])] : [],
        ),
    ),
  );
  expect(counts.size).toBeGreaterThan(1);
  expect(Math.max(...counts)).toBe(2 * (alone[0] ?? NaN));
});
