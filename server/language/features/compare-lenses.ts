/** Hints at panels and motifs: how their counts differ from those of the last commit. */
import { fileNumberOf, type SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import { moreOrLess } from '../../compare/change-text.ts';
import { sum } from '../../geometry/numbers.ts';

export interface CompareLens {
  readonly range: SourceRange;
  readonly title: string;
}

interface Counts {
  readonly pieces: number;
  readonly strips: number;
}

/** Lenses on what changed its counts since `committed`, in the text itself; what is as it was has none. */
export function compareLenses(now: Analysis, committed: Analysis): CompareLens[] {
  const subjects = [
    ...now.design.panels.map((subject) => ({
      subject,
      was: panelCounts(committed, subject.name),
      is: panelCounts(now, subject.name),
    })),
    ...now.design.motifs.map((subject) => ({
      subject,
      was: motifCounts(committed, subject.name),
      is: motifCounts(now, subject.name),
    })),
  ];
  return subjects.flatMap(({ subject, was, is }): CompareLens[] => {
    if (!is || fileNumberOf(subject.nameRange.start) !== 0) return [];
    const title = was ? changedCounts(was, is) : 'new since the last commit';
    return title === '' ? [] : [{ range: subject.nameRange, title }];
  });
}

function changedCounts(was: Counts, is: Counts): string {
  const parts = [
    ...(was.pieces === is.pieces ? [] : [`infill ${moreOrLess(is.pieces - was.pieces)}`]),
    ...(was.strips === is.strips ? [] : [`strips ${moreOrLess(is.strips - was.strips)}`]),
  ];
  return parts.length === 0 ? '' : `${parts.join(', ')} since the last commit`;
}

/** What all copies of a panel hold; null where it is not laid out. */
function panelCounts({ panels }: Analysis, name: string): Counts | null {
  const laid = panels.find(({ panel }) => panel.name === name);
  if (!laid) return null;
  return {
    pieces: laid.panel.copies * sum(laid.pieces.map(({ count }) => count)),
    strips: laid.panel.copies * sum(laid.strips.map(({ placements }) => placements.length)),
  };
}

/** The pieces made by a motif over all panels; null where the design has no such motif. */
function motifCounts({ design, panels }: Analysis, name: string): Counts | null {
  if (!design.motifs.some((motif) => motif.name === name)) return null;
  const counts = panels.flatMap(({ panel, pieces }) =>
    pieces.filter(({ motif }) => motif === name).map(({ count }) => count * panel.copies),
  );
  return { pieces: sum(counts), strips: 0 };
}
