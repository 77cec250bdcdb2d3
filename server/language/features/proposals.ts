/** What may be written at a place: declarations, the properties of a block, or the names a phrase asks for. */
import type { BlockDeclaration } from '../../../grammar/syntax-tree.ts';
import { type KnownWord, knownWords } from '../../../grammar/tokens.ts';
import type { Analysis } from '../../analyse.ts';
import type { DeclarationKind } from './declarations.ts';
import { nameMentions } from './name-mentions.ts';
import { type Word, wordsOf } from './words.ts';

export interface Proposal {
  readonly label: string;
  readonly kind: 'word' | 'name';
  readonly detail: string;
}

type BlockKind = BlockDeclaration['kind'];

const declarationWords: readonly KnownWord[] = [
  ...(['title', 'units', 'let', 'strip', 'bench'] as const),
  ...(['grid', 'motif', 'outline', 'panel'] as const),
];

const propertyWords: Record<BlockKind, readonly KnownWord[]> = {
  strip: ['wood', 'section', 'lengths', 'flush', 'spare', 'rejects'],
  bench: ['bevels', 'kerf', 'pin', 'band_blade'],
  grid: ['three_way', 'square', 'side', 'pitch', 'of', 'fit', 'turn', 'both'],
  motif: ['node', 'piece', 'divider', 'fill', 'tip', 'fit_order'],
  outline: ['start', 'line', 'arc', 'curve', 'circle', 'rectangle', 'path'],
  panel: ['grid', 'shape', 'edge', 'centred', 'node', 'fill', 'copies', 'stub', 'tail'],
};

const shapeWords: readonly KnownWord[] = ['triangle', 'square', 'rhombus', 'hexagon'];

/** Words that may follow a word inside a phrase. */
const followingWords: Partial<Record<string, readonly KnownWord[]>> = {
  units: ['mm', 'cm', 'm', 'in', 'ft'],
  for: shapeWords,
  fill: [...shapeWords, 'halves', 'parts'],
  edge: ['sawn', 'framed'],
  centred: ['node', 'cell', 'edge'],
  at: ['corner', 'mid', 'along', 'centroid', 'incentre', 'between'],
  from: ['corner', 'mid', 'along', 'centroid', 'incentre', 'between'],
  every: ['corner', 'edge'],
};

/** Names that may follow a word inside a phrase. */
const followingNames: Partial<Record<string, DeclarationKind>> = {
  of: 'strip',
  with: 'motif',
  grid: 'grid',
  shape: 'outline',
};

/** The proposals at `offset`; the word being typed there is left to the editor to match. */
export function proposalsAt(analysis: Analysis, offset: number): Proposal[] {
  const before = wordBefore(analysis.text, offset);
  const block = blockAround(analysis, offset);
  if (before === null) return (block ? propertyWords[block.kind] : declarationWords).map(wordProposal);
  const kind = block ? followingNames[before.text] : undefined;
  const words = (followingWords[before.text] ?? []).map(wordProposal);
  const names = kind ? declaredNames(analysis, kind) : words.length > 0 ? [] : declaredNames(analysis, 'let');
  return [...names, ...words];
}

/** The word before the one being typed at `offset`, in the same phrase; null at the beginning of a phrase. */
function wordBefore(text: string, offset: number): Word | null {
  const earlier = wordsOf(text).filter(
    ({ range }) => range.end < offset || (range.end === offset && !isWordLike(text, offset)),
  );
  const last = earlier.at(-1);
  if (!last || last.text === '{' || last.text === '}') return null;
  return /[\r\n]/.test(text.slice(last.range.end, offset)) ? null : last;
}

const isWordLike = (text: string, offset: number): boolean => /[\p{L}\p{M}\p{N}_]$/u.test(text.slice(0, offset));

function blockAround({ tree, text }: Analysis, offset: number): BlockDeclaration | null {
  const around = tree.declarations.filter(
    (declaration): declaration is BlockDeclaration =>
      'open' in declaration &&
      declaration.open !== null &&
      declaration.open.end <= offset &&
      offset <= (declaration.close?.start ?? text.length),
  );
  return around.at(-1) ?? null; // an unclosed block seems to reach over later ones
}

const wordProposal = (word: KnownWord): Proposal => ({ label: word, kind: 'word', detail: knownWords[word].meaning });

function declaredNames({ tree }: Analysis, kind: DeclarationKind | 'let'): Proposal[] {
  return nameMentions(tree)
    .filter((mention) => mention.declares && mention.kind === kind)
    .map(({ text }) => ({ label: text, kind: 'name', detail: kind }));
}
