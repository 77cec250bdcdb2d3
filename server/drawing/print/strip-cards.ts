/** Every kind of strip at full size, broken where it is longer than the page, with the places of its notches. */
import { maximum } from '../../geometry/numbers.ts';
import type { LengthUnit } from '../../design/design-model.ts';
import type { StripGroup } from '../../lattice/laid-panel.ts';
import type { MarkedStrip } from '../../shop/marks/marked-kinds.ts';
import { edgeView, faceView, type Member, notchStretches, singleNotches } from '../member-views.ts';
import { type NotchSetting, notchSettings, runText, settingText } from '../notch-text.ts';
import type { PageItem } from '../page/page-model.ts';
import { textWidth } from '../page/typeface.ts';
import { type BrokenAxis, brokenAxis, onPage } from '../sheet/broken-axis.ts';
import { figureSize, heightDimension, ordinateDimensions } from '../sheet/dimensions.ts';
import { lengthText } from '../../words/figures.ts';
import { rectangle } from '../sheet/sheet-lines.ts';
import { stockText } from '../sheet-facts.ts';
import { type Block, blockOf, paragraph, stacked, space } from './blocks.ts';
import { kindHead } from './kind-cards.ts';
import { letterSizes, type PrintContext } from './print-context.ts';

/** Room on the right for the heights' figures. */
const heightsRoom = 34;
const left = 3;

export function stripCard(strip: MarkedStrip, context: PrintContext): Block[] {
  const { plan, typefaces, width } = context;
  const { units } = plan;
  return strip.groups.slice(0, 1).map(({ group }) => {
    const { length, stock, hand, notches } = group;
    const handText = hand === null ? 'no hand' : `${hand}-handed`;
    const axis = stripAxis(group, width);
    const shown = axis.parts.length === 1 ? 'full size' : 'full size, middle left out';
    const what = [
      `strip, ${lengthText(length, units, 'length')} long, ${handText}`,
      stockText(stock, units),
      `${shown}: front, then right-hand edge`,
    ].join('\n');
    return stacked(
      [
        kindHead(strip, what, context),
        views(strip.mark, group, axis, context),
        ...notchSettings(notches).map((runs) =>
          paragraph(settingLine(runs, units), { size: letterSizes.small + 0.4 }, width, typefaces),
        ),
        space(3),
      ],
      0.4,
    );
  });
}

const memberOf = ({ length, stock, notches }: StripGroup): Member => ({
  outline: rectangle(0, -stock.face / 2, length, stock.face),
  length,
  face: stock.face,
  depth: stock.depth,
  notches,
});

const stripAxis = (group: StripGroup, width: number): BrokenAxis =>
  brokenAxis(group.length, 1, left, width - left - heightsRoom, notchStretches(memberOf(group)));

/** Face and, under it, the edge, with the places of the notches from end 1. */
function views(mark: string, group: StripGroup, axis: BrokenAxis, { figures, typefaces }: PrintContext): Block {
  const { length, stock } = group;
  const half = stock.face / 2;
  const member = memberOf(group);
  const ordinates = placesShown(member, axis, figures);
  const figuresHeight = Math.max(
    0,
    maximum(ordinates.map((each) => textWidth(each.figure, { size: figureSize }, typefaces))),
  );
  const figuresAt = figuresHeight + 2;
  const middle = figuresAt + 7.5 + half;
  const edgeTop = middle + half + 4;
  const right = left + axis.width + 8;
  const items: PageItem[] = [
    {
      kind: 'group',
      name: 'strip',
      facts: { mark, 'length-mm': length },
      items: faceView(member, axis, middle),
      clip: null,
    },
    ...ordinateDimensions(ordinates, middle - half, figuresAt),
    ...heightDimension(right, middle - half, middle + half, right - 7, figures.fine(stock.face)),
    ...edgeView(member, axis, edgeTop),
    ...heightDimension(right, edgeTop, edgeTop + stock.depth, right - 7, figures.length(stock.depth)),
  ];
  return blockOf(edgeTop + stock.depth + 5.5, items);
}

/** "Notch from above, 60°, 6.67 deep, 3.05 mm wide: at 6.0, then every 36.00 × 9 to 330.0" */
const settingLine = (runs: NotchSetting, units: LengthUnit): string =>
  `Notch ${settingText(runs[0], units)}: at ${runs.map((run) => runText(run, units)).join('; ')}`;

/** Figures stand apart by this much at least; where places are nearer, every second, third … is told. */
const figureStep = figureSize + 0.9;

function placesShown(
  member: Member,
  axis: BrokenAxis,
  figures: PrintContext['figures'],
): { x: number; figure: string }[] {
  const places = [...new Set([0, ...singleNotches(member.notches).map(({ place }) => place), member.length])];
  const shown = places.flatMap((place) => {
    const x = onPage(axis, place);
    return x === null ? [] : [{ x, figure: figures.length(place) }];
  });
  const distinct = shown.filter((each, index) => index === 0 || each.figure !== shown[index - 1]?.figure);
  const every = Math.ceil((distinct.length * figureStep) / axis.width);
  return distinct.filter((_, index) => index % every === 0 || index === distinct.length - 1);
}
