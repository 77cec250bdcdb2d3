/** What a panel's wood weighs. Lengths mm, volumes mm³, densities kg/m³, masses g. */
import type { StripStock } from '../../design/design-model.ts';
import type { LaidPanel, Polygon } from '../../lattice/laid-panel.ts';
import { frameVolume } from './frame-volume.ts';
import { notchedVolume } from './notched-volume.ts';

/** The wood of one stock in one copy of a panel. */
export interface MassPart {
  readonly stock: StripStock;
  readonly part: 'strips' | 'infill' | 'frame';
  readonly volume: number;
  /** Null where the wood's density isn't known. */
  readonly mass: number | null;
}

export interface PanelMass {
  readonly parts: readonly MassPart[];
  /** Sum of the parts' masses; null where one isn't known. */
  readonly perCopy: number | null;
}

/** 1 kg/m³ is 10⁻⁶ g/mm³: 1000 g in 10⁹ mm³. */
export const gramsPerCubicMillimetre = 1e-6;

/**
 * The mass of one copy of `laid`: Σ volume, notches taken off, × density. Strips and pieces weigh as assembled and
 * planed flush; what is sawn off later along the outline is still in it, so for a sawn panel it is an upper limit.
 * `densityOf` gives a stock's density in kg/m³, null where its wood isn't known.
 */
export function massOfPanel(laid: LaidPanel, densityOf: (stock: StripStock) => number | null): PanelMass {
  const volumes = [
    ...laid.strips.map(({ stock, length, notches, placements }) => ({
      stock,
      part: 'strips' as const,
      volume: placements.length * notchedVolume({ ...stock, outline: bar(length, stock.face), notches }),
    })),
    ...laid.pieces.map(({ shape, count }) => ({
      stock: shape.stock,
      part: 'infill' as const,
      volume: count * notchedVolume({ ...shape.stock, outline: shape.outline, notches: shape.notches }),
    })),
    ...(laid.panel.frame
      ? [{ stock: laid.panel.frame.stock, part: 'frame' as const, volume: frameVolume(laid, laid.panel.frame) }]
      : []),
  ];
  const parts: MassPart[] = [];
  for (const each of volumes) {
    const index = parts.findIndex(({ stock, part }) => stock === each.stock && part === each.part);
    const volume = (parts[index]?.volume ?? 0) + each.volume;
    const part = { ...each, volume, mass: massOf(volume, densityOf(each.stock)) };
    if (index < 0) parts.push(part);
    else parts[index] = part;
  }
  return { parts, perCopy: sumOf(parts.map(({ mass }) => mass)) };
}

const massOf = (volume: number, density: number | null): number | null =>
  density === null ? null : volume * density * gramsPerCubicMillimetre;

const sumOf = (masses: readonly (number | null)[]): number | null =>
  masses.reduce((sum, mass) => (sum === null || mass === null ? null : sum + mass), 0);

/** A strip from the front, end 1 at x = 0. */
export const bar = (length: number, face: number): Polygon => [
  { x: 0, y: -face / 2 },
  { x: length, y: -face / 2 },
  { x: length, y: face / 2 },
  { x: 0, y: face / 2 },
];
