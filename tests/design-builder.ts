/** Designs made without text, for tests of the lattice and the shop alone. */
import type {
  Bench,
  CellShape,
  Grid,
  GridKind,
  Motif,
  MotifPiece,
  NodeReference,
  Outline,
  Panel,
  PanelFill,
  PanelShape,
  Phase,
  StripStock,
  TipRule,
} from '../server/design/design-model.ts';
import type { ResinStock, SheetStock } from '../server/design/material-model.ts';
import type { Band, Board, Kit, Placement, Pour, Work, WorkPart } from '../server/design/work-model.ts';
import { circularArc } from '../server/geometry/flatten-path.ts';
import type { Contour } from '../server/geometry/path.ts';
import type { Point } from '../server/geometry/point.ts';

const nowhere = { start: 0, end: 0 };
const named = (name: string) => ({ name, range: nowhere, nameRange: nowhere });

export function stripStock(name: string, face: number, more: Partial<StripStock> = {}): StripStock {
  return {
    ...named(name),
    wood: null,
    face,
    depth: 10,
    lengthsRange: null,
    lengths: [],
    onHand: [],
    boards: [],
    kerf: null,
    endTrim: 0,
    breath: null,
    keepOffcuts: null,
    flush: 0,
    rejects: 0,
    spare: null,
    breakage: null,
    ...more,
  };
}

export function benchOf(more: Partial<Bench> = {}): Bench {
  return {
    ...named('shop'),
    bevels: [],
    kerf: null,
    pinPitches: [],
    bandBlade: null,
    bandKerf: null,
    bandRadius: null,
    rippingKerf: null,
    breath: null,
    shortestPiece: null,
    gang: 1,
    trim: 0,
    indexing: 'pin',
    pitchError: null,
    pitchScatter: null,
    ...more,
  };
}

/** A square or three-way grid of equal strips: spacing side·√3/2 for a three-way grid, the pitch for a square one. */
export function gridOf(kind: GridKind, side: number, stock: StripStock, more: Partial<Grid> = {}): Grid {
  const turn = more.turn ?? 0;
  const directions = kind === 'square' ? [0, 90] : [0, 60, 120];
  const spacing = kind === 'square' ? side : (side * Math.sqrt(3)) / 2;
  const families = directions.map((direction, layer) => ({
    direction: direction + turn,
    spacing,
    offset: 0,
    positions: null,
    stock,
    layer,
    range: nowhere,
  }));
  return {
    ...named('mesh'),
    kind,
    side,
    sideRange: nowhere,
    families,
    turn,
    measured: null,
    fit: 0,
    wall: null,
    bothSlants: false,
    ...more,
  };
}

/** A diamond grid: families at ±α/2, spacing side·sin α. */
export function diamondGrid(side: number, angle: number, stock: StripStock, turn = 0): Grid {
  const spacing = side * Math.sin((angle * Math.PI) / 180);
  const families = [-angle / 2, angle / 2].map((direction, layer) => ({
    direction: direction + turn,
    spacing,
    offset: 0,
    positions: null,
    stock,
    layer,
    range: nowhere,
  }));
  return gridOf('square', side, stock, { families, turn });
}

/** A basket weave: three families of spacing side·√3, the third set half a spacing off, so that no three lines meet. */
export function basketGrid(side: number, stock: StripStock, turn = 0): Grid {
  const spacing = side * Math.sqrt(3);
  const families = [0, 60, 120].map((direction, layer) => ({
    direction: direction + turn,
    spacing,
    offset: layer === 2 ? spacing / 2 : 0,
    positions: null,
    stock,
    layer,
    range: nowhere,
  }));
  return gridOf('three_way', side, stock, { families, turn });
}

export const atCorner = (corner: number): NodeReference => ({ name: null, place: { kind: 'corner', corner } });
export const atMidEdge = (edge: number): NodeReference => ({
  name: null,
  place: { kind: 'along', edge, fraction: 0.5 },
});
export const middle: NodeReference = { name: 'middle', place: { kind: 'centroid' } };
const hub: NodeReference = { name: 'hub', place: { kind: 'incentre' } };

export function pieceFrom(role: string, from: NodeReference, to: NodeReference): MotifPiece {
  return { role, from, to, above: [], range: nowhere };
}

export function motifOf(name: string, shape: CellShape, more: Partial<Motif>): Motif {
  return { ...named(name), shape, pieces: [], dividers: [], fills: [], tips: [], hinges: [], fitOrder: [], ...more };
}

/** Three arms from the corners of a triangle to its incentre. */
export const hemp: Motif = motifOf('hemp', 'triangle', {
  pieces: [1, 2, 3].map((corner) => pieceFrom('arm', atCorner(corner), hub)),
});

/** A square halved by a diagonal, hemp in each half; the tip from the square corner as given. */
export function squareHemp(tips: readonly TipRule[]): Motif {
  return motifOf('square_hemp', 'square', {
    dividers: [pieceFrom('diagonal', atCorner(1), atCorner(3))],
    fills: [{ parts: { kind: 'every' }, motif: hemp, tips, range: nowhere }],
  });
}

export const tipOf45: TipRule = { angle: 45, node: 'hub', corners: { kind: 'square' }, range: nowhere };

export function fillOf(shape: CellShape, motif: Motif, stock: StripStock, more: Partial<PanelFill> = {}): PanelFill {
  return { shape, motif, stock, turned: 0, mirrored: false, tips: [], where: [], range: nowhere, ...more };
}

export function panelOf(grid: Grid, shape: PanelShape, more: Partial<Panel> = {}): Panel {
  const phase: Phase = { kind: 'centred', on: 'node' };
  return {
    ...named('blade'),
    grid,
    phase,
    shape,
    edge: 'sawn',
    stub: 0,
    tail: 6,
    fills: [],
    map: null,
    cutCells: 'trim',
    fit: null,
    frame: null,
    meets: [],
    sliver: null,
    copies: 1,
    ...more,
  };
}

export const cellsShape = (across: number, up: number): PanelShape => ({ kind: 'cells', across, up, range: nowhere });
export const hexagonShape = (cells: number): PanelShape => ({ kind: 'hexagonOfCells', cells, range: nowhere });

export function outlineShape(...contours: Contour[]): PanelShape {
  return { kind: 'outline', outline: { ...named('leaf'), contours }, range: nowhere };
}

export function circleContour(radius: number, centre: Point = { x: 0, y: 0 }): Contour {
  const [east, west] = [
    { x: centre.x + radius, y: centre.y },
    { x: centre.x - radius, y: centre.y },
  ];
  return [circularArc(east, west, centre, 180), circularArc(west, east, centre, 180)];
}

export function polygonContour(points: readonly Point[]): Contour {
  return points.map((from, index) => ({ kind: 'line', from, to: points[(index + 1) % points.length] ?? from }));
}

/** Students who build `panel`, one set of jigs for two. */
export function kitOf(panel: Panel, more: Partial<Kit> = {}): Kit {
  return {
    ...named('class'),
    panel,
    students: 12,
    done: [],
    breakage: 0,
    sparesPerBag: 0,
    sparesWithTeacher: 0,
    studentsPerJig: 2,
    ...more,
  };
}

export function benchWithErrors(pitchError: number | null, pitchScatter: number | null): Bench {
  return benchOf({ kerf: 3, pitchError, pitchScatter });
}

export function workOf(more: Partial<Work> = {}): Work {
  return {
    ...named('work'),
    copies: 1,
    placements: [],
    hanging: null,
    finish: null,
    moisture: null,
    hourly: null,
    labour: [],
    gain: null,
    commission: 0,
    commissionOf: 'before_tax',
    tax: 0,
    packing: null,
    losses: 0,
    ...more,
  };
}

export function placementOf(part: WorkPart, at: Point, more: Partial<Placement> = {}): Placement {
  return { part, at, turn: 0, mirrored: false, layer: 0, range: nowhere, ...more };
}

export const outlineOf = (name: string, ...contours: Contour[]): Outline => ({ ...named(name), contours });

/** An ellipse about the origin, semi-axes across and up. */
export function ellipseContour(across: number, up: number): Contour {
  const [east, west] = [
    { x: across, y: 0 },
    { x: -across, y: 0 },
  ];
  const half = { kind: 'arc', centre: { x: 0, y: 0 }, radiusX: across, radiusY: up, tilt: 0, sweep: 180 } as const;
  return [
    { ...half, from: east, to: west, startAngle: 0 },
    { ...half, from: west, to: east, startAngle: 180 },
  ];
}

export function bandOf(around: Panel | Outline, stock: StripStock, more: Partial<Band> = {}): Band {
  return {
    ...named('rim'),
    around,
    stock,
    laminations: 1,
    method: 'cold',
    testedRadius: null,
    corners: 'mitred',
    overLength: 0,
    overWidth: 0,
    ...more,
  };
}

export function resinOf(more: Partial<ResinStock> = {}): ResinStock {
  return {
    ...named('clear_resin'),
    density: 1.1,
    mix: { a: 2, b: 1, by: 'volume' },
    partDensities: null,
    deepestPour: null,
    potLife: null,
    recoat: null,
    cure: null,
    mixSize: null,
    price: null,
    ...more,
  };
}

export function sheetOf(more: Partial<SheetStock> = {}): SheetStock {
  return {
    ...named('birch_ply'),
    thickness: 6,
    sizes: [],
    density: 680,
    kerf: 2.4,
    margin: 0,
    turns: [0, 180],
    ...more,
  };
}

export function pourOf(mould: Pour['mould'], depths: readonly number[], more: Partial<Pour> = {}): Pour {
  return {
    ...named('stem'),
    mould,
    resin: resinOf(),
    layers: depths.map((depth) => ({ colour: null, depth })),
    inserts: [],
    overfill: 0,
    surfaced: 0,
    sealCoat: 0,
    waste: 0,
    spareCastings: 0,
    copies: 1,
    ...more,
  };
}

export function boardOf(outline: Outline, more: Partial<Board> = {}): Board {
  return { ...named('back'), outline, sheet: sheetOf(), edge: { kind: 'square' }, pivot: null, copies: 1, ...more };
}
