/** Grids, benches, panels, pieces and strips as the plan writes them. Lengths mm, angles degrees. */
import { sum } from '../../geometry/numbers.ts';
import type { Bench, Grid, Panel, StripStock } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import { gridCheck } from '../../design/builders/grid-check.ts';
import type { LaidPanel, PieceEnd, PieceFate, PerTenth } from '../../lattice/laid-panel.ts';
import { expandNotches } from './expand-notches.ts';
import type { MarkedHinge, MarkedPiece, MarkedStrip } from '../marks/marked-kinds.ts';
import { planAngle, planArea, planLength } from './plan-rounding.ts';
import type {
  PlanBench,
  PlanBreakage,
  PlanGrid,
  PlanHinge,
  PlanPanel,
  PlanPiece,
  PlanPieceEnd,
  PlanStrip,
  PlanPerTenth,
} from '../shop-plan.ts';

/**
 * The grids that a lattice is made on: as declared, and as resized for a panel whose cells had to come out in a given size.
 * One that every panel of its own resized is not made as declared.
 */
export function gridsMade({ grids, panels, blanks }: GridUsers): { name: string; grid: Grid }[] {
  const isResized = ({ fit }: Panel): boolean => fit?.by === 'pitch';
  const asDeclared = [...panels.filter((panel) => !isResized(panel)), ...blanks].map(({ grid }) => grid.name);
  return [
    ...grids.filter(({ name }) => asDeclared.includes(name)).map((grid) => ({ name: grid.name, grid })),
    ...panels.filter(isResized).map(({ name, grid }) => ({ name: `${grid.name} in ${name}`, grid })),
  ];
}

type GridUsers = Pick<Design, 'grids' | 'panels' | 'blanks'>;

export const planGrids = (design: GridUsers): PlanGrid[] =>
  gridsMade(design).map(({ name, grid }) => ({ ...planGrid(grid), name }));

function planGrid(grid: Grid): PlanGrid {
  const { name, side, fit } = grid;
  const kind = grid.kind === 'kagome' ? 'basket_weave' : grid.kind; // the plan's word for it is the older one
  const { what, millimetres } = gridCheck(grid);
  return {
    name,
    kind,
    sideMm: planLength(side),
    fitMm: planLength(fit),
    tenSidesMm: planLength(10 * side),
    check: { what, mm: planLength(millimetres) },
  };
}

export function planBench({ name, kerf, bevels }: Bench): PlanBench {
  return { name, kerfMm: kerf === null ? null : planLength(kerf), bevels: bevels.map(planAngle) };
}

export function planPanel(laid: LaidPanel): PlanPanel {
  const countOf = (fate: PieceFate): number =>
    sum(laid.pieces.filter((group) => group.fate === fate).map((group) => group.count));
  const whole = countOf('whole');
  const trimmed = countOf('trimmed');
  return {
    name: laid.panel.name,
    copies: laid.panel.copies,
    quantity: laid.quantity + laid.taken,
    edge: laid.panel.edge,
    areaMm2: planArea(laid.areaMm2),
    perimeterMm: planLength(laid.perimeterMm),
    nodes: laid.nodes,
    cells: laid.cells.map(({ shape, met, needed }) => ({ shape, met, needed })),
    infill: { make: whole + trimmed, whole, trimmed },
    strips: sum(laid.strips.map((group) => group.placements.length)),
  };
}

export function planPiece(piece: MarkedPiece): PlanPiece {
  const { shape } = piece;
  return {
    mark: piece.mark,
    from: piecesFrom(piece),
    stock: shape.stock.name,
    face: planLength(shape.stock.face),
    depth: planLength(shape.stock.depth),
    lengthMm: planLength(shape.length),
    perTenth: planPerTenth(piece.groups[0]?.group.perTenth ?? null),
    edgesMm: [planLength(shape.edges[0]), planLength(shape.edges[1])],
    ends: [planEnd(shape.ends[0]), planEnd(shape.ends[1])],
    outline: shape.outline.map((point): [number, number] => [planLength(point.x), planLength(point.y)]),
    notches: expandNotches(shape.notches),
    make: piece.make,
    whole: piece.whole,
    trimmed: piece.trimmed,
    spare: piece.spare,
    spareFor: planBreakage(piece.shape.stock),
    total: piece.total,
    panels: byPanel(piece.groups, (group) => group.count),
  };
}

export const planHinge = ({ halves: [first, second], make }: MarkedHinge): PlanHinge => ({
  marks: [first.mark, second.mark],
  lengthMm: planLength(first.shape.length + second.shape.length),
  scoreMm: planLength(first.shape.length),
  make,
});

const planBreakage = ({ breakage }: StripStock): PlanBreakage | null =>
  breakage && { breakagePct: planLength(100 * breakage.share), confidencePct: planLength(100 * breakage.confidence) };

const planPerTenth = (change: PerTenth | null): PlanPerTenth | null =>
  change && { pitchMm: planLength(change.pitchMm), faceMm: planLength(change.faceMm) };

function planEnd({ bevels }: PieceEnd): PlanPieceEnd {
  return { bevels: bevels && [planAngle(bevels[0]), planAngle(bevels[1])] };
}

/** Which motifs and pieces a kind was merged from, each with the number it makes, in the order they were met. */
function piecesFrom(piece: MarkedPiece): PlanPiece['from'] {
  const makes = new Map<string, PlanPiece['from'][number]>();
  for (const { panel, group } of piece.groups) {
    const key = JSON.stringify([group.motif, group.role]);
    const entry = makes.get(key) ?? { motif: group.motif, piece: group.role, make: 0 };
    entry.make += group.count * panel.quantity;
    makes.set(key, entry);
  }
  return [...makes.values()].filter(({ make }) => make > 0);
}

/** A kind of strip, described by the first place it was met in; `from` names every grid and family it serves. */
export function planStrip(strip: MarkedStrip): PlanStrip[] {
  return strip.groups.slice(0, 1).map(({ group }) => ({
    mark: strip.mark,
    grid: group.grid,
    family: group.family,
    from: stripsFrom(strip),
    stock: group.stock.name,
    face: planLength(group.stock.face),
    depth: planLength(group.stock.depth),
    lengthMm: planLength(group.length),
    perTenth: planPerTenth(group.perTenth),
    hand: group.hand,
    notches: expandNotches(group.notches),
    make: strip.make,
    spare: strip.spare,
    spareFor: planBreakage(group.stock),
    total: strip.total,
    panels: byPanel(strip.groups, (each) => each.placements.length),
  }));
}

function stripsFrom(strip: MarkedStrip): PlanStrip['from'] {
  const makes = new Map<string, PlanStrip['from'][number]>();
  for (const { panel, group } of strip.groups) {
    const key = JSON.stringify([group.grid, group.family]);
    const entry = makes.get(key) ?? { grid: group.grid, family: group.family, make: 0 };
    entry.make += group.placements.length * panel.quantity;
    makes.set(key, entry);
  }
  return [...makes.values()];
}

/** The number made for each panel or blank that needs any, copies counted in. */
function byPanel<Group>(
  groups: readonly { readonly panel: LaidPanel; readonly group: Group }[],
  countOf: (group: Group) => number,
): Record<string, number> {
  const counts = new Map<string, number>();
  for (const { panel, group } of groups) {
    const { name } = panel.panel;
    counts.set(name, (counts.get(name) ?? 0) + countOf(group) * panel.quantity);
  }
  return Object.fromEntries([...counts].filter(([, count]) => count > 0));
}
