/** Whole files, made at random, printed: what is printed prints the same again and makes the same plan. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { printDocument } from '../../grammar/writing/print-document.ts';
import { tokenize } from '../../grammar/vocabulary/tokens.ts';
import { analyse } from '../../server/analyse.ts';
import { planAtSight } from '../plan-at-sight.ts';

const runs = 200;

const decimal = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenths) => String(tenths / 10));

/** A length in one of the ways to write it, given in whole millimetres. */
const lengthOf = (millimetres: number): fc.Arbitrary<string> =>
  fc.constantFrom(
    String(millimetres),
    `${millimetres}mm`,
    `(${millimetres - 1} + 1mm)`,
    `${millimetres * 2}/2`,
    `-(-${millimetres})`,
    `max(${millimetres}, 1)`,
    `unit * ${millimetres}`,
  );

const strips = fc
  .record({ face: fc.constantFrom(3, 4), depth: fc.constantFrom(9, 12), spare: fc.boolean() })
  .chain(({ face, depth, spare }) =>
    fc.tuple(lengthOf(face), lengthOf(depth), fc.constantFrom('', 'flush 0.3', 'lengths 900, 48-1/2", 1200')).map(
      ([faceText, depthText, more]) =>
        `strip ash { section face ${faceText} depth ${depthText} ${more} }
           strip bass { wood basswood section face 1/8in depth ${depthText} ${spare ? 'spare 8%' : ''} }`,
    ),
  );

interface Grid {
  readonly kind: string;
  readonly shape: string;
  readonly motifs: readonly string[];
}

const grids: readonly Grid[] = [
  {
    kind: 'three_way side',
    shape: 'triangle',
    motifs: [
      'node hub at incentre piece arm from corner to hub, every corner fit_order arm, arm, arm key 0.1',
      'piece bar from mid edge to turned mid edge by 1 corners about centroid, every edge',
    ],
  },
  {
    kind: 'square pitch',
    shape: 'square',
    motifs: [
      'piece rise from corner 1 to corner 3 piece fall from corner 2 to corner 4, above rise',
      'piece wing from 0.25 along edge 1 to mid edge 3, mirrored over mid edge 1 to mid edge 3',
      'divider halving from corner 1 to corner 3 fill halves with leaf { tip 45deg at hub of the square corner }',
    ],
  },
  {
    kind: 'diamond 60deg side',
    shape: 'rhombus',
    motifs: ['divider waist from corner 1 to corner 3 fill halves with leaf'],
  },
];

const design = fc
  .record({
    strips,
    grid: fc.constantFrom(...grids),
    side: fc.integer({ min: 38, max: 60 }),
    across: fc.integer({ min: 1, max: 3 }),
    up: fc.integer({ min: 1, max: 3 }),
    edge: fc.constantFrom('edge sawn tail 6', 'edge framed stub 5', ''),
    extras: fc.subarray([
      'title "Ginkgo # not a comment"',
      'units mm',
      'bench shop { bevels 22.5, 30, 45, 60, 67.5, 90 kerf 3 pin pitches 40 }',
      'outline disc { circle at 0, -5 radius 60 }',
      'outline fan { start 0, 0 line to 90, 0 curve to start by 40, 90 and -20, 60 }',
    ]),
    turn: decimal(0, 90),
  })
  .chain((parts) =>
    fc
      .tuple(fc.constantFrom(...parts.grid.motifs), lengthOf(parts.side), fc.integer({ min: 1, max: 3 }))
      .map(([motif, side, copies]) =>
        [
          ...parts.extras,
          'let unit = 1mm',
          parts.strips,
          `grid mesh { ${parts.grid.kind} ${side} of ash fit 0.05 turn ${parts.turn}deg }`,
          'motif leaf for triangle { node hub at incentre piece arm from corner to hub, every corner }',
          `motif infill for ${parts.grid.shape} { ${motif} }`,
          `panel light { grid mesh shape ${parts.across} x ${parts.up} cells ${parts.edge} fill ${parts.grid.shape} with infill of bass copies ${copies} }`,
        ].join('\n'),
      ),
  );

const gap = fc.oneof(
  { weight: 12, arbitrary: fc.constant(' ') },
  { weight: 4, arbitrary: fc.constantFrom('   ', '\n', '\n  ', '\n\n\n', '\t', '\r\n') },
  { weight: 1, arbitrary: fc.constantFrom('  # a remark\n', '\n# { on its own }\n', ' #\n\n') },
);

/** The design with its blanks thrown about, and comments among them. */
const untidy = design.chain((text) => {
  const words = tokenize(text).tokens.map(({ image }) => image);
  return fc
    .array(gap, { minLength: words.length, maxLength: words.length })
    .map((gaps) => words.map((word, index) => word + (gaps[index] ?? ' ')).join(''));
});

function planOf(text: string) {
  const analysis = analyse(text);
  return { ...planAtSight(analysis, 'design.lap'), revision: '' };
}

test('printing is done once, keeps every comment, and changes no plan', () => {
  fc.assert(
    fc.property(untidy, (text) => {
      const printed = printDocument(text);
      if (printed === null) throw new Error('the text was not printed');
      expect(printDocument(printed)).toBe(printed);
      expect(printed.match(/remark|on its own/g)?.length).toBe(text.match(/remark|on its own/g)?.length);
      const plan = planOf(text);
      expect(plan.panels.length).toBe(1);
      expect(planOf(printed)).toEqual(plan);
    }),
    { numRuns: runs },
  );
});
