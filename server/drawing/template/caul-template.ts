/** The template of a caul: the form that presses a band to its edge, and the place where the band bends worst. */
import { figure, measure, words, type Words } from '../../../grammar/words.ts';
import type { Band } from '../../design/work-model.ts';
import { flattenContour } from '../../geometry/flatten-path.ts';
import { grownContours } from '../../geometry/grow-contours.ts';
import { boundsOf } from '../../geometry/polygons.ts';
import { type MeasuredBand, measureBand } from '../../shop/bands/measure-band.ts';
import { caulPad } from '../../shop/bands/plan-bands.ts';
import { contoursOf } from '../../shop/lines/part-contours.ts';
import { writeWords } from '../../words/write-words.ts';
import { type DrawnDesign, sheetFacts } from '../sheet-facts.ts';
import type { Template, TemplateSpot } from './template.ts';

/** `source` names the file and the state of its text. */
export function caulTemplate(drawn: DrawnDesign, band: Band, source: string): Template {
  const { units, woods } = drawn.design;
  const say = (said: Words): string => writeWords(said, units);
  const finished = contoursOf(band.around);
  const caul = grownContours(finished, caulPad, 'round');
  const ground = caul.map(flattenContour);
  const bounds = boundsOf(ground.flat());
  const facts = sheetFacts(drawn, [], source);
  return {
    name: band.name,
    heading: `the caul of band ${band.name}`,
    seenFrom: 'front',
    units,
    lines: [
      { kind: 'caul', contours: caul },
      { kind: 'finished', contours: finished },
    ],
    scribe: [],
    axes: [],
    marks: [],
    spots: worstSpot(measureBand(band, woods), say),
    ground,
    bounds,
    origin: facts.origin,
    assumptions: [
      say(
        words`caul line ${figure.length(caulPad)} outside the finished line, for a soft pad of that thickness between caul and band`,
      ),
      say(
        words`band of ${band.laminations} × ${figure.fine(band.stock.face)} ${band.stock.name} around ${band.around.name}, bent ${band.method}`,
      ),
    ],
    use: 'Saw the caul along its line, pad it, and clamp the band from the outside; the ring shows where it bends worst: try that place first.',
    check: say(words`Check: the caul line is ${measure.length(bounds.right - bounds.left)} wide`),
  };
}

function worstSpot({ worst, limit }: MeasuredBand, say: (said: Words) => string): TemplateSpot[] {
  if (!worst) return [];
  const bound = limit ? words`, limit ${figure.length(limit.radius)}` : ', limit not known';
  const thinner =
    limit && worst.radius < limit.radius && worst.bendingThickness !== null
      ? words`; ${figure.fine(worst.bendingThickness)} thick it would bend`
      : '';
  return [{ at: worst.at, text: say(words`bends to ${figure.length(worst.radius)}${bound}${thinner}`) }];
}
