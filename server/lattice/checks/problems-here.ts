/** Problems that only laying out brings to light, said where the file in hand can mend them. */
import type { Problem } from '../../../grammar/problems/problem.ts';
import { fileNumberOf, type SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Motif, Named, Panel } from '../../design/design-model.ts';
import type { SourceFile } from '../../design/files/source-file.ts';

/**
 * A used file's motif may be sound and still not fit the grid it is set into here. Such a problem is moved from the used
 * file to the fill or panel that brings it about, else to the `use`, and keeps the other place as a related one.
 */
export function problemsHere(problems: readonly Problem[], panels: readonly Panel[], file: SourceFile): Problem[] {
  return problems.map((problem) => {
    const { range, related = [] } = problem;
    if (isHere(range)) return problem;
    const here = causeOf(range, panels) ?? firstUse(file) ?? file.parsed.tree.range;
    return { ...problem, range: here, related: [{ range, message: 'It concerns what is said here.' }, ...related] };
  });
}

const isHere = ({ start }: SourceRange): boolean => fileNumberOf(start) === 0;

const holds = (outer: SourceRange, inner: SourceRange): boolean => outer.start <= inner.start && inner.end <= outer.end;

/** The fill, or else the panel, of the file in hand that has to do with a place of another file. */
function causeOf(range: SourceRange, panels: readonly Panel[]): SourceRange | null {
  const own = panels.filter((panel) => isHere(panel.range));
  const fill = own.flatMap(({ fills }) => fills).find(({ motif }) => bringsIn(motif, range));
  if (fill) return fill.range;
  const concerns = (named: Named): boolean => holds(named.range, range);
  const panel = own.find(({ grid }) => concerns(grid) || grid.families.some(({ stock }) => concerns(stock)));
  return panel?.nameRange ?? null;
}

const bringsIn = (motif: Motif, range: SourceRange): boolean =>
  holds(motif.range, range) || motif.fills.some((fill) => bringsIn(fill.motif, range));

const firstUse = ({ uses }: SourceFile): SourceRange | null => uses[0]?.declaration.range ?? null;
