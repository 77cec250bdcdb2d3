/** What the shop's own tools can't make: notches narrower than the blade, bevels no jig has. */
import { minimum } from '../../geometry/numbers.ts';
import { type Words, measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { Bench, Grid } from '../../design/design-model.ts';
import { cotangent } from '../../geometry/point.ts';
import { arithmeticTolerance, placeTolerance, rounded, sameAngle } from '../../geometry/tolerance.ts';
import type { LaidPanel, PieceGroup } from '../laid-panel.ts';
import { type RaisedProblem, raisedAt } from './raised-problem.ts';

export function benchProblems(
  benches: readonly Bench[],
  grids: readonly Grid[],
  panels: readonly LaidPanel[],
): RaisedProblem[] {
  return [
    ...kerfProblems(benches, grids, panels),
    ...bevelProblems(benches, panels),
    ...lengthProblems(benches, panels),
  ];
}

/** A blade cannot cut a notch narrower than its own kerf. */
function kerfProblems(
  benches: readonly Bench[],
  grids: readonly Grid[],
  panels: readonly LaidPanel[],
): RaisedProblem[] {
  return benches.flatMap(({ name, kerf }) =>
    grids.flatMap((grid) => {
      const narrowest = minimum(grid.families.map(({ stock }) => stock.face)) + grid.fit;
      if (kerf === null || kerf <= narrowest + arithmeticTolerance) return [];
      const message = words`The blade of bench ${name} cuts ${measure.given(kerf)}, wider than the ${measure.given(narrowest)} notches of grid ${grid.name}; mill the strips to a face of ${measure.given(kerf - grid.fit)} (\`face from_kerf\` does it) or take a thinner blade.`;
      const user = panels.find(({ panel }) => panel.grid === grid)?.panel ?? null;
      return raisedAt(user, [problemAt('kerfWiderThanNotch', grid.nameRange, message)]);
    }),
  );
}

/** Bevels that no jig has; a square end needs none. Said once for each piece of a motif and bevel. */
function bevelProblems(benches: readonly Bench[], panels: readonly LaidPanel[]): RaisedProblem[] {
  const jigs = benches.flatMap(({ bevels }) => bevels);
  if (jigs.length === 0) return [];
  const said = new Set<string>();
  return panels.flatMap(({ panel, pieces }) =>
    pieces.flatMap((group) =>
      bevelsOf(group)
        .filter((bevel) => !sameAngle(bevel, 90) && !jigs.some((jig) => sameAngle(jig, bevel)))
        .flatMap((bevel) => {
          const key = `${group.range.start} ${rounded(bevel, 1)}`;
          if (said.has(key)) return [];
          said.add(key);
          const message = withoutJig(group, bevel, jigs);
          return raisedAt(panel, [problemAt('bevelNotOnBench', group.range, message)], group.fill);
        }),
    ),
  );
}

/** Pieces shorter than the jigs hold: whole ones, said once for each piece of a motif; fitted ones are cut at the frame. */
function lengthProblems(benches: readonly Bench[], panels: readonly LaidPanel[]): RaisedProblem[] {
  const leasts = benches.flatMap(({ shortestPiece }) => shortestPiece ?? []);
  if (leasts.length === 0) return [];
  const least = minimum(leasts);
  const isShort = ({ fate, shape }: PieceGroup): boolean => fate === 'whole' && shape.length < least - placeTolerance;
  return panels.flatMap(({ panel, pieces }) =>
    pieces.filter(isShort).flatMap((group) => raisedAt(panel, [tooShort(group, least)], group.fill)),
  );
}

function tooShort({ role, motif, shape, range }: PieceGroup, least: number): Problem {
  const message = words`${role} of motif ${motif} comes out ${measure.given(shape.length)} long, and the jigs on the bench hold no piece below ${measure.given(least)}. Make a holder for it, or make the cell larger.`;
  return problemAt('pieceTooShort', range, message);
}

/** Bevels of whole pieces; a piece fitted to a frame is marked from the frame itself. */
const bevelsOf = ({ fate, shape }: PieceGroup): readonly number[] =>
  fate === 'whole' ? shape.ends.flatMap(({ bevels }) => bevels ?? []) : [];

function withoutJig({ role, motif, shape }: PieceGroup, bevel: number, jigs: readonly number[]): Words {
  const nearest = jigs.reduce((best, jig) => (Math.abs(jig - bevel) < Math.abs(best - bevel) ? jig : best));
  const gap = (shape.stock.face / 2) * Math.abs(cotangent(bevel) - cotangent(nearest));
  return words`${role} of motif ${motif} needs a bevel of ${measure.fineAngle(bevel)} and no jig on the bench has it; the nearest, ${measure.fineAngle(nearest)}, would leave ${measure.given(gap)} open at the joint's face. Make a jig for it or change the motif.`;
}
