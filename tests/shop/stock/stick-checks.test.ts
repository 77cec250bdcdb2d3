/** What no stick can be cut into is an error where the stock is declared. Figures by hand. */
import { expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { usualEffort } from '../../../server/machine/search-effort.ts';
import { planDesign } from '../../../server/plan-design.ts';

const underlined = (text: string) =>
  analyse(text)
    .problems.filter(({ code }) => code === 'LAP0806')
    .map(({ range, severity, message }) => ({ words: text.slice(range.start, range.end), severity, message }));

/** Clear inside 4 × 2 cells of 40: strips of 157 and 77. */
const lattice = (strip: string) => `
strip ash { section face 3 depth 10 ${strip} }
bench shop { kerf 3 }
grid squares { square pitch 40 of ash }
panel tray { grid squares shape 4 x 2 cells edge framed }`;

test('strips longer than every stick: at its lengths, with what is long enough', () => {
  expect(underlined(lattice('lengths 150, 160 end_trim 1'))).toEqual([
    {
      words: 'lengths 150, 160',
      severity: 'error',
      message:
        'No stick of ash is long enough for S1, 157 mm long: beside trims and breath the longest holds 156 mm. Add one of at least 161 mm to `lengths`.',
    },
  ]);
  expect(analyse(lattice('lengths 150, 160 end_trim 1')).incomplete).toBe(true);
  expect(underlined(lattice('lengths 150, 161 end_trim 1'))).toEqual([]);
  expect(underlined(lattice('lengths 159'))).toEqual([]);
  expect(underlined(lattice('lengths 157 breath 0'))).toEqual([]);
});

test('a longer stick in the rack holds them; where nothing is sold, the rack is meant', () => {
  expect(underlined(lattice('lengths 150 on_hand 9 of 300'))).toEqual([]);
  expect(underlined(lattice('on_hand 9 of 70')).map(({ words }) => words)).toEqual(['on_hand 9 of 70']);
  expect(underlined(lattice(''))).toEqual([]);
});

test('members of a frame that a fit makes wider than their stick are in none, and the plan says so', async () => {
  // 21 × 8 cells of 40 with 39 clear at both ends leave 31.5 at the sides and 41.5 at top and bottom of 900 × 400
  const text = (face: number): string => `
strip ash { section face 3 depth 10 lengths 1000 at 3 EUR }
strip stile { section face ${face} depth 14 lengths 1200 at 9 EUR }
bench shop { kerf 3 }
grid squares { square pitch 40 of ash }
panel door { grid squares shape fit 21 x 8 cells in 900 x 400 by frame frame { of stile groove 6 } }
work screen { copies 1 }`;
  const stile = async (face: number) => {
    const { plan } = await planDesign(analyse(text(face)), 'door.lap', usualEffort());
    return { stock: plan.stock.find(({ stock }) => stock === 'stile'), problems: plan.cost.problems.join() };
  };
  const narrow = await stile(20);
  expect(narrow.stock).toMatchObject({ leftOut: ['F1', 'F2'], sticks: [] });
  expect(narrow.stock?.problems[0]).toContain('F1, 41.5 mm wide, is wider than its stick (20 mm)');
  expect(narrow.problems).toContain('sticks of stile: none holds F1, F2');
  expect((await stile(41.5)).stock).toMatchObject({ leftOut: [] });
});
