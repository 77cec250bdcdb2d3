/** Who refers to whom: every mention of a name, and the definition it leads to. */
import type { SourceRange } from '../../../grammar/source-range.ts';
import type { SyntaxTree } from '../../../grammar/syntax-tree.ts';
import type { Analysis } from '../../analyse.ts';
import { type Definition, indexNames } from '../../design/name-index.ts';

/** One place where a name stands. */
export interface Mention {
  readonly range: SourceRange;
  /** What it names; null for a name that is given nowhere. */
  readonly definition: Definition | null;
}

/** Every mention, in the order of the text. A name given in several phrases means the first of them. */
export function mentionsOf(tree: SyntaxTree): Mention[] {
  const { definitions, references } = indexNames(tree);
  const given = definitions.map((definition) => ({
    range: definition.nameRange,
    definition: definitions.find((first) => isSame(first, definition)) ?? definition,
  }));
  return [...given, ...references].sort((first, second) => first.range.start - second.range.start);
}

const isSame = (first: Definition, second: Definition): boolean =>
  first.kind === second.kind && first.name === second.name && first.scope === second.scope;

/** The mention whose words hold `offset`, its end included. */
export function mentionAt(tree: SyntaxTree, offset: number): Mention | null {
  return mentionsOf(tree).find(({ range }) => range.start <= offset && offset <= range.end) ?? null;
}

/** Where the name at `offset` is given; null on anything else, and for a name that is given nowhere. */
export function definitionAt({ tree }: Analysis, offset: number): SourceRange | null {
  return mentionAt(tree, offset)?.definition?.nameRange ?? null;
}

/** Every mention of the name at `offset`, its own included; none where the file doesn't give the name. */
export function referencesAt({ tree }: Analysis, offset: number): SourceRange[] {
  const definition = mentionAt(tree, offset)?.definition;
  if (!definition) return [];
  return mentionsOf(tree)
    .filter((other) => other.definition !== null && isSame(other.definition, definition))
    .map(({ range }) => range);
}

/** The name at `offset`, where the file itself gives it and so may rename it. */
export function renamableAt({ tree }: Analysis, offset: number): SourceRange | null {
  const mention = mentionAt(tree, offset);
  return mention?.definition ? mention.range : null;
}

const nameForm = /^[\p{L}_][\p{L}\p{M}\p{N}_]*$/u;

/** True where `text` may be a name. */
export const isName = (text: string): boolean => nameForm.test(text);
