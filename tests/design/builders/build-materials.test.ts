/** Woods, strips, sheets, resins, finishes and benches arrive in the design in its own units. Worked by hand. */
import { describe, expect, test } from 'vitest';
import { designOf, only } from '../design-of.ts';

describe('a wood', () => {
  test('states what it states, and nothing else', () => {
    const text = 'wood walnut { density 610 rupture 103 elasticity 12.0 shrinkage radial 4.9% tangential 7.8% porous }';
    expect(only(designOf(text).woods)).toMatchObject({
      name: 'walnut',
      density: 610,
      rupture: 103,
      elasticity: 12,
      radialShrinkage: expect.closeTo(0.049, 12) as unknown,
      tangentialShrinkage: expect.closeTo(0.078, 12) as unknown,
      porous: true,
    });
    expect(only(designOf('wood birch { closed shrinkage tangential 9.5% }').woods)).toMatchObject({
      density: null,
      rupture: null,
      elasticity: null,
      radialShrinkage: null,
      tangentialShrinkage: 0.095,
      porous: false,
    });
  });
});

describe('a strip', () => {
  const strip = (properties: string) => only(designOf(`strip ash { section face 3 depth 10 ${properties} }`).strips);

  test('has its prices, what is on hand, its kerf and end trim', () => {
    const text = 'lengths 900 at 4.20 EUR, 1.2m at 11 / 2 EUR, 600  on_hand 4 of 900, 1 of 640  kerf 1.2  end_trim 5';
    expect(strip(text)).toMatchObject({
      lengths: [
        { length: 900, price: { amount: 4.2, currency: 'EUR' } },
        { length: 1200, price: { amount: 5.5, currency: 'EUR' } },
        { length: 600, price: null },
      ],
      onHand: [
        { length: 900, count: 4 },
        { length: 640, count: 1 },
      ],
      kerf: 1.2,
      endTrim: 5,
    });
    expect(strip('')).toMatchObject({ lengths: [], onHand: [], boards: [], kerf: null, endTrim: 0 });
  });

  test('has breath of its own, none at all, or the bench’s; and a length from which its off-cuts are kept', () => {
    expect(strip('breath 0.2, 1mm  keep_offcuts 15cm')).toMatchObject({
      breath: { cut: 0.2, stick: 1 },
      keepOffcuts: 150,
    });
    expect(strip('breath 0')).toMatchObject({ breath: { cut: 0, stick: 0 } });
    expect(strip('')).toMatchObject({ breath: null, keepOffcuts: null });
    expect(only(designOf('bench shop { breath 0.05, 3 }').benches).breath).toEqual({ cut: 0.05, stick: 3 });
  });

  test('has spares by share, or by breakage and confidence', () => {
    expect(strip('spare 8%')).toMatchObject({ spare: 0.08, breakage: null });
    expect(strip('spare breakage 4% confidence 95%')).toMatchObject({
      spare: null,
      breakage: { share: 0.04, confidence: 0.95 },
    });
  });

  test('is ripped from boards of several sizes', () => {
    const text = `
      rip from 27 x 160 x 2000 at 38 EUR thickness is face rejoint 0.5 every 3
      rip from 12x90x1m`;
    expect(strip(text).boards).toEqual([
      {
        thickness: 27,
        width: 160,
        length: 2000,
        price: { amount: 38, currency: 'EUR' },
        thicknessGives: 'face',
        rejoint: { allowance: 0.5, every: 3 },
      },
      { thickness: 12, width: 90, length: 1000, price: null, thicknessGives: 'depth', rejoint: null },
    ]);
  });

  test('is as wide as the blade cuts, less the fit of its grids', () => {
    const text = (grids: string) => `
      bench shop { kerf 3.15 }
      strip ash { section face from_kerf depth 10 }
      ${grids}`;
    const faceOf = (grids: string): number | undefined => designOf(text(grids)).strips[0]?.face;
    expect(faceOf('')).toBe(3.15);
    expect(faceOf('grid mesh { three_way side 40 of ash fit 0.05 }')).toBeCloseTo(3.1, 9);
    expect(faceOf('grid mesh { square pitch 40 of ash fit -0.05 }')).toBeCloseTo(3.2, 9);
    const two = 'grid mesh { three_way side 40 of ash fit 0.05 } grid squares { square pitch 40 of ash fit 0.05mm }';
    expect(faceOf(two)).toBeCloseTo(3.1, 9);
  });
});

describe('a sheet', () => {
  test('has its sizes with their prices', () => {
    const text = 'sheet ply { thick 6 size 1220 x 610 at 24 EUR, 600x300 density 680 kerf 2.8 margin 10 }';
    expect(only(designOf(text).sheets)).toMatchObject({
      thickness: 6,
      sizes: [
        { width: 1220, height: 610, price: { amount: 24, currency: 'EUR' } },
        { width: 600, height: 300, price: null },
      ],
      density: 680,
      kerf: 2.8,
      margin: 10,
    });
  });

  test('is cut by an ordinary saw, edge to edge, unless said', () => {
    expect(only(designOf('sheet ply { thick 1/4in }').sheets)).toMatchObject({ thickness: 6.35, kerf: 2.4, margin: 0 });
  });
});

describe('a resin', () => {
  const resin = (more: string) => only(designOf(`resin cast { density 1.1 mix 2 to 1 by volume ${more} }`).resins);

  test('is in mm, minutes, mL and g', () => {
    const text = `part densities 1.13, 0.98  deepest 1cm  pot_life 25min  recoat 4h to 12h  cure 2days  mix_size 0.4L
      price 32 EUR per 1kg`;
    expect(resin(text)).toMatchObject({
      density: 1.1,
      mix: { a: 2, b: 1, by: 'volume' },
      partDensities: { a: 1.13, b: 0.98 },
      deepestPour: 10,
      potLife: 25,
      recoat: { earliest: 240, latest: 720 },
      cure: 2880,
      mixSize: 400,
      price: { money: { amount: 32, currency: 'EUR' }, per: 1000 },
    });
  });

  test('is priced by mass, by volume through its density, or by the kilogram', () => {
    expect(resin('price 20 EUR per 750g').price?.per).toBe(750);
    expect(resin('price 20 EUR per 1.5L').price?.per).toBeCloseTo(1650, 9);
    expect(resin('price 20 EUR').price?.per).toBe(1000);
  });

  test('needs no more than its density and mix', () => {
    expect(resin('')).toMatchObject({ partDensities: null, deepestPour: null, recoat: null, price: null });
  });
});

describe('a finish', () => {
  test('is priced by the litre', () => {
    const text = 'finish oil { coverage 12 coats 3 loss 10% recoat 4h price 21 EUR per 750mL }';
    expect(only(designOf(text).finishes)).toMatchObject({
      coverage: 12,
      coats: 3,
      loss: 0.1,
      recoat: 240,
      price: { amount: 28, currency: 'EUR' },
    });
    expect(only(designOf('finish wax { coverage 20 }').finishes)).toMatchObject({ coats: 1, loss: 0, price: null });
  });
});

describe('a bench', () => {
  test('has all its figures', () => {
    const text = `bench shop { bevels 30, 60 kerf 3 ripping_kerf 2.4 band_blade 6 cuts 0.9 curve 16 shortest 12 gang 5
      trim 2 pin pitches 40 pitch_error 0.05 pitch_scatter 0.02 }`;
    expect(only(designOf(text).benches)).toMatchObject({
      kerf: 3,
      rippingKerf: 2.4,
      bandBlade: 6,
      bandKerf: 0.9,
      bandRadius: 16,
      shortestPiece: 12,
      gang: 5,
      trim: 2,
      indexing: 'pin',
      pinPitches: [40],
      pitchError: 0.05,
      pitchScatter: 0.02,
    });
  });

  test('has an indexing pin unless it has a fixed stop', () => {
    expect(only(designOf('bench shop { fixed_stop }').benches).indexing).toBe('stop');
    expect(only(designOf('bench shop { bevels 30 }').benches)).toMatchObject({ indexing: 'pin', gang: 1, trim: 0 });
  });
});
