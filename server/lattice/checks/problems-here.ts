/** Problems that only laying out brings to light, said where the file in hand can mend them. */
import type { Problem } from '../../../grammar/problems/problem.ts';
import { fileNumberOf, type SourceRange } from '../../../grammar/tree/source-range.ts';
import type { SourceFile } from '../../design/files/source-file.ts';
import type { RaisedProblem } from './raised-problem.ts';

/**
 * A used file's motif may be sound and still not fit the grid it is set into here. Such a problem is moved from the used
 * file to the fill or panel at which it was raised, else to the `use`, and keeps the other place as a related one.
 */
export function problemsHere(raised: readonly RaisedProblem[], file: SourceFile): Problem[] {
  return raised.map(({ panel, fill, ...problem }) => {
    const { range, related = [] } = problem;
    if (isHere(range)) return problem;
    const causes = [fill?.range, panel?.nameRange, useOf(range, file)].filter((cause) => cause !== undefined);
    const here = causes.find(isHere) ?? file.parsed.tree.range;
    return { ...problem, range: here, related: [{ range, message: 'It concerns what is said here.' }, ...related] };
  });
}

const isHere = ({ start }: SourceRange): boolean => fileNumberOf(start) === 0;

/** The `use` by which the file of `range` comes in, itself or through another. */
const useOf = ({ start }: SourceRange, { uses }: SourceFile): SourceRange | undefined =>
  uses.find((use) => use.file && brings(use.file, fileNumberOf(start)))?.declaration.range;

function brings(file: SourceFile, number: number, met = new Set<SourceFile>()): boolean {
  if (file.number === number) return true;
  if (met.has(file)) return false;
  met.add(file);
  return file.uses.some((use) => use.file !== null && brings(use.file, number, met));
}
