/** Problems that only laying out brings to light, as the stages raise them. */
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { Panel, PanelFill } from '../../design/design-model.ts';

/** A problem with the panel, and the fill of it, that the stage was at; null for what concerns no single one. */
export interface RaisedProblem extends Problem {
  readonly panel: Panel | null;
  readonly fill: PanelFill | null;
}

export const raisedAt = (
  panel: Panel | null,
  problems: readonly Problem[],
  fill: PanelFill | null = null,
): RaisedProblem[] => problems.map((problem) => ({ ...problem, panel, fill }));
