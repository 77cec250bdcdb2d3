/** What is done to saw panels out of lattice. Lengths mm. */
import { type Measure, type Words, figure, joined, measure, words } from '../../../grammar/words.ts';
import type { Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import type { PlannedDesign } from '../planned-design.ts';
import { contoursOf } from './part-contours.ts';
import { bandThickness, sawAllowance } from './three-lines.ts';
import { tightestCut, tightHollows } from './tight-hollows.ts';

export const sawTasks = ({ design, panels }: PlannedDesign): Words[] =>
  panels
    .filter(({ panel }) => panel.edge === 'sawn')
    .flatMap(({ panel, quantity, taken, perimeterMm, region }) => [
      words`${measure.name('panel', panel.name)}: ${quantity + taken} to saw, ${sizeOf(region)} finished, ${figure.length(perimeterMm)} round each; then sand to the line.`,
      ...hollowTasks(design, panel),
      ...panel.meets.map(
        ({ other, leave }) =>
          words`${measure.name('panel', panel.name)}: leave ${figure.length(leave)} more where it meets ${other.name}, and prick the scribe line through there.`,
      ),
    ]);

/** Width and height over all. */
function sizeOf(region: LaidPanel['region']): Measure {
  const { left, right, bottom, top } = boundsOf(region.flat());
  return figure.length([right - left, top - bottom]);
}

/** Places of a panel's saw line that the blade does not turn through. */
function hollowTasks(design: Design, panel: Panel): Words[] {
  const tightest = tightestCut(design.benches);
  if (tightest === null) return [];
  const out = sawAllowance(design, panel) - bandThickness(design, panel);
  const places = tightHollows(contoursOf(panel), out, tightest).map(
    ({ at, radius }) =>
      words`${radius === 0 ? 'an inside corner' : words`a hollow of ${figure.length(radius)}`} at ${figure.length([at.x, at.y], ', ')}`,
  );
  if (places.length === 0) return [];
  return [
    words`${measure.name('panel', panel.name)}: the blade turns no tighter than ${figure.length(tightest)}: ${joined(places, '; ')}. Saw in from both sides there, or drill first.`,
  ];
}
