/** What stands in a mould and displaces resin. Lengths mm, areas mm², volumes mm³, densities kg/m³. */
import type { StripStock } from '../../design/design-model.ts';
import type { Blank, Pour } from '../../design/work-model.ts';
import type { WoodDeclaration } from '../../design/material-model.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { contourArea, ringLength } from '../../geometry/measure-path.ts';
import { sum } from '../../geometry/numbers.ts';
import { add, type Point, turned } from '../../geometry/point.ts';
import { areaOf, intersectionOf } from '../../geometry/polygons.ts';
import type { LaidPanel, Placement } from '../../lattice/laid-panel.ts';
import { bar } from '../mass/mass.ts';
import { woodFigures } from '../wood/wood-figures.ts';

/** The same cross-section all the way from one height to another; heights count from the mould's floor. */
export interface Body {
  readonly area: number;
  readonly from: number;
  readonly to: number;
  readonly density: number | null;
}

/** One casting, or `count` equal ones. */
export interface MouldContent {
  readonly count: number;
  readonly area: number;
  /** Bodies of one height never overlap. */
  readonly bodies: readonly Body[];
  /** Sides and upper faces of the bodies. */
  readonly wettedArea: number;
  /** Woods with open pores. */
  readonly porous: readonly string[];
}

type Rings = readonly (readonly Point[])[];

/** One or more shapes that reach from one height to another. */
interface Solid {
  readonly rings: Rings;
  readonly from: number;
  readonly to: number;
  readonly density: number | null;
}

/** A mould with the inserts of `pour`. */
export function contentOfMould({ mould, inserts }: Pour, count: number): MouldContent {
  const solids = inserts.map(({ outline, ...insert }): Solid => ({
    ...insert,
    rings: outline.contours.map(flattenContour),
  }));
  return { count, area: mouldArea(mould), porous: [], ...filled(solids, mouldRings(mould)) };
}

/** A lattice blank in its mould; the lattice stands on the floor. */
export const contentOfBlank = (blank: Blank, laid: LaidPanel, woods: readonly WoodDeclaration[]): MouldContent =>
  latticeContent(laid, blank.width * blank.height, mouldRings({ kind: 'blank', blank }), woods);

/** What is left of a cast lattice inside a panel's finished line. */
export const contentOfCutOut = (laid: LaidPanel, woods: readonly WoodDeclaration[]): MouldContent =>
  latticeContent(laid, laid.areaMm2, laid.region, woods);

function latticeContent(laid: LaidPanel, area: number, within: Rings, woods: readonly WoodDeclaration[]): MouldContent {
  const rings = ringsByStock(laid);
  const solids = [...rings].map(([stock, own]): Solid => ({
    rings: own,
    from: 0,
    to: stock.depth - 2 * stock.flush,
    density: woodFigures(stock.wood, woods)?.density ?? null,
  }));
  const porous = [...rings.keys()].flatMap(({ wood }) =>
    wood !== null && woodFigures(wood, woods)?.porous === true ? [wood] : [],
  );
  return {
    count: laid.quantity,
    area,
    porous: [...new Set(porous)],
    ...filled(solids, within),
  };
}

/** Slab by slab between the heights at which a solid begins or ends. Where solids overlap, or stand out of the mould, each spot is counted once. */
function filled(solids: readonly Solid[], mould: Rings): Pick<MouldContent, 'bodies' | 'wettedArea'> {
  const heights = [...new Set(solids.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const slabs = heights.slice(1).map((to, index) => {
    const from = heights[index] ?? to;
    let taken: Rings = [];
    const bodies = solids
      .filter((solid) => solid.from <= from && solid.to >= to)
      .map(({ rings, density }): Body => {
        const before = areaOf(taken);
        taken = intersectionOf([...taken, ...rings], mould);
        return { area: areaOf(taken) - before, from, to, density };
      });
    return { bodies, sides: (to - from) * sum(taken.map(ringLength)) };
  });
  const tops = areaOf(
    intersectionOf(
      solids.flatMap(({ rings }) => rings),
      mould,
    ),
  );
  return { bodies: slabs.flatMap(({ bodies }) => bodies), wettedArea: tops + sum(slabs.map(({ sides }) => sides)) };
}

/** Strips and pieces where they lie, as seen from the front. */
function ringsByStock({ strips, pieces }: LaidPanel): Map<StripStock, Rings> {
  const rings = new Map<StripStock, Point[][]>();
  const lay = (stock: StripStock, outline: readonly Point[], placements: Iterable<Placement>): void => {
    const own = rings.get(stock) ?? [];
    for (const { at, turn } of placements) own.push(outline.map((point) => add(turned(point, turn), at)));
    rings.set(stock, own);
  };
  for (const { stock, length, placements } of strips) lay(stock, bar(length, stock.face), placements);
  for (const { shape, outline, placements } of pieces) lay(shape.stock, outline, placements());
  return rings;
}

/** The inside of the mould, about the origin where only its size is given. */
export function mouldRings(mould: Pour['mould']): Rings {
  if (mould.kind === 'outline') return mould.outline.contours.map(flattenContour);
  const { width, height } = mould.kind === 'rectangle' ? mould : mould.blank;
  return [
    [
      { x: -width / 2, y: -height / 2 },
      { x: width / 2, y: -height / 2 },
      { x: width / 2, y: height / 2 },
      { x: -width / 2, y: height / 2 },
    ],
  ];
}

export const mouldArea = (mould: Pour['mould']): number =>
  mould.kind === 'outline' ? sum(mould.outline.contours.map(contourArea)) : areaOf(mouldRings(mould));

/** Resin between two heights. */
export const volumeBetween = ({ area, bodies }: MouldContent, low: number, high: number): number =>
  Math.max(0, area * (high - low) - sum(bodies.map((body) => displacedBy(body, low, high))));

/** What a body takes between two heights. */
export const displacedBy = ({ area, from, to }: Body, low: number, high: number): number =>
  area * Math.max(0, Math.min(to, high) - Math.max(from, low));
