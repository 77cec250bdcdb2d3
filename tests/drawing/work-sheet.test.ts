/** The assembled work to print: every part in its place, in order from the wall, with its name; size, bands and casts. */
import { readFileSync } from 'node:fs';
import * as pdf from '@cantoo/pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { analyse, type Analysis } from '../../server/analyse.ts';
import type { Drawing } from '../../server/drawing/drawing.ts';
import { writePdf } from '../../server/drawing/page/write-pdf.ts';
import { panelPage } from '../../server/drawing/panel-page.ts';
import { workSheet } from '../../server/drawing/work-sheet.ts';
import { writeSvg } from '../../server/drawing/write-svg.ts';
import { loadTypefaces } from '../../server/machine/typefaces.ts';
import { planWork } from '../../server/shop/work/plan-work.ts';
import { readPaths, ringArea } from './read-svg.ts';

const sheetOf = (analysis: Analysis): Drawing => {
  const { work } = analysis.design;
  const drawing = work && workSheet(work, analysis, 'Sheet');
  if (!drawing) throw new Error('nothing is placed');
  return drawing;
};

/** A plate of 100 x 60 banded with two laminations of 0.8 mm, in front of a board twice as large. */
const banded = `units mm
strip ash { section face 3 depth 10 }
strip thin { wood walnut  section face 0.8 depth 10 }
sheet birch_ply { thick 6  size 600 x 600 }
resin cast { density 1.1  mix 2 to 1 by volume  part densities 1.1, 1  deepest 12  pot_life 40min  recoat 4h to 16h  cure 3days  mix_size 800mL }
grid mesh { square  side 20  of ash }
outline rim { start 0, 0  line to 100, 0  line to 100, 60  line to 0, 60  line to start }
outline large { start 0, 0  line to 200, 0  line to 200, 120  line to 0, 120  line to start }
outline drop { start 0, 0  line to 10, 0  line to 10, 40  line to 0, 40  line to start }
panel plate { grid mesh  shape rim  edge sawn }
band lipping { around plate  of thin  laminations 2  corners mitred }
pour stem { mould drop  of cast  layer clear 4  layer amber 6 }
board back { shape large  of birch_ply  chamfer 4 }
work plaque {
  place plate at 50, 30
  place stem at 20, 20
  place back at 0, 0
}
`;
const analysis = analyse(banded);
const svg = writeSvg(sheetOf(analysis), 'plaque.lap');

/** The markup of the layers of one part, one text a layer, in order. */
const layersOf = (markup: string, part: string): string[] =>
  [...markup.matchAll(/<g id="layer-\d+"[^>]*data-part="([^"]*)"[^>]*>[^]*?(?=<g id="layer-|<text)/g)].flatMap(
    ([layer, name]) => (name === part ? [layer] : []),
  );

it('has no error in its text', () => {
  expect(analysis.problems.filter(({ severity }) => severity === 'error')).toEqual([]);
});

describe('the sheet of a work', () => {
  it('draws parts from the wall to the front, each under its name', () => {
    const names = [...svg.matchAll(/data-part="([^"]*)"/g)].map(([, name]) => name);
    expect([...new Set(names)]).toEqual(['back', 'plate', 'stem']);
    expect(sheetOf(analysis).summary).toContain('From the wall: back, plate, stem');
  });

  it('measures over all, as the plan does', () => {
    const plan = planWork(analysis.design, analysis.panels);
    expect([plan?.widthMm, plan?.heightMm]).toEqual([200, 120]);
    expect(sheetOf(analysis).texts.map(({ text }) => text)).toEqual(['200 mm', '120 mm']);
    expect(sheetOf(analysis).summary).toContain('200 mm wide, 120 mm high over all');
    expect(svg).toContain('data-check-mm="100"');
    expect(svg).toContain('From plaque.lap');
  });

  it('shows a band as the wood between the finished edge and the lattice, by hand 100·60 − 96.8·56.8 mm²', () => {
    const [band] = layersOf(svg, 'plate')
      .flatMap(readPaths)
      .filter(({ mark }) => mark === 'lipping');
    const area = (band?.rings ?? []).reduce((sum, ring) => sum + ringArea(ring), 0);
    expect(area).toBeCloseTo(100 * 60 - 96.8 * 56.8, 1);
  });

  it('cuts the lattice down to the inside of the band, in one clip', () => {
    const clips = [...svg.matchAll(/<clipPath id="layer-clip-\d+"><path [^>]*>/g)].map(([tag]) => tag);
    expect(clips).toHaveLength(1);
    const [inside] = readPaths(clips[0] ?? '')[0]?.rings ?? [];
    expect(ringArea(inside ?? [])).toBeCloseTo(96.8 * 56.8, 1);
    expect(
      layersOf(svg, 'plate')
        .flatMap(readPaths)
        .some(({ mark }) => mark === 'S1'),
    ).toBe(true);
  });

  it('shows the broken edge of a board as a second outline', () => {
    const areas = layersOf(svg, 'back')
      .flatMap(readPaths)
      .filter(({ mark }) => mark === 'back');
    expect(areas.map(({ rings }) => ringArea(rings[0] ?? []))).toEqual([200 * 120, 192 * 112]);
  });

  it('lets what lies behind a cast shine through, in SVG and in PDF', async () => {
    expect(svg).toMatch(/\.resin \{ fill-opacity: 0\.4; \}/);
    const bytes = await writePdf(panelPage(sheetOf(analysis), 'plaque.lap'), await loadTypefaces());
    const [page] = (await pdf.PDFDocument.load(bytes)).getPages();
    const states = page?.node.Resources()?.lookup(pdf.PDFName.of('ExtGState'));
    expect(states?.toString()).toMatch(/\/ca 0\.4\b/);
  });

  it('is null where nothing is placed', () => {
    const { design } = analyse('units mm\nwork empty { copies 2 }\n');
    expect(design.work && workSheet(design.work, analysis, 'Empty')).toBeNull();
  });
});

describe('the ginkgo', () => {
  let drawn = '';
  beforeAll(() => {
    drawn = writeSvg(sheetOf(analyse(readFileSync('samples/ginkgo.lap', 'utf8'))), 'ginkgo.lap');
  });

  it('has three leaves with their bands and stems before the board, and 1000 × 580 mm over all', () => {
    const marksOf = (part: string): (string | null)[] =>
      layersOf(drawn, part)
        .flatMap(readPaths)
        .map(({ mark }) => mark);
    const count = (part: string, mark: string): number => marksOf(part).filter((each) => each === mark).length;
    expect([count('blade', 'rim'), count('stem', 'stem'), count('back', 'back')]).toEqual([3, 3, 2]);
    expect(drawn).toContain('1000 mm wide, 580 mm high over all');
  });

  it('gives every path that has a mark an id of its own', () => {
    const ids = readPaths(drawn).flatMap(({ id }) => id ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThan(3 * 200);
  });
});
