/** The template to drill by: cleat and spacer behind the work, the holes numbered, as they lie seen from the front. */
import { figure, measure, words, type Words } from '../../../grammar/words.ts';
import type { Point } from '../../geometry/point.ts';
import { boundsOf, ringOfBounds } from '../../geometry/polygons.ts';
import { contourOfRing } from '../../shop/lines/part-contours.ts';
import { cleatWidth, planHanging, rearmost } from '../../shop/sections/plan-hanging.ts';
import { planMass } from '../../shop/sections/plan-mass.ts';
import type { PlanSpan } from '../../shop/sections/object-sections.ts';
import { writeWords } from '../../words/write-words.ts';
import { type DrawnDesign, sheetFacts } from '../sheet-facts.ts';
import type { HungWork } from './template-subject.ts';
import type { Template, TemplateLine } from './template.ts';

/** Null where no cleat fits behind the work. `source` names the file and the state of its text. */
export function drillingTemplate(drawn: DrawnDesign, work: HungWork, source: string): Template | null {
  const { design, panels } = drawn;
  const hanging = planHanging(work, panels, planMass(design, panels));
  const cleat = hanging?.cleat;
  if (!hanging || !cleat) return null;
  const say = (said: Words): string => writeWords(said, design.units);
  const edges = rearmost(work, panels).flat();
  const cleatRing = boardRing(cleat);
  const spacerRings = hanging.spacer ? [boardRing(hanging.spacer)] : [];
  const { top } = boundsOf(edges.flat());
  const facts = sheetFacts(drawn, [], source);
  return {
    name: work.name,
    heading: `what ${work.name} hangs on`,
    seenFrom: 'front',
    units: design.units,
    lines: [
      { kind: 'finished', contours: edges.map(contourOfRing) },
      { kind: 'cleat', contours: [contourOfRing(cleatRing)] },
      ...spacerRings.map((ring): TemplateLine => ({ kind: 'spacer', contours: [contourOfRing(ring)] })),
    ],
    scribe: [],
    axes: [],
    marks: hanging.drill.map(({ xMm, yMm }, index) => ({
      label: String(index + 1),
      // Counted from the cleat's left end as it is seen from behind: its right end from the front.
      at: { x: cleat.toMm - xMm, y: yMm },
    })),
    spots: [],
    ground: [cleatRing, ...spacerRings],
    bounds: boundsOf(edges.flat()),
    origin: facts.origin,
    assumptions: [
      say(
        words`cleat ${figure.length([cleat.lengthMm, cleatWidth])}, its upper edge ${figure.length(top - cleat.heightMm)} below the top of the work`,
      ),
      `${hanging.fixings} fixings; each fixing’s data sheet, the wall and local codes decide what holds`,
    ],
    use: 'Prick the numbered crosses through where the fixings go, the cleat’s upper edge level.',
    check: say(checkWords(hanging.drill, cleat)),
  };
}

/** The cleat's board, and the spacer's: as high as one another. */
const boardRing = ({ fromMm, toMm, heightMm }: PlanSpan): Point[] =>
  ringOfBounds({ left: fromMm, right: toMm, bottom: heightMm - cleatWidth, top: heightMm });

function checkWords(drill: readonly { readonly xMm: number }[], { lengthMm }: PlanSpan): Words {
  const [first, last] = [drill[0], drill.at(-1)];
  return first && last && first !== last
    ? words`Check: from hole 1 to hole ${drill.length} is ${measure.length(last.xMm - first.xMm)}`
    : words`Check: the cleat is ${measure.length(lengthMm)} long`;
}
