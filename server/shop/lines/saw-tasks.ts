/** What is done to saw panels out of lattice. Lengths mm. */
import type { Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import type { PlannedDesign } from '../planned-design.ts';
import type { LengthWords } from '../steps/task-words.ts';
import { contoursOf } from './part-contours.ts';
import { bandThickness, sawAllowance } from './three-lines.ts';
import { tightestCut, tightHollows } from './tight-hollows.ts';

export const sawTasks = ({ design, panels }: PlannedDesign, words: LengthWords): string[] =>
  panels
    .filter(({ panel }) => panel.edge === 'sawn')
    .flatMap(({ panel, quantity, taken, perimeterMm, region }) => [
      `${panel.name}: ${quantity + taken} to saw, ${sizeText(region, words)} finished, ${words.length(perimeterMm)} round each; then sand to the line.`,
      ...hollowTasks(design, panel, words),
      ...panel.meets.map(
        ({ other, leave }) =>
          `${panel.name}: leave ${words.length(leave)} more where it meets ${other.name}, and prick the scribe line through there.`,
      ),
    ]);

/** Width and height over all. */
function sizeText(region: LaidPanel['region'], words: LengthWords): string {
  const { left, right, bottom, top } = boundsOf(region.flat());
  return `${words.length(right - left)} × ${words.length(top - bottom)}`;
}

/** Places of a panel's saw line that the blade does not turn through. */
function hollowTasks(design: Design, panel: Panel, words: LengthWords): string[] {
  const tightest = tightestCut(design.benches);
  if (tightest === null) return [];
  const out = sawAllowance(design, panel) - bandThickness(design, panel);
  const places = tightHollows(contoursOf(panel), out, tightest).map(
    ({ at, radius }) =>
      `${radius === 0 ? 'an inside corner' : `a hollow of ${words.length(radius)}`} at ${words.length(at.x)}, ${words.length(at.y)}`,
  );
  if (places.length === 0) return [];
  return [
    `${panel.name}: the blade turns no tighter than ${words.length(tightest)}: ${places.join('; ')}. Saw in from both sides there, or drill first.`,
  ];
}
