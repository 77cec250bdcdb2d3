/** Blanks as the plan writes them: one entry for each way in which blanks of a name are filled. Lengths mm, angles degrees. */
import { sum } from '../../geometry/numbers.ts';
import { blanksUsed } from '../blanks/cut-out.ts';
import type { NestedBlank } from '../blanks/nest-blanks.ts';
import type { PlanBlank } from './object-sections.ts';
import { planAngle, planLength } from './plan-rounding.ts';

export const planBlanks = (blanks: readonly NestedBlank[]): PlanBlank[] => blanks.flatMap(planBlank);

function planBlank({ blank, packing, laid }: NestedBlank): PlanBlank[] {
  const proven = blanksUsed(packing) <= packing.bound;
  return packing.blanks.map(({ places, count }, index): PlanBlank => {
    const made = laid[index];
    return {
      name: blank.name,
      copies: count,
      places: places.map(({ cutOut, move: { shift, turn, mirrored } }) => ({
        panel: cutOut.name,
        outline: cutOut.outline,
        move: { dx: planLength(shift.x), dy: planLength(shift.y), turn: planAngle(turn), mirror: mirrored },
      })),
      cells: sum((made?.cells ?? []).map(({ needed }) => needed)),
      infill: { make: sum((made?.pieces ?? []).map((group) => group.count)) },
      bound: packing.bound,
      proven,
    };
  });
}
