/** The built-in woods. A figure that is better known in the shop, its own boards weighed or bent, goes before any here. */
import type { Wood, WoodFigure } from './wood.ts';
import {
  changeConfirmed,
  changeOfRedOaks,
  changeOfWhiteOaks,
  changeTable,
  inverseOfChange,
  japaneseHandbook,
  japaneseTimberData,
  mechanicalTable,
  shrinkageConfirmed,
  shrinkageTable,
  type WoodSource,
} from './wood-sources.ts';

interface Rows {
  /** Specific gravity, modulus of rupture (MPa), modulus of elasticity (GPa). */
  readonly mechanical: readonly [number, number, number];
  /** Radial, tangential and volume, percent, and where read. */
  readonly shrinkage: readonly [number, number, number, WoodSource];
  /** Radial and tangential, fraction for each percent, and where read. */
  readonly change: readonly [number, number, WoodSource];
  readonly saturation?: 'low';
  readonly porous?: true;
}

const from = (value: number, source: WoodSource): WoodFigure => ({ value, source });

/** Rows of the Wood Handbook as one wood. */
function handbookWood(name: string, { mechanical, shrinkage, change, saturation, porous }: Rows): Wood {
  const [gravity, rupture, elasticity] = mechanical;
  const [radial, tangential, volume, shrinkageSource] = shrinkage;
  const [radialChange, tangentialChange, changeSource] = change;
  return {
    name,
    specificGravity: from(gravity, mechanicalTable),
    rupture: from(rupture, mechanicalTable),
    elasticity: from(elasticity, mechanicalTable),
    shrinkage: { radial: from(radial, shrinkageSource), tangential: from(tangential, shrinkageSource) },
    volumeShrinkage: from(volume, shrinkageSource),
    change: { radial: from(radialChange, changeSource), tangential: from(tangentialChange, changeSource) },
    saturation: saturation ?? 'common',
    porous: porous ?? false,
  };
}

const basswood = handbookWood('basswood', {
  mechanical: [0.37, 60, 10.1],
  shrinkage: [6.6, 9.3, 15.8, shrinkageTable],
  change: [0.0023, 0.0033, changeTable],
});

const westernRedcedar = handbookWood('western_redcedar', {
  mechanical: [0.32, 51.7, 7.7],
  shrinkage: [2.4, 5.0, 6.8, shrinkageTable],
  change: [0.00111, 0.00234, changeConfirmed],
  saturation: 'low',
});

const yellowCedar = handbookWood('yellow_cedar', {
  mechanical: [0.44, 77, 9.8],
  shrinkage: [2.8, 6.0, 9.2, shrinkageTable],
  change: [0.00095, 0.00208, changeConfirmed],
});

const portOrfordCedar = handbookWood('port_orford_cedar', {
  mechanical: [0.43, 88, 11.7],
  shrinkage: [4.6, 6.9, 10.1, shrinkageTable],
  change: [0.00158, 0.00241, changeConfirmed],
});

const northernWhiteCedar = handbookWood('northern_white_cedar', {
  mechanical: [0.31, 45, 5.5],
  shrinkage: [2.2, 4.9, 7.2, shrinkageTable],
  change: [0.00101, 0.00229, changeConfirmed],
  saturation: 'low',
});

const sitkaSpruce = handbookWood('sitka_spruce', {
  mechanical: [0.4, 70, 10.8],
  shrinkage: [4.3, 7.5, 11.5, shrinkageConfirmed],
  change: [0.00148, 0.00263, changeTable],
});

const easternWhitePine = handbookWood('eastern_white_pine', {
  mechanical: [0.35, 59, 8.5],
  shrinkage: [2.1, 6.1, 8.2, shrinkageConfirmed],
  change: [0.00071, 0.00212, changeTable],
});

const oldRedwood = handbookWood('old_growth_redwood', {
  mechanical: [0.4, 69, 9.2],
  shrinkage: [2.6, 4.4, 6.8, shrinkageConfirmed],
  change: [0.0012, 0.00205, changeConfirmed],
  saturation: 'low',
});

const youngRedwood = handbookWood('young_growth_redwood', {
  mechanical: [0.35, 54, 7.6],
  shrinkage: [2.2, 4.9, 7.0, shrinkageConfirmed],
  change: [0.00101, 0.00229, changeConfirmed],
  saturation: 'low',
});

const yellowPoplar = handbookWood('yellow_poplar', {
  mechanical: [0.42, 70, 10.9],
  shrinkage: [4.6, 8.2, 12.7, shrinkageTable],
  change: [0.00158, 0.00289, changeConfirmed],
});

const walnut = handbookWood('walnut', {
  mechanical: [0.55, 101, 11.6],
  shrinkage: [5.5, 7.8, 12.8, shrinkageTable],
  change: [0.0019, 0.00274, changeTable],
  porous: true,
});

const cherry = handbookWood('cherry', {
  mechanical: [0.5, 85, 10.3],
  shrinkage: [3.7, 7.1, 11.5, shrinkageTable],
  change: [0.00126, 0.00248, changeTable],
});

const sugarMaple = handbookWood('sugar_maple', {
  mechanical: [0.63, 109, 12.6],
  shrinkage: [4.8, 9.9, 14.7, shrinkageTable],
  change: [0.00165, 0.00353, changeTable],
});

const whiteOak = handbookWood('white_oak', {
  mechanical: [0.68, 105, 12.3],
  shrinkage: [5.6, 10.5, 16.3, shrinkageTable],
  change: [0.0018, 0.00365, changeOfWhiteOaks],
  porous: true,
});

const redOak = handbookWood('northern_red_oak', {
  mechanical: [0.63, 99, 12.5],
  shrinkage: [4.0, 8.6, 13.7, shrinkageTable],
  change: [0.00158, 0.00369, changeOfRedOaks],
  porous: true,
});

const whiteAsh = handbookWood('white_ash', {
  mechanical: [0.6, 103, 12.0],
  shrinkage: [4.9, 7.8, 13.3, shrinkageTable],
  change: [0.00169, 0.00274, changeTable],
  porous: true,
});

const paperBirch = handbookWood('paper_birch', {
  mechanical: [0.55, 85, 11.0],
  shrinkage: [6.3, 8.6, 16.2, shrinkageTable],
  change: [0.00219, 0.00304, changeTable],
});

const yellowBirch = handbookWood('yellow_birch', {
  mechanical: [0.62, 114, 13.9],
  shrinkage: [7.3, 9.5, 16.8, shrinkageTable],
  change: [0.00256, 0.00338, changeTable],
});

/** Not in the Wood Handbook, and less certain than the rest: only its gravity and elasticity were seen. */
const hinoki: Wood = {
  name: 'hinoki',
  specificGravity: from(0.44, japaneseTimberData),
  rupture: from(75, japaneseHandbook),
  elasticity: from(9.0, japaneseTimberData),
  shrinkage: { radial: from(3.52, inverseOfChange), tangential: from(6.6, inverseOfChange) },
  volumeShrinkage: null,
  change: { radial: from(0.0012, japaneseHandbook), tangential: from(0.0023, japaneseHandbook) },
  saturation: 'common',
  porous: false,
};

/** By the name a file writes. */
export const builtInWoods: ReadonlyMap<string, Wood> = new Map(
  [
    basswood,
    westernRedcedar,
    yellowCedar,
    portOrfordCedar,
    northernWhiteCedar,
    sitkaSpruce,
    easternWhitePine,
    oldRedwood,
    youngRedwood,
    yellowPoplar,
    walnut,
    cherry,
    sugarMaple,
    whiteOak,
    redOak,
    whiteAsh,
    paperBirch,
    yellowBirch,
    hinoki,
  ].map((wood) => [wood.name, wood]),
);
