/** What a drawing says of itself in words: for captions, and for those who cannot see it. */
import type { GridKind } from '../design/design-model.ts';
import { gridCheck, hasSingleLines } from '../design/builders/grid-check.ts';
import { rounded } from '../geometry/tolerance.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { copiesText } from './shared-words.ts';

const gridNames: Record<GridKind, string> = {
  three_way: 'three-way',
  square: 'square',
  diamond: 'diamond',
  kagome: 'kagome',
  free: 'free',
};

/** Lines of plain text, lengths in mm: the panel, its grid, its numbers, and one thing to check with a rule. */
export function summarise(laid: LaidPanel): string[] {
  const { panel } = laid;
  const { grid } = panel;
  const faces = [...new Set(grid.families.map((family) => family.stock.face.toFixed(1)))].join(' and ');
  const fit = grid.fit.toFixed(2);
  const check = gridCheck(grid);
  const size = hasSingleLines(grid) ? 'strips at places of their own' : `side ${grid.side.toFixed(1)}`;
  return [
    `Panel ${panel.name}, ${panel.edge}, ${copiesText(panel.copies)}`,
    `${gridNames[grid.kind]} grid ${grid.name}: ${size}, strip face ${faces}, fit ${fit}`,
    `${stripCount(laid)} strips, ${infillCount(laid)} infill pieces, ${(rounded(laid.areaMm2, 2) / 100).toFixed(1)} cm²`,
    `Check: ${check.what} measure ${check.millimetres.toFixed(1)} mm`,
  ];
}

const stripCount = (laid: LaidPanel): number =>
  laid.strips.reduce((total, group) => total + group.placements.length, 0);
const infillCount = (laid: LaidPanel): number => laid.pieces.reduce((total, group) => total + group.count, 0);
