/** Declared tips. */
import type { TipProperty } from '../../../grammar/tree/motif-syntax.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import { cornersOf } from './build-place.ts';
import type { DesignContext } from '../design-context.ts';
import type { CellShape, CornerChoice, TipRule } from '../design-model.ts';
import { readAngle } from '../values/read-values.ts';

/** Tip rules for a motif for openings of `shape`; a rule that is broken is left out. */
export function buildTips(tips: readonly TipProperty[], shape: CellShape, context: DesignContext): TipRule[] {
  return tips.flatMap((tip) => {
    const angle = readAngle(tip.angle, 'tip', [0, 180], context);
    const corners = cornersFor(tip, shape, context);
    return angle === null || !corners ? [] : [{ angle, node: tip.node.text, corners, range: tip.range }];
  });
}

function cornersFor({ corners }: TipProperty, shape: CellShape, context: DesignContext): CornerChoice | null {
  if (!corners) return { kind: 'every' };
  if (corners.kind === 'corners by form') return { kind: corners.form };
  const { value, range } = corners.number;
  if (Number.isInteger(value) && value >= 1 && value <= cornersOf(shape)) return { kind: 'number', corner: value };
  const message = `A ${shape} has corners 1 to ${String(cornersOf(shape))}, and this is ${String(value)}. Choose one of them.`;
  context.report(problemAt('outOfRange', range, message));
  return null;
}
