/** What a drawing says of itself in words: for captions, and for those who cannot see it. */
import { figure, joined, measure, words } from '../../grammar/words.ts';
import type { GridKind, LengthUnit } from '../design/design-model.ts';
import { gridCheck, hasSingleLines } from '../design/builders/grid-check.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { writeWords } from '../words/write-words.ts';
import { copiesText } from './shared-words.ts';

const gridNames: Record<GridKind, string> = {
  three_way: 'three-way',
  square: 'square',
  diamond: 'diamond',
  kagome: 'kagome',
  free: 'free',
};

/** Lines of plain text: the panel, its grid, its numbers, and one thing to check with a rule. */
export function summarise(laid: LaidPanel, units: LengthUnit): string[] {
  const { panel } = laid;
  const { grid } = panel;
  const faces = [...new Set(grid.families.map(({ stock }) => stock.face))].map((face) => figure.fine(face));
  const fit = figure.fine(grid.fit);
  const check = gridCheck(grid);
  const size = hasSingleLines(grid) ? 'strips at places of their own' : words`side ${figure.length(grid.side)}`;
  return [
    `Panel ${panel.name}, ${panel.edge}, ${copiesText(panel.copies)}`,
    words`${gridNames[grid.kind]} grid ${grid.name}: ${size}, strip face ${joined(faces, ' and ')}, fit ${fit}`,
    words`${stripCount(laid)} strips, ${infillCount(laid)} infill pieces, ${measure.area(laid.areaMm2)}`,
    words`Check: ${check.what} measure ${measure.length(check.millimetres)}`,
  ].map((line) => writeWords(line, units));
}

const stripCount = (laid: LaidPanel): number =>
  laid.strips.reduce((total, group) => total + group.placements.length, 0);
const infillCount = (laid: LaidPanel): number => laid.pieces.reduce((total, group) => total + group.count, 0);
