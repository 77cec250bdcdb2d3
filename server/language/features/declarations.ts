/** The named declarations of the file in hand, in its order. */
import { fileNumberOf } from '../../../grammar/tree/source-range.ts';
import type { BlockDeclaration } from '../../../grammar/tree/syntax-tree.ts';
import type { Design } from '../../design/design.ts';
import type { Named } from '../../design/names/named.ts';

export type DeclarationKind = BlockDeclaration['kind'];

export interface Declaration {
  readonly kind: DeclarationKind;
  readonly named: Named;
}

export function declarationsOf(design: Design): Declaration[] {
  const groups: [DeclarationKind, readonly Named[]][] = [
    ['wood', design.woods],
    ['strip', design.strips],
    ['sheet', design.sheets],
    ['resin', design.resins],
    ['finish', design.finishes],
    ['bench', design.benches],
    ['grid', design.grids],
    ['motif', design.motifs],
    ['outline', design.outlines],
    ['panel', design.panels],
    ['blank', design.blanks],
    ['band', design.bands],
    ['pour', design.pours],
    ['board', design.boards],
    ['work', design.work ? [design.work] : []],
    ['kit', design.kits],
  ];
  return groups
    .flatMap(([kind, list]) => list.map((named) => ({ kind, named })))
    .filter(({ named }) => fileNumberOf(named.range.start) === 0)
    .sort((first, second) => first.named.range.start - second.named.range.start);
}
