/** The kinds of grid as data: directions in degrees, layers from the back, and what spacing a side makes. */
import type { GridKind } from './design-model.ts';

export interface GridPreset {
  /** Directions of the families; a family's layer is its place in this list. */
  readonly directions: readonly number[];
  /** Distance of centre lines over the side (three-way) or pitch (square). */
  readonly spacingPerSide: number;
  /** Offset of each family's line 0 along its normal, in spacings. */
  readonly offsets: readonly number[];
  /** The property that says its size, and how it is written. */
  readonly size: 'side' | 'pitch';
}

export const gridPresets: Readonly<Record<GridKind, GridPreset>> = {
  /** Height of an equilateral triangle: side·√3/2; three lines through every node. */
  three_way: { directions: [0, 60, 120], spacingPerSide: Math.sqrt(3) / 2, offsets: [0, 0, 0], size: 'side' },
  square: { directions: [0, 90], spacingPerSide: 1, offsets: [0, 0], size: 'pitch' },
};
