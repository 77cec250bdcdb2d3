/** Where in the job the sticks of a stock are cut. */
import type { JobStep } from '../steps/job-steps.ts';
import type { ShopPlan } from '../shop-plan.ts';

type StockUsers = Pick<ShopPlan, 'strips' | 'pieces' | 'frames' | 'kit'>;

/** The first step that needs them; what goes into a class's bags cut is cut with the strips. */
export function stepOfStock(name: string, { strips, pieces, frames, kit }: StockUsers): JobStep {
  const isOf = ({ stock }: { readonly stock: string }): boolean => stock === name;
  if (strips.some(isOf) || (pieces.some(isOf) && kit?.done.includes('cut'))) return 'cut to length';
  if (frames.some(isOf)) return 'frame';
  return pieces.some(isOf) ? 'cut infill' : 'bend bands';
}
