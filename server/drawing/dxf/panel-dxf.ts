/** A panel as DXF: its outline with lines and arcs kept, every strip and every piece as a closed ring, and their marks. */
import { add, type Point, turned } from '../../geometry/point.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import type { LaidPanel, Placement, Polygon } from '../../lattice/laid-panel.ts';
import { contoursOf } from '../../shop/lines/part-contours.ts';
import { measuredGrid } from '../../lattice/grid/measured-grid.ts';
import { barRing } from '../bar-ring.ts';
import { marksOf, stripsByMark } from '../kind-marks.ts';
import { type DrawnDesign, sheetFacts } from '../sheet-facts.ts';
import type { DxfDrawing, DxfLayer, DxfText } from './dxf-drawing.ts';
import { noteLayer, plainLayer } from './dxf-layers.ts';

const markHeight = 1.8;

/** One copy of `laid`, seen from the front. `source` names the file and the state of its text. */
export function panelDxf(drawn: DrawnDesign, laid: LaidPanel, source: string): DxfDrawing {
  const { panel } = laid;
  const contours = contoursOf({ ...panel, grid: measuredGrid(panel.grid) });
  const facts = sheetFacts(drawn, [laid], source);
  const layers = [
    plainLayer('outline', { paths: contours }),
    ...stripLayers(laid, stripsByMark(laid, drawn)),
    ...pieceLayers(laid, marksOf(laid, drawn.kinds.pieces)),
  ];
  const bounds = boundsOf([...laid.region.flat(), ...layers.flatMap(({ rings }) => rings.flat())]);
  const notes = [
    `panel ${panel.name}, seen from the front; one unit is a millimetre`,
    facts.origin,
    ...facts.assumptions,
  ];
  return { layers: [...layers, noteLayer(bounds, [...notes, facts.check])] };
}

function stripLayers(laid: LaidPanel, marked: ReturnType<typeof stripsByMark>): DxfLayer[] {
  const levels = [...new Set(laid.strips.map(({ layer }) => layer))].sort((a, b) => a - b);
  return levels.map((level) => {
    const groups = laid.strips.filter(({ layer }) => layer === level);
    return plainLayer(`strips ${level + 1}`, {
      rings: groups.flatMap((group) => placedAll(pointsOf(barRing(group.length, group.stock.face)), group.placements)),
      texts: groups.flatMap((group) =>
        marked(group).flatMap(({ mark, placements }) =>
          placements.map((placement) => markText(mark, placement, group.length / 2)),
        ),
      ),
    });
  });
}

function pieceLayers(laid: LaidPanel, marks: ReturnType<typeof marksOf<LaidPanel['pieces'][number]>>): DxfLayer[] {
  return (['whole', 'trimmed'] as const)
    .map((fate) => ({ fate, groups: laid.pieces.filter((group) => group.fate === fate) }))
    .filter(({ groups }) => groups.length > 0)
    .map(({ fate, groups }) =>
      plainLayer(`pieces ${fate}`, {
        rings: groups.flatMap((group) => placedAll(group.outline, group.placements())),
        texts: groups.flatMap((group) =>
          [...group.placements()].map((placement) =>
            markText(marks.get(group) ?? '', placement, group.shape.length / 2),
          ),
        ),
      }),
    );
}

function pointsOf(ring: readonly number[]): Point[] {
  return Array.from({ length: ring.length / 2 }, (_, index) => ({
    x: ring[2 * index] ?? 0,
    y: ring[2 * index + 1] ?? 0,
  }));
}

const placedAll = (outline: Polygon, placements: Iterable<Placement>): Point[][] =>
  [...placements].map(({ at, turn }) => outline.map((point) => add(turned(point, turn), at)));

/** A mark about the middle of its strip or piece, on its axis. */
function markText(mark: string, { at, turn }: Placement, middle: number): DxfText {
  const start = { x: middle - mark.length * markHeight * 0.5, y: -markHeight / 2 };
  return { at: add(turned(start, turn), at), height: markHeight, turn, text: mark };
}
