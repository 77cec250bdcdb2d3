/** Who refers to whom: the definition of a name and all its mentions. */
import type { SourceRange } from '../../../grammar/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import { type NameMention, nameMentions } from './name-mentions.ts';

/** The mention whose words hold `offset`, its end included. */
export function mentionAt(mentions: readonly NameMention[], offset: number): NameMention | null {
  return mentions.find(({ range }) => range.start <= offset && offset <= range.end) ?? null;
}

const isSameName = (first: NameMention, second: NameMention): boolean =>
  first.kind === second.kind && first.text === second.text && first.motif === second.motif;

/** Where the name at `offset` is given; null on anything else, and for a name that is given nowhere. */
export function definitionAt({ tree }: Analysis, offset: number): SourceRange | null {
  const mentions = nameMentions(tree);
  const here = mentionAt(mentions, offset);
  return here && (mentions.find((other) => other.declares && isSameName(here, other))?.range ?? null);
}

/** Every mention of the name at `offset`, its own included. */
export function referencesAt({ tree }: Analysis, offset: number): SourceRange[] {
  const mentions = nameMentions(tree);
  const here = mentionAt(mentions, offset);
  return here ? mentions.filter((other) => isSameName(here, other)).map(({ range }) => range) : [];
}

/** The name at `offset`, where the file itself gives it and so may rename it. */
export function renamableAt({ tree }: Analysis, offset: number): SourceRange | null {
  const mentions = nameMentions(tree);
  const here = mentionAt(mentions, offset);
  if (!here) return null;
  return mentions.some((other) => other.declares && isSameName(here, other)) ? here.range : null;
}

const nameForm = /^[\p{L}_][\p{L}\p{M}\p{N}_]*$/u;

/** True where `text` may be a name. */
export const isName = (text: string): boolean => nameForm.test(text);
