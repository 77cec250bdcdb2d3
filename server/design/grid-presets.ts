/** The kinds of grid as data: directions in degrees, layers from the back, and what spacing a side makes. */
import { radians } from '../geometry/point.ts';
import type { GridKind } from './design-model.ts';

export interface GridLayout {
  /** Directions of the families; a family's layer is its place in this list. */
  readonly directions: readonly number[];
  /** Distance of centre lines over the side (or the pitch of a square grid). */
  readonly spacingPerSide: number;
  /** Offset of each family's line 0 along its normal, in spacings. */
  readonly offsets: readonly number[];
}

export interface GridPreset {
  /** The property that says its size, and how it is written. */
  readonly size: 'side' | 'pitch';
  /** Whether it has an angle of its own, between its two directions. */
  readonly hasAngle: boolean;
  readonly layout: (angle: number) => GridLayout;
}

const fixed = (layout: GridLayout): GridPreset['layout'] => {
  return () => layout;
};

export const gridPresets: Readonly<Record<GridKind, GridPreset>> = {
  /** Height of an equilateral triangle: side·√3/2; three lines through every node. */
  three_way: {
    size: 'side',
    hasAngle: false,
    layout: fixed({ directions: [0, 60, 120], spacingPerSide: Math.sqrt(3) / 2, offsets: [0, 0, 0] }),
  },
  square: { size: 'pitch', hasAngle: false, layout: fixed({ directions: [0, 90], spacingPerSide: 1, offsets: [0, 0] }) },
  /** Height of a rhombus: side·sin α. */
  diamond: {
    size: 'side',
    hasAngle: true,
    layout: (angle) => ({ directions: [-angle / 2, angle / 2], spacingPerSide: Math.sin(radians(angle)), offsets: [0, 0] }),
  },
  /** Spacing side·√3, the third family half a spacing off, so that no three lines meet and a node lies at the origin. */
  basket_weave: {
    size: 'side',
    hasAngle: false,
    layout: fixed({ directions: [0, 60, 120], spacingPerSide: Math.sqrt(3), offsets: [0, 0, 0.5] }),
  },
};
