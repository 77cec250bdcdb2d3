/** Templates at full size, read back by pdf.js and by an independent DXF reader. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Parser, { type IArcEntity, type ICircleEntity, type ILineEntity } from 'dxf-parser';
import { beforeAll, describe, expect, test } from 'vitest';
import { analyse } from '../../../server/analyse.ts';
import { boundsOf } from '../../../server/geometry/polygons.ts';
import { templateDxf } from '../../../server/drawing/dxf/template-dxf.ts';
import { writeDxf } from '../../../server/drawing/dxf/write-dxf.ts';
import { type PaperName } from '../../../server/drawing/page/paper-sizes.ts';
import type { Typefaces } from '../../../server/drawing/page/typeface.ts';
import { writePdf } from '../../../server/drawing/page/write-pdf.ts';
import { buildTemplate } from '../../../server/drawing/template/build-template.ts';
import { fromBack } from '../../../server/drawing/template/from-back.ts';
import type { Template } from '../../../server/drawing/template/template.ts';
import { templateSubject } from '../../../server/drawing/template/template-subject.ts';
import { tiledTemplate } from '../../../server/drawing/template/tiled-template.ts';
import { loadTypefaces } from '../../../server/machine/typefaces.ts';
import { extentPt, readPdf } from '../read-pdf.ts';
import { planAtSight } from '../../plan-at-sight.ts';

const ginkgo = readFileSync(fileURLToPath(new URL('../../../samples/ginkgo.lap', import.meta.url)), 'utf8');
const points = (millimetres: number): number => (millimetres * 72) / 25.4;

let typefaces: Typefaces;
beforeAll(async () => {
  typefaces = await loadTypefaces();
});

/** A three-way lattice under a round panel of radius 400, measured a little wide. */
const round = (more: string): string => `title "Round"
strip ash { wood white_ash  section face 3 depth 10 }
bench shop { kerf 3 }
grid mesh { three_way  side 40  of ash  fit 0.05  ${more} }
outline disc { circle radius 400 }
panel plate { grid mesh  shape disc  edge sawn }
`;

function templateOf(text: string, name: string): Template {
  const analysis = analyse(text);
  const subject = templateSubject(analysis.design, name);
  const template = subject && buildTemplate(analysis, subject, 'round.lap');
  if (!template) throw new Error(`nothing to cut by is called ${name}`);
  return template;
}

const print = async (template: Template, paper: PaperName) =>
  (await readPdf(await writePdf(tiledTemplate(template, paper, typefaces), typefaces))).pages;

describe('a tiled template', () => {
  // ISO 216 and ASME Y14.1, in points of 1/72 in.
  test.each([
    ['A4', [595.276, 841.89]],
    ['A3', [841.89, 1190.551]],
    ['letter', [612, 792]],
    ['tabloid', [792, 1224]],
  ] as const)('has pages of %s, a map first, and every page says what it rests on', async (paper, size) => {
    const pages = await print(templateOf(round(''), 'plate'), paper);
    expect(pages[0]?.text).toContain('Template of panel plate');
    const count = pages.length - 1;
    for (const [index, page] of pages.entries()) {
      const [short = 0, long = 0] = [...page.sizePt].sort((a, b) => a - b);
      expect(short).toBeCloseTo(size[0], 2);
      expect(long).toBeCloseTo(size[1], 2);
      for (const words of [
        'panel plate',
        'round.lap',
        'side 40.0',
        'kerf 3.00',
        'Check: from node 1',
        'seen from the front',
      ])
        expect(page.text).toContain(words);
      if (index > 0) expect(page.text).toContain(`sheet ${index} of ${count}`);
      const bars = page.pathsPt.map(extentPt);
      expect(bars.some(([width, height]) => Math.abs(width - points(100)) < 0.01 && height < points(3))).toBe(true);
      expect(bars.some(([width, height]) => Math.abs(height - points(100)) < 0.01 && width < points(3))).toBe(true);
    }
  });

  test('of a drawing that one sheet holds has that sheet alone', async () => {
    const small = 'outline tag { circle radius 60 }';
    const pages = await print(templateOf(small, 'tag'), 'A4');
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toContain('sheet 1 of 1');
    // The finished line is a circle of 120 mm, the saw line 1.5 mm outside it.
    const widths = (pages[0]?.pathsPt ?? []).map((path) => extentPt(path)[0]);
    for (const width of [120, 123]) expect(widths.some((each) => Math.abs(each - points(width)) < 0.02)).toBe(true);
  });

  test('skips sheets with nothing on them and says so on the map', async () => {
    const wedge = 'outline wedge { start 0, 0  line to 900, 0  line to 0, 900  line to start }';
    const [map, ...sheets] = await print(templateOf(wedge, 'wedge'), 'A4');
    expect(map?.text).toContain('no sheet');
    expect(map?.text).toMatch(/places on the map have\s+nothing to show/);
    expect(map?.text).toContain(`1 to ${sheets.length}`);
  });

  test('names every join on both its sheets', async () => {
    const [, ...sheets] = await print(templateOf(ginkgo, 'blade'), 'A4');
    for (const name of ['A1', 'A2']) for (const sheet of sheets) expect(sheet.text).toContain(name);
    expect(sheets[0]?.text).toContain('glue: sheet 2 lies on this strip');
    expect(sheets[1]?.text).toContain('cut along this line, then lay it on sheet 1');
  });
});

describe('what a template is registered by', () => {
  test('three nodes of the lattice, whole sides apart, far from one another', () => {
    const { marks } = templateOf(round(''), 'plate');
    expect(marks.map(({ label }) => label)).toEqual(['1', '2', '3']);
    // Nodes of a three-way grid: x = 40(i + j/2), y = 40·j·√3/2.
    for (const { at } of marks) {
      const j = at.y / (40 * Math.sqrt(0.75));
      expect(j).toBeCloseTo(Math.round(j), 6);
      expect(at.x / 40 - j / 2).toBeCloseTo(Math.round(at.x / 40 - j / 2), 6);
      expect(Math.hypot(at.x, at.y)).toBeLessThan(400);
    }
    const [a, b, c] = marks.map(({ at }) => at);
    const area =
      Math.abs(
        ((b?.x ?? 0) - (a?.x ?? 0)) * ((c?.y ?? 0) - (a?.y ?? 0)) -
          ((c?.x ?? 0) - (a?.x ?? 0)) * ((b?.y ?? 0) - (a?.y ?? 0)),
      ) / 2;
    // The largest triangle in a circle of radius r is 3√3/4·r² (common knowledge): nodes come near.
    expect(area).toBeGreaterThan(0.85 * 0.75 * Math.sqrt(3) * 392 ** 2);
  });

  test('they follow the lattice as measured, and so do the middles of the strips', () => {
    const drawn = templateOf(round(''), 'plate');
    const measured = templateOf(round('measured 10 cells 404'), 'plate');
    expect(measured.marks[0]?.at.y).toBeCloseTo((drawn.marks[0]?.at.y ?? NaN) * 1.01, 6);
    expect(measured.check).not.toBe(drawn.check);
    expect(measured.assumptions[0]).toContain('side 40.0 as drawn, ten sides 404.0 as measured');
    expect(measured.lines).toEqual(drawn.lines);
  });
});

describe('with a band of 6 mm', () => {
  const banded = `strip walnut { wood black_walnut  section face 1.5 depth 12 }
strip ash { wood white_ash  section face 3 depth 10 }
grid mesh { three_way  side 40  of ash }
outline disc { circle radius 60 }
panel plate { grid mesh  shape disc  edge sawn }
band rim { around plate  of walnut  laminations 4 }
`;

  test('the sand line lies 6 mm inside the finished one, the saw line 1.5 mm outside that', async () => {
    const template = templateOf(banded, 'plate');
    expect(template.lines.map(({ kind }) => kind)).toEqual(['finished', 'saw', 'sand']);
    expect(template.assumptions).toContain(
      'sand line 6.0 inside the finished line, for the bands; saw line 1.5 outside the sand line',
    );
    const [page] = await print(template, 'A4');
    const widths = (page?.pathsPt ?? []).map((path) => extentPt(path)[0]);
    for (const width of [120, 111, 108])
      expect(widths.some((each) => Math.abs(each - points(width)) < 0.02)).toBe(true);
  });

  test('every line is on some sheet', () => {
    const { bounds } = templateOf(banded, 'plate');
    expect(bounds.right - bounds.left).toBeCloseTo(120, 3);
  });
});

describe('the caul of a band', () => {
  const text = `strip veneer { wood beech  section face 1 depth 12 }
outline disc { circle radius 100 }
band rim { around disc  of veneer  laminations 2  bends 120mm cold tested }
`;

  test('presses from outside: one pad, 3 mm, beyond the finished line', () => {
    const template = templateOf(text, 'rim');
    expect(template.lines.map(({ kind }) => kind)).toEqual(['caul', 'finished']);
    expect(template.bounds.right).toBeCloseTo(103, 3);
    const arcs = template.lines[0]?.contours.flat() ?? [];
    expect(arcs.every((segment) => segment.kind === 'arc' && Math.abs(segment.radiusX - 103) < 0.01)).toBe(true);
  });

  test('rings the worst place, with its bend, its limit and the thickness that would bend', () => {
    // The middle of the inner lamination lies 1.5 mm inside the edge: radius 98.5. It bends in proportion to its thickness.
    const [spot, ...others] = templateOf(text, 'rim').spots;
    expect(others).toEqual([]);
    expect(spot?.text).toBe(`bends to 98.5, limit 120.0; ${(98.5 / 120).toFixed(2)} thick it would bend`);
    expect(Math.hypot(spot?.at.x ?? 0, spot?.at.y ?? 0)).toBeCloseTo(100, 3);
  });
});

describe('what a work hangs on', () => {
  const text = `sheet ply { thick 6  size 1220 x 610  density 680 }
outline slab { rectangle 400 x 300 }
board back { shape slab  of ply }
work wall { place back at 0, 0  hang cleat screws 3 each 5kg height 120 }
`;

  test('holes and cleat lie as the plan says, mirrored for who drills from behind', () => {
    const front = templateOf(text, 'wall');
    const { hanging } = planAtSight(analyse(text), '');
    const [places, { fromMm = 0, toMm = 0, heightMm = 0 } = {}] = [hanging?.drill ?? [], hanging?.cleat ?? undefined];
    const back = fromBack(front);
    // The cleat's left end as seen from behind is its right end from the front.
    expect(back.marks).toHaveLength(places.length);
    back.marks.forEach(({ label, at }, index) => {
      expect([label, at.y]).toEqual([String(index + 1), places[index]?.yMm]);
      expect(at.x + toMm).toBeCloseTo(places[index]?.xMm ?? NaN, 6);
    });
    expect(front.lines.map(({ kind }) => kind)).toEqual(['finished', 'cleat', 'spacer']);
    const cleat = boundsOf(front.ground[0] ?? []);
    expect([cleat.left, cleat.right, cleat.top]).toEqual([fromMm, toMm, heightMm]);
    expect(heightMm).toBe(120);
  });

  test('prints cleat and spacer at full size, and no sheet for what lies between', async () => {
    const pages = await print(fromBack(templateOf(text, 'wall')), 'A4');
    const widths = pages.slice(1).flatMap(({ pathsPt }) => pathsPt.map((path) => extentPt(path)));
    expect(pages[0]?.text).toContain('seen from the back');
    expect(pages[0]?.text).toContain('Prick the numbered crosses through where the fixings go');
    expect(widths.some(([, height]) => Math.abs(height - points(40)) < 0.02)).toBe(true);
  });
});

describe('hollows that the blade does not turn through', () => {
  const bench = 'bench shop { band_blade 6 cuts 0.9 curve 16 }\n';
  const spots = (outline: string): [string, number, number][] =>
    templateOf(bench + outline, 'tag').spots.map(({ at, text }) => [text.split(':')[0] ?? '', at.x, at.y]);

  test('an inside corner is one, an outside corner is none', () => {
    const angle =
      'outline tag { start 0, 0  line to 80, 0  line to 80, 40  line to 40, 40  line to 40, 80  line to 0, 80  line to start }';
    expect(spots(angle)).toEqual([['inside corner', 40, 40]]);
  });

  test('a hollow counts where the saw runs: 1.5 mm outside, by so much tighter', () => {
    // A half circle of radius r bitten out of the top; its deepest place is as tight as any other.
    const bitten = (radius: number): string =>
      `outline tag { start -60, 0  line to 60, 0  line to 60, 60  line to ${radius}, 60  arc to -${radius}, 60 radius ${radius} right  line to -60, 60  line to start }`;
    expect(spots(bitten(17)).map(([words]) => words)).toEqual(['hollow of 15.5']);
    expect(spots(bitten(18))).toEqual([]);
  });
});

describe('seen from the back', () => {
  test('everything is mirrored left and right, its distances kept, and it says so', async () => {
    const front = templateOf(ginkgo, 'blade');
    const back = fromBack(front);
    expect(back.marks.map(({ at }) => [0 - at.x, at.y])).toEqual(front.marks.map(({ at }) => [at.x, at.y]));
    expect(back.bounds.left).toBeCloseTo(-front.bounds.right, 9);
    expect(back.check).toBe(front.check);
    const pages = await print(back, 'A4');
    for (const { text } of pages) expect(text).toContain('seen from the back');
  });

  test('is asked for where the work has the panel mirrored', () => {
    const work = `${round('')}work pair { place plate at 0, 0  place plate at 900, 0 mirrored }`;
    expect(templateOf(work, 'plate').assumptions).toContain(
      'hand: 1 of 2 in the work is mirrored and cut by the template seen from the back',
    );
  });
});

describe('a template as DXF', () => {
  const dxf = (template: Template) => {
    const file = new Parser().parseSync(writeDxf(templateDxf(template)));
    if (!file) throw new Error('the reader finds no drawing');
    return file;
  };

  test('has a layer for each line, and straight lines stay lines of their lengths', () => {
    const { entities, tables } = dxf(templateOf('outline door { rectangle 300 x 200 }', 'door'));
    expect(Object.keys(tables.layer.layers)).toEqual([
      'SAW_LINE',
      'FINISHED_LINE',
      'MIDDLES_OF_STRIPS',
      'REGISTER',
      'NOTES',
    ]);
    const sides = entities.filter(({ layer }) => layer === 'FINISHED_LINE') as ILineEntity[];
    expect(sides.map(({ type }) => type)).toEqual(['LINE', 'LINE', 'LINE', 'LINE']);
    const lengths = sides.map(({ vertices: [from, to] }) =>
      Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0)),
    );
    expect(lengths.sort((a, b) => a - b)).toEqual([200, 200, 300, 300]);
  });

  test('arcs stay arcs, and so does the saw line: round corners of a rectangle, and a circle 1.5 mm larger', () => {
    const corners = dxf(templateOf('outline door { rectangle 300 x 200 }', 'door')).entities.filter(
      ({ layer, type }) => layer === 'SAW_LINE' && type === 'ARC',
    ) as IArcEntity[];
    expect(corners.map(({ radius }) => radius)).toEqual([1.5, 1.5, 1.5, 1.5]);
    const radii = (dxf(templateOf('outline tag { circle radius 60 }', 'tag')).entities as ICircleEntity[])
      .filter(({ type }) => type === 'ARC' || type === 'CIRCLE')
      .map(({ layer, radius }) => `${layer} ${radius.toFixed(3)}`);
    expect(new Set(radii)).toEqual(new Set(['SAW_LINE 61.500', 'FINISHED_LINE 60.000']));
  });
});
