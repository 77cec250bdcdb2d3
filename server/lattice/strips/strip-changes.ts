/** How much a strip's length changes with the side of its grid and the faces of its strips. */
import type { Panel } from '../../design/design-model.ts';
import { tenth, withLargerFaces, withLargerSide } from '../cells/cell-changes.ts';
import type { PerTenth } from '../laid-panel.ts';
import { panelRegion } from '../grid/panel-region.ts';
import { partsOfLine, type StripPart } from './strip-parts.ts';

/** Gives the change of one strip; the changed panels are made once. */
export function stripChange(panel: Panel): (part: StripPart, ordinal: number) => PerTenth | null {
  if (panel.edge === 'sawn') {
    // a sawn strip is whole steps of the grid and two tails
    return ({ start, end }) => ({ pitchMm: ((end - start - 2 * panel.tail) * tenth) / panel.grid.side, faceMm: 0 });
  }
  const changed = [withLargerSide, withLargerFaces].map((change) => {
    const larger = { ...panel, grid: change(panel.grid) };
    return { larger, ...panelRegion(larger) };
  });
  return (part, ordinal) => {
    const [pitch, face] = changed.map(({ larger, families, region }) => {
      const lines = families[part.lines.number - 1];
      return lines && partsOfLine(larger, families, region, lines, part.index)[ordinal];
    });
    const length = part.end - part.start;
    return pitch && face ? { pitchMm: pitch.end - pitch.start - length, faceMm: face.end - face.start - length } : null;
  };
}
