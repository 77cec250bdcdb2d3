/** The named declarations of the file in hand, in its order. */
import { fileNumberOf } from '../../../grammar/source-range.ts';
import type { Design, Named } from '../../design/design-model.ts';

export type DeclarationKind = 'strip' | 'bench' | 'grid' | 'motif' | 'outline' | 'panel';

export interface Declaration {
  readonly kind: DeclarationKind;
  readonly named: Named;
}

export function declarationsOf(design: Design): Declaration[] {
  const groups: [DeclarationKind, readonly Named[]][] = [
    ['strip', design.strips],
    ['bench', design.benches],
    ['grid', design.grids],
    ['motif', design.motifs],
    ['outline', design.outlines],
    ['panel', design.panels],
  ];
  return groups
    .flatMap(([kind, list]) => list.map((named) => ({ kind, named })))
    .filter(({ named }) => fileNumberOf(named.range.start) === 0)
    .sort((first, second) => first.named.range.start - second.named.range.start);
}
