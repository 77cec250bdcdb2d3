/** A motif in numbers: pieces a cell, where it is used, what it makes in all. And one role of its pieces. */
import { perTenthText } from './per-tenth-text.ts';
import { counted } from '../../../grammar/words.ts';
import type { Analysis } from '../../analyse.ts';
import type { Motif, PanelFill } from '../../design/design-model.ts';
import type { PieceShape } from '../../lattice/laid-panel.ts';
import type { MarkedPiece } from '../../shop/marks/marked-kinds.ts';
import { heading, type HoverLines } from './hover-text.ts';
import { sum, tallyPieces } from './tally.ts';
import { angleText, lengthText } from '../../words/figures.ts';

export function motifHover(analysis: Analysis, motif: Motif): HoverLines {
  const { make, whole, trimmed } = tallyPieces(analysis, (group) => group.motif === motif.name);
  return [
    heading('motif', motif.name, `for ${motif.shape}`),
    `In one cell: ${cellText(motif)}`,
    usesText(analysis, motif),
    `To make in all: **${make}** (${whole} whole, ${trimmed} trimmed)`,
    marksText(analysis, motif),
  ];
}

/** All pieces of a role: `role` is the word after `piece` or `divider`. */
export function roleHover(analysis: Analysis, motif: Motif, role: string): HoverLines {
  const kind = motif.dividers.some((divider) => divider.role === role) ? 'divider' : 'piece';
  const each = [...motif.dividers, ...motif.pieces].filter((piece) => piece.role === role).length;
  const marked = analysis.kinds.pieces
    .map((piece) => ({ piece, make: madeAs(piece, motif, role) }))
    .filter(({ make }) => make > 0);
  return [
    heading(kind, role, `${counted(each, 'piece')} in a cell of ${motif.name}`),
    ...(marked.length > 0 ? [] : ['None is made: no panel that could be laid out uses it.']),
    ...marked.map(({ piece, make }) => `${markText(analysis, piece)}: **${make}** to make`),
  ];
}

function cellText({ pieces, dividers, fills }: Motif): string {
  const fillNames = [...new Set(fills.map(({ motif }) => motif.name))];
  return [
    dividers.length > 0 ? counted(dividers.length, 'divider') : '',
    pieces.length > 0 || dividers.length === 0 ? counted(pieces.length, 'piece') : '',
    fillNames.length > 0 ? `parts filled with ${fillNames.map((name) => `\`${name}\``).join(', ')}` : '',
  ]
    .filter(Boolean)
    .join(', ');
}

function usesText({ design }: Analysis, motif: Motif): string {
  const uses = [
    ...design.panels.filter(({ fills }) => fillsWith(fills, motif)).map(({ name }) => `panel \`${name}\``),
    ...design.motifs.filter(({ fills }) => fillsWith(fills, motif)).map(({ name }) => `motif \`${name}\``),
  ];
  return uses.length > 0 ? `Used in ${uses.join(', ')}` : 'Not used in any panel';
}

const fillsWith = (fills: readonly Pick<PanelFill, 'motif'>[], motif: Motif): boolean =>
  fills.some((fill) => fill.motif.name === motif.name);

function marksText({ kinds }: Analysis, motif: Motif): string {
  const marks = kinds.pieces
    .filter(({ groups }) => groups.some(({ group }) => group.motif === motif.name))
    .map(({ mark }) => mark);
  return marks.length > 0 ? `Marks: ${marks.join(', ')}` : '';
}

/** How many of a marked piece are made for this role of this motif, all panels and copies. */
function madeAs({ groups }: MarkedPiece, motif: Motif, role: string): number {
  return sum(
    groups
      .filter(({ group }) => group.motif === motif.name && group.role === role)
      .map(({ panel, group }) => group.count * panel.quantity),
  );
}

function markText({ design }: Analysis, { mark, shape, groups }: MarkedPiece): string {
  const change = perTenthText(groups[0]?.group.perTenth, design.units);
  return [
    `\`${mark}\` ${lengthText(shape.length, design.units, 'length')} long of \`${shape.stock.name}\``,
    bevelText(shape),
    change,
  ]
    .filter(Boolean)
    .join(', ');
}

/** "bevels 30°/30° and 60°/60°", left/right at end 1 and end 2. */
function bevelText({ ends }: PieceShape): string {
  const texts = ends.map(({ bevels }) => (bevels ? bevels.map(angleText).join('/') : 'fitted'));
  return `bevels ${texts.join(' and ')}`;
}
