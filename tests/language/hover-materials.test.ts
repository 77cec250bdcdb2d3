/** What the pointer over a material's name tells. */
import { expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { hoverAt } from '../../server/language/features/hover.ts';

const text = `
wood walnut { density 610  rupture 103  elasticity 12.0  shrinkage radial 5.5% tangential 7.8%  porous }
strip dark { wood walnut  section face 3 depth 10 }
sheet ply { thick 6  size 600 x 300 at 7.5 EUR  density 680 }
resin cast { density 1.1  mix 2 to 1 by volume  deepest 10  pot_life 25min  recoat 4h to 3days  price 32 EUR per 1kg }
finish oil { coverage 12  coats 3  loss 10%  recoat 4h  price 28 EUR }
`;
const analysis = analyse(text);

const hoverOf = (name: string): readonly string[] =>
  hoverAt(analysis, text.indexOf(name))
    ?.markdown.split('\n')
    .filter((line) => line !== '') ?? [];

test.each([
  [
    'walnut',
    [
      '**wood** `walnut` (porous)',
      '- Density 610 kg/m³',
      '- Modulus of rupture 103 MPa',
      '- Modulus of elasticity 12 GPa',
      '- Shrinkage radial 5.5 %, tangential 7.8 %',
      '- Strips of it: `dark`',
    ],
  ],
  ['ply', ['**sheet** `ply` (6 mm thick)', '- 600 mm x 300 mm, 7.50 EUR', '- Density 680 kg/m³']],
  [
    'cast',
    [
      '**resin** `cast`',
      '- 1.1 g/mL, 2 to 1 by volume',
      '- Deepest layer 10 mm',
      '- Pot life 25 min',
      '- Next layer after 4 h, before 3 days',
      '- 32.00 EUR for 1000 g',
    ],
  ],
  [
    'oil',
    ['**finish** `oil`', '- 12 m² a litre, 3 coats', '- Loss 10 %', '- Next coat after 4 h', '- 28.00 EUR a litre'],
  ],
])('%s', (name, lines) => {
  expect(analysis.problems).toEqual([]);
  expect(hoverOf(name)).toEqual(lines);
});

test('a price has the decimals of its currency, as in the plan: yen have none, dinars of Kuwait three', () => {
  const pricesIn = (currency: string): string[] => {
    const priced = text.replaceAll('EUR', currency).replace('7.5', '1500');
    return ['ply', 'cast', 'oil'].flatMap(
      (name) => hoverAt(analyse(priced), priced.indexOf(name))?.markdown.match(/[\d.]+ [A-Z]{3}/g) ?? [],
    );
  };
  expect(pricesIn('JPY')).toEqual(['1500 JPY', '32 JPY', '28 JPY']);
  expect(pricesIn('KWD')).toEqual(['1500.000 KWD', '32.000 KWD', '28.000 KWD']);
});

test.each([
  ['250g', '0.551 lb'],
  ['2lb', '907 g'],
  ['400mL', '0.4 L'],
  ['0.4L', '400 mL'],
  ['90min', '1.5 h'],
  ['2days', '2880 min'],
])('a number with a unit is said in the other: %s', (number, other) => {
  const line = `let a = ${number}`;
  expect(hoverAt(analyse(line), line.indexOf(number))?.markdown).toContain(`- ${other}`);
});
