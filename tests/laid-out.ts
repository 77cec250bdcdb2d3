/** Panels laid out, and their pieces on the ground, for tests. */
import type { Panel } from '../server/design/design-model.ts';
import { add, type Point, turned } from '../server/geometry/point.ts';
import type { LaidPanel, Placement, Polygon } from '../server/lattice/laid-panel.ts';
import { layOutPanel } from '../server/lattice/lay-out-panel.ts';
import { told } from './told.ts';

/** The panel laid out; throws where it is refused. */
export function laidOut(panel: Panel): LaidPanel {
  const { panel: laid, problems } = layOutPanel(panel);
  if (!laid) throw new Error(problems.map((problem) => told(problem)).join());
  return laid;
}

/** An outline where its placement lays it. */
export const onGround = (outline: Polygon, { at, turn }: Placement): Point[] =>
  outline.map((point) => add(turned(point, turn), at));
