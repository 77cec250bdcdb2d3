/** Where the panels and kinds of a design are written, by the names that the rows of a report give them. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import type { RowSubject } from '../../compare/change-report.ts';

export const subjectKey = (sort: RowSubject['sort'], name: string): string => `${sort} ${name}`;

/** An object is written where it is named, a kind where its first piece or strip is. */
export function placesOf({ design, kinds }: Analysis): ReadonlyMap<string, SourceRange> {
  const places = new Map<string, SourceRange>();
  const { panels, blanks, bands, pours, boards } = design;
  const objects = Object.entries({ panel: panels, blank: blanks, band: bands, pour: pours, board: boards });
  for (const [sort, list] of objects) {
    for (const { name, nameRange } of list) places.set(subjectKey(sort as RowSubject['sort'], name), nameRange);
  }
  for (const sort of ['piece', 'strip'] as const) {
    for (const { mark, groups } of sort === 'piece' ? kinds.pieces : kinds.strips) {
      const [first] = groups;
      if (first) places.set(subjectKey(sort, mark), first.group.range);
    }
  }
  return places;
}
