/** Counts shown in the text itself: the cells that a fill fills, and the pieces that a motif makes. */
import { counted } from '../../../grammar/words.ts';
import { fileNumberOf, type SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import { tallyPieces } from './tally.ts';

export interface CountHint {
  /** Stands behind this place. */
  readonly at: number;
  readonly label: string;
  readonly meaning: string;
}

/** Hints of the text itself within `asked`, in no order. */
export function countHints(analysis: Analysis, asked: SourceRange): CountHint[] {
  const isAsked = ({ at }: CountHint): boolean => fileNumberOf(at) === 0 && at >= asked.start && at <= asked.end;
  return [...motifHints(analysis), ...fillHints(analysis)].filter(isAsked);
}

function motifHints(analysis: Analysis): CountHint[] {
  return analysis.design.motifs.map(({ name, nameRange }) => {
    const { make, whole, trimmed } = tallyPieces(analysis, (group) => group.motif === name);
    const meaning = `${whole} whole and ${trimmed} trimmed, over all panels and their copies`;
    return { at: nameRange.end, label: counted(make, 'piece'), meaning };
  });
}

/** Of one copy of the panel. */
function fillHints({ panels }: Analysis): CountHint[] {
  return panels.flatMap((laid) => {
    const cells = new Map<number, number>();
    for (const { fill } of laid.filledCells()) cells.set(fill.range.end, (cells.get(fill.range.end) ?? 0) + 1);
    return laid.panel.fills.map(({ range }) => ({
      at: range.end,
      label: counted(cells.get(range.end) ?? 0, 'cell'),
      meaning: `Openings that this fills in one copy of panel ${laid.panel.name}`,
    }));
  });
}
