/** Straight level runs inside an outline: where a cleat lies hidden behind it. Lengths mm. */
import type { Polygon } from '../../lattice/laid-panel.ts';

/** From the left to the right end. */
export type Run = readonly [from: number, to: number];

/** Where the level line at `height` lies inside any of `shapes`, each a set of rings with its holes; left to right. */
export function runsAt(shapes: readonly (readonly Polygon[])[], height: number): Run[] {
  return merged(shapes.flatMap((rings) => runsInside(rings, height)));
}

/** Edges are taken closed below and open above, so that a corner on the line counts once. */
function runsInside(rings: readonly Polygon[], height: number): Run[] {
  const crossings = rings
    .flatMap((ring) =>
      ring.flatMap((from, index) => {
        const to = ring[(index + 1) % ring.length] ?? from;
        if (from.y <= height === to.y <= height) return [];
        return [from.x + ((height - from.y) / (to.y - from.y)) * (to.x - from.x)];
      }),
    )
    .sort((a, b) => a - b);
  const runs: Run[] = [];
  for (let index = 0; index + 1 < crossings.length; index += 2)
    runs.push([crossings[index] ?? 0, crossings[index + 1] ?? 0]);
  return runs;
}

function merged(runs: readonly Run[]): Run[] {
  const joined: Run[] = [];
  for (const [from, to] of [...runs].sort((a, b) => a[0] - b[0])) {
    const last = joined.at(-1);
    if (last && from <= last[1]) joined[joined.length - 1] = [last[0], Math.max(last[1], to)];
    else joined.push([from, to]);
  }
  return joined;
}

const common = (some: readonly Run[], others: readonly Run[]): Run[] =>
  some.flatMap(([from, to]) =>
    others.flatMap(([low, high]): Run[] => {
      const run = [Math.max(from, low), Math.min(to, high)] as const;
      return run[1] > run[0] ? [run] : [];
    }),
  );

/**
 * The longest run that lies inside at every height from `bottom` to `top`; null where there is none. Between the
 * heights of corners the ends of runs move straight, so corners, the middles between them and both borders decide.
 */
export function longestRunWithin(shapes: readonly (readonly Polygon[])[], bottom: number, top: number): Run | null {
  const corners = shapes
    .flat(2)
    .map(({ y }) => y)
    .filter((y) => y > bottom && y < top);
  const heights = [bottom, ...[...new Set(corners)].sort((a, b) => a - b), top];
  const middles = heights.slice(1).map((height, index) => (height + (heights[index] ?? height)) / 2);
  const [first = [], ...others] = [...heights, ...middles].map((height) => runsAt(shapes, height));
  const runs = others.reduce<Run[]>(common, [...first]);
  return runs.reduce<Run | null>((best, run) => (best && best[1] - best[0] >= run[1] - run[0] ? best : run), null);
}
