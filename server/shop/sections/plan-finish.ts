/** What the finish takes: area of all that is coated, inside walls of the open lattice too. Lengths mm. */
import type { Words } from '../../../grammar/words.ts';
import type { Frame } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import type { FinishStock } from '../../design/material-model.ts';
import { contourArea, contourLength } from '../../geometry/measure-path.ts';
import { radians } from '../../geometry/point.ts';
import { sum } from '../../geometry/numbers.ts';
import { signedArea } from '../../geometry/polygons.ts';
import { frameMembers } from '../../lattice/frame-members.ts';
import type { LaidPanel, NotchRun } from '../../lattice/laid-panel.ts';
import { castOfPanel, latticeDepth } from '../lines/work-depth.ts';
import { planArea } from './plan-rounding.ts';
import { woodFigures } from '../wood/wood-figures.ts';
import type { PlanFinish } from './work-sections.ts';

/** mm² in a m². */
const squareMillimetres = 1e6;

/** Null where the file says nothing of a finish. */
export function planFinish(design: Design, panels: readonly LaidPanel[]): PlanFinish<Words> | null {
  const { work } = design;
  if (!work || work.finish === null) return null;
  if (work.finish === 'none')
    return {
      finish: null,
      areaMm2: 0,
      coats: 0,
      volumeMl: 0,
      recoatMin: null,
      order: ['No finish: brush out the dust and leave the wood as it is.'],
    };
  const area =
    sum(panels.map((laid) => (laid.quantity + laid.taken) * panelArea(laid, design))) +
    sum(design.boards.map((board) => board.copies * work.copies * boardArea(board)));
  return {
    finish: work.finish.name,
    areaMm2: planArea(area),
    coats: work.finish.coats,
    volumeMl: Math.ceil(volumeOf(work.finish, area)),
    recoatMin: work.finish.recoat,
    order: orderOf(work.finish, design, panels),
  };
}

/** Cast in resin, a panel is solid: faces and edge. */
function panelArea(laid: LaidPanel, design: Design): number {
  const cast = castOfPanel(laid.panel, design);
  return cast ? 2 * laid.areaMm2 + laid.perimeterMm * cast.depth : coatedArea(laid);
}

/** coats · area / coverage, and more by the share that is lost on the way: ÷ (1 − loss). In mL. */
const volumeOf = ({ coverage, coats, loss }: FinishStock, area: number): number =>
  (1000 * coats * (area / squareMillimetres)) / coverage / (1 - loss);

/**
 * Front, back and side walls of one panel, about. A crossing hides its run of both strips' walls and shows its front
 * and back once; ends of infill bear on other wood and are hidden.
 */
export function coatedArea(laid: LaidPanel): number {
  const { strips, pieces, panel } = laid;
  const stripAreas = strips.map(({ stock, length, notches, placements }) => {
    const depth = stock.depth - 2 * stock.flush;
    const hidden = sum(notches.map(runLength));
    return (
      placements.length *
      (2 * stock.face * (length - hidden / 2) + 2 * depth * (length - hidden) + 2 * stock.face * depth)
    );
  });
  const pieceAreas = pieces.map(({ shape, count }) => {
    const depth = shape.stock.depth - 2 * shape.stock.flush;
    const hidden = sum(shape.notches.map(runLength));
    const faces = 2 * signedArea(shape.outline) - shape.stock.face * hidden;
    return count * (faces + depth * Math.max(0, sum(shape.edges) - 2 * hidden));
  });
  return sum([...stripAreas, ...pieceAreas]) + (panel.frame ? frameArea(laid, panel.frame) : 0);
}

/** Front and back of the members, their outer edges, and their inner ones where the lattice does not stand. */
function frameArea(laid: LaidPanel, frame: Frame): number {
  const { stock } = frame;
  const members = frameMembers(laid, frame);
  const inner = Math.max(0, stock.depth - latticeDepth(laid.panel.grid));
  return sum(
    members.map((member) => {
      const faces = member.width * (member.length + member.inner);
      return member.count * (faces + member.length * stock.depth + member.inner * inner);
    }),
  );
}

/** Along the axis, all notches of a run together. */
const runLength = ({ width, angle, count }: NotchRun): number => (count * width) / Math.sin(radians(angle));

const boardArea = ({ outline, sheet }: Design['boards'][number]): number =>
  2 * sum(outline.contours.map(contourArea)) + sheet.thickness * sum(outline.contours.map(contourLength));

/** Minutes up to two hours, else hours. */
const waitText = (minutes: number): string => (minutes <= 120 ? `${minutes} min` : `${Math.round(minutes / 6) / 10} h`);

function orderOf(finish: FinishStock, { woods }: Design, panels: readonly LaidPanel[]): string[] {
  const used = panels.flatMap(({ strips, pieces }) => [
    ...strips.map(({ stock }) => stock.wood),
    ...pieces.map(({ shape }) => shape.stock.wood),
  ]);
  const porous = [...new Set(used)].filter((wood) => woodFigures(wood, woods)?.porous === true);
  const wait = finish.recoat === null ? '' : `, ${waitText(finish.recoat)} between`;
  return [
    'Mask every face that is still to be glued: frame joints, board, bands, bodies.',
    ...(porous.length > 0 ? [`Seal before any colour: ${porous.join(', ')} is open-pored.`] : []),
    `${finish.coats} ${finish.coats === 1 ? 'coat' : 'coats'} of ${finish.name}${finish.coats > 1 ? wait : ''}; inside walls first, then edges, then faces.`,
    'Take off the masking while the last coat is still soft.',
  ];
}
