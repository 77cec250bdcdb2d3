/** A panel as a cut-out of a blank: its saw line, what is made inside it, and how each of its cells is filled. */
import type { Blank } from '../../design/work-model.ts';
import type { Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import { coarserRing } from '../../geometry/coarser-ring.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import type { Contour } from '../../geometry/path.ts';
import { add, direction, type Point, scale } from '../../geometry/point.ts';
import { areaOf, centroidOf } from '../../geometry/polygons.ts';
import { areaTolerance } from '../../geometry/tolerance.ts';
import { fillOpening } from '../../lattice/motif/fill-opening.ts';
import { foldedPairs, hingeGroupOf } from '../../lattice/motif/hinge-groups.ts';
import type { HingeGroup, LaidCell, LaidPanel, PieceShape, Placement } from '../../lattice/laid-panel.ts';
import { layOutPanel } from '../../lattice/lay-out-panel.ts';
import { mirroredPoint } from '../../lattice/motif/mirrored-piece.ts';
import { nodeOfPanel, panelRegion } from '../../lattice/grid/panel-region.ts';
import { facedParts } from '../lines/faced-parts.ts';
import { contourOfRing, contoursOf } from '../lines/part-contours.ts';
import { bandThickness, threeLines } from '../lines/three-lines.ts';
import type { CutOut } from './cut-out.ts';

/** A cell that the saw line meets: its middle and, as a set of places, the pieces that its motif has. */
export interface FilledCell {
  readonly middle: Point;
  readonly shape: LaidCell['shape'];
  readonly motif: string;
  readonly pieces: readonly Point[];
  readonly hinges: readonly CellHinge[];
}

/** A hinge of one cell, and the middles of its halves. */
export interface CellHinge {
  readonly hinge: HingeGroup;
  readonly middles: readonly Point[];
}

export interface PanelCutOut extends CutOut {
  readonly panel: Panel;
  /** The panel laid out to its saw line: pieces that keep any wood inside it. */
  readonly laid: LaidPanel;
  readonly cells: readonly FilledCell[];
}

/**
 * The cut-out of `panel` in `blank`, `count` times. The saw line is as straight as a pen would draw
 * it; which cell is filled with what, the finished outline says. Null where nothing of it is left, or the panel cannot be laid out.
 */
export function cutOutOfPanel(
  panel: Panel,
  blank: Blank,
  design: Pick<Design, 'bands' | 'work'>,
  count: number,
): PanelCutOut | null {
  const sawLine = sawContours(panel, blank, design).map(flattenContour).map(coarserRing);
  if (areaOf(sawLine) <= areaTolerance) return null;
  const sawn: Panel = {
    ...panel,
    edge: 'sawn',
    phase: { kind: 'nodeAt', at: nodeOfPanel(panel) },
    shape: {
      kind: 'outline',
      range: panel.shape.range,
      outline: {
        name: panel.name,
        range: panel.range,
        nameRange: panel.nameRange,
        contours: sawLine.map(contourOfRing),
      },
    },
  };
  const { panel: laid } = layOutPanel(sawn, panel.copies, panel);
  return (
    laid && {
      name: panel.name,
      outline: panel.shape.kind === 'outline' ? panel.shape.outline.name : panel.name,
      count,
      sawLine,
      families: panelRegion(panel).families,
      panel,
      laid,
      cells: [...laid.filledCells()].map(filledCell),
    }
  );
}

/** The saw line of `panel` in `blank`, exact, in the panel's own coordinates. */
export const sawContours = (panel: Panel, blank: Blank, design: Pick<Design, 'bands' | 'work'>): readonly Contour[] =>
  threeLines(contoursOf(panel), bandThickness(design, panel), blank.allowance, facedParts(panel, design)).saw;

/** All pieces of the cell's motif, those too that the saw line leaves out. */
function filledCell({ shape, motif, fill, opening, turned, mirrored }: LaidCell): FilledCell {
  const middle = centroidOf(opening);
  const [corner] = opening;
  if (!corner) return { middle, shape, motif, pieces: [], hinges: [] };
  const mirror = (point: Point): Point => mirroredPoint(point, middle, corner);
  const ring = [...opening.slice(turned), ...opening.slice(0, turned)];
  const seen = mirrored ? ring.map(mirror).reverse() : ring;
  const { pieces } = fillOpening(seen, fill.motif, fill.stock, fill.tips);
  const middles = pieces.map(({ ground }) => middleOf(ground));
  const hinges = foldedPairs(pieces).map((halves) => ({
    hinge: hingeGroupOf(halves, 1),
    middles: halves.map((half) => middleAlong(half)).map((half) => (mirrored ? mirror(half) : half)),
  }));
  return { middle, shape, motif, pieces: mirrored ? middles.map(mirror) : middles, hinges };
}

/** The middle of a piece's axis from tip to tip. */
export const middleAlong = ({ placement, shape }: { placement: Placement; shape: PieceShape }): Point =>
  add(placement.at, scale(direction(placement.turn), shape.length / 2));

const middleOf = (ring: readonly Point[]): Point => {
  const sum = ring.reduce(add);
  return { x: sum.x / ring.length, y: sum.y / ring.length };
};
