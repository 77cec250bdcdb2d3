/**
 * A panel small enough to check by hand: two strips that cross, one piece kept whole and one trimmed,
 * two copies. Region 60 × 40 about the origin. Built without the engine, for the stages behind it.
 */
import type { Grid, Motif, Outline, Panel, StripStock } from '../server/design/design-model.ts';
import { emptyDesign } from '../server/design/empty-design.ts';
import { benchOf, fillOf, motifOf, stripStock } from './design-builder.ts';
import type { LaidPanel, NotchRun, PieceGroup, PieceShape, StripGroup } from '../server/lattice/laid-panel.ts';
import type { MarkedKinds } from '../server/shop/marks/marked-kinds.ts';

const range = { start: 0, end: 1 };
const named = (name: string) => ({ name, range, nameRange: range });

const stock = (name: string, wood: string): StripStock =>
  stripStock(name, 3, { ...named(name), wood, lengths: [{ length: 600, price: null }], spare: 0.1 });

const ash = stock('ash', 'white_ash');
const bass = stock('bass', 'basswood');

const grid: Grid = {
  ...named('squares'),
  kind: 'square',
  families: [
    { direction: 0, spacing: 40, offset: 0, positions: null, stock: ash, layer: 0, range },
    { direction: 90, spacing: 40, offset: 0, positions: null, stock: ash, layer: 1, range },
  ],
  turn: 0,
  measured: null,
  sideRange: range,
  side: 40,
  fit: 0.05,
  wall: null,
  bothSlants: false,
};

const motif: Motif = {
  ...named('spoke'),
  shape: 'square',
  pieces: [],
  dividers: [],
  fills: [],
  tips: [],
  hinges: [],
  fitOrder: [],
};
const outline: Outline = { ...named('box'), contours: [] };

const panel: Panel = {
  ...named('tray <1>'),
  grid,
  phase: { kind: 'centred', on: 'node' },
  shape: { kind: 'outline', outline, range },
  edge: 'sawn',
  stub: 0,
  tail: 6,
  fills: [{ shape: 'square', motif, stock: bass, turned: 0, mirrored: false, tips: [], where: [], range }],
  map: null,
  cutCells: 'trim',
  fit: null,
  frame: null,
  meets: [],
  sliver: null,
  copies: 2,
};

const notch = (from: 'above' | 'below', first: number): NotchRun => ({
  first,
  step: 40,
  count: 1,
  width: 3.05,
  angle: 90,
  depth: 5,
  from,
});

const strip = (family: number, length: number, from: 'above' | 'below'): StripGroup => ({
  grid: 'squares',
  family,
  layer: family - 1,
  stock: ash,
  length,
  notches: [notch(from, length / 2)],
  hand: null,
  perTenth: { pitchMm: 0.1, faceMm: 0 },
  range,
  placements: [family === 1 ? { at: { x: -length / 2, y: 0 }, turn: 0 } : { at: { x: 0, y: -length / 2 }, turn: 90 }],
});

const shape: PieceShape = {
  stock: bass,
  length: 20,
  edges: [17, 17],
  ends: [{ bevels: [45, 45] }, { bevels: [90, 90] }],
  outline: [
    { x: 0, y: 0 },
    { x: 1.5, y: -1.5 },
    { x: 20, y: -1.5 },
    { x: 20, y: 1.5 },
    { x: 1.5, y: 1.5 },
  ],
  notches: [],
};

const fill = fillOf('square', motifOf('spoke', 'square', {}), bass);

const piece = (fate: 'whole' | 'trimmed', x: number): PieceGroup => ({
  fill,
  motif: 'spoke',
  role: 'arm',
  shape,
  outline: shape.outline,
  fate,
  perTenth: null,
  count: 1,
  range,
  placements: () => [{ at: { x, y: 10 }, turn: 0 }],
});

const strips = [strip(1, 72, 'above'), strip(2, 52, 'below')] as const;
const pieces = [piece('whole', 5), piece('trimmed', -35)] as const;

export const handMadePanel: LaidPanel = {
  panel,
  quantity: 2,
  taken: 0,
  region: [
    [
      { x: -30, y: -20 },
      { x: 30, y: -20 },
      { x: 30, y: 20 },
      { x: -30, y: 20 },
    ],
  ],
  areaMm2: 2400,
  perimeterMm: 200,
  nodes: 1,
  cells: [{ shape: 'square', met: 4, needed: 2 }],
  filledCells: () => [],
  strips,
  pieces,
  hinges: [],
  slivers: [],
};

const inPanel = <Group>(group: Group) => ({ panel: handMadePanel, group });

export const handMadeKinds: MarkedKinds = {
  hinges: [],
  pieces: [{ mark: 'A&1', shape, groups: pieces.map(inPanel), whole: 2, trimmed: 2, make: 4, spare: 1, total: 5 }],
  strips: [
    { mark: 'S1', groups: [inPanel(strips[0])], make: 2, spare: 1, total: 3 },
    { mark: 'S2', groups: [inPanel(strips[1])], make: 2, spare: 1, total: 3 },
  ],
};

export const handMadeDesign = {
  ...emptyDesign,
  title: 'Tray "one" & only',
  units: 'mm' as const,
  strips: [ash, bass],
  benches: [benchOf({ bevels: [22.5, 45], kerf: 3, pinPitches: [40] })],
  grids: [grid],
  motifs: [motif],
  outlines: [outline],
  panels: [panel],
};
