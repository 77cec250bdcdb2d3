/** Who refers to whom: every mention of a name, and the definition it leads to, in this file or in one it uses. */
import { fileNumberOf, fileStride, type SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import { isLibraryPath } from '../../design/files/built-in-libraries.ts';
import type { Definition, NameIndex } from '../../design/names/name-index.ts';
import { fileAt } from '../../design/files/source-file.ts';

/** One place where a name stands. */
export interface Mention {
  readonly range: SourceRange;
  /** What it names; null for a name that is given nowhere. */
  readonly definition: Definition | null;
}

/** Every mention in the text, in order. A name given in several phrases means the first of them. */
export function mentionsOf({ definitions, references }: NameIndex): Mention[] {
  const given = definitions.map((definition) => ({
    range: definition.nameRange,
    definition: definitions.find((first) => isSame(first, definition)) ?? definition,
  }));
  return [...given, ...references].sort((first, second) => first.range.start - second.range.start);
}

const isSame = (first: Definition, second: Definition): boolean =>
  first.kind === second.kind && first.name === second.name && first.scope === second.scope;

/** The mention whose words hold `offset`, its end included. */
export function mentionAt(names: NameIndex, offset: number): Mention | null {
  return mentionsOf(names).find(({ range }) => holds(range, offset)) ?? null;
}

const holds = ({ start, end }: SourceRange, offset: number): boolean => start <= offset && offset <= end;

/** Where the name at `offset` is given, or where a used file begins; null on anything else. */
export function definitionAt({ names, files }: Analysis, offset: number): SourceRange | null {
  const use = files[0].uses.find(({ declaration }) => holds(declaration.source.range, offset));
  if (!use) return mentionAt(names, offset)?.definition?.nameRange ?? null;
  const begin = (use.file?.number ?? 0) * fileStride;
  return use.file && { start: begin, end: begin };
}

/** Every mention in the text of what the name at `offset` means, its own included. */
export function referencesAt({ names }: Pick<Analysis, 'names'>, offset: number): SourceRange[] {
  const definition = mentionAt(names, offset)?.definition;
  return definition
    ? mentionsOfDefinition(names, ({ nameRange }) => nameRange.start === definition.nameRange.start)
    : [];
}

/** Every mention in the text of the definition that `isMeant`. */
export function mentionsOfDefinition(names: NameIndex, isMeant: (definition: Definition) => boolean): SourceRange[] {
  return mentionsOf(names)
    .filter(({ definition }) => definition !== null && isMeant(definition))
    .map(({ range }) => range);
}

/** The name at `offset`, where this file or a file beside it gives it and so may rename it. */
export function renamableAt({ names, files }: Analysis, offset: number): SourceRange | null {
  const mention = mentionAt(names, offset);
  if (!mention?.definition) return null;
  const { start } = mention.definition.nameRange;
  const isOurs = fileNumberOf(start) === 0 || !isLibraryPath(fileAt(files, start)?.path ?? '');
  return isOurs ? mention.range : null;
}

const nameForm = /^[\p{L}_][\p{L}\p{M}\p{N}_]*$/u;

/** True where `text` may be a name. */
export const isName = (text: string): boolean => nameForm.test(text);
