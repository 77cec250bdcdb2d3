/** Where in the drawing the text's problems are: the shapes that the words in question made. */
import type { PreviewProblem } from '../../../server/language/preview-messages.ts';
import { isThing, type PreparedDrawing, type PreparedKind } from './prepared-drawing.ts';

export interface Spot {
  readonly kind: PreparedKind;
  readonly severity: PreviewProblem['severity'];
  /** Whether the sign of the problem stands on it: once a problem. */
  readonly hasSign: boolean;
}

/** The shapes of each problem: the pieces and strips its words made, else the outline of what it stands in. */
export function spotsOf({ layers }: PreparedDrawing, problems: readonly PreviewProblem[]): Spot[] {
  const spots = new Map<PreparedKind, Spot>();
  for (const { drawn, severity } of problems) {
    const touched = layers.flatMap(({ layer, kinds }) =>
      kinds
        .filter(({ kind: { range } }) => range.start < drawn.end && drawn.start < range.end)
        .map((kind) => ({
          kind,
          isThing: isThing(layer),
          isOutline: layer.kind === 'outline' || layer.kind === 'note',
        })),
    );
    const things = touched.filter((each) => each.isThing);
    const chosen = things.length > 0 ? things : touched.filter((each) => each.isOutline);
    for (const [index, { kind }] of chosen.entries()) {
      if (spots.get(kind)?.severity !== 'error') spots.set(kind, { kind, severity, hasSign: index === 0 });
    }
  }
  return [...spots.values()];
}
