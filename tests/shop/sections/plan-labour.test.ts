/** A step's minutes count its own pieces, strips, mixes and metres, and nothing of another step. Counted by hand. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { type StepName, stepNames, writtenStep } from '../../../server/design/names/step-names.ts';
import { unitsOfStep } from '../../../server/design/names/step-units.ts';
import { benchOf, cellsShape, gridOf, panelOf, stripStock, workOf } from '../../design-builder.ts';
import { cutPlanOf } from '../planned.ts';
import { unitsOf } from '../../../server/shop/sections/labour-units.ts';
import { planAtSight } from '../../plan-at-sight.ts';

/** Units of the rates, in the order of the file; `rates` are written without `minutes 1`. */
function unitsIn(parts: string, work: string, ...rates: readonly string[]): number[] {
  const minutes = rates.map((each) => `minutes 1 ${each}`).join(' ');
  const analysis = analyse(`${parts} work w { ${work} ${minutes} }`);
  expect(analysis.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  return planAtSight(analysis, 'labour.lap').labour.lines.map(({ units }) => units);
}

const ash = 'strip ash { wood white_ash section face 3 depth 10 }';

describe('pieces', () => {
  test('keys are cut apart from the others: 12 triangles of 3 arms, one of them the key', () => {
    const units = unitsIn(
      `${ash} strip bass { wood basswood section face 3 depth 10 spare 10% }
       bench b { bevels 30, 60 kerf 3 trim 2 }
       grid mesh { three_way side 40 of ash }
       motif hemp for triangle { node hub at incentre piece arm from corner to hub, every corner fit_order arm, arm, arm key 0.1 }
       panel p { grid mesh shape 3 x 2 cells edge sawn fill triangle with hemp of bass }`,
      '',
      'per piece for cut_infill',
      'per piece for cut_keys',
      'per piece for fill_the_lattice',
    );
    // a tenth of 36 is 4 spares; of 40, a third (rounded up) are keys
    expect(units).toEqual([26, 14, 36]);
  });

  test('of boards are boards, of a frame its members and fillers', () => {
    const units = unitsIn(
      `${ash} strip rail { section face 20 depth 14 }
       sheet ply { thick 6 size 610 x 300 density 700 }
       grid squares { square pitch 40 of ash }
       outline plate { rectangle 100 x 50 }
       board back { shape plate of ply copies 2 }
       panel light { grid squares shape 3 x 2 cells edge framed frame { of rail corners mitred groove 6 end_gap 0.5 } }`,
      'copies 3 place light at 0, 0 place back at 0, 0 place back at 200, 0',
      'per piece for cut_boards',
      'per metre for cut_boards',
      'per piece for frame',
      'per piece for fit_shapes',
      'per strip for assemble',
      'per piece for notch_strips',
    );
    // three works of two boards with an edge of 300; four members each; three parts each; 4 + 3 strips less those the frame replaces
    expect(units.slice(0, 4)).toEqual([6, 1.8, 12, 9]);
    expect(units[4]).toBe(units[5]);
  });
});

describe('mixes', () => {
  test('of a blank are poured, those of a body cast', () => {
    const units = unitsIn(
      `${ash} resin r { density 1 mix 1 to 1 by volume deepest 20 mix_size 1000mL }
       grid mesh { square pitch 40 of ash }
       outline o { rectangle 100 x 100 }
       panel p { grid mesh shape o edge sawn }
       blank bl { grid mesh shape 200 x 200 take p 1 depth 10 of r }
       pour body { mould 30 x 30 layer 5 of r copies 2 }`,
      'copies 1',
      'per mix for pour',
      'per mix for cast_bodies',
      'per piece for pour',
      'per piece for cast_bodies',
    );
    expect(units).toEqual([1, 1, 1, 2]);
  });
});

describe('metres', () => {
  /** Ten sticks of 1200 cut of twelve milled; 5 strips of 1097 and 10 of 597 notched. */
  test('are milled with the rejects, cut from sticks in their own step, notched by the strip', async () => {
    const ash = stripStock('ash', 3, { lengths: [{ length: 1200, price: null }], rejects: 0.15 });
    const metre = (step: StepName) => ({ step, minutes: 1, per: 'metre', wait: 0 }) as const;
    const { labour } = await cutPlanOf([panelOf(gridOf('square', 100, ash), cellsShape(6, 11), { edge: 'framed' })], {
      benches: [benchOf({ kerf: 3 })],
      work: workOf({
        labour: [metre('mill strips'), metre('cut to length'), metre('notch strips'), metre('cut infill')],
      }),
    });
    expect(labour.lines.map(({ units }) => units)).toEqual([14.4, 12, 11.46, 0]);
  });
});

describe('what a step has none of', () => {
  test('is said at its word, and its minutes are left out', () => {
    const text = `work w { minutes 5 per pass for finish minutes 5 per copy for finish }`;
    const { problems, design } = analyse(text);
    const [problem, ...others] = problems;
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: 'LAP0906', severity: 'warning' });
    expect(text.slice(problem?.range.start, problem?.range.end)).toBe('pass');
    expect(problem?.message).toBe(
      '`finish` has nothing to count by the pass, so these minutes are left out. Give them `once`, `per copy` or `per piece`.',
    );
    expect(design.work?.labour.map(({ per }) => per)).toEqual(['copy']);
  });

  test('every unit that a step takes is counted in a design that has the step', () => {
    const everything = analyse(`
      strip ash { wood white_ash section face 3 depth 10 flush 0.2 lengths 900 }
      strip bass { wood basswood section face 3 depth 10 lengths 600 }
      strip veneer { wood walnut section face 0.8 depth 12 lengths 900 }
      strip rail { section face 20 depth 14 lengths 1200 }
      sheet ply { thick 6 size 610 x 300 density 700 }
      resin r { density 1.1 mix 1 to 1 by volume }
      finish oil { coverage 12 }
      bench b { bevels 45 kerf 3 }
      grid squares { square pitch 40 of ash }
      motif cross for square { node hub at centroid piece arm from corner to hub, every corner fit_order arm, arm, arm, arm key 0.1 }
      outline plate { rectangle 90 x 90 }
      panel tile { grid squares centred node shape plate edge sawn fill square with cross of bass }
      panel light { grid squares shape 3 x 3 cells edge framed frame { of rail corners mitred groove 6 end_gap 0.5 } fill square with cross of bass }
      blank cast { grid squares shape 160 x 160 take tile 1 depth 10 of r }
      band rim { around tile of veneer corners mitred }
      pour drop { mould 30 x 30 layer 5 of r }
      board back { shape plate of ply }
      kit class { panel tile students 1 }
      work w { place back at 0, 0 place tile at 0, 0 place light at 200, 0 hang cleat screws 2 each 5kg finish oil }`);
    const plan = planAtSight(everything, 'all.lap');
    // the packing of a bag and the sticks need their own search; all else is counted here
    const uncounted = stepNames.flatMap((step) =>
      unitsOfStep(step)
        .filter((unit) => unit !== 'metre' || plan.stock.length > 0)
        .filter((unit) => unitsOf(unit, step, plan, everything.kinds) === 0)
        .map((unit) => `${unit} for ${writtenStep(step)}`),
    );
    expect(uncounted).toEqual([]);
  });
});
