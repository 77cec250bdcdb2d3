/** Strips that a grid declares at places of their own and no panel has: said at their words. */
import type { Problem } from '../../../grammar/problems/problem.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import { dot } from '../../geometry/point.ts';
import { isZeroLength } from '../../geometry/tolerance.ts';
import type { LineFamily } from '../grid/grid-lines.ts';
import type { LaidPanel } from '../laid-panel.ts';
import { panelRegion } from '../grid/panel-region.ts';
import { type RaisedProblem, raisedAt } from './raised-problem.ts';

/** Panels that share a grid share its strips: one is told only where none of them makes it. */
export function missedStrips(panels: readonly LaidPanel[]): RaisedProblem[] {
  const declared = new Map<number, { readonly range: SourceRange; readonly panels: LaidPanel[]; isMade: boolean }>();
  for (const laid of panels) {
    for (const { range, isMade } of declaredStrips(laid)) {
      const known = declared.get(range.start) ?? { range, panels: [], isMade: false };
      known.panels.push(laid);
      known.isMade ||= isMade;
      declared.set(range.start, known);
    }
  }
  return [...declared.values()]
    .filter(({ isMade }) => !isMade)
    .flatMap(({ range, panels: all }) => raisedAt(all[0]?.panel ?? null, [missed(range, all)]));
}

function declaredStrips(laid: LaidPanel): { readonly range: SourceRange; readonly isMade: boolean }[] {
  return panelRegion(laid.panel).families.flatMap((lines) =>
    (lines.family.positionRanges ?? []).map((range, index) => ({
      range,
      isMade: makesLine(laid, lines, lines.places?.[index] ?? Infinity),
    })),
  );
}

const makesLine = ({ strips }: LaidPanel, lines: LineFamily, place: number): boolean =>
  strips.some(
    ({ family, placements }) =>
      family === lines.number && placements.some(({ at }) => isZeroLength(dot(lines.normal, at) - place)),
  );

function missed(range: SourceRange, panels: readonly LaidPanel[]): Problem {
  const names = panels.map(({ panel }) => panel.name);
  const missing = names.length === 1 ? `panel ${names[0] ?? ''}` : `panels ${names.join(', ')}`;
  const fromCorner = panels.every(({ panel }) => panel.phase.kind === 'corner');
  const counted = fromCorner
    ? ' Places are counted from the lower left corner of its box: up for strips that run level, to the right for the others.'
    : '';
  const message = `The strip here misses ${missing} and is not made.${counted} Move it, make the panel larger, or take the strip out.`;
  return problemAt('stripMissesPanel', range, message);
}
