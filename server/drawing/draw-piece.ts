/** The working drawing of one infill piece: enlarged with its dimensions, and at full size to lay the part on. */
import type { LengthUnit } from '../design/design-model.ts';
import type { PieceShape } from '../lattice/laid-panel.ts';
import type { MarkedPiece } from '../shop/marks/marked-kinds.ts';
import { angleText, type LengthFigures, lengthFigures, lengthText } from '../words/figures.ts';
import { notchStretches, edgeView, faceView } from './member-views.ts';
import { notchLines } from './notch-text.ts';
import { type BrokenAxis, brokenAxis } from './sheet/broken-axis.ts';
import { countBoxes } from './sheet/count-boxes.ts';
import { heightDimension } from './sheet/dimensions.ts';
import { lyingA4, margin, sheetPage } from './sheet/sheet-page.ts';
import { area, openLine, textAt, textBlock } from './sheet/sheet-lines.ts';
import { pieceDimensions, pieceMember } from './piece-views.ts';
import { rolesOf } from './shared-words.ts';
import { type DrawnDesign, sheetFacts, stockText } from './sheet-facts.ts';
import type { PageFile, PageItem } from './page/page-model.ts';

/** Enlargements of ISO 5455, and full size. */
const scales = [10, 5, 2, 1] as const;
const plainScale = 5;

/** Paper millimetres that an enlarged view should not exceed across and up. */
const roomAcross = 205;
const shortEnough = 140;
const roomUp = 40;

const enlargedMiddle = 84;
const fullSizeMiddle = 140;

/** A sheet, A4 lying. `source` names the file and the state of its text. */
export function drawPiece(drawn: DrawnDesign, piece: MarkedPiece, source: string): PageFile {
  const { shape, groups } = piece;
  const { units } = drawn.design;
  const figures = lengthFigures(units);
  const panels = [...new Set(groups.map(({ panel }) => panel))];
  const roles = rolesOf(piece).join(', ');
  const summary = `${roles}: ${lengthText(shape.length, units, 'length')} tip to tip, ${piece.total} to cut`;
  return sheetPage(
    lyingA4,
    units,
    {
      mark: piece.mark,
      heading: roles,
      subheading: stockText(shape.stock, units),
      ...sheetFacts(drawn, panels, source),
    },
    summary,
    [
      ...countBoxes({ x: lyingA4.width - margin, y: margin - 3 }, [
        ['whole', piece.whole],
        ['trimmed', piece.trimmed],
        ['spare', piece.spare],
        ['to cut', piece.total],
      ]),
      ...enlargedView(shape, figures),
      ...fullSizeView(shape, figures, piece.mark),
      ...endNotes(shape, units),
    ],
  );
}

function enlargedView(shape: PieceShape, figures: LengthFigures): PageItem[] {
  const member = pieceMember(shape);
  const scale = enlargement(shape);
  const stretches = notchStretches(member);
  const width = brokenAxis(shape.length, scale, 0, roomAcross, stretches).width;
  const axis = brokenAxis(shape.length, scale, (lyingA4.width - width) / 2, roomAcross, stretches);
  return [
    textAt(
      `${scale === 1 ? 'Full size' : 'Enlarged'} ${scale}:1, seen from the front`,
      { x: margin, y: 42 },
      { size: 3.5, look: 'quiet' },
    ),
    ...faceView(member, axis, enlargedMiddle),
    ...axis.parts.map(({ from, to, left }) =>
      openLine('axis', [
        { x: left - (from === 0 ? 5 : 0), y: enlargedMiddle },
        { x: left + (to - from) * scale + (to === shape.length ? 5 : 0), y: enlargedMiddle },
      ]),
    ),
    ...endNames(axis),
    ...pieceDimensions(shape, axis, enlargedMiddle, figures),
  ];
}

/** A plain piece may be broken, a lapped one shows all its notches: it is enlarged only as far as it fits. */
function enlargement({ length, stock, notches }: PieceShape): number {
  const fits = (scale: number): boolean => {
    const room = scale > plainScale ? shortEnough : roomAcross;
    const mayBreak = scale === plainScale && notches.length === 0;
    return stock.face * scale <= roomUp && (mayBreak || length * scale <= room);
  };
  return scales.find(fits) ?? 1;
}

function endNames(axis: BrokenAxis): PageItem[] {
  const [first, last] = [axis.parts[0], axis.parts.at(-1)];
  if (!first || !last) return [];
  const right = last.left + (last.to - last.from) * axis.scale;
  return [
    textAt('end 1', { x: first.left - 7, y: enlargedMiddle + 1.2 }, { size: 3.5, anchor: 'end', look: 'quiet' }),
    textAt('end 2', { x: right + 7, y: enlargedMiddle + 1.2 }, { size: 3.5, look: 'quiet' }),
  ];
}

function fullSizeView(shape: PieceShape, figures: LengthFigures, mark: string): PageItem[] {
  const member = pieceMember(shape);
  const axis = brokenAxis(shape.length, 1, margin + 2, lyingA4.width - 2 * margin - 110, notchStretches(member));
  const top = fullSizeMiddle + shape.stock.face / 2 + 7;
  const right = margin + 2 + axis.width + 8;
  const whole = axis.parts.length === 1;
  const outline = shape.outline.map(({ x, y }) => ({ x: margin + 2 + x, y: fullSizeMiddle - y }));
  return [
    textAt(
      'Full size 1:1, to lay the part on; under it seen from the right-hand edge, front face up',
      { x: margin, y: fullSizeMiddle - 6 },
      { size: 3.5, look: 'quiet' },
    ),
    ...(whole ? [area('wood', outline, { mark, 'length-mm': shape.length })] : []),
    ...(whole && shape.notches.length === 0 ? [] : faceView(member, axis, fullSizeMiddle)),
    ...edgeView(member, axis, top),
    ...heightDimension(right, top, top + shape.stock.depth, right - 7, `${figures.length(shape.stock.depth)} deep`),
  ];
}

function endNotes(shape: PieceShape, units: LengthUnit): PageItem[] {
  const end = (index: 0 | 1): string => {
    const { bevels } = shape.ends[index];
    if (bevels === null) return `End ${index + 1}: fitted to its place, the outline rules`;
    return `End ${index + 1}: bevels ${angleText(bevels[0])} left, ${angleText(bevels[1])} right`;
  };
  const lines = [
    end(0),
    end(1),
    'Left and right look from end 1 to end 2; bevels are',
    'inside the wood, from the axis.',
    ...notchLines(shape.notches, units),
  ];
  return textBlock(lines, { x: lyingA4.width - margin - 96, y: fullSizeMiddle - 4 }, 5, { size: 3.5 });
}
