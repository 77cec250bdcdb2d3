/** Blanks, bands, pours, boards, the work and kits: what the file says of them, in a line or two each. */
import { counted } from '../../../grammar/words.ts';
import type { Analysis } from '../../analyse.ts';
import type { Band, Blank, Board, Kit, Pour, Work } from '../../design/work-model.ts';
import { packingWords } from '../../drawing/draw-blank.ts';
import { partName } from '../../shop/work/plan-work.ts';
import { priceText } from './hover-materials.ts';
import { heading, type HoverLines } from './hover-text.ts';
import { lengthText, massText, percentText } from '../../words/figures.ts';

export function blankHover({ design: { units }, blanks }: Analysis, blank: Blank): HoverLines {
  const takes = blank.takes.map(({ panel, count }) => `${count} of \`${panel.name}\``);
  const nested = blanks.find((each) => each.blank === blank);
  return [
    heading('blank', blank.name, `of grid ${blank.grid.name}`),
    `${lengthText(blank.width, units)} x ${lengthText(blank.height, units)}`,
    takes.length > 0 ? `Sawn from it: ${takes.join(', ')}` : 'Nothing is sawn from it',
    nested && takes.length > 0 ? `To make: ${packingWords(nested)}` : '',
    blank.cast ? `Cast in \`${blank.cast.resin.name}\`, finished depth ${lengthText(blank.cast.depth, units)}` : '',
  ];
}

export function bandHover({ design: { units } }: Analysis, band: Band): HoverLines {
  return [
    heading('band', band.name, `around ${band.around.name}`),
    `${counted(band.laminations, 'lamination')} of \`${band.stock.name}\`, bent ${band.method}`,
    band.testedRadius === null ? '' : `Tested to a radius of ${lengthText(band.testedRadius, units)}`,
  ];
}

export function pourHover({ design: { units } }: Analysis, pour: Pour): HoverLines {
  const layers = pour.layers.map(({ colour, depth }) => `${colour ? `${colour} ` : ''}${lengthText(depth, units)}`);
  return [
    heading('pour', pour.name, counted(pour.copies, 'copy', 'copies')),
    `${mouldText(pour, (length) => lengthText(length, units))}, of \`${pour.resin.name}\``,
    `Layers from below: ${layers.join(', ')}`,
    pour.inserts.length > 0 ? counted(pour.inserts.length, 'insert') : '',
  ];
}

function mouldText({ mould }: Pour, text: (length: number) => string): string {
  if (mould.kind === 'rectangle') return `Mould ${text(mould.width)} x ${text(mould.height)}`;
  return `Mould \`${mould.kind === 'outline' ? mould.outline.name : mould.blank.name}\``;
}

export function boardHover({ design: { units } }: Analysis, board: Board): HoverLines {
  const { edge } = board;
  return [
    heading('board', board.name, counted(board.copies, 'copy', 'copies')),
    `Outline \`${board.outline.name}\`, of \`${board.sheet.name}\``,
    edge.kind === 'square' ? '' : `${edge.kind === 'chamfer' ? 'Chamfer' : 'Rounding'} ${lengthText(edge.size, units)}`,
  ];
}

export function workHover({ design: { units } }: Analysis, work: Work): HoverLines {
  const placed = new Map<string, number>();
  for (const { part } of work.placements) placed.set(partName(part), (placed.get(partName(part)) ?? 0) + 1);
  const list = [...placed].map(([name, count]) => (count === 1 ? `\`${name}\`` : `${count} \`${name}\``));
  const { hanging, finish, gain } = work;
  return [
    heading('work', work.name, counted(work.copies, 'copy', 'copies')),
    list.length > 0 ? `Placed: ${list.join(', ')}` : 'Nothing is placed in it',
    hanging
      ? `Hangs on ${counted(hanging.fixings, 'screw')}, ${massText(hanging.each, units)} each as stated by their maker`
      : '',
    finish === null || finish === 'none' ? '' : `Finish \`${finish.name}\``,
    work.hourly ? `${priceText(work.hourly)} an hour` : '',
    gain ? `${gain.kind === 'margin' ? 'Margin' : 'Mark-up'} ${percentText(gain.share)}` : '',
  ];
}

export function kitHover(_: Analysis, kit: Kit): HoverLines {
  return [
    heading('kit', kit.name, counted(kit.students, 'student')),
    `Each builds one \`${kit.panel.name}\``,
    kit.done.length > 0 ? `Done before: ${kit.done.join(', ')}` : '',
    `Spares: ${kit.sparesPerBag} a bag, ${kit.sparesWithTeacher} with the teacher`,
  ];
}
