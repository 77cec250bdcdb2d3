/** The assembled work arrives in the design; its copies multiply what is made. Worked by hand. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { stepNames } from '../../../server/design/names/step-names.ts';
import { jobSteps } from '../../../server/shop/steps/job-steps.ts';
import { designOf } from '../design-of.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const parts = `
strip ash { section face 3 depth 10 }
grid mesh { three_way side 40 of ash }
motif hemp for triangle { node hub at incentre piece arm from corner to hub, every corner }
outline oval { circle radius 150 }
panel blade { grid mesh shape hexagon 2 cells fill triangle with hemp of ash copies 2 }
panel bud { grid mesh shape hexagon 1 cells }
sheet ply { thick 6 }
board back { shape oval of ply }
resin cast { density 1.1 mix 2 to 1 by volume }
pour stem { mould 12 x 80 layer 6 of cast }
finish oil { coverage 12 }
`;

const workOf = (properties: string) => designOf(`${parts} work ginkgo { ${properties} }`).work;

test('a file has no work unless it says so', () => {
  expect(designOf(parts).work).toBeNull();
});

describe('a work', () => {
  test('has all that it takes and costs', () => {
    const text = `copies 2
      hang cleat screws 4 each 8kg safety 5 height 120
      finish oil
      moisture 8% to 11%
      hourly 32 EUR
      minutes 1.5 per setting for notch_strips
      minutes 40 once for assemble wait 2h
      margin 35% commission 40% tax 20% packing 14 EUR losses 5%`;
    expect(workOf(text)).toMatchObject({
      name: 'ginkgo',
      copies: 2,
      hanging: { fixings: 4, each: 8000, safety: 5, height: 120 },
      finish: { name: 'oil' },
      moisture: { made: 8, hangs: 11 },
      hourly: { amount: 32, currency: 'EUR' },
      labour: [
        { step: 'notch strips', minutes: 1.5, per: 'setting', wait: 0 },
        { step: 'assemble', minutes: 40, per: 'work', wait: 120 },
      ],
      gain: { kind: 'margin', share: 0.35 },
      commission: 0.4,
      tax: 0.2,
      packing: { amount: 14, currency: 'EUR' },
      losses: 0.05,
    });
  });

  test('is one copy, without finish, price or hanging unless said', () => {
    expect(workOf('')).toMatchObject({
      copies: 1,
      placements: [],
      hanging: null,
      finish: null,
      moisture: null,
      hourly: null,
      labour: [],
      gain: null,
      commission: 0,
      tax: 0,
      packing: null,
      losses: 0,
    });
    expect(workOf('finish none')?.finish).toBe('none');
    expect(workOf('markup 150%')?.gain).toEqual({ kind: 'markup', share: 1.5 });
    expect(workOf('hang cleat screws 2 each 10lb')?.hanging).toMatchObject({
      each: 4535.9237,
      safety: 4,
      height: null,
    });
  });
});

describe('placements', () => {
  test('lie where they are put', () => {
    const text = 'place bud at -80, 1in turned 15deg mirrored';
    expect(workOf(text)?.placements).toMatchObject([
      { part: { kind: 'panel', panel: { name: 'bud' } }, at: { x: -80, y: 25.4 }, turn: 15, mirrored: true },
    ]);
  });

  test('are layered from the wall: boards, then all else, then what lies in front of it', () => {
    const text = `
      place stem at 0, 0 in front of blade
      place blade at 0, 0 in front of bud
      place blade at 9, 0
      place bud at 0, 0
      place back at 0, 0`;
    const layers = workOf(text)?.placements.map(({ part, layer }) => [part.kind, layer]);
    expect(layers).toEqual([
      ['pour', 3],
      ['panel', 2],
      ['panel', 2],
      ['panel', 1],
      ['board', 0],
    ]);
  });
});

test('copies of the work multiply what is made, placements do not', () => {
  const plan = (work: string) => planAtSight(analyse(parts + work), 'ginkgo.lap');
  const alone = plan('');
  const edition = plan('work ginkgo { copies 3 place blade at 0, 0 place blade at 200, 0 place bud at 0, 200 }');
  // a hexagon of 2 cells a side has 24 triangles, each with 3 arms; 2 copies of the panel
  expect(alone.pieces.map(({ make }) => make)).toEqual([144]);
  expect(edition.pieces.map(({ make }) => make)).toEqual([432]);
  expect(edition.pieces.map(({ panels }) => panels)).toEqual([{ blade: 432 }]);
  expect(edition.strips.map(({ make }) => make)).toEqual(alone.strips.map(({ make }) => 3 * make));
  expect([alone.copies, edition.copies]).toEqual([1, 3]);
});

test('every step of the job can be named for its minutes', () => {
  expect(jobSteps.map(({ title }) => title)).toEqual([...stepNames]);
});
