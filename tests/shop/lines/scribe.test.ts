/** An edge that is fitted to another part of the work: more wood outside it, and the true line to scribe. */
import { describe, expect, test } from 'vitest';
import { analyse, type Analysis } from '../../../server/analyse.ts';
import { buildTemplate } from '../../../server/drawing/template/build-template.ts';
import { templateSubject } from '../../../server/drawing/template/template-subject.ts';
import { flattenContour } from '../../../server/geometry/flatten-path.ts';
import { boundsOf } from '../../../server/geometry/polygons.ts';
import { facedParts } from '../../../server/shop/lines/faced-parts.ts';
import { contoursOf } from '../../../server/shop/lines/part-contours.ts';
import { type ThreeLines, threeLines } from '../../../server/shop/lines/three-lines.ts';
import { planAtSight } from '../../plan-at-sight.ts';

/** A wing 200 × 100 beside a body 60 × 100 that touches its right edge, both turned together by `turn`. */
const winged = (turn: number, more = ''): string => {
  const [cosine, sine] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  return `strip ash { wood white_ash  section face 3 depth 10 }
resin clear { density 1.1  mix 2 to 1 by volume }
grid mesh { three_way  side 36  of ash  fit 0.05 }
panel wing { grid mesh  shape 200 x 100  edge sawn  meets body leave 3 }
pour body { mould 60 x 100  layer 10  of clear }
work bird {
  place wing at 40, 10 turned ${turn}
  place body at ${(40 + 130 * cosine).toFixed(9)}, ${(10 + 130 * sine).toFixed(9)} turned ${turn}
}
${more}`;
};

function linesOf(analysis: Analysis): ThreeLines {
  const [wing] = analysis.design.panels;
  if (!wing) throw new Error('no wing');
  return threeLines(contoursOf(wing), 0, 1.5, facedParts(wing, analysis.design));
}

describe.each([0, 30, 90, 205])('turned by %d', (turn) => {
  const { saw, scribe } = linesOf(analyse(winged(turn)));

  test('the saw keeps 1.5 mm all round, and 3 mm more where the body is', () => {
    const { left, right, top, bottom } = boundsOf(saw.flatMap(flattenContour));
    expect([left, right]).toEqual([expect.closeTo(-101.5, 3), expect.closeTo(104.5, 3)]);
    expect(top).toBeGreaterThanOrEqual(51.5 - 1e-3);
    expect(top).toBeLessThan(54.5);
    expect(bottom).toBeCloseTo(-top, 3);
  });

  test('the scribe line is the edge that faces it, and as much round its corners as is left', () => {
    expect(scribe).toHaveLength(1);
    const { left, right, top, bottom } = boundsOf(scribe.flat());
    expect(right).toBeCloseTo(100, 6);
    expect([bottom, top]).toEqual([expect.closeTo(-50, 6), expect.closeTo(50, 6)]);
    expect(left).toBeCloseTo(97, 2);
  });
});

test('what is not placed beside it asks for nothing', () => {
  const analysis = analyse(winged(0).replace(/^ {2}place body.*$/m, ''));
  expect(linesOf(analysis).scribe).toEqual([]);
});

test('the template draws it and says how much is left, and so does the step that saws', () => {
  const analysis = analyse(winged(30));
  const subject = templateSubject(analysis.design, 'wing');
  const template = subject && buildTemplate(analysis, subject, 'bird.lap');
  expect(template?.scribe).toHaveLength(1);
  expect(template?.assumptions.join('\n')).toContain('so much is left outside it, 3.0 towards body');
  const tasks = planAtSight(analysis, '').steps.flatMap((step) => step.tasks);
  expect(tasks).toContain('wing: leave 3.0 more where it meets body, and prick the scribe line through there.');
});

test('a cut-out of a blank keeps it: its saw line is as much wider', () => {
  const blank = 'blank sheet_of_lattice { grid mesh  shape 320 x 220  take wing 1  allowance 1.5 }';
  const [nested] = analyse(winged(0, blank)).blanks;
  const { left, right } = boundsOf(nested?.cutOuts[0]?.sawLine.flat() ?? []);
  expect(right - left).toBeCloseTo(206, 1);
});
