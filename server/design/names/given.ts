/** What the files a text uses give it. */
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import type { Design } from '../design.ts';
import { emptyDesign } from '../empty-design.ts';
import type { Definition } from './name-index.ts';
import type { Quantity } from '../values/quantity.ts';

export interface Given {
  /** Everything they declare; no work, no title, and units that mean nothing here. */
  readonly design: Design;
  /** Their numbers with names. */
  readonly numbers: ReadonlyMap<string, Quantity>;
  readonly definitions: readonly Definition[];
  /** As in the syntax tree: names that may be given in phrases that could not be read. */
  readonly unreadNames: readonly Name[];
  readonly unnamed: readonly string[];
  /** True where a file could not be had, so that a name that seems unknown may be there. */
  readonly incomplete: boolean;
}

export const nothingGiven: Given = {
  design: emptyDesign,
  numbers: new Map(),
  definitions: [],
  unreadNames: [],
  unnamed: [],
  incomplete: false,
};

const distinct = <Thing>(lists: readonly (readonly Thing[])[]): Thing[] => [...new Set(lists.flat())];

/** What several files give together; a file reached on two ways gives its things once. */
export function givenTogether(all: readonly Given[]): Given {
  const designs = all.map(({ design }) => design);
  return {
    design: {
      ...emptyDesign,
      woods: distinct(designs.map(({ woods }) => woods)),
      sheets: distinct(designs.map(({ sheets }) => sheets)),
      resins: distinct(designs.map(({ resins }) => resins)),
      finishes: distinct(designs.map(({ finishes }) => finishes)),
      strips: distinct(designs.map(({ strips }) => strips)),
      benches: distinct(designs.map(({ benches }) => benches)),
      grids: distinct(designs.map(({ grids }) => grids)),
      motifs: distinct(designs.map(({ motifs }) => motifs)),
      outlines: distinct(designs.map(({ outlines }) => outlines)),
      panels: distinct(designs.map(({ panels }) => panels)),
      blanks: distinct(designs.map(({ blanks }) => blanks)),
      bands: distinct(designs.map(({ bands }) => bands)),
      pours: distinct(designs.map(({ pours }) => pours)),
      boards: distinct(designs.map(({ boards }) => boards)),
      kits: distinct(designs.map(({ kits }) => kits)),
    },
    numbers: new Map(all.flatMap(({ numbers }) => [...numbers])),
    definitions: distinct(all.map(({ definitions }) => definitions)),
    unreadNames: distinct(all.map(({ unreadNames }) => unreadNames)),
    unnamed: distinct(all.map(({ unnamed }) => unnamed)),
    incomplete: all.some(({ incomplete }) => incomplete),
  };
}
