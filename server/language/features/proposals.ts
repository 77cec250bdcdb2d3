/** What may be written at a place: declarations, the properties of a block, or the names a phrase asks for. */
import { beginningWord, type BlockKind, type KnownWord } from '../../../grammar/vocabulary/known-words.ts';
import { firstWords, meaningBehind } from '../../../grammar/phrases/phrase-rules.ts';
import { formOf, wordsOf as wordsOfBlock } from '../../../grammar/phrases/phrase-forms.ts';
import { labourUnits } from '../../../grammar/tree/work-syntax.ts';
import type { Analysis } from '../../analyse.ts';
import type { NameKind } from '../../design/names/name-index.ts';
import { stepNames, writtenStep } from '../../design/names/step-names.ts';
import { blockKindAt } from './block-at.ts';
import type { Proposal } from './proposal.ts';
import { libraryProposals } from './use-proposals.ts';
import { type Word, wordsOf } from './words-of-text.ts';

const shapeWords: readonly KnownWord[] = ['triangle', 'square', 'rhombus', 'hexagon', 'polygon'];
const placeWords = firstWords('place');

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
const followingNames: Partial<Record<string, readonly NameKind[]>> = {
  of: ['strip'],
  with: ['motif'],
  '=': ['motif'],
  grid: ['grid'],
  shape: ['outline'],
  inside: ['outline'],
  outside: ['outline'],
};

const placed: readonly NameKind[] = ['panel', 'board', 'pour'];

/** What follows a word in one block, where that differs. */
const inBlock: Partial<
  Record<
    BlockKind,
    Partial<Record<string, { readonly names?: readonly NameKind[]; readonly words?: readonly string[] }>>
  >
> = {
  strip: { wood: { names: ['wood'] } },
  resin: { by: { words: ['volume', 'mass'] } },
  frame: { corners: { words: ['mitred', 'lapped'] } },
  blank: { of: { names: ['resin'] }, take: { names: ['panel'] } },
  band: {
    around: { names: ['panel', 'outline'] },
    corners: { words: ['mitred', 'lapped'] },
    method: { words: ['cold', 'damp', 'hot'] },
  },
  pour: { of: { names: ['resin'] }, mould: { names: ['outline', 'blank'] }, insert: { names: ['outline'] } },
  board: { of: { names: ['sheet'] } },
  work: {
    place: { names: placed },
    of: { names: placed },
    finish: { names: ['finish'], words: ['none'] },
    hang: { words: ['cleat'] },
    per: { words: labourUnits },
    for: { words: stepNames.map(writtenStep) },
  },
  kit: { panel: { names: ['panel'] }, done: { words: ['milled', 'notched', 'cut', 'bevelled'] } },
};

/** The proposals at `offset`; the word being typed there is left to the editor to match. */
export function proposalsAt(analysis: Analysis, offset: number): Proposal[] {
  const block = blockKindAt(analysis, offset);
  const before = wordBefore(analysis.text, offset);
  if (before === null) return wordsOfBlock(block).map((word) => phraseProposal(block, word));
  if (before.text === 'use' && block === 'document') return libraryProposals();
  const here = inBlock[block]?.[before.text];
  const words = (here ? (here.words ?? []) : (followingWords[before.text] ?? [])).map((word): Proposal => ({
    label: word,
    kind: 'word',
    detail: '',
    meaning: meaningIn(analysis, before, word),
  }));
  const kinds = here ? here.names : block === 'document' ? undefined : followingNames[before.text];
  if (kinds === undefined && words.length > 0) return words;
  return [...definedNames(analysis, kinds ?? ['let']), ...words];
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

const phraseProposal = (block: BlockKind, word: string): Proposal => ({
  label: word,
  kind: 'word',
  detail: formOf(block, word)?.example ?? '',
  meaning: beginningWord(block, word)?.meaning ?? '',
});

/** What a word means behind the word `before` in the phrase of that. */
function meaningIn({ files }: Analysis, before: Word, word: string): string {
  const phrase = files[0].parsed.phrases.filter(({ range }) => range.start <= before.range.start).at(-1);
  return phrase ? meaningBehind(before.text, phrase.form, word) : '';
}

function definedNames({ names: { definitions, used } }: Analysis, wanted: readonly NameKind[]): Proposal[] {
  return [...definitions, ...used]
    .filter(({ kind }) => wanted.includes(kind))
    .map(({ name, kind }) => ({ label: name, kind: 'name', detail: kind, meaning: '' }));
}
