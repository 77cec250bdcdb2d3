/** The library of motifs: every one can be made, takes what its comment says, and shares no wood but in laps. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../server/analyse.ts';
import type { CellShape, Motif } from '../../server/design/design-model.ts';
import { cellClasses } from '../../server/lattice/cells/cell-classes.ts';
import { fillOpening } from '../../server/lattice/motif/fill-opening.ts';
import { lineFamilies } from '../../server/lattice/grid/grid-lines.ts';
import { periodOf } from '../../server/lattice/grid/grid-period.ts';
import type { Polygon } from '../../server/lattice/laid-panel.ts';
import { leftDistance } from '../../server/geometry/lines.ts';
import { type Point, radians, subtract, unit } from '../../server/geometry/point.ts';
import { signedArea } from '../../server/geometry/polygons.ts';
import { placeTolerance, rounded, sameAngle } from '../../server/geometry/tolerance.ts';
import { unionArea } from '../independent-polygons.ts';

const text = readFileSync(new URL('../../samples/motifs/motifs.lap', import.meta.url), 'utf8');
const face = 3;
const { design, problems } = analyse(`use motifs
strip ash { section face ${face} depth 9 }
grid triangle { three_way  side 60  of ash }
grid square { square  pitch 60  of ash }
grid rhombus { diamond 60deg  side 60  of ash }
grid hexagon { kagome  side 60  of ash }
`);

/** What stands in the comment before a motif. */
interface Said {
  readonly jigs: readonly number[];
  readonly pieces: number;
  readonly difficulty: number;
}

function saidOf({ name }: Motif): Said {
  const said = /# Jigs (none|[\d., ]+)\. Pieces (\d+)\. Difficulty (\d)\.\n/;
  const match = new RegExp(`${said.source}motif ${name} for`).exec(text);
  if (!match) throw new Error(`${name} has no comment that says what it takes`);
  const [, jigs = '', pieces, difficulty] = match;
  return {
    jigs: jigs === 'none' ? [] : jigs.split(', ').map(Number),
    pieces: Number(pieces),
    difficulty: Number(difficulty),
  };
}

/** The opening of a shape on its own grid, as a motif sees it. */
function openingOf(shape: CellShape): Polygon {
  const grid = design.grids.find(({ name }) => name === shape);
  const families = grid ? lineFamilies(grid, { x: 0, y: 0 }) : [];
  const period = periodOf(families);
  const classes = period ? cellClasses(families, period, 0).classes : [];
  return classes.find((each) => each.shape === shape)?.frame ?? [];
}

const [stock] = design.strips;
const filled = (motif: Motif) => {
  if (!stock) throw new Error('no strip was built');
  return fillOpening(openingOf(motif.shape), motif, stock, []);
};

/** Three-way laps of a motif: there three bodies share a hexagon of inradius t/2, area √3/2·t², that the three pairs count thrice. */
const threeWayLaps: Readonly<Record<string, number>> = { three_way_star: 1 };

/** The points outside a convex ring. */
const outside = (points: readonly Point[], ring: Polygon): Point[] =>
  points.filter((point) =>
    ring.some((corner, index) => {
      const next = ring[(index + 1) % ring.length] ?? corner;
      return leftDistance(point, corner, unit(subtract(next, corner))) < -placeTolerance;
    }),
  );

test('is sound, and covers every shape of opening with ten motifs and more', () => {
  expect(problems).toEqual([]);
  expect(design.motifs.length).toBeGreaterThanOrEqual(10);
  expect(new Set(design.motifs.map(({ shape }) => shape))).toEqual(
    new Set(['triangle', 'square', 'rhombus', 'hexagon']),
  );
});

describe.each(design.motifs.map((motif) => [motif.name, motif] as const))('%s', (_, motif) => {
  const said = saidOf(motif);
  const { pieces, problems: troubles } = filled(motif);

  test('can be made in its opening', () => {
    expect(troubles.map(({ message }) => message)).toEqual([]);
  });

  test('takes the pieces and the jigs that its comment says', () => {
    expect(pieces.length).toBe(said.pieces);
    const bevels = pieces.flatMap(({ shape }) => shape.ends.flatMap((end) => end.bevels ?? []));
    const jigs = new Set(bevels.filter((bevel) => !sameAngle(bevel, 90)).map((bevel) => rounded(bevel, 2)));
    expect([...jigs].sort((first, second) => first - second)).toEqual(said.jigs);
    expect(said.difficulty).toBeGreaterThanOrEqual(1);
    expect(said.difficulty).toBeLessThanOrEqual(5);
  });

  // union by flatten-js, which the engine does not use; a lap of two is t²/sin θ, each noted on both pieces
  test('shares no wood but in its laps, and stays in its opening', () => {
    const rings = pieces.map(({ ground }) => ground);
    const opening = openingOf(motif.shape);
    const total = rings.reduce((sum, ring) => sum + signedArea(ring), 0);
    const notches = pieces.flatMap(({ shape }) => shape.notches);
    const laps = notches.reduce((sum, { angle, count }) => sum + (count * face ** 2) / Math.sin(radians(angle)), 0) / 2;
    const common = (threeWayLaps[motif.name] ?? 0) * (Math.sqrt(3) / 2) * face ** 2;
    expect(total - unionArea(rings)).toBeCloseTo(laps - common, 3);
    expect(outside(rings.flat(), opening)).toEqual([]);
  });
});
