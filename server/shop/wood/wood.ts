/** What the shop knows of a wood: figures of clear, straight-grained specimens, each with where it comes from. */
import { fibreSaturation } from './wood-sources.ts';
import type { WoodSource } from './wood-sources.ts';

/** One figure and its source; the unit is its name's. */
export interface WoodFigure {
  readonly value: number;
  readonly source: WoodSource;
}

/** Across the growth rings or along them, seen on the end grain. */
export type GrainDirection = 'radial' | 'tangential';

export interface Wood {
  /** As a file writes it: `white_ash`. */
  readonly name: string;
  /** Ovendry mass over volume at 12 % moisture, to the density of water. */
  readonly specificGravity: WoodFigure;
  /** Modulus of rupture at 12 % moisture, MPa. */
  readonly rupture: WoodFigure;
  /** Modulus of elasticity at 12 % moisture, GPa. */
  readonly elasticity: WoodFigure;
  /** From green to ovendry, percent of the green size. */
  readonly shrinkage: Readonly<Record<GrainDirection, WoodFigure>>;
  /** The same of the volume, percent; null where not known. */
  readonly volumeShrinkage: WoodFigure | null;
  /** Change of size for each percent of moisture between 6 and 14 %, as a fraction of the size. */
  readonly change: Readonly<Record<GrainDirection, WoodFigure>>;
  /** Few woods take up their last bound water well below the common 30 %. */
  readonly saturation: keyof typeof fibreSaturation;
  /** Vessels so wide that colour and resin run into them: seal first. */
  readonly porous: boolean;
}

/** Moisture in percent above which `wood` neither shrinks nor swells. */
export const saturationOf = ({ saturation }: Wood): number => fibreSaturation[saturation];

/** Every figure of a wood. */
export const figuresOf = (wood: Wood): WoodFigure[] => [
  wood.specificGravity,
  wood.rupture,
  wood.elasticity,
  wood.shrinkage.radial,
  wood.shrinkage.tangential,
  ...(wood.volumeShrinkage ? [wood.volumeShrinkage] : []),
  wood.change.radial,
  wood.change.tangential,
];

/** Whether a figure of `wood` was only remembered or worked out, so that a shop should weigh or test its own. */
export const isLessCertain = (wood: Wood): boolean =>
  figuresOf(wood).some(({ source }) => source.certainty === 'remembered' || source.certainty === 'estimated');
