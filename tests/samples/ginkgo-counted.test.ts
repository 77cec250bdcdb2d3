/** The ginkgo counted a second way: every arm of the lattice, one by one, against the leaf as a fine polygon. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import { planAtSight } from '../plan-at-sight.ts';

type Place = readonly [x: number, y: number];

const text = readFileSync(fileURLToPath(new URL('../../samples/ginkgo.lap', import.meta.url)), 'utf8');
const side = 36;
const face = 3;

/** The corners of the leaf, its curves cut into many chords by their own formula. */
function leafPolygon(): Place[] {
  const corners: Place[] = [];
  const [leaf = ''] = /^outline leaf \{[^}]*\}/m.exec(text) ?? [];
  for (const [, step = '', numbers = ''] of leaf.matchAll(/^ {2}(start|line to|curve to) (.*)$/gm)) {
    const [x = 0, y = 0, ...controls] = (numbers.match(/-?\d+/g) ?? []).map(Number);
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = controls;
    const [x0, y0] = corners.at(-1) ?? [0, 0];
    const pieces = step === 'curve to' ? 250 : 1;
    for (let index = 1; index <= pieces; index += 1) {
      const t = index / pieces;
      const [a, b, c, d] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3];
      corners.push(step === 'curve to' ? [a * x0 + b * x1 + c * x2 + d * x, a * y0 + b * y1 + c * y2 + d * y] : [x, y]);
    }
  }
  return corners;
}

const areaOf = (polygon: readonly Place[]): number =>
  polygon.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = polygon[(index + 1) % polygon.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

/** Area that a convex counter-clockwise polygon shares with any other, by cutting the other along each of its edges. */
function sharedArea(convex: readonly Place[], other: readonly Place[]): number {
  let rest = other;
  convex.forEach(([ax, ay], edge) => {
    const [bx, by] = convex[(edge + 1) % convex.length] ?? [ax, ay];
    const heightOf = ([x, y]: Place): number => (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    rest = rest.flatMap((here, index): Place[] => {
      const before = rest[(index + rest.length - 1) % rest.length] ?? here;
      const [from, to] = [heightOf(before), heightOf(here)];
      const t = from / (from - to);
      const crossing: Place = [before[0] + t * (here[0] - before[0]), before[1] + t * (here[1] - before[1])];
      return [...(from >= 0 !== to >= 0 ? [crossing] : []), ...(to >= 0 ? [here] : [])];
    });
  });
  return areaOf(rest);
}

/** An arm in a triangle with its hub at the origin, pointing at `turn` degrees: points of 60/60 at the hub, 30/30 at the corner. */
function arm(hub: Place, turn: number): Place[] {
  const half = face / 2;
  const length = side / Math.sqrt(3) - face;
  const near = half / Math.tan(Math.PI / 3);
  const far = length - half / Math.tan(Math.PI / 6);
  const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const own: Place[] = [
    [0, 0],
    [near, -half],
    [far, -half],
    [length, 0],
    [far, half],
    [near, half],
  ];
  return own.map(([u, v]) => [hub[0] + u * c - v * s, hub[1] + u * s + v * c]);
}

function countArms(): { whole: number; trimmed: number } {
  const leaf = leafPolygon();
  const middleOf = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values)) / 2;
  const centre: Place = [middleOf(leaf.map(([x]) => x)), middleOf(leaf.map(([, y]) => y))];
  const counts = { whole: 0, trimmed: 0 };
  for (let row = -5; row <= 5; row += 1) {
    for (let column = -8; column <= 8; column += 1) {
      const node: Place = [centre[0] + side * (column + row / 2), centre[1] + (side * row * Math.sqrt(3)) / 2];
      const upHub: Place = [node[0] + side / 2, node[1] + side / (2 * Math.sqrt(3))];
      const downHub: Place = [node[0] + side, node[1] + side / Math.sqrt(3)];
      const arms = [
        ...[90, 210, 330].map((turn) => arm(upHub, turn)),
        ...[30, 150, 270].map((turn) => arm(downHub, turn)),
      ];
      for (const each of arms) {
        const kept = sharedArea(each, leaf);
        if (kept <= 0.01) continue;
        if (areaOf(each) - kept <= 0.01) counts.whole += 1;
        else counts.trimmed += 1;
      }
    }
  }
  return counts;
}

test('the plan counts as many whole and trimmed arms as a walk over all of them', () => {
  const { infill } = planAtSight(analyse(text), '').panels[0] ?? {};
  expect(countArms()).toEqual({ whole: infill?.whole, trimmed: infill?.trimmed });
});
