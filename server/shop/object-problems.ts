/** What a maker should know of bands, pours and boards before making them: said at the line, the rest is planned all the same. */
import { problemAt } from '../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../grammar/problems/problem.ts';
import type { Design } from '../design/design-model.ts';
import type { Band, Blank, Board, Pour } from '../design/work-model.ts';
import { flattenContour } from '../geometry/flatten-path.ts';
import { areaOf, boundsOf, intersectionOf } from '../geometry/polygons.ts';
import { areaTolerance, placeTolerance, rounded } from '../geometry/tolerance.ts';
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

const mm = (value: number): string => String(rounded(value, 2));

function bandProblems(band: Band, design: Design): Problem[] {
  const measured = measureBand(band, design.woods);
  const { worst, limit, runs } = measured;
  const problems: Problem[] = [];
  const at = band.nameRange;
  if (worst && limit && gradeOf(worst, limit, band) === 'will not bend') {
    const place = `in the ${worst.side} at ${mm(worst.at.x)}, ${mm(worst.at.y)}`;
    const cure =
      worst.radius > placeTolerance
        ? `Take strips ${mm(worst.bendingThickness ?? 0)} mm thick and more laminations, or ease the outline there.`
        : 'It is tighter than the band is thick: ease the outline there.';
    const message = `Band ${band.name} will not bend ${place}: lamination ${worst.lamination} has a radius of ${mm(worst.radius)} mm there, and its limit is ${mm(limit.radius)} mm (${limit.from}). ${cure}`;
    problems.push(problemAt('bandWillNotBend', at, message));
  }
  const lost = runs.find(({ pieces }) => pieces.some(({ length }) => length <= placeTolerance));
  if (lost) {
    const from = lost.run.segments[0]?.from ?? { x: 0, y: 0 };
    const message = `Band ${band.name}, ${mm(measured.thickness)} mm thick, leaves nothing of the short edge that begins at ${mm(from.x)}, ${mm(from.y)}. Take it thinner, or make that edge longer.`;
    problems.push(problemAt('bandWithoutRoom', at, message));
  }
  const depth = edgeDepth(band.around, design);
  if (depth !== null && band.stock.depth + placeTolerance < depth) {
    const message = `Strip ${band.stock.name} is ${mm(band.stock.depth)} mm wide, and the edge of ${band.around.name} is ${mm(depth)} mm deep. Take a strip at least ${mm(depth + band.overWidth)} mm deep, its over-width counted in.`;
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
      const message = `Insert ${outline.name} stands out of the mould of ${name} by ${mm(outside)} mm². Make the mould larger, or move the insert inside; what is inside is planned.`;
      return [problemAt('insertOutsideMould', range, message)];
    }
    if (to <= depth + placeTolerance) return [];
    const message = `Insert ${outline.name} reaches up to ${mm(to)} mm, and the layers of ${name} come to ${mm(depth)} mm: it stands out of the pour by ${mm(to - depth)} mm. Pour deeper, or end it at ${mm(depth)}.`;
    return [problemAt('insertAbovePour', range, message)];
  });
}

/** A blank is cast at once. */
function castProblems({ name, nameRange, cast }: Blank): Problem[] {
  if (!cast || cast.resin.deepestPour === null) return [];
  const poured = cast.depth + 2 * cast.surfaced + cast.overfill;
  if (poured <= cast.resin.deepestPour + placeTolerance) return [];
  const message = `Blank ${name} is cast ${mm(poured)} mm deep at once, what is planed away counted in, and ${cast.resin.name} may be poured ${mm(cast.resin.deepestPour)} mm deep. Fill it by a \`pour\` of several layers; deep resin heats up, so keep to its data sheet.`;
  return [problemAt('layerTooDeep', nameRange, message)];
}

function boardProblems(board: Board): Problem[] {
  const { name, nameRange, outline, sheet, pivot } = board;
  const rings = outline.contours.map(flattenContour);
  const { left, right, bottom, top } = boundsOf(rings.flat());
  const problems: Problem[] = [];
  if (sheet.sizes.length > 0 && !boardFits(board)) {
    const message = `Board ${name} measures ${mm(right - left)} × ${mm(top - bottom)} mm, more than any sheet of ${sheet.name} has between its margins, turned by ${sheet.turns.map(mm).join('° or ')}°. Add a larger sheet, allow other \`turns\` on it, or make the board smaller.`;
    problems.push(problemAt('boardLargerThanSheet', nameRange, message));
  }
  if (pivot && (pivot.x < left || pivot.x > right || pivot.y < bottom || pivot.y > top)) {
    const message = `The pivot of board ${name} at ${mm(pivot.x)}, ${mm(pivot.y)} lies beside the board. Put it inside.`;
    problems.push(problemAt('pivotOutsideBoard', nameRange, message));
  }
  return problems;
}
