/** A blank as DXF: every saw line with its lines and arcs kept, the blank's edge, the strips' middles, and nodes to register by. */
import type { Panel } from '../../design/design-model.ts';
import type { Contour } from '../../geometry/path.ts';
import { scale, subtract } from '../../geometry/point.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { regionOf } from '../../geometry/region.ts';
import { followedBy, mirroring, moving, transformedSegment, turning, unmoved } from '../../geometry/transform-path.ts';
import { type GridMove, movedPoint } from '../../lattice/grid/grid-symmetries.ts';
import { measuredGrid } from '../../lattice/grid/measured-grid.ts';
import { nodeOfPanel, panelRegion } from '../../lattice/grid/panel-region.ts';
import { registerNodes } from '../../lattice/grid/register-nodes.ts';
import { stripAxes } from '../../lattice/strips/strip-axes.ts';
import type { Place } from '../../shop/blanks/cut-out.ts';
import { sawContours } from '../../shop/blanks/cut-out-of-panel.ts';
import { panelOfBlank } from '../../shop/blanks/lay-out-blank.ts';
import type { NestedBlank } from '../../shop/blanks/nest-blanks.ts';
import { type Filling, nameInPlace } from '../draw-blank.ts';
import { type DrawnDesign, sheetFacts } from '../sheet-facts.ts';
import type { DxfDrawing } from './dxf-drawing.ts';
import { axesLayer, curvesNote, noteLayer, plainLayer } from './dxf-layers.ts';
import { registerLayer } from './register-layer.ts';

/** Blanks of one filling, seen from the front, on the lattice as measured. `source` names the file and the state of its text. */
export function blankDxf(drawn: DrawnDesign, nested: NestedBlank, filling: Filling, source: string): DxfDrawing {
  const { name, filled, made } = filling;
  const { region, families } = panelRegion(measured(panelOfBlank(nested.blank)));
  const marks = registerNodes(families, regionOf(region.rings)).map((at, index) => ({ label: String(index + 1), at }));
  const facts = sheetFacts(drawn, [made], source);
  return {
    layers: [
      plainLayer('saw line', { paths: filled.places.flatMap((place) => placedContours(place, drawn, nested)) }),
      plainLayer('blank edge', { rings: region.rings }),
      axesLayer(stripAxes(families, region.rings)),
      registerLayer(marks),
      plainLayer('names', {
        texts: filled.places.map((place) => {
          const { x, y, size, text } = nameInPlace(place);
          return { at: { x: x - text.length * size * 0.5, y }, height: size, turn: 0, text };
        }),
      }),
      noteLayer(boundsOf(region.rings.flat()), [
        `blank ${name}, ${filled.count} to make, seen from the front; one unit is a millimetre`,
        ...[facts.origin, ...facts.assumptions, facts.check, curvesNote],
      ]),
    ],
  };
}

const measured = (panel: Panel): Panel => ({ ...panel, grid: measuredGrid(panel.grid) });

/** The saw line of a place, carried by its move on to the lattice as measured. */
function placedContours({ cutOut, move }: Place, { design }: DrawnDesign, { blank, cutOuts }: NestedBlank): Contour[] {
  const panel = cutOuts.find((each) => each === cutOut)?.panel;
  if (!panel) return [];
  const { turn, mirrored, shift } = measuredMove(move, panel);
  const mirror = mirrored ? mirroring({ x: 1, y: 0 }) : unmoved;
  const transform = followedBy(followedBy(mirror, turning(turn)), moving(shift));
  return sawContours(panel, blank, design).map((contour) =>
    contour.map((segment) => transformedSegment(segment, transform)),
  );
}

/** The move that carries a node under the panel to the node of the blank that it came to, wherever both were measured. */
function measuredMove(move: GridMove, panel: Panel): GridMove {
  const grid = measuredGrid(panel.grid);
  const target = scale(movedPoint(nodeOfPanel(panel), move), grid.side / panel.grid.side);
  const unshifted = movedPoint(nodeOfPanel(measured(panel)), { ...move, shift: { x: 0, y: 0 } });
  return { ...move, shift: subtract(target, unshifted) };
}
