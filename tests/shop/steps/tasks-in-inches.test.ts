/** A file in inches is told in inches at the bench: no bare millimetre among the tasks. */
import { expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const text = `units in
strip cedar { wood western_redcedar  section face 1/8in depth 1/2in  flush 1/64in  lengths 36in  end_trim 1/4in }
strip bass { wood basswood  section face 3/32in depth 1/2in  lengths 24in }
strip rail { wood western_redcedar  section face 1 1/4in depth 3/4in  lengths 72in }
strip veneer { wood walnut  section face 1/32in depth 3/4in  lengths 36in }
sheet ply { thick 1/4in  size 24in x 12in  density 680  kerf 3/32in }
resin clear { density 1.1  mix 2 to 1 by volume }
bench shop { bevels 30, 60  kerf 1/8in  pin pitches 1 1/2in  gang 5  trim 1/16in  band_blade 1/4in cuts 1/32in curve 5/8in }
grid mesh { three_way  side 1 1/2in  of cedar  fit 0.002in }
motif hemp for triangle { node hub at incentre  piece arm from corner to hub, every corner }
panel light { grid mesh  shape 12in x 9in  edge framed  frame { of rail corners mitred groove 1/4in border }  fill triangle with hemp of bass }
outline disc { circle radius 3in }
outline base { rectangle 16in x 8in }
panel leaf { grid mesh  shape disc  edge sawn  fill triangle with hemp of bass }
blank cast { grid mesh  shape 10in x 9in  take leaf  depth 3/8in  of clear }
band rim { around leaf  of veneer  method cold }
board back { shape base  of ply  chamfer 1/8in }
work wall { place back at 0, 0  place leaf at 0, 0  hang cleat screws 2 each 5kg }
`;
const { steps } = planAtSight(analyse(text), 'wall.lap');
const tasks = steps.flatMap((step) => step.tasks);

test('every figure with a decimal has a unit behind it, several lengths one behind the last', () => {
  const units = /^(( ×|,| and) -?\d+(\.\d+)?)* ?(in|lb|oz|kg|mL|ft²|g|%|h)\b|^ ?[%°²]/;
  // Marks of bands are numbered so: run 1, lamination 1.
  const told = tasks.map((task) => task.replaceAll(/rim \d\.\d/g, 'mark'));
  const bare = told.filter((task) =>
    [...task.matchAll(/\d+\.\d+/g)].some(({ 0: figure, index }) => !units.test(task.slice(index + figure.length))),
  );
  expect(bare).toEqual([]);
  expect(tasks.filter((task) => / mm\b/.test(task))).toEqual([]);
});

test('what is set or measured to 0.001 in; what is bought in fractions, where one is exact', () => {
  const all = tasks.join('\n');
  for (const words of [
    '0.125 in face × 0.500 in depth',
    // 1/8 in · cot 60° = 0.0722 in.
    'set each strip of a pack on by 0.072 in',
    'a groove 0.469 in wide and 0.250 in deep',
    'trim each lattice to 10.000 × 9.000 in',
    '1 × ply, 24 × 12 in',
  ])
    expect(all).toContain(words);
});
