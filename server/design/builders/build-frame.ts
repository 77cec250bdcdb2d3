/** Frames of panels. */
import { measure, words } from '../../../grammar/words.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { FrameProperty } from '../../../grammar/tree/object-syntax.ts';
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import type { DesignContext } from '../design-context.ts';
import type { Frame, StripStock } from '../design-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { optional, readLength } from '../values/read-values.ts';

/** The frame of a panel; null where its stock or joint is missing or broken. `panel` names it in messages. */
export function buildFrame(
  frame: FrameProperty,
  panel: Name,
  strips: ReadonlyMap<string, StripStock>,
  context: DesignContext,
): Frame | null {
  const block = { ...frame, name: { ...panel, range: frame.keyword } };
  reportRepeated(block, [], context);
  const of = propertyOf(block, 'of strip');
  const joint = propertyOf(block, 'joint');
  if (!of) reportMissing(block, 'strip', 'of maple_frame', context);
  if (!joint) reportMissing(block, 'joint', 'groove 6', context);
  const stock = of && strips.get(of.name.text);
  const jointDepth = joint ? readLength(joint.value, `depth of the ${joint.choice}`, 'positive', context) : null;
  const gap = propertyOf(block, 'end_gap');
  const endGap = optional(gap?.value, (value) => readLength(value, 'end gap', 'notNegative', context)) ?? 0;
  if (!stock || !joint || jointDepth === null) return null;
  if (jointDepth >= stock.face) {
    const message = words`A ${joint.choice} ${measure.given(jointDepth)} deep cuts through a frame ${measure.given(stock.face)} wide. Cut it shallower.`;
    context.report(problemAt('outOfRange', joint.value.range, message));
    return null;
  }
  if (gap && endGap >= jointDepth) {
    const message = words`An end gap of ${measure.given(endGap)} leaves no strip in a ${joint.choice} ${measure.given(jointDepth)} deep. Leave less free.`;
    context.report(problemAt('outOfRange', gap.value.range, message));
    return null;
  }
  return {
    stock,
    corners: propertyOf(block, 'corners')?.choice ?? 'mitred',
    joint: joint.choice,
    jointDepth,
    endGap,
    bearing: propertyOf(block, 'bearing')?.choice ?? null,
    range: frame.keyword,
  };
}
