/** The working drawing of one strip: its face and its edge at full size with the places of all notches, and every kind of notch enlarged. */
import type { LengthUnit } from '../design/design-model.ts';
import type { NotchRun, StripGroup } from '../lattice/laid-panel.ts';
import { leanOf } from '../lattice/strips/strip-kinds.ts';
import type { MarkedStrip } from '../shop/marks/marked-kinds.ts';
import { type LengthFigures, lengthFigures, lengthText } from '../words/figures.ts';
import type { PageFile, PageItem } from './page/page-model.ts';
import { notchStretches, edgeView, faceView, type Member, singleNotches } from './member-views.ts';
import { notchDetails } from './notch-details.ts';
import { notchLines } from './notch-text.ts';
import { type BrokenAxis, brokenAxis, onPage } from './sheet/broken-axis.ts';
import { countBoxes } from './sheet/count-boxes.ts';
import { heightDimension, ordinateDimensions } from './sheet/dimensions.ts';
import { lyingA4, margin, sheetPage } from './sheet/sheet-page.ts';
import { textAt, textBlock, wrapped } from './sheet/sheet-lines.ts';
import { type DrawnDesign, sheetFacts, stockText } from './sheet-facts.ts';

const figuresAt = 58;
const faceMiddle = 74;
const edgeTop = 86;
const lettersAcross = 72;

/** A sheet, A4 lying. `source` names the file and the state of its text. */
export function drawStrip(drawn: DrawnDesign, strip: MarkedStrip, source: string): PageFile {
  const { units } = drawn.design;
  const figures = lengthFigures(units);
  const panels = [...new Set(strip.groups.map(({ panel }) => panel))];
  const [first] = strip.groups;
  const group = first?.group;
  const body = group ? stripViews(group, figures) : [];
  const length = group ? lengthText(group.length, units, 'length') : '';
  return sheetPage(
    lyingA4,
    units,
    {
      mark: strip.mark,
      heading: `strip, ${length} long`,
      subheading: group ? stockText(group.stock, units) : '',
      ...sheetFacts(drawn, panels, source),
    },
    `Strip ${strip.mark}, ${length} long, ${strip.total} to cut`,
    [
      ...countBoxes({ x: lyingA4.width - margin, y: margin - 3 }, [
        ['make', strip.make],
        ['spare', strip.spare],
        ['to cut', strip.total],
      ]),
      ...body,
      ...(group ? stripNotes(strip, group, units) : []),
      ...(group ? notchDetails(group, figures, { x: 176, y: edgeTop + group.stock.depth + 20 }) : []),
    ],
  );
}

/** A strip with its axis along x from 0, left up. */
export function stripMember({ length, stock, notches }: StripGroup): Member {
  const half = stock.face / 2;
  const outline = [
    { x: 0, y: -half },
    { x: length, y: -half },
    { x: length, y: half },
    { x: 0, y: half },
  ];
  return { outline, length, face: stock.face, depth: stock.depth, notches };
}

function stripViews(group: StripGroup, figures: LengthFigures): PageItem[] {
  const { length, stock } = group;
  const half = stock.face / 2;
  const member = stripMember(group);
  const axis = brokenAxis(length, 1, margin + 4, lyingA4.width - 2 * margin - 30, notchStretches(member));
  const right = margin + 4 + axis.width + 8;
  const broken = axis.parts.length > 1 ? ', the middle left out' : '';
  return [
    ...ordinateDimensions(ordinatesOf(member, axis, figures), faceMiddle - half, figuresAt),
    ...faceView(member, axis, faceMiddle),
    textAt(
      `Full size 1:1${broken}, seen from the front; from end 1 to the middle of each crossing`,
      { x: margin, y: faceMiddle + half + 5.5 },
      { size: 3.3, look: 'quiet' },
    ),
    ...heightDimension(right, faceMiddle - half, faceMiddle + half, right - 7, figures.fine(stock.face)),
    ...edgeView(member, axis, edgeTop),
    ...heightDimension(right, edgeTop, edgeTop + stock.depth, right - 7, figures.length(stock.depth)),
    textAt(
      'Seen from the right-hand edge: above is the front of the panel',
      { x: margin, y: edgeTop + stock.depth + 5 },
      { size: 3.3, look: 'quiet' },
    ),
  ];
}

function ordinatesOf(member: Member, axis: BrokenAxis, figures: LengthFigures): { x: number; figure: string }[] {
  const places = new Set([0, ...singleNotches(member.notches).map(({ place }) => place), member.length]);
  const shown = [...places].flatMap((place) => {
    const x = onPage(axis, place);
    return x === null ? [] : [{ x, figure: figures.length(place) }];
  });
  return shown.filter(
    ({ x, figure: text }, index) =>
      !shown.some((other, at) => at < index && other.figure === text && Math.abs(other.x - x) < 1),
  );
}

function stripNotes(strip: MarkedStrip, group: StripGroup, units: LengthUnit): PageItem[] {
  const uses = new Map<string, number>();
  for (const {
    panel,
    group: { family, placements },
  } of strip.groups) {
    const key = `panel ${panel.panel.name}, family ${family}`;
    uses.set(key, (uses.get(key) ?? 0) + placements.length * panel.quantity);
  }
  const lines = [
    handText(group),
    '',
    ...notchLines(inOrder(group.notches), units),
    '',
    ...[...uses].map(([use, count]) => `${count} for ${use}`),
    'Seat all laps halfway, lowest family first, before any is tapped home.',
  ];
  return textBlock(
    lines.flatMap((line) => wrapped(line, lettersAcross)),
    { x: margin, y: edgeTop + group.stock.depth + 16 },
    4.9,
    { size: 3.5 },
  );
}

const inOrder = (runs: readonly NotchRun[]): NotchRun[] =>
  [...runs].sort((a, b) => a.first - b.first || a.angle - b.angle);

function handText(group: StripGroup): string {
  const { hand } = group;
  if (hand === null) return 'No hand: turned or flipped, it is its own mirror image.';
  const side = hand === 'right' ? 'right' : 'left';
  const lean =
    leanOf(group) === 0 ? 'compare it with this drawing' : `with a notch upward, more slants lean to the ${side}`;
  return `${side === 'right' ? 'Right' : 'Left'}-handed: ${lean}. Its mirror image does not fit.`;
}
