/** Where the figures of woods come from, and how far each was checked. */

/**
 * read: seen in a copy of the source; transcribed: seen in another's copy of the source's rows; confirmed: remembered,
 * and agreeing with figures that were seen, by the source's own equations; remembered: not seen; estimated: worked out
 * here from less certain figures.
 */
export type SourceCertainty = 'read' | 'transcribed' | 'confirmed' | 'remembered' | 'estimated';

export interface WoodSource {
  readonly title: string;
  readonly certainty: SourceCertainty;
}

const handbook = 'Wood Handbook, USDA Forest Products Laboratory, FPL-GTR-190 (2010)';

/** Mechanical properties at 12 % moisture, metric rows. */
export const mechanicalTable: WoodSource = { title: `${handbook}, Table 5-3a`, certainty: 'transcribed' };

/** Shrinkage from green to ovendry. */
export const shrinkageTable: WoodSource = { title: `${handbook}, Table 4-3`, certainty: 'read' };
export const shrinkageConfirmed: WoodSource = { ...shrinkageTable, certainty: 'confirmed' };

/** Change of size for each percent of moisture, 6 to 14 %. */
export const changeTable: WoodSource = { title: `${handbook}, Table 13-5`, certainty: 'read' };
export const changeConfirmed: WoodSource = { ...changeTable, certainty: 'confirmed' };
export const changeOfWhiteOaks: WoodSource = { ...changeTable, title: `${changeTable.title}, white oaks as a group` };
export const changeOfRedOaks: WoodSource = { ...changeTable, title: `${changeTable.title}, red oaks as a group` };

export const japaneseTimberData: WoodSource = { title: 'Japanese timber data pages, air-dry wood', certainty: 'read' };
export const japaneseHandbook: WoodSource = {
  title: 'Wood Industry Handbook, Forestry and Forest Products Research Institute, Japan',
  certainty: 'remembered',
};
export const inverseOfChange: WoodSource = {
  title: `${handbook}, eq. 13-3 at 10 % moisture, solved for the shrinkage`,
  certainty: 'estimated',
};

/**
 * Moisture at fibre saturation, percent. Common: Wood Handbook FPL-GTR-282 (2021), eq. 4-9. Low: the value with which
 * eq. 13-3 gives Table 13-5 for western redcedar, northern white-cedar and redwood.
 */
export const fibreSaturation = { common: 30, low: 22 } as const;
