/** What a maker should know of bands, pours and boards before making them: said at the line, the rest is planned all the same. */
import { joined, measure, words } from '../../grammar/words.ts';
import { problemAt } from '../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../grammar/problems/problem.ts';
import type { Design } from '../design/design.ts';
import type { Band, Blank, Board, Pour } from '../design/work-model.ts';
import { flattenContour } from '../geometry/flatten-path.ts';
import { areaOf, boundsOf, intersectionOf } from '../geometry/polygons.ts';
import { areaTolerance, placeTolerance } from '../geometry/tolerance.ts';
import { sum } from '../geometry/numbers.ts';
import { gradeOf } from './bands/bend-grade.ts';
import { measureBand } from './bands/measure-band.ts';
import { edgeDepth } from './lines/work-depth.ts';
import { boardFits } from './sheets/nest-sheets.ts';
import { mouldRings } from './pours/mould-content.ts';

export const objectProblems = (design: Design): Problem[] => [
  ...design.bands.flatMap((band) => bandProblems(band, design)),
  ...design.pours.flatMap(pourProblems),
  ...design.blanks.flatMap(castProblems),
  ...design.boards.flatMap(boardProblems),
];

function bandProblems(band: Band, design: Design): Problem[] {
  const measured = measureBand(band, design.woods);
  const { worst, limit, runs } = measured;
  const problems: Problem[] = [];
  const at = band.nameRange;
  if (worst && limit && gradeOf(worst, limit, band) === 'will not bend') {
    const place = words`in the ${worst.side} at ${measure.place(worst.at)}`;
    const cure =
      worst.radius > placeTolerance
        ? words`Take strips ${measure.given(worst.bendingThickness ?? 0)} thick and more laminations, or ease the outline there.`
        : 'It is tighter than the band is thick: ease the outline there.';
    const message = words`Band ${band.name} will not bend ${place}: lamination ${worst.lamination} has a radius of ${measure.given(worst.radius)} there, and its limit is ${measure.given(limit.radius)} (${limit.from}). ${cure}`;
    problems.push(problemAt('bandWillNotBend', at, message));
  }
  const lost = runs.find(({ pieces }) => pieces.some(({ length }) => length <= placeTolerance));
  if (lost) {
    const from = lost.run.segments[0]?.from ?? { x: 0, y: 0 };
    const message = words`Band ${band.name}, ${measure.given(measured.thickness)} thick, leaves nothing of the short edge that begins at ${measure.place(from)}. Take it thinner, or make that edge longer.`;
    problems.push(problemAt('bandWithoutRoom', at, message));
  }
  const depth = edgeDepth(band.around, design);
  if (depth !== null && band.stock.depth + placeTolerance < depth) {
    const message = words`Strip ${band.stock.name} is ${measure.given(band.stock.depth)} wide, and the edge of ${band.around.name} is ${measure.given(depth)} deep. Take a strip at least ${measure.given(depth + band.overWidth)} deep, its over-width counted in.`;
    problems.push(problemAt('bandTooNarrow', at, message));
  }
  return problems;
}

function pourProblems({ name, mould, layers, inserts }: Pour): Problem[] {
  const inside = mouldRings(mould);
  const depth = sum(layers.map((layer) => layer.depth));
  return inserts.flatMap(({ outline, to, range }): Problem[] => {
    const rings = outline.contours.map(flattenContour);
    const outside = areaOf(rings) - areaOf(intersectionOf(rings, inside));
    if (outside > areaTolerance) {
      const message = words`Insert ${outline.name} stands out of the mould of ${name} by ${measure.area(outside)}. Make the mould larger, or move the insert inside; what is inside is planned.`;
      return [problemAt('insertOutsideMould', range, message)];
    }
    if (to <= depth + placeTolerance) return [];
    const message = words`Insert ${outline.name} reaches up to ${measure.given(to)}, and the layers of ${name} come to ${measure.given(depth)}: it stands out of the pour by ${measure.given(to - depth)}. Pour deeper, or end it at ${measure.given(depth)}.`;
    return [problemAt('insertAbovePour', range, message)];
  });
}

/** A blank is cast at once. */
function castProblems({ name, nameRange, cast }: Blank): Problem[] {
  if (!cast || cast.resin.deepestPour === null) return [];
  const poured = cast.depth + 2 * cast.surfaced + cast.overfill;
  if (poured <= cast.resin.deepestPour + placeTolerance) return [];
  const message = words`Blank ${name} is cast ${measure.given(poured)} deep at once, what is planed away counted in, and ${cast.resin.name} may be poured ${measure.given(cast.resin.deepestPour)} deep. Fill it by a \`pour\` of several layers; deep resin heats up, so keep to its data sheet.`;
  return [problemAt('layerTooDeep', nameRange, message)];
}

function boardProblems(board: Board): Problem[] {
  const { name, nameRange, outline, sheet, pivot } = board;
  const rings = outline.contours.map(flattenContour);
  const { left, right, bottom, top } = boundsOf(rings.flat());
  const problems: Problem[] = [];
  if (sheet.sizes.length > 0 && !boardFits(board)) {
    const message = words`Board ${name} measures ${measure.size([right - left, top - bottom])}, more than any sheet of ${sheet.name} has between its margins, turned by ${joined(sheet.turns.map(measure.fineAngle), ' or ')}. Add a larger sheet, allow other \`turns\` on it, or make the board smaller.`;
    problems.push(problemAt('boardLargerThanSheet', nameRange, message));
  }
  if (pivot && (pivot.x < left || pivot.x > right || pivot.y < bottom || pivot.y > top)) {
    const message = words`The pivot of board ${name} at ${measure.place(pivot)} lies beside the board. Put it inside.`;
    problems.push(problemAt('pivotOutsideBoard', nameRange, message));
  }
  return problems;
}
