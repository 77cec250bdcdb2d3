/** Every token of the notation, each with its one-line meaning. */
import { createToken, Lexer } from 'chevrotain';
import type { ILexingError, IToken, TokenType } from 'chevrotain';
import { fillWords } from './fill-words.ts';
import { materialWords } from './material-words.ts';
import { objectWords } from './object-words.ts';
import { outlineWords } from './outline-words.ts';
import type { QuantityUnit } from '../tree/syntax-nodes.ts';
import { constant, declaration, link, property, unit } from './word-entry.ts';
import type { WordEntry } from './word-entry.ts';

/** The words with a meaning of their own in some place. None is reserved: each may also be a name. */
export const knownWords = {
  use: declaration('Brings in what another file declares.'),
  title: declaration('Name of the design, printed on every page.'),
  units: declaration('Unit of every length written without one.'),
  let: declaration('A number with a name.'),
  strip: declaration('Wood milled to one section.'),
  bench: declaration('Jigs and saws of the shop.'),
  grid: declaration('Parallel strips lapped into a lattice.'),
  motif: declaration('Infill of one opening, drawn once.'),
  outline: declaration('A closed line that shapes a panel.'),
  panel: declaration('A piece of lattice with its shape and infill.'),

  section: property('Milled size of a strip: face and depth.'),
  face: property('Width of a strip seen from the front.'),
  depth: property('Size of a strip from front to back.'),
  lengths: property('Lengths the strip can be bought or milled in.'),
  flush: property('Milled away from each face after assembly.'),
  spare: property('Part of the pieces cut beyond the need.'),
  rejects: property('Part of the strips expected to fail in milling.'),

  bevels: property('Angles of the bevel jigs on the bench.'),
  kerf: property('Width of a blade’s cut: of a bench, the notching blade’s.'),
  pin: property('The indexing pin of the notching jig.'),
  pitches: property('Distances from the pin to the blade.'),
  band_blade: property('Width of the band saw blade.'),

  three_way: property('Three directions of strips, 60° apart, three through every node.'),
  diamond: property('Two directions of strips at an angle; its openings are rhombi.'),
  basket_weave: property('Three directions of strips, never three through one node: triangles and hexagons.'),
  free: property('A grid of families that are each declared.'),
  family: property('Parallel strips of one direction.'),
  except: property('A family, by number, that is of another strip.'),
  wall: property('The least wood left between notches and at the ends of strips.'),
  layers: property('The families by number, from the back to the front.'),
  side: property('Length of one side of an opening, from node to node.'),
  pitch: property('Distance between centre lines of a square grid.'),
  of: property('What something is made of.'),
  fit: property('Clearance of a notch over the strip it takes; negative presses.'),
  turn: property('Turns the whole grid counter-clockwise.'),
  measured: property('What came out after assembly: a length over so many cells, and the strips’ face.'),
  both: property('With slants: cuts on both sides.'),
  slants: property('The slanted cuts of a three-way middle strip.'),

  node: property('A point of an opening or of the grid.'),
  divider: property('A strip across an opening that splits it.'),
  piece: property('A straight infill piece between two nodes.'),
  fit_order: property('Order in which pieces are fitted, the key last.'),
  hinge: property('Two pieces cut as one length, scored and folded.'),
  fill: property('Puts a motif into openings or parts.'),
  tip: property('A declared bevel for the ends at a node.'),

  centred: property('What lies at the middle of the panel: node, cell or edge.'),
  shape: property('Form and size of a panel.'),
  edge: property('Of a panel: sawn or framed. Of an opening: one of its sides.'),
  stub: property('How far a framed strip runs into the frame.'),
  sliver: property('A trimmed piece that keeps less than this is reported.'),
  tail: property('How far a sawn strip runs beyond its last node.'),
  cut_cells: property('What a cell cut by the frame gets: trim, own or open.'),
  copies: property('How many of this panel are made.'),

  for: link('The shape of opening a motif is for.'),
  at: link('A place follows.'),
  from: link('The first end follows.'),
  to: link('The far end follows.'),
  by: link('Control points follow.'),
  and: link('Joins the second of two.'),
  every: link('Repeats a piece at each corner or edge.'),
  key: link('Fitted last, cut this much longer and shaved.'),
  with: link('A motif follows.'),
  along: link('Part of the way along an edge.'),
  between: link('A point on the line between two nodes.'),
  the: link('May stand before a corner.'),
  spacing: link('Distance between neighbouring centre lines of a family.'),
  offset: link('Place of a family’s first centre line, across its direction.'),
  turned: link('Turns counter-clockwise: a motif by corners, a place by corners or an angle.'),
  about: link('The place something is turned about follows.'),
  over: link('The line something is mirrored over follows.'),
  above: link('Of two lapped pieces, this lies nearer to the viewer.'),
  x: link('Stands between a width and a height.'),

  triangle: constant('An opening with three corners.'),
  square: constant('An opening with four equal corners; also the grid of two directions.'),
  rhombus: constant('An opening with two sharp and two wide corners.'),
  hexagon: constant('An opening with six corners.'),
  polygon: constant('An opening of any other form, by its number of corners; as an outline, a regular one.'),
  corner: constant('A corner of an opening, counted counter-clockwise from the lowest.'),
  intersection: constant('Where two lines meet.'),
  mid: constant('The middle of an edge.'),
  centroid: constant('Balance point of an opening.'),
  incentre: constant('Point equally far from all edges.'),
  halves: constant('Both parts of an opening split by one divider.'),
  parts: constant('All parts of a divided opening.'),
  sharp: constant('The corners below 90°.'),
  wide: constant('The corners above 90°.'),
  sawn: constant('Whole pieces, sawn through later.'),
  framed: constant('Pieces fitted to a frame.'),
  trim: constant('The whole motif, cut by the frame; on a bench, what infill is cut longer by before its bevels.'),
  own: constant('The motif set into what the frame leaves of the cell.'),
  open: constant('No infill.'),
  cell: constant('An opening of the grid.'),
  cells: constant('Counts openings instead of millimetres.'),

  ...outlineWords,
  ...fillWords,
  ...materialWords,
  ...objectWords,

  mm: unit('Millimetres.'),
  cm: unit('Centimetres.'),
  m: unit('Metres.'),
  in: unit('Inches, 25.4 mm each.'),
  ft: unit('Feet, twelve inches each.'),
} as const satisfies Record<string, WordEntry>;

export type KnownWord = keyof typeof knownWords;

/** Functions of the arithmetic, with what they give. */
export const knownFunctions = {
  sqrt: 'Square root.',
  sin: 'Sine of an angle.',
  cos: 'Cosine of an angle.',
  tan: 'Tangent of an angle.',
  min: 'Smallest of its values.',
  max: 'Largest of its values.',
} as const;

/** Units that may stand right behind a number. */
export const quantityUnits: readonly QuantityUnit[] = [
  'mm',
  'cm',
  'm',
  'in',
  'ft',
  'deg',
  '%',
  'g',
  'kg',
  'oz',
  'lb',
  'mL',
  'L',
  'min',
  'h',
  'day',
  'days',
];

const namePattern = /[\p{L}_][\p{L}\p{M}\p{N}_]*/uy;
const crossPattern = /(?<=\d)x(?=\d)/y;
const barePathPattern = /[\p{L}_.][\p{L}\p{M}\p{N}_./-]*\.lap(?![\p{L}\p{M}\p{N}_])/uy;
const unitEnd = '(?![\\p{L}\\p{M}\\p{N}_])';
const unitLetters = quantityUnits.filter((letters) => letters !== '%').join('|');
const amount = '(?:\\d+\\.\\d+|\\.\\d+|\\d+)';
/** A unit behind its number; `"` stands for inches. */
const behindNumber = (open: string): string => `${open}"|(?:${unitLetters})${unitEnd})`;
const quantityPattern = new RegExp(
  `(?:(?:\\d+(?: +|-))?\\d+/\\d+${behindNumber('(?:')}|${amount}${behindNumber('(?:%|')})`,
  'uy',
);
const unknownQuantityPattern = new RegExp(`${amount}(?!x\\d)[\\p{L}_][\\p{L}\\p{M}\\p{N}_]*`, 'uy');

/** The lexer drops the `u` flag of plain patterns, so these are matched by hand. */
function matchedBy(pattern: RegExp) {
  return {
    exec(text: string, offset: number): RegExpExecArray | null {
      pattern.lastIndex = offset;
      return pattern.exec(text);
    },
  };
}

/** A name, or a known word where it stands for a name. */
export const Word = createToken({
  name: 'Word',
  label: 'a name',
  pattern: matchedBy(namePattern),
  line_breaks: false,
});

/** A token type per known word; each is also a Word. They carry no pattern: `tokenize` tells them apart. */
export const keyword = Object.fromEntries(
  Object.keys(knownWords).map((word) => [
    word,
    createToken({ name: `word_${word}`, label: `\`${word}\``, pattern: Lexer.NA, categories: [Word] }),
  ]),
) as Record<KnownWord, TokenType>;

/** The `x` of `5x4`, written without spaces. */
export const CrossBetweenDigits = createToken({
  name: 'CrossBetweenDigits',
  label: '`x`',
  pattern: matchedBy(crossPattern),
  line_breaks: false,
  categories: [keyword.x],
});

/** The path of a file whose quotes were forgotten: no phrase takes it, so it costs one message. */
export const BarePath = createToken({
  name: 'BarePath',
  label: 'a file in double quotes',
  pattern: matchedBy(barePathPattern),
  line_breaks: false,
});

/** A number with its unit, such as 36mm, 3 1/2in, 3-1/2", 12deg or 5%. */
export const Quantity = createToken({
  name: 'Quantity',
  label: 'a quantity',
  pattern: matchedBy(quantityPattern),
  line_breaks: false,
});

/** A number with letters behind it that are no unit. */
export const UnknownQuantity = createToken({
  name: 'UnknownQuantity',
  label: 'a quantity',
  pattern: matchedBy(unknownQuantityPattern),
  line_breaks: false,
});

/** A bare number; its place says what it measures. */
export const NumberToken = createToken({ name: 'Number', label: 'a number', pattern: /\d+\.\d+|\.\d+|\d+/ });

/** Text in double quotes on one line; a missing closing quote is reported apart. */
export const Text = createToken({
  name: 'Text',
  label: 'text in double quotes',
  pattern: /"(?:[^"\\\r\n]|\\[^\r\n])*"?/,
});

export const LeftBrace = createToken({ name: 'LeftBrace', label: '`{`', pattern: '{' });
export const RightBrace = createToken({ name: 'RightBrace', label: '`}`', pattern: '}' });
export const LeftBracket = createToken({ name: 'LeftBracket', label: '`(`', pattern: '(' });
export const RightBracket = createToken({ name: 'RightBracket', label: '`)`', pattern: ')' });
export const Comma = createToken({ name: 'Comma', label: '`,`', pattern: ',' });
export const Equals = createToken({ name: 'Equals', label: '`=`', pattern: '=' });
/** A sign of its own in a map; never before a digit, where it begins a number. */
export const Dot = createToken({ name: 'Dot', label: '`.`', pattern: /\.(?!\d)/ });
export const Plus = createToken({ name: 'Plus', label: '`+`', pattern: '+' });
export const Minus = createToken({ name: 'Minus', label: '`-`', pattern: '-' });
export const Times = createToken({ name: 'Times', label: '`*`', pattern: '*' });
export const Divide = createToken({ name: 'Divide', label: '`/`', pattern: '/' });

/** From `#` to the end of the line; kept apart from the grammar for the printer. */
export const Comment = createToken({ name: 'Comment', pattern: /#[^\r\n]*/, group: 'comments' });

const Space = createToken({
  name: 'Space',
  pattern: /[ \t\r\n\f\v\u00a0\ufeff]+/,
  group: Lexer.SKIPPED,
  line_breaks: true,
});

const lexedTokens = [
  Space,
  Comment,
  Text,
  Quantity,
  UnknownQuantity,
  NumberToken,
  CrossBetweenDigits,
  BarePath,
  Word,
  LeftBrace,
  RightBrace,
  LeftBracket,
  RightBracket,
  Comma,
  Equals,
  Dot,
  Plus,
  Minus,
  Times,
  Divide,
];

/** Every token type the grammar may speak of. */
export const allTokens: TokenType[] = [...lexedTokens, ...Object.values(keyword)];

const lexer = new Lexer(allTokens, { positionTracking: 'full', ensureOptimizations: false });

export interface Tokens {
  readonly tokens: readonly IToken[];
  readonly comments: readonly IToken[];
  readonly errors: readonly ILexingError[];
}

/** Tells a text apart into tokens, their offsets counted from `begin`. Never throws; what it cannot read is in `errors`. */
export function tokenize(text: string, begin = 0): Tokens {
  const { tokens, groups, errors } = lexer.tokenize(text);
  const comments = groups['comments'] ?? [];
  if (begin > 0) for (const token of [...tokens, ...comments]) token.startOffset += begin;
  for (const token of tokens) {
    if (token.tokenType !== Word || !Object.hasOwn(keyword, token.image)) continue;
    const type = keyword[token.image as KnownWord];
    token.tokenType = type;
    token.tokenTypeIdx = type.tokenTypeIdx ?? token.tokenTypeIdx;
  }
  return { tokens, comments, errors };
}
