/** Objects in the editor: hovers, proposals, definitions and the outline of the file. */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { documentOutline } from '../../server/language/features/document-outline.ts';
import { hoverAt } from '../../server/language/features/hover.ts';
import { mentionAt } from '../../server/language/features/names.ts';
import { proposalsAt } from '../../server/language/features/proposals.ts';

const text = `
wood walnut { density 610 }
strip ash { section face 3 depth 10 }
strip walnut_strip { wood walnut  section face 0.8 depth 12 }
grid mesh { three_way  side 40  of ash }
outline leaf { circle radius 60 }
outline oval { circle radius 300 }
outline stem_outline { rectangle 12 x 80 }
sheet ply { thick 6 }
resin cast { density 1.1  mix 2 to 1 by volume }
finish oil { coverage 12 }
panel blade {
  grid mesh
  shape leaf
  edge sawn
  copies 2
}
blank one { grid mesh  shape 420 x 297  take blade 2  depth 10  of cast }
band rim { around blade  of walnut_strip  laminations 2  bends 15mm hot tested }
pour stem { mould stem_outline  layer clear 6  layer 4  of cast }
board back { shape oval  of ply  chamfer 2 }
work ginkgo {
  copies 3
  place blade at 0, 0
  place blade at 200, 0
  place stem at 100, 0 in front of back
  place back at 0, 0
  hang cleat screws 2 each 8kg
  finish oil
  hourly 32 EUR
  margin 35%
}
kit class { panel blade  students 12  done milled, cut  spares 2 per bag }
`;
const analysis = analyse(text);

const hoverOf = (words: string): readonly string[] =>
  hoverAt(analysis, text.indexOf(words) + words.length)
    ?.markdown.split('\n')
    .filter((line) => line !== '') ?? [];

test('the file is sound', () => {
  expect(analysis.problems).toEqual([]);
});

test.each([
  [
    'blank one',
    [
      '**blank** `one` (of grid mesh)',
      '- 420 mm x 297 mm',
      '- Sawn from it: 2 of `blade`',
      '- To make: 1 in all, proven fewest',
      '- Cast in `cast`, finished depth 10 mm',
    ],
  ],
  [
    'band rim',
    ['**band** `rim` (around blade)', '- 2 laminations of `walnut_strip`, bent hot', '- Tested to a radius of 15 mm'],
  ],
  [
    'pour stem',
    ['**pour** `stem` (1 copy)', '- Mould `stem_outline`, of `cast`', '- Layers from below: clear 6 mm, 4 mm'],
  ],
  ['board back', ['**board** `back` (1 copy)', '- Outline `oval`, of `ply`', '- Chamfer 2 mm']],
  [
    'work ginkgo',
    [
      '**work** `ginkgo` (3 copies)',
      '- Placed: 2 `blade`, `stem`, `back`',
      '- Hangs on 2 screws, 8 kg each as stated by their maker',
      '- Finish `oil`',
      '- 32.00 EUR an hour',
      '- Margin 35 %',
    ],
  ],
  [
    'kit class',
    [
      '**kit** `class` (12 students)',
      '- Each builds one `blade`',
      '- Done before: milled, cut',
      '- Spares: 2 a bag, 0 with the teacher',
    ],
  ],
])('%s tells what it is', (words, lines) => {
  expect(hoverOf(words)).toEqual(lines);
});

test.each([
  ['take blade', 'panel'],
  ['around blade', 'panel'],
  ['mould stem_outline', 'outline'],
  ['  of cast', 'resin'],
  ['of ply', 'sheet'],
  ['place stem', 'pour'],
  ['in front of back', 'board'],
  ['  finish oil', 'finish'],
  ['kit class { panel blade', 'panel'],
  ['strip walnut_strip { wood walnut', 'wood'],
])('the name in `%s` leads to a %s', (words, kind) => {
  const mention = mentionAt(analysis.names, text.lastIndexOf(words) + words.length);
  expect(mention?.definition?.kind).toBe(kind);
});

test('the outline of the file lists them', () => {
  const kinds = documentOutline(analysis).map(({ kind }) => kind);
  expect(kinds.slice(-6)).toEqual(['blank', 'band', 'pour', 'board', 'work', 'kit']);
});

describe('proposals', () => {
  const after = (words: string): readonly string[] =>
    proposalsAt(analysis, text.lastIndexOf(words) + words.length).map(({ label }) => label);

  test.each([
    ['depth 10  of ', ['cast']],
    ['take ', ['blade']],
    ['around ', ['leaf', 'oval', 'stem_outline', 'blade']],
    ['chamfer 2 }\nwork ginkgo {\n  copies 3\n  place ', ['blade', 'stem', 'back']],
    ['\n  finish ', ['oil', 'none']],
    ['hang ', ['cleat']],
    ['done ', ['milled', 'notched', 'cut', 'bevelled']],
  ])('behind `%s`', (words, labels) => {
    expect(after(words).slice(0, labels.length)).toEqual(labels);
  });

  test('in a frame are its own words, and the steps of the job behind `for`', () => {
    const frame = 'panel p {\n  frame {\n    ';
    expect(proposalsAt(analyse(`${frame}\n  }\n}`), frame.length).map(({ label }) => label)).toEqual([
      'of',
      'corners',
      'groove',
      'stub',
      'end_gap',
      'border',
      'fillers',
    ]);
    const work = 'work w {\n  minutes 2 once for ';
    expect(proposalsAt(analyse(`${work}\n}`), work.length).map(({ label }) => label)).toContain('notch_strips');
  });
});
