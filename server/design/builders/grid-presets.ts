/** The kinds of grid as data: their families, from the back layer to the front, for a side or pitch of 1. */
import { radians } from '../../geometry/point.ts';
import type { GridFamily, PresetKind } from '../design-model.ts';

/** One family: direction in degrees, distance of centre lines, and place of line 0 along the normal, in sides. */
export type PresetFamily = Pick<GridFamily, 'direction' | 'spacing' | 'offset'>;

export interface GridPreset {
  /** The property that says its size, and how it is written. */
  readonly size: 'side' | 'pitch';
  /** `angle` in degrees is the one between a diamond's two directions; the other kinds leave it aside. */
  readonly families: (angle: number) => readonly PresetFamily[];
}

const root3 = Math.sqrt(3);

export const gridPresets: Readonly<Record<PresetKind, GridPreset>> = {
  /** Height of an equilateral triangle: side·√3/2; three lines through every node. */
  three_way: {
    size: 'side',
    families: () => [0, 60, 120].map((direction) => ({ direction, spacing: root3 / 2, offset: 0 })),
  },
  square: { size: 'pitch', families: () => [0, 90].map((direction) => ({ direction, spacing: 1, offset: 0 })) },
  /** Height of a rhombus: side·sin α. */
  diamond: {
    size: 'side',
    families: (angle) =>
      [-angle / 2, angle / 2].map((direction) => ({ direction, spacing: Math.sin(radians(angle)), offset: 0 })),
  },
  /** The third family lies half a spacing off, so that no three lines meet; a node lies at the origin. */
  kagome: {
    size: 'side',
    families: () => [
      { direction: 0, spacing: root3, offset: 0 },
      { direction: 60, spacing: root3, offset: 0 },
      { direction: 120, spacing: root3, offset: root3 / 2 },
    ],
  },
};
