/**
 * What may stand in each kind of block: the word a phrase begins with, the rule that reads it, and how it is written.
 * A new property is a rule in `parser.ts`, a node in `syntax-tree.ts` and a row here.
 */
import type { ParserMethod } from 'chevrotain';
import type { PhraseParser } from './parser.ts';
import type { SourceRange } from './source-range.ts';
import type { KnownWord } from './tokens.ts';

export type BlockKind = 'document' | 'strip' | 'bench' | 'grid' | 'motif' | 'outline' | 'panel' | 'map' | 'tips';

/** The rules of the parser that read a whole phrase. */
export type PhraseRule = {
  [Rule in keyof PhraseParser]: PhraseParser[Rule] extends ParserMethod<[], { readonly keyword: SourceRange }>
    ? Rule
    : never;
}[keyof PhraseParser];

export interface PhraseForm {
  readonly rule: PhraseRule;
  /** How the phrase is written, as shown in messages. */
  readonly example: string;
  /** The block its braces open, and whether they must be there. */
  readonly opens?: { readonly block: BlockKind; readonly required: boolean };
  /** True where the second word of the phrase is a name it gives. */
  readonly names?: boolean;
}

type Forms = Readonly<Partial<Record<KnownWord, PhraseForm>>>;

const declared = (rule: PhraseRule, block: BlockKind, example: string): PhraseForm => ({
  rule,
  example,
  opens: { block, required: true },
  names: true,
});

const tip: PhraseForm = { rule: 'tip', example: 'tip 45deg at hub of the square corner' };

export const vocabulary: Readonly<Record<BlockKind, Forms>> = {
  document: {
    use: { rule: 'use', example: 'use "motifs.lap"' },
    title: { rule: 'title', example: 'title "Ginkgo"' },
    units: { rule: 'units', example: 'units mm' },
    let: { rule: 'let', example: 'let side = 40', names: true },
    strip: declared('strip', 'strip', 'strip ash { section face 3 depth 10 }'),
    bench: declared('bench', 'bench', 'bench shop { bevels 30, 60  kerf 3.15 }'),
    grid: declared('grid', 'grid', 'grid mesh { three_way  side 40  of ash }'),
    motif: declared('motif', 'motif', 'motif hemp for triangle { … }'),
    outline: declared('outline', 'outline', 'outline leaf { start 0, 0 … }'),
    panel: declared('panel', 'panel', 'panel blade { grid mesh  shape leaf }'),
  },
  strip: {
    wood: { rule: 'wood', example: 'wood basswood' },
    section: { rule: 'section', example: 'section face 3 depth 10' },
    lengths: { rule: 'lengths', example: 'lengths 900, 1200' },
    flush: { rule: 'flush', example: 'flush 0.3' },
    spare: { rule: 'spare', example: 'spare 8%' },
    rejects: { rule: 'rejects', example: 'rejects 15%' },
  },
  bench: {
    bevels: { rule: 'bevels', example: 'bevels 30, 45, 60' },
    kerf: { rule: 'kerf', example: 'kerf 3.15' },
    pin: { rule: 'pinPitches', example: 'pin pitches 40' },
    band_blade: { rule: 'bandBlade', example: 'band_blade 6' },
  },
  grid: {
    three_way: { rule: 'gridKind', example: 'three_way' },
    square: { rule: 'gridKind', example: 'square' },
    diamond: { rule: 'diamond', example: 'diamond 60deg' },
    basket_weave: { rule: 'gridKind', example: 'basket_weave' },
    side: { rule: 'side', example: 'side 40' },
    pitch: { rule: 'pitch', example: 'pitch 40' },
    of: { rule: 'of', example: 'of ash' },
    fit: { rule: 'fit', example: 'fit 0.05' },
    turn: { rule: 'turn', example: 'turn 90' },
    measured: { rule: 'measured', example: 'measured 10 cells 400.6 face 3.02' },
    both: { rule: 'bothSlants', example: 'both slants' },
  },
  motif: {
    node: { rule: 'node', example: 'node hub at incentre', names: true },
    divider: { rule: 'divider', example: 'divider diagonal from corner 1 to corner 3', names: true },
    piece: { rule: 'piece', example: 'piece arm from corner to hub, every corner', names: true },
    fit_order: { rule: 'fitOrder', example: 'fit_order arm, arm, arm key 0.1' },
    fill: { rule: 'partFill', example: 'fill halves with hemp', opens: { block: 'tips', required: false } },
    tip,
  },
  outline: {
    start: { rule: 'start', example: 'start 0, 0' },
    line: { rule: 'line', example: 'line to 140, 0' },
    arc: { rule: 'arc', example: 'arc to 140, 0 radius 90 right' },
    curve: { rule: 'curve', example: 'curve to 70, 95 by 20, 60 and 40, 90' },
    circle: { rule: 'circle', example: 'circle at 0, 0 radius 60' },
    rectangle: { rule: 'rectangle', example: 'rectangle 300 x 200' },
    path: { rule: 'path', example: 'path "M 0 0 L 100 0 L 50 80 Z"' },
  },
  panel: {
    grid: { rule: 'usedGrid', example: 'grid mesh' },
    centred: { rule: 'centred', example: 'centred node' },
    node: { rule: 'nodeAt', example: 'node at 0, 0' },
    shape: { rule: 'shape', example: 'shape 5 x 4 cells' },
    edge: { rule: 'edge', example: 'edge framed' },
    cut_cells: { rule: 'cutCells', example: 'cut_cells trim' },
    stub: { rule: 'stub', example: 'stub 8' },
    tail: { rule: 'tail', example: 'tail 6' },
    fill: {
      rule: 'panelFill',
      example: 'fill triangle with hemp of bass',
      opens: { block: 'tips', required: false },
    },
    map: { rule: 'map', example: 'map { h = hemp of bass  row h h h }', opens: { block: 'map', required: true } },
    copies: { rule: 'copies', example: 'copies 3' },
  },
  map: { row: { rule: 'mapRow', example: 'row h t h' } },
  tips: { tip },
};

/** Phrases that begin with a word of their own choice and an equals sign behind it. */
const entries: Readonly<Partial<Record<BlockKind, PhraseForm>>> = {
  map: { rule: 'mapEntry', example: 'h = hemp of bass' },
};

/** The form of a phrase that begins with any word and `=`, undefined where the block has none. */
export const entryFormOf = (block: BlockKind): PhraseForm | undefined => entries[block];

/** How a maker speaks of a block. */
export const blockNames: Readonly<Record<BlockKind, string>> = {
  document: 'a file',
  strip: 'a strip',
  bench: 'a bench',
  grid: 'a grid',
  motif: 'a motif',
  outline: 'an outline',
  panel: 'a panel',
  map: 'a map',
  tips: 'a fill',
};

/** The form a word begins in a block, undefined where it begins none. */
export function formOf(block: BlockKind, word: string): PhraseForm | undefined {
  const forms = vocabulary[block];
  return Object.hasOwn(forms, word) ? forms[word as KnownWord] : undefined;
}

/** The words that may begin a phrase of a block, in the order they are usually written. */
export const wordsOf = (block: BlockKind): readonly string[] => Object.keys(vocabulary[block]);
