/** Files → the design of the file in hand: each file built once, those it uses first. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import { buildDesign } from './build-design.ts';
import { clashBetween } from '../names/check-names.ts';
import type { Design } from '../design.ts';
import { type Given, givenTogether } from '../names/given.ts';
import { madeHere } from '../names/made-here.ts';
import type { NameIndex } from '../names/name-index.ts';
import { fileName, type SourceFile, type SourceFiles, type Use } from '../files/source-file.ts';

/** What a file says, with all that it may name. */
interface BuiltFile {
  readonly file: SourceFile;
  readonly design: Design;
  readonly names: NameIndex;
  /** Of this file alone, those of its text included. */
  readonly problems: readonly Problem[];
  /** What a file that uses this one is given. */
  readonly gives: Given;
}

export interface BuiltFiles {
  readonly design: Design;
  /** Names of the file in hand. */
  readonly names: NameIndex;
  /** Problems of the file in hand; what is wrong in a used file is one problem at its `use`. */
  readonly problems: readonly Problem[];
}

/** The design of the first of `files`. Never throws. */
export function buildFiles(files: SourceFiles): BuiltFiles {
  const built = new Map<SourceFile, BuiltFile>();
  const build = (file: SourceFile): BuiltFile => {
    const before = built.get(file);
    if (before) return before;
    const now = buildFile(
      file,
      file.uses.map((use) => ({ use, built: use.file && build(use.file) })),
    );
    built.set(file, now);
    return now;
  };
  const { design, names, problems } = build(files[0]);
  return { design: madeHere(design), names, problems: problems };
}

interface BuiltUse {
  readonly use: Use;
  readonly built: BuiltFile | null;
}

function buildFile(file: SourceFile, uses: readonly BuiltUse[]): BuiltFile {
  const { tree, problems: ofText } = file.parsed;
  const gifts = uses.flatMap(({ built }) => (built ? [built.gives] : []));
  const together = givenTogether(gifts);
  const given = { ...together, incomplete: together.incomplete || uses.some(({ built }) => built === null) };
  const { design, problems, names, numbers } = buildDesign(tree, given, file.drawings);
  return {
    file,
    design,
    names,
    problems: [...ofText, ...problems, ...uses.flatMap((each, index) => useProblems(each, uses.slice(0, index)))],
    gives: {
      design: { ...design, work: null },
      numbers,
      definitions: [...names.definitions, ...given.definitions],
      unreadNames: [...tree.unreadNames, ...given.unreadNames],
      unnamed: [...tree.unnamed, ...given.unnamed],
      incomplete: given.incomplete,
    },
  };
}

/** What is wrong with a `use`: at most one thing. */
function useProblems({ use, built }: BuiltUse, before: readonly BuiltUse[]): Problem[] {
  if (use.problem) return [use.problem];
  if (!built) return [];
  const { range } = use.declaration.source;
  const errors = built.problems.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) return [usedFileHasErrors(use, built.file, errors)];
  const clash = before
    .flatMap((other) => (other.built ? [other.built.gives.definitions] : []))
    .map((others) => clashBetween(others, built.gives.definitions, range))
    .find((problem) => problem !== null);
  return clash ? [clash] : [];
}

function usedFileHasErrors({ declaration }: Use, { path }: SourceFile, errors: readonly Problem[]): Problem {
  const count = errors.length === 1 ? '1 error' : `${String(errors.length)} errors`;
  const message = `\`${fileName(path)}\` has ${count}. Open it and put ${errors.length === 1 ? 'it' : 'them'} right there.`;
  const related = errors.map((error) => ({ range: error.range, message: error.message }));
  return problemAt('usedFileHasErrors', declaration.source.range, message, related);
}
