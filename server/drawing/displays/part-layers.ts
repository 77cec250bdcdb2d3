/** One part of the assembled work in its own frame, as it looks when it is finished: banded, sawn, its edges broken. */
import type { Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import type { Band, Board, Pour, WorkPart } from '../../design/work-model.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { grownContours } from '../../geometry/grow-contours.ts';
import type { Contour } from '../../geometry/path.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { contoursOf } from '../../shop/lines/part-contours.ts';
import { bandsRound, thicknessOf } from '../../shop/lines/three-lines.ts';
import { ringsOf } from '../../shop/placed-parts.ts';
import { partName } from '../../shop/work/plan-work.ts';
import type { DrawingLayer, DrawnKind, Rings } from '../drawing.ts';
import { drawPanel, ringOf } from '../draw-panel.ts';
import type { MarkedDesign } from '../kind-marks.ts';

/** What the assembled work is put together from. */
export interface WorkParts extends MarkedDesign {
  readonly design: Pick<Design, 'bands' | 'units'>;
  readonly panels: readonly LaidPanel[];
}

/** Layers from the back; none where the part could not be laid out. */
export function partLayers(part: WorkPart, parts: WorkParts): DrawingLayer[] {
  const name = partName(part);
  return ownLayers(part, parts).map((layer) => ({ ...layer, part: name, name: `${name}: ${layer.name}` }));
}

function ownLayers(part: WorkPart, parts: WorkParts): DrawingLayer[] {
  switch (part.kind) {
    case 'panel':
      return panelLayers(part.panel, parts);
    case 'board':
      return boardLayers(part.board, parts);
    case 'pour':
      return [castLayer(part.pour)];
  }
}

function panelLayers(panel: Panel, parts: WorkParts): DrawingLayer[] {
  const laid = parts.panels.find((each) => each.panel.name === panel.name);
  if (!laid) return [];
  const { name, range } = laid.panel;
  const bands = bandLayers(contoursOf(panel), bandsRound(parts.design, panel));
  const region = bands.inside ?? laid.region.map(ringOf);
  const isCast = parts.blanks.some(
    ({ blank: { cast, takes } }) => cast !== null && takes.some((take) => take.panel.name === name),
  );
  const own = drawPanel(laid, parts, null).layers.filter(({ kind }) => kind !== 'region' && kind !== 'outline');
  // in the finished work a trimmed piece looks like any other
  const finished = own.map((layer): DrawingLayer => (layer.kind === 'trimmed' ? { ...layer, kind: 'piece' } : layer));
  const sawn = laid.panel.edge === 'sawn' ? finished.map((layer) => ({ ...layer, clip: region })) : finished;
  return [
    ...(isCast ? [areaLayer('resin', { name, label: `resin of ${name}`, wood: null, rings: region, range })] : []),
    ...sawn,
    ...(bands.inside === null
      ? [areaLayer('note', { name, label: `outline of ${name}`, wood: null, rings: region, range })]
      : bands.layers),
  ];
}

/** Every band from the outside inwards, and what is left inside them; null where there are none. */
function bandLayers(
  finished: readonly Contour[],
  bands: readonly Band[],
): { layers: DrawingLayer[]; inside: Rings | null } {
  let outer = finished;
  const layers = bands.map((band) => {
    const inner = grownContours(outer, -thicknessOf(band), 'sharp');
    // inner rings are walked the other way, so that they are left out of the area
    const rings = [...ringsOfContours(outer), ...ringsOfContours(inner).map(backwards)];
    outer = inner;
    const label = `band ${band.name}, ${band.laminations} × ${band.stock.name}`;
    return areaLayer('piece', { name: band.name, label, wood: band.stock.wood, rings, range: band.range });
  });
  return { layers, inside: bands.length === 0 ? null : ringsOfContours(outer) };
}

/** A broken edge shows as a second outline. */
function boardLayers(board: Board, { design }: WorkParts): DrawingLayer[] {
  const { name, range, sheet, edge } = board;
  const { layers, inside } = bandLayers(board.outline.contours, bandsRound(design, board.outline));
  const whole = inside ?? ringsOfContours(board.outline.contours);
  const face =
    edge.kind === 'square' ? [] : ringsOfContours(grownContours(board.outline.contours, -edge.size, 'sharp'));
  const area = { name, label: `board ${name}`, wood: sheet.name, range };
  return [whole, face]
    .filter((rings) => rings.length > 0)
    .map((rings) => areaLayer('board', { ...area, rings }))
    .concat(layers);
}

/** Seen from the front, a cast has the colour of its last layer. */
function castLayer(pour: Pour): DrawingLayer {
  const rings = ringsOf({ kind: 'pour', pour }, []).map(ringOf);
  const wood = pour.layers.at(-1)?.colour ?? null;
  return areaLayer('resin', { name: pour.name, label: `cast ${pour.name}`, wood, rings, range: pour.range });
}

interface Area {
  readonly name: string;
  readonly label: string;
  readonly wood: string | null;
  readonly rings: Rings;
  readonly range: DrawnKind['range'];
}

const layerWords = { board: 'board', resin: 'resin', piece: 'band', note: 'outline' };

function areaLayer(kind: keyof typeof layerWords, { name, label, wood, rings, range }: Area): DrawingLayer {
  const shape: DrawnKind = { mark: name, label, rings, placements: [0, 0, 0], range };
  return { name: layerWords[kind], kind, level: 0, wood, kinds: [shape] };
}

const ringsOfContours = (contours: readonly Contour[]): number[][] =>
  contours.map((contour) => [...ringOf(flattenContour(contour))]);

function backwards(ring: readonly number[]): number[] {
  const turned: number[] = [];
  for (let index = ring.length - 2; index >= 0; index -= 2) turned.push(ring[index] ?? 0, ring[index + 1] ?? 0);
  return turned;
}
