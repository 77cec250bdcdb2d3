/** What may be written at a place: declarations, the properties of a block, or the names a phrase asks for. */
import { type KnownWord, knownWords } from '../../../grammar/tokens.ts';
import { type BlockKind, formOf, wordsOf as wordsOfBlock } from '../../../grammar/vocabulary.ts';
import type { Analysis } from '../../analyse.ts';
import type { NameKind } from '../../design/name-index.ts';
import { blockKindAt } from './blocks.ts';
import { libraryProposals } from './use-proposals.ts';
import { type Word, wordsOf } from './words.ts';

export interface Proposal {
  readonly label: string;
  readonly kind: 'word' | 'name';
  /** How it is written, or what kind of thing the name is. */
  readonly detail: string;
  /** What it means; empty for a name. */
  readonly meaning: string;
}

const shapeWords: readonly KnownWord[] = ['triangle', 'square', 'rhombus', 'hexagon', 'polygon'];
const placeWords: readonly KnownWord[] = ['corner', 'mid', 'along', 'centroid', 'incentre', 'between'];

/** Words that may follow a word inside a phrase. */
const followingWords: Partial<Record<string, readonly KnownWord[]>> = {
  units: ['mm', 'cm', 'm', 'in', 'ft'],
  for: shapeWords,
  fill: [...shapeWords, 'halves', 'parts', 'row', 'column', 'ring', 'every', 'inside', 'outside', 'within', 'beyond'],
  edge: ['sawn', 'framed'],
  centred: ['node', 'cell', 'edge'],
  at: placeWords,
  from: placeWords,
  every: ['corner', 'edge'],
};

/** Names that may follow a word inside a phrase. */
const followingNames: Partial<Record<string, NameKind>> = {
  of: 'strip',
  with: 'motif',
  grid: 'grid',
  shape: 'outline',
  inside: 'outline',
  outside: 'outline',
};

/** The proposals at `offset`; the word being typed there is left to the editor to match. */
export function proposalsAt(analysis: Analysis, offset: number): Proposal[] {
  const block = blockKindAt(analysis, offset);
  const before = wordBefore(analysis.text, offset);
  if (before === null) return wordsOfBlock(block).map((word) => phraseProposal(block, word));
  if (before.text === 'use' && block === 'document') return libraryProposals();
  const words = followingWords[before.text]?.map(wordProposal) ?? [];
  const kind = block === 'document' ? undefined : before.text === '=' ? 'motif' : followingNames[before.text];
  if (kind === undefined && words.length > 0) return words;
  return [...definedNames(analysis, kind ?? 'let'), ...words];
}

/** The word before the one being typed at `offset`, in the same phrase; null at the beginning of a phrase. */
function wordBefore(text: string, offset: number): Word | null {
  const isTyping = /[\p{L}\p{M}\p{N}_]$/u.test(text.slice(0, offset));
  const last = wordsOf(text)
    .filter(({ range }) => (isTyping ? range.end < offset : range.end <= offset))
    .at(-1);
  if (!last || last.text === '{' || last.text === '}') return null;
  return /[\r\n]/.test(text.slice(last.range.end, offset)) ? null : last;
}

const meaningOf = (word: string): string =>
  Object.hasOwn(knownWords, word) ? knownWords[word as KnownWord].meaning : '';

const phraseProposal = (block: BlockKind, word: string): Proposal => ({
  label: word,
  kind: 'word',
  detail: formOf(block, word)?.example ?? '',
  meaning: meaningOf(word),
});

const wordProposal = (word: KnownWord): Proposal => ({
  label: word,
  kind: 'word',
  detail: '',
  meaning: meaningOf(word),
});

function definedNames({ names: { definitions, used } }: Analysis, wanted: NameKind): Proposal[] {
  return [...definitions, ...used]
    .filter(({ kind }) => kind === wanted)
    .map(({ name, kind }) => ({ label: name, kind: 'name', detail: kind, meaning: '' }));
}
