/** Frames, blanks, bands, pours, boards and kits arrive in the design with their defaults. Worked by hand. */
import { describe, expect, test } from 'vitest';
import { designOf, only } from '../design-of.ts';

const parts = `
strip ash { section face 3 depth 10 }
strip walnut_strip { section face 0.8 depth 12 }
strip oak { section face 20 depth 14 }
grid mesh { three_way side 40 of ash }
outline leaf { circle radius 60 }
outline tenon { rectangle 6 x 20 }
panel blade { grid mesh shape leaf edge sawn copies 3 }
sheet ply { thick 6 }
resin cast { density 1.1 mix 2 to 1 by volume deepest 10 }
`;

describe('a frame', () => {
  const panel = (properties: string) =>
    only(designOf(`${parts} panel window { grid mesh shape 300 x 200 ${properties} }`).panels.slice(1));

  test('has its members, joint and bearing, and says how far the strips run in', () => {
    expect(panel('frame { of oak corners lapped groove 6 end_gap 0.5 border } sliver 8')).toMatchObject({
      edge: 'framed',
      stub: 5.5,
      sliver: 8,
      frame: {
        stock: { name: 'oak' },
        corners: 'lapped',
        joint: 'groove',
        jointDepth: 6,
        endGap: 0.5,
        bearing: 'border',
      },
    });
    expect(panel('frame { of oak stub 5 fillers }')).toMatchObject({
      stub: 5,
      frame: { corners: 'mitred', joint: 'stub', jointDepth: 5, endGap: 0, bearing: 'fillers' },
    });
  });

  test('is made elsewhere unless given', () => {
    expect(panel('stub 8')).toMatchObject({ frame: null, sliver: null, stub: 8 });
  });
});

describe('a blank', () => {
  const blank = (properties: string) =>
    only(designOf(`${parts} blank one { grid mesh shape 420 x 297 ${properties} }`).blanks);

  test('has what is sawn from it, and its cast', () => {
    const text = `take blade 3 margin 10 gap 4 allowance 2 turns 0, 180 from_back match laps
      depth 10 surfaced 0.5 overfill 1 of cast`;
    expect(blank(text)).toMatchObject({
      grid: { name: 'mesh' },
      width: 420,
      height: 297,
      takes: [{ panel: { name: 'blade' }, count: 3 }],
      margin: 10,
      gap: 4,
      allowance: 2,
      turns: [0, 180],
      fromBack: true,
      matchLaps: true,
      cast: { depth: 10, surfaced: 0.5, overfill: 1, resin: { name: 'cast' } },
    });
  });

  test('takes every copy of a panel unless said, and leaves what sanding takes', () => {
    expect(blank('take blade')).toMatchObject({
      takes: [{ count: 3 }],
      margin: 0,
      gap: 0,
      allowance: 1.5,
      turns: null,
      fromBack: false,
      matchLaps: false,
      cast: null,
    });
  });

  test('shares a panel with another', () => {
    const text = `${parts} blank one { grid mesh shape 420 x 297 take blade 2 } blank two { grid mesh shape 210 x 297 take blade 1 }`;
    expect(designOf(text).blanks.map(({ takes }) => takes.map(({ count }) => count))).toEqual([[2], [1]]);
  });
});

describe('a band', () => {
  const band = (properties: string) => only(designOf(`${parts} band rim { of walnut_strip ${properties} }`).bands);

  test('is bent the way it was tested', () => {
    const text = 'around blade laminations 2 bends 15mm hot tested corners lapped over_length 12 over_width 2';
    expect(band(text)).toMatchObject({
      around: { name: 'blade', copies: 3 },
      laminations: 2,
      method: 'hot',
      testedRadius: 15,
      corners: 'lapped',
      overLength: 12,
      overWidth: 2,
    });
  });

  test('runs round an outline, is bent cold and mitred unless said', () => {
    expect(band('around leaf')).toMatchObject({
      around: { name: 'leaf', contours: [expect.anything()] },
      laminations: 1,
      method: 'cold',
      testedRadius: null,
      corners: 'mitred',
      overLength: 10,
      overWidth: 1,
    });
    expect(band('around leaf method damp').method).toBe('damp');
    expect(band('around leaf bends 40 tested method damp')).toMatchObject({ method: 'damp', testedRadius: 40 });
  });
});

describe('a pour', () => {
  const pour = (properties: string) => only(designOf(`${parts} pour stem { of cast ${properties} }`).pours);

  test('has its layers from below, its inserts and what is lost', () => {
    const text = `mould leaf layer clear 6 layer 4 insert tenon from 0 to 6 density 650
      overfill 1 surfaced 0.5 seal 60 waste 8% spare_castings 1 copies 2`;
    expect(pour(text)).toMatchObject({
      mould: { kind: 'outline', outline: { name: 'leaf' } },
      layers: [
        { colour: 'clear', depth: 6 },
        { colour: null, depth: 4 },
      ],
      inserts: [{ outline: { name: 'tenon' }, from: 0, to: 6, density: 650 }],
      overfill: 1,
      surfaced: 0.5,
      sealCoat: 60,
      waste: 0.08,
      spareCastings: 1,
      copies: 2,
    });
  });

  test('fills a size or a blank', () => {
    expect(pour('mould 80 x 400 layer 6').mould).toEqual({ kind: 'rectangle', width: 80, height: 400 });
    const text = `${parts} blank one { grid mesh shape 420 x 297 } pour fill { mould one layer 6 of cast }`;
    expect(only(designOf(text).pours).mould).toMatchObject({ kind: 'blank', blank: { name: 'one' } });
  });

  test('a layer may be a number with a name, with or without a colour', () => {
    const text = `let deep = 5mm ${parts} pour stem { of cast mould leaf layer deep layer amber deep layer max(2, 3) }`;
    expect(only(designOf(text).pours).layers).toEqual([
      { colour: null, depth: 5 },
      { colour: 'amber', depth: 5 },
      { colour: null, depth: 3 },
    ]);
  });
});

test('a board has its edge and its pivot', () => {
  const board = (properties: string) =>
    only(designOf(`${parts} board back { shape leaf of ply ${properties} }`).boards);
  expect(board('chamfer 10 pivot 5, 0 copies 2')).toMatchObject({
    outline: { name: 'leaf' },
    sheet: { name: 'ply' },
    edge: { kind: 'chamfer', size: 10 },
    pivot: { x: 5, y: 0 },
    copies: 2,
  });
  expect(board('round_over 6').edge).toEqual({ kind: 'round', size: 6 });
  expect(board('')).toMatchObject({ edge: { kind: 'square' }, pivot: null, copies: 1 });
});

test('a kit has what is done, its spares and how many share a jig', () => {
  const kit = (properties: string) =>
    only(designOf(`${parts} kit class { panel blade students 12 ${properties} }`).kits);
  expect(kit('done milled, notched, cut breakage 4% spares 2 per bag, 20 with teacher jig for 3')).toMatchObject({
    panel: { name: 'blade' },
    students: 12,
    done: ['milled', 'notched', 'cut'],
    breakage: 0.04,
    sparesPerBag: 2,
    sparesWithTeacher: 20,
    studentsPerJig: 3,
  });
  expect(kit('spares 20 with teacher')).toMatchObject({
    done: [],
    breakage: 0,
    sparesPerBag: 0,
    sparesWithTeacher: 20,
    studentsPerJig: 1,
  });
});
