/** How deep the parts of a work are, front to back, once they are finished. Lengths mm. */
import type { Design, Grid, Outline, Panel } from '../../design/design-model.ts';
import type { Pour } from '../../design/work-model.ts';
import { maximum, sum } from '../../geometry/numbers.ts';

/** A lattice is as deep as its deepest strip after flushing. */
export const latticeDepth = ({ families }: Pick<Grid, 'families'>): number =>
  maximum(families.map(({ stock }) => stock.depth - 2 * stock.flush));

/** Cast panels are as deep as their blank is surfaced to, others as their lattice. */
export function panelDepth({ name, grid }: Panel, { blanks }: Design): number {
  const cast = blanks.find((blank) => blank.cast && blank.takes.some(({ panel }) => panel.name === name))?.cast;
  return cast?.depth ?? latticeDepth(grid);
}

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
