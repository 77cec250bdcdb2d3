/** What may be written behind `use`: the files of the workspace in quotes, and the libraries. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import { libraryNames } from '../../design/files/built-in-libraries.ts';
import { writtenPath } from '../../design/files/file-paths.ts';
import type { Proposal } from './proposal.ts';
import { wordsOf } from './words-of-text.ts';

/** A file to be used: `path` as it is written, which takes the place of the words at `range`. */
export interface FileProposal {
  readonly path: string;
  readonly range: SourceRange;
}

/** The quoted words behind `use` at `offset`, their quotes left out; null elsewhere. */
export function usedPathAt(text: string, offset: number): SourceRange | null {
  const words = wordsOf(text);
  const index = words.findIndex(
    ({ text: word, range }) => word.startsWith('"') && range.start < offset && offset <= range.end,
  );
  const word = words[index];
  if (!word || words[index - 1]?.text !== 'use') return null;
  const isClosed = word.text.length > 1 && word.text.endsWith('"');
  if (isClosed && offset === word.range.end) return null;
  return { start: word.range.start + 1, end: isClosed ? word.range.end - 1 : word.range.end };
}

/** The files that the text at `from` may use at `range`; `paths` are all of its workspace. */
export function fileProposals(paths: readonly string[], from: string, range: SourceRange): FileProposal[] {
  return paths
    .filter((path) => path !== from)
    .map((path) => ({ path: writtenPath(from, path), range }))
    .sort((first, second) => (first.path < second.path ? -1 : 1));
}

export const libraryProposals = (): Proposal[] =>
  libraryNames.map((name) => ({ label: name, kind: 'name', detail: 'library', meaning: 'Comes with Halflap.' }));
