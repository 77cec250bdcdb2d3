/**
 * What may stand in each kind of block: the rule that reads a phrase, and how it is written. What its words mean is told
 * by the files of `vocabulary`.
 */
import type { ParserMethod } from 'chevrotain';
import type { PhraseParser } from '../rules/parser.ts';
import type { BeginningWord, BlockKind, KnownWord } from '../vocabulary/known-words.ts';
import type { SourceRange } from '../tree/source-range.ts';

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
  /** Words that begin phrases of the block but may also stand inside this one: where it broke, they are part of it. */
  readonly inner?: readonly KnownWord[];
}

const declared = (rule: PhraseRule, block: BlockKind, example: string): PhraseForm => ({
  rule,
  example,
  opens: { block, required: true },
  names: true,
});

const tip: PhraseForm = { rule: 'tip', example: 'tip 45deg at hub of the square corner' };

/** The phrases of each block, by the word they begin with, in the order they are usually written. */
export const phraseForms: { readonly [Block in BlockKind]: Readonly<Record<BeginningWord<Block>, PhraseForm>> } = {
  document: {
    use: { rule: 'use', example: 'use "motifs.lap"' },
    title: { rule: 'title', example: 'title "Ginkgo"' },
    units: { rule: 'units', example: 'units mm' },
    let: { rule: 'let', example: 'let side = 40', names: true },
    wood: declared('wood', 'wood', 'wood walnut { density 610 }'),
    strip: declared('strip', 'strip', 'strip ash { section face 3 depth 10 }'),
    sheet: declared('sheet', 'sheet', 'sheet birch_ply { thick 6  size 1220 x 610 }'),
    resin: declared('resin', 'resin', 'resin clear_cast { density 1.1  mix 2 to 1 by volume }'),
    finish: declared('finish', 'finish', 'finish oil { coverage 12  coats 3 }'),
    bench: declared('bench', 'bench', 'bench shop { bevels 30, 60  kerf 3.15 }'),
    grid: declared('grid', 'grid', 'grid mesh { three_way  side 40  of ash }'),
    motif: declared('motif', 'motif', 'motif hemp for triangle { … }'),
    outline: declared('outline', 'outline', 'outline leaf { start 0, 0 … }'),
    panel: declared('panel', 'panel', 'panel blade { grid mesh  shape leaf }'),
    blank: declared('blank', 'blank', 'blank cast_a { grid mesh  shape 420 x 297  take blade 3 }'),
    band: declared('band', 'band', 'band rim { around blade  of walnut_strip }'),
    pour: declared('pour', 'pour', 'pour stem { mould stem_outline  layer clear 6  of casting_resin }'),
    board: declared('board', 'board', 'board back { shape oval  of birch_ply }'),
    work: declared('work', 'work', 'work ginkgo { copies 2  place blade at 0, 0 }'),
    kit: declared('kit', 'kit', 'kit class { panel coaster  students 12 }'),
  },
  strip: {
    wood: { rule: 'ofWood', example: 'wood basswood' },
    section: { rule: 'section', example: 'section face 3 depth 10' },
    lengths: { rule: 'lengths', example: 'lengths 900 at 4.20 EUR, 1200' },
    on_hand: { rule: 'onHand', example: 'on_hand 4 of 900, 1 of 640' },
    kerf: { rule: 'kerf', example: 'kerf 1.2' },
    end_trim: { rule: 'endTrim', example: 'end_trim 5' },
    breath: { rule: 'breath', example: 'breath 0.1, 2' },
    keep_offcuts: { rule: 'keepOffcuts', example: 'keep_offcuts 150' },
    flush: { rule: 'flush', example: 'flush 0.3' },
    spare: { rule: 'spare', example: 'spare 8%' },
    rip: { rule: 'rip', example: 'rip from 27 x 160 x 2000 at 38 EUR thickness is depth' },
    rejects: { rule: 'rejects', example: 'rejects 15%' },
  },
  wood: {
    density: { rule: 'density', example: 'density 610' },
    rupture: { rule: 'rupture', example: 'rupture 103' },
    elasticity: { rule: 'elasticity', example: 'elasticity 12.0' },
    shrinkage: { rule: 'shrinkage', example: 'shrinkage radial 4.9% tangential 7.8%' },
    porous: { rule: 'pores', example: 'porous' },
    closed: { rule: 'pores', example: 'closed' },
  },
  sheet: {
    thick: { rule: 'thick', example: 'thick 6' },
    size: { rule: 'size', example: 'size 1220 x 610 at 24 EUR, 600 x 300' },
    density: { rule: 'density', example: 'density 680' },
    kerf: { rule: 'kerf', example: 'kerf 2.4' },
    margin: { rule: 'margin', example: 'margin 10' },
    turns: { rule: 'turns', example: 'turns 0, 90, 180, 270' },
  },
  resin: {
    density: { rule: 'density', example: 'density 1.1' },
    mix: { rule: 'mix', example: 'mix 2 to 1 by volume' },
    part: { rule: 'partDensities', example: 'part densities 1.13, 0.98' },
    deepest: { rule: 'deepest', example: 'deepest 10' },
    pot_life: { rule: 'potLife', example: 'pot_life 25min' },
    recoat: { rule: 'recoatWindow', example: 'recoat 4h to 12h' },
    cure: { rule: 'cure', example: 'cure 24h' },
    mix_size: { rule: 'mixSize', example: 'mix_size 400mL' },
    price: { rule: 'price', example: 'price 32 EUR per 1kg' },
  },
  finish: {
    coverage: { rule: 'coverage', example: 'coverage 12' },
    coats: { rule: 'coats', example: 'coats 3' },
    loss: { rule: 'loss', example: 'loss 10%' },
    recoat: { rule: 'recoat', example: 'recoat 4h' },
    price: { rule: 'price', example: 'price 28 EUR per 1L' },
  },
  bench: {
    bevels: { rule: 'bevels', example: 'bevels 30, 45, 60' },
    kerf: { rule: 'kerf', example: 'kerf 3.15' },
    ripping_kerf: { rule: 'rippingKerf', example: 'ripping_kerf 2.4' },
    breath: { rule: 'breath', example: 'breath 0.1, 2' },
    pin: { rule: 'pinPitches', example: 'pin pitches 40' },
    fixed_stop: { rule: 'fixedStop', example: 'fixed_stop' },
    pitch_error: { rule: 'pitchError', example: 'pitch_error 0.05' },
    pitch_scatter: { rule: 'pitchScatter', example: 'pitch_scatter 0.02' },
    gang: { rule: 'gang', example: 'gang 5' },
    trim: { rule: 'trim', example: 'trim 2' },
    shortest: { rule: 'shortest', example: 'shortest 12' },
    band_blade: { rule: 'bandBlade', example: 'band_blade 6 cuts 0.9 curve 16' },
  },
  grid: {
    three_way: { rule: 'gridKind', example: 'three_way' },
    square: { rule: 'gridKind', example: 'square' },
    diamond: { rule: 'diamond', example: 'diamond 60deg' },
    kagome: { rule: 'gridKind', example: 'kagome' },
    free: { rule: 'gridKind', example: 'free' },
    family: { rule: 'family', example: 'family 60deg of ash spacing 40', inner: ['of'] },
    side: { rule: 'side', example: 'side 40' },
    pitch: { rule: 'pitch', example: 'pitch 40' },
    of: { rule: 'ofStrip', example: 'of ash' },
    except: { rule: 'except', example: 'except 2 of bass', inner: ['of'] },
    layers: { rule: 'layers', example: 'layers 2, 1, 3' },
    fit: { rule: 'fit', example: 'fit 0.05' },
    wall: { rule: 'wall', example: 'wall 1.5' },
    turn: { rule: 'turn', example: 'turn 90' },
    measured: { rule: 'measured', example: 'measured 10 cells 400.6 face 3.02' },
    both: { rule: 'bothSlants', example: 'both slants' },
  },
  motif: {
    node: { rule: 'node', example: 'node hub at incentre', names: true },
    divider: { rule: 'divider', example: 'divider diagonal from corner 1 to corner 3', names: true },
    piece: { rule: 'piece', example: 'piece arm from corner to hub, every corner', names: true },
    fit_order: { rule: 'fitOrder', example: 'fit_order arm, arm, arm key 0.1' },
    hinge: { rule: 'hinge', example: 'hinge arm, arm' },
    fill: { rule: 'partFill', example: 'fill halves with hemp', opens: { block: 'tips', required: false } },
    tip,
  },
  outline: {
    start: { rule: 'start', example: 'start 0, 0' },
    line: { rule: 'line', example: 'line to 140, 0', inner: ['start'] },
    arc: { rule: 'arc', example: 'arc to 140, 0 radius 90 right', inner: ['start'] },
    curve: { rule: 'curve', example: 'curve to 70, 95 by 20, 60 and 40, 90', inner: ['start'] },
    spline: { rule: 'spline', example: 'spline to 90, 0 through 20, 30 and 60, 40', inner: ['start'] },
    loop: { rule: 'loop', example: 'loop through 0, 0 and 90, 10 and 50, 70' },
    circle: { rule: 'circle', example: 'circle at 0, 0 radius 60' },
    ellipse: { rule: 'ellipse', example: 'ellipse at 0, 0 radii 80, 50 turned 20deg' },
    rectangle: { rule: 'rectangle', example: 'rectangle 300 x 200 rounded 10' },
    polygon: { rule: 'polygon', example: 'polygon 6 at 0, 0 radius 50' },
    path: { rule: 'path', example: 'path "M 0 0 L 100 0 L 50 80 Z"' },
    copy: { rule: 'copy', example: 'copy leaf' },
    move: { rule: 'move', example: 'move 40, 0' },
    mirror: { rule: 'mirror', example: 'mirror over y' },
    turn: { rule: 'turnOutline', example: 'turn 30deg about 0, 0' },
    scale: { rule: 'scale', example: 'scale 1.5' },
    grow: { rule: 'grow', example: 'grow 3' },
    plus: { rule: 'combine', example: 'plus disc' },
    minus: { rule: 'combine', example: 'minus disc' },
    common: { rule: 'combine', example: 'common disc' },
  },
  panel: {
    grid: { rule: 'ofGrid', example: 'grid mesh' },
    centred: { rule: 'centred', example: 'centred node' },
    node: { rule: 'nodeAt', example: 'node at 0, 0' },
    shape: { rule: 'shape', example: 'shape 5 x 4 cells' },
    edge: { rule: 'edge', example: 'edge framed' },
    cut_cells: { rule: 'cutCells', example: 'cut_cells trim' },
    frame: {
      rule: 'frame',
      example: 'frame { of maple_frame  corners mitred  groove 6 }',
      opens: { block: 'frame', required: true },
    },
    stub: { rule: 'stub', example: 'stub 8' },
    tail: { rule: 'tail', example: 'tail 6' },
    sliver: { rule: 'sliver', example: 'sliver 8' },
    fill: {
      rule: 'panelFill',
      example: 'fill triangle with hemp of bass',
      opens: { block: 'tips', required: false },
    },
    map: { rule: 'map', example: 'map { h = hemp of bass  row h h h }', opens: { block: 'map', required: true } },
    meets: { rule: 'meets', example: 'meets blade leave 2' },
    copies: { rule: 'copies', example: 'copies 3' },
  },
  map: { row: { rule: 'mapRow', example: 'row h t h' } },
  tips: { tip },
  frame: {
    of: { rule: 'ofStrip', example: 'of maple_frame' },
    corners: { rule: 'corners', example: 'corners mitred' },
    groove: { rule: 'joint', example: 'groove 6' },
    stub: { rule: 'joint', example: 'stub 6' },
    end_gap: { rule: 'endGap', example: 'end_gap 0.5' },
    border: { rule: 'bearing', example: 'border' },
    fillers: { rule: 'bearing', example: 'fillers' },
  },
  blank: {
    grid: { rule: 'ofGrid', example: 'grid mesh' },
    shape: { rule: 'blankSize', example: 'shape 420 x 297' },
    take: { rule: 'take', example: 'take blade 3' },
    margin: { rule: 'margin', example: 'margin 10' },
    gap: { rule: 'gap', example: 'gap 4' },
    allowance: { rule: 'allowance', example: 'allowance 1.5' },
    turns: { rule: 'turns', example: 'turns 0, 180' },
    from_back: { rule: 'fromBack', example: 'from_back' },
    match: { rule: 'matchLaps', example: 'match laps' },
    depth: { rule: 'castDepth', example: 'depth 10 surfaced 0.5 overfill 1' },
    of: { rule: 'ofResin', example: 'of casting_resin' },
  },
  band: {
    around: { rule: 'around', example: 'around blade' },
    of: { rule: 'ofStrip', example: 'of walnut_strip' },
    laminations: { rule: 'laminations', example: 'laminations 2' },
    bends: { rule: 'bends', example: 'bends 15mm hot tested' },
    method: { rule: 'method', example: 'method damp' },
    corners: { rule: 'corners', example: 'corners mitred' },
    over_length: { rule: 'overLength', example: 'over_length 10' },
    over_width: { rule: 'overWidth', example: 'over_width 1' },
  },
  pour: {
    mould: { rule: 'mould', example: 'mould stem_outline' },
    layer: { rule: 'layer', example: 'layer clear 6' },
    of: { rule: 'ofResin', example: 'of casting_resin' },
    insert: { rule: 'insert', example: 'insert tenon from 0 to 6 density 650' },
    overfill: { rule: 'overfill', example: 'overfill 1' },
    surfaced: { rule: 'surfaced', example: 'surfaced 0.5' },
    seal: { rule: 'seal', example: 'seal 60' },
    waste: { rule: 'waste', example: 'waste 8%' },
    spare_castings: { rule: 'spareCastings', example: 'spare_castings 1' },
    copies: { rule: 'copies', example: 'copies 2' },
  },
  board: {
    shape: { rule: 'boardShape', example: 'shape oval' },
    of: { rule: 'ofSheet', example: 'of birch_ply' },
    chamfer: { rule: 'boardEdge', example: 'chamfer 10' },
    round_over: { rule: 'boardEdge', example: 'round_over 6' },
    pivot: { rule: 'pivot', example: 'pivot 0, 0' },
    copies: { rule: 'copies', example: 'copies 2' },
  },
  work: {
    copies: { rule: 'copies', example: 'copies 2' },
    place: { rule: 'placement', example: 'place blade at -80, 30 turned 15deg' },
    hang: { rule: 'hang', example: 'hang cleat screws 4 each 8kg' },
    finish: { rule: 'finishUse', example: 'finish oil' },
    moisture: { rule: 'moisture', example: 'moisture 8% to 11%' },
    hourly: { rule: 'hourly', example: 'hourly 32 EUR' },
    minutes: { rule: 'minutes', example: 'minutes 1.5 per setting for notch_strips', inner: ['finish'] },
    margin: { rule: 'gain', example: 'margin 35%' },
    markup: { rule: 'gain', example: 'markup 60%' },
    commission: { rule: 'commission', example: 'commission 40% of before_tax' },
    tax: { rule: 'tax', example: 'tax 20%' },
    packing: { rule: 'packing', example: 'packing 14 EUR' },
    losses: { rule: 'losses', example: 'losses 5%' },
  },
  kit: {
    panel: { rule: 'kitPanel', example: 'panel coaster' },
    students: { rule: 'students', example: 'students 12' },
    done: { rule: 'done', example: 'done milled, notched, cut' },
    breakage: { rule: 'breakage', example: 'breakage 4%' },
    spares: { rule: 'spares', example: 'spares 2 per bag, 20 with teacher' },
    jig: { rule: 'jig', example: 'jig for 3' },
  },
};

/** Phrases that begin with a word of their own choice and an equals sign behind it. */
const entries: Readonly<Partial<Record<BlockKind, PhraseForm>>> = {
  map: { rule: 'mapEntry', example: 'h = hemp of bass' },
};

/** The form of a phrase that begins with any word and `=`, undefined where the block has none. */
export const entryFormOf = (block: BlockKind): PhraseForm | undefined => entries[block];

const blocksRound: Partial<Record<BlockKind, readonly BlockKind[]>> = {
  tips: ['panel', 'motif'],
  frame: ['panel'],
  map: ['panel'],
};

/** The blocks that a block inside a declaration may stand in; none for the others. */
export const outerBlocks = (block: BlockKind): readonly BlockKind[] => blocksRound[block] ?? [];

/** How a maker speaks of a block. */
export const blockNames: Readonly<Record<BlockKind, string>> = {
  document: 'a file',
  wood: 'a wood',
  strip: 'a strip',
  sheet: 'a sheet',
  resin: 'a resin',
  finish: 'a finish',
  bench: 'a bench',
  grid: 'a grid',
  motif: 'a motif',
  outline: 'an outline',
  panel: 'a panel',
  map: 'a map',
  tips: 'a fill',
  frame: 'a frame',
  blank: 'a blank',
  band: 'a band',
  pour: 'a pour',
  board: 'a board',
  work: 'a work',
  kit: 'a kit',
};

/** The form a word begins in a block, undefined where it begins none. */
export function formOf(block: BlockKind, word: string): PhraseForm | undefined {
  const forms: Readonly<Record<string, PhraseForm>> = phraseForms[block];
  return Object.hasOwn(forms, word) ? forms[word] : undefined;
}

/** The words that may begin a phrase of a block, in the order they are usually written. */
export const wordsOf = (block: BlockKind): readonly string[] => Object.keys(phraseForms[block]);
