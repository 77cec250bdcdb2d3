/** Pages of the printed sheet for what is not lattice: blanks, frames, castings, bands, boards; and what measuring changes. */
import { beforeAll, describe, expect, test } from 'vitest';
import type { Typefaces } from '../../server/drawing/page/typeface.ts';
import { loadTypefaces } from '../../server/machine/typefaces.ts';
import { flatItems, type GroupItem, type PageItem } from '../../server/drawing/page/page-model.ts';
import { writePlanCsv } from '../../server/shop/writers/write-plan-csv.ts';
import { writePlanText } from '../../server/shop/writers/write-plan-text.ts';
import { changeFigure } from '../../server/words/figures.ts';
import { laidTexts, outOfPage, overlaps, printed, type Printed, textsOf } from './printed-sheet.ts';

const text = `title "Everything once"
strip ash { wood white_ash  section face 3 depth 10  lengths 900 }
strip bass { wood basswood  section face 3 depth 10  lengths 600 }
strip walnut_band { wood walnut  section face 1 depth 12  lengths 900 }
strip maple { wood sugar_maple  section face 20 depth 30  lengths 900 }
bench shop { bevels 45  kerf 3 }
grid squares { square  pitch 40  of ash }
motif cross for square { divider diagonal from corner 1 to corner 3 }
outline plate { rectangle 76 x 76 }
panel tile { grid squares  centred node  shape plate  edge sawn  fill square with cross of bass  copies 2 }
panel window { grid squares  shape 5 x 4 cells  edge framed  frame { of maple  groove 6  fillers }  fill square with cross of bass }
resin clear {
  mix 2 to 1 by volume  part densities 1.13, 0.98  density 1.1
  deepest 12  recoat 4h to 12h  pot_life 25min  mix_size 60mL
}
blank cast { grid squares  shape 300 x 130  take tile 2  depth 9  of clear }
outline bar { rectangle 60 x 30 }
pour sample { mould bar  layer 4  layer 5  of clear }
outline disc { circle radius 90 }
sheet ply { thick 6  size 600 x 300  density 680 }
board back { shape disc  of ply }
band rim { around back_line  of walnut_band  laminations 2  method cold }
`.replace('around back_line', 'around disc');

type Corner = { readonly x: number; readonly y: number };

let typefaces: Typefaces;
let sheet: Printed;
beforeAll(async () => {
  typefaces = await loadTypefaces();
  sheet = printed(text, typefaces);
});

/** The words between a step's heading and its gate's end. */
function ofStep(title: string): string {
  const words = sheet.file.pages.flatMap(textsOf).join(' ');
  const steps = sheet.plan.steps;
  const index = steps.findIndex((step) => step.title === title);
  const heading = (at: number): number => words.lastIndexOf(`${steps[at]?.order ?? ''}  ${steps[at]?.title ?? ''}`);
  const next = index + 1 < steps.length ? heading(index + 1) : words.length;
  return words.slice(heading(index), next);
}

test('the design is sound', () => {
  expect(sheet.plan.incomplete).toBe(false);
});

test.each(['A4', 'letter'] as const)('on %s every text keeps to its place', (paper) => {
  for (const page of printed(text, typefaces, paper).file.pages) {
    const boxes = laidTexts(page, typefaces);
    expect(outOfPage(page, boxes), page.title).toEqual([]);
    expect(overlaps(boxes), page.title).toEqual([]);
  }
});

test('a blank has its page: the cut-outs drawn and placed, which cells get infill, the gate', () => {
  const [blank] = sheet.plan.blanks;
  const page = sheet.file.pages.find(({ title }) => title === 'Blank cast');
  if (!page || !blank) throw new Error('no page for the blank');
  const words = textsOf(page).join(' ');
  expect(words).toContain(`Infill goes into the ${blank.cells} cells drawn with it`);
  expect(words).toContain('Gate: turned over and tapped');
  expect(textsOf(page).filter((each) => each === 'tile')).toHaveLength(2 * blank.places.length);
  for (const { move } of blank.places) expect(words).toContain(move.dx.toFixed(1));
  const sawn = [...flatItems(page.items)].filter((item) => item.kind === 'path' && item.facts['mark'] === 'tile');
  expect(sawn).toHaveLength(blank.places.length);
});

test('frame members stand in the frame’s step with their widths, and so do the fillers', () => {
  const step = ofStep('frame');
  for (const { mark, lengthMm, innerMm } of sheet.plan.frames.flatMap(({ members }) => members))
    expect(step).toContain(`${mark} ${lengthMm.toFixed(1)} ${innerMm.toFixed(1)} 20.0 45° / 45°`);
  expect(step).toContain('Fillers in the groove of window');
});

describe('castings', () => {
  test('have their layers in the step: depth, mL, both parts, mixes, window, hold-down', () => {
    const [pour] = sheet.plan.pours.filter(({ kind }) => kind === 'blank');
    const step = ofStep('pour');
    const [layer] = pour?.layers ?? [];
    for (const figure of [layer?.volumeMl, layer?.partA_g, layer?.partB_g]) expect(step).toContain(figure?.toFixed(1));
    expect(step).toContain(`Hold each down with ${Math.ceil(pour?.holdDownG ?? NaN)} g or more`);
    const body = ofStep('cast bodies');
    expect(body).toContain('4 to 12');
    expect(body).toContain('Layer 2: 9.0 mL to each casting');
  });

  test('one mix is a share of the whole: what is weighed into one cup', () => {
    const [pour] = sheet.plan.pours.filter(({ kind }) => kind === 'blank');
    const [layer] = pour?.layers ?? [];
    if (!layer || layer.partA_g === null) throw new Error('no layer');
    expect(layer.mixes).toBeGreaterThan(1);
    expect(ofStep('pour')).toContain(`A ${(layer.partA_g / layer.mixes).toFixed(1)} and B`);
  });
});

test('bands have every lamination’s cut, the bend’s limit and its grade', () => {
  const step = ofStep('bend bands');
  const [band] = sheet.plan.bands;
  for (const { mark, cutMm } of band?.laminations.flatMap(({ pieces }) => pieces) ?? []) {
    expect(step).toContain(mark);
    expect(step).toContain(cutMm.toFixed(1));
  }
  expect(step).toContain(`: ${band?.grade ?? ''}.`);
});

test('boards have their size, the piece they are sawn from and the trammel', () => {
  expect(ofStep('cut boards')).toContain('180.0 × 180.0');
  expect(ofStep('cut boards')).toMatch(/trammel .* 90\.0/);
});

describe('what measuring changes', () => {
  test('stands on the card of the second sheet, in the text and in the table: 37√2 by 0.1·√2 and −0.1·√2', () => {
    // the diagonal of a cell of pitch 40 and face 3 is (40 − 3)·√2 less its square points' loss, which neither changes
    const { pieces } = sheet.plan;
    const diagonal = pieces.find(({ from }) => from.some(({ piece }) => piece === 'diagonal'));
    expect(diagonal?.perTenth?.pitchMm).toBeCloseTo(0.1 * Math.SQRT2, 3);
    expect(diagonal?.perTenth?.faceMm).toBeCloseTo(-0.1 * Math.SQRT2, 3);
    const card = sheet.file.pages.find(({ title }) => title.startsWith('Record card, what measuring changes'));
    const words = card ? textsOf(card) : [];
    expect(words).toContain('+0.14');
    expect(words).toContain('−0.14');
    expect(words).toContain(diagonal?.mark);
    expect(writePlanText(sheet.plan)).toMatch(/\+0\.14 +−0\.14 +________/);
    const rows = writePlanCsv(sheet.plan)['pieces.csv'].split('\r\n');
    expect(rows[0]).toContain('mm_per_0.1_mm_of_pitch,mm_per_0.1_mm_of_face');
    expect(rows.some((row) => row.startsWith(`${diagonal?.mark ?? ''},`) && /,0\.141\d*,-0\.141\d*$/.test(row))).toBe(
      true,
    );
  });

  test('is written with its sign to 0.01, and a dash where it is not known', () => {
    expect([0.0577, -0.1, 0.001, null].map((change) => changeFigure(change, 'mm'))).toEqual([
      '+0.06',
      '−0.10',
      '0.00',
      '–',
    ]);
  });
});

test('sheets have a page with every board inside the margin, where the table says', () => {
  const page = sheet.file.pages.find(({ title }) => title.includes('Sheet ply'));
  const [planned] = sheet.plan.sheets;
  expect(planned?.places).toHaveLength(1);
  expect((page ? textsOf(page) : []).join(' ')).toContain('Boards on the sheet');
  const picturesIn = (items: readonly PageItem[]): GroupItem[] =>
    items.flatMap((item) => (item.kind !== 'group' ? [] : item.name === 'picture' ? [item] : picturesIn(item.items)));
  const [group] = picturesIn(page?.items ?? []);
  const scale = Number(group?.facts['scale']);
  const picture = [...flatItems(group?.items ?? [])].flatMap((item) =>
    item.kind === 'path'
      ? [
          {
            facts: item.facts,
            corners: item.steps.flatMap(([, x, y]) =>
              x === undefined || y === undefined ? [] : [{ x: x / scale, y: y / scale }],
            ),
          },
        ]
      : [],
  );
  const board = picture.find(({ facts }) => facts['board'] === 'back')?.corners ?? [];
  const outer = picture[0]?.corners ?? [];
  const reach = (corners: readonly Corner[], axis: 'x' | 'y'): [number, number] => [
    Math.min(...corners.map((corner) => corner[axis])),
    Math.max(...corners.map((corner) => corner[axis])),
  ];
  expect(reach(board, 'x')[1] - reach(board, 'x')[0]).toBeCloseTo(180, 0);
  for (const axis of ['x', 'y'] as const) {
    const [from, to] = reach(outer, axis);
    const [first, last] = reach(board, axis);
    expect(first - from).toBeGreaterThanOrEqual((planned?.marginMm ?? 0) - 0.01);
    expect(to - last).toBeGreaterThanOrEqual((planned?.marginMm ?? 0) - 0.01);
  }
  expect(reach(board, 'x')[0] - reach(outer, 'x')[0] + 90).toBeCloseTo(planned?.places[0]?.move.dx ?? NaN, 1);
});
