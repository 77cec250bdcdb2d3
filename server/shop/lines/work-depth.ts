/** How deep the parts of a work are, front to back, once they are finished. Lengths mm. */
import type { Grid, Outline, Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import type { ResinStock } from '../../design/material-model.ts';
import type { Pour } from '../../design/work-model.ts';
import { maximum, sum } from '../../geometry/numbers.ts';

/** A lattice is as deep as its deepest strip after flushing. */
export const latticeDepth = ({ families }: Pick<Grid, 'families'>): number =>
  maximum(families.map(({ stock }) => stock.depth - 2 * stock.flush));

/** What a panel's blank is cast in, and how deep that is once surfaced; null for an open lattice. */
export function castOfPanel(
  { name }: Panel,
  { blanks, pours }: Pick<Design, 'blanks' | 'pours'>,
): { readonly resin: ResinStock; readonly depth: number } | null {
  const blank = blanks.find(({ takes }) => takes.some(({ panel }) => panel.name === name));
  const pour = pours.find(({ mould }) => mould.kind === 'blank' && mould.blank.name === blank?.name);
  return pour ? { resin: pour.resin, depth: pourDepth(pour) } : (blank?.cast ?? null);
}

/** Cast panels are as deep as their blank is surfaced to, others as their lattice. */
export const panelDepth = (panel: Panel, design: Pick<Design, 'blanks' | 'pours'>): number =>
  castOfPanel(panel, design)?.depth ?? latticeDepth(panel.grid);

/** What is left of a casting once what stands over is planed away. */
export const pourDepth = ({ layers }: Pour): number => sum(layers.map(({ depth }) => depth));

/** What the edge of a panel, or of whatever has this outline, is deep; null where nothing has it. */
export function edgeDepth(around: Panel | Outline, design: Design): number | null {
  if (!('contours' in around)) return panelDepth(around, design);
  const boards = design.boards.filter(({ outline }) => outline === around).map(({ sheet }) => sheet.thickness);
  const bodies = design.pours
    .filter(({ mould }) => mould.kind === 'outline' && mould.outline === around)
    .map(pourDepth);
  return boards.length + bodies.length === 0 ? null : maximum([...boards, ...bodies]);
}
