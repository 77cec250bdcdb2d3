/** Sums over the pieces and strips that the analysis has counted; nothing is counted from geometry here. */
import type { Analysis } from '../../analyse.ts';
import type { LaidPanel, PieceGroup, StripGroup } from '../../lattice/laid-panel.ts';

/** Infill pieces to make: `make` = `whole` + `trimmed`. */
export interface InfillTally {
  readonly make: number;
  readonly whole: number;
  readonly trimmed: number;
}

/** One copy of a panel. */
export interface PanelTally extends InfillTally {
  readonly strips: number;
}

export const sum = (numbers: Iterable<number>): number => {
  let total = 0;
  for (const number of numbers) total += number;
  return total;
};

export function panelTally(laid: LaidPanel): PanelTally {
  return {
    ...infillTally(laid.pieces.map((group) => ({ group, copies: 1 }))),
    strips: sum(laid.strips.map((group) => group.placements.length)),
  };
}

/** Panels and blanks in all their copies; of a panel that is sawn from blanks none is made itself. */
const allMade = ({ panels, blanks }: Analysis): LaidPanel[] => [...panels, ...blanks.flatMap(({ laid }) => laid)];

/** Over all that is made, the pieces that `belongs` picks. */
export function tallyPieces(analysis: Analysis, belongs: (group: PieceGroup) => boolean): InfillTally {
  return infillTally(
    allMade(analysis).flatMap((laid) => laid.pieces.filter(belongs).map((group) => ({ group, copies: laid.quantity }))),
  );
}

function infillTally(counts: readonly { readonly group: PieceGroup; readonly copies: number }[]): InfillTally {
  const ofFate = (fate: PieceGroup['fate']): number =>
    sum(counts.filter(({ group }) => group.fate === fate).map(({ group, copies }) => group.count * copies));
  const whole = ofFate('whole');
  const trimmed = ofFate('trimmed');
  return { make: whole + trimmed, whole, trimmed };
}

/** Strips over all that is made: how many, and their lengths added up in mm. */
export function tallyStrips(
  analysis: Analysis,
  belongs: (group: StripGroup) => boolean,
): { count: number; run: number } {
  const counts = allMade(analysis).flatMap((laid) =>
    laid.strips
      .filter(belongs)
      .map((group) => ({ count: group.placements.length * laid.quantity, length: group.length })),
  );
  return { count: sum(counts.map(({ count }) => count)), run: sum(counts.map(({ count, length }) => count * length)) };
}
