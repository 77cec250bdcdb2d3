/** The page of one panel: its picture, its motifs with the marks of their pieces, and the order in which it goes together. */
import { boundsOf } from '../../geometry/polygons.ts';
import type { LaidPanel, PieceGroup } from '../../lattice/laid-panel.ts';
import { assemblyOrder } from '../assembly-order.ts';
import { groupsInCell, middleOf } from '../cell-picture.ts';
import { type ChartMotif, planChart } from '../chart-plan.ts';
import { movedItems } from '../page/moved-items.ts';
import type { PageItem } from '../page/page-model.ts';
import { area, textAt } from '../sheet/sheet-lines.ts';
import { type Block, blockOf, fittingSize, paragraph, space } from './blocks.ts';
import { asPart, type FlowPart } from './flow.ts';
import { panelPicture } from './panel-picture.ts';
import { letterSizes, type PrintContext } from './print-context.ts';

/** Share of a page that the panel's own picture may take. */
const pictureShare = 0.52;

export function panelParts(laid: LaidPanel, height: number, context: PrintContext): FlowPart[] {
  const { plan, width, typefaces, drawn } = context;
  const strong = { size: letterSizes.figure, look: 'strong' };
  const heading = (text: string): FlowPart =>
    asPart({ ...paragraph(text, strong, width, typefaces), keepsWithNext: true });
  const motifs = motifRows(laid, context);
  return [
    asPart(panelPicture(laid, height * pictureShare, context)),
    asPart(space(2)),
    // One that is sawn from a blank is assembled there.
    ...(laid.quantity === 0
      ? []
      : [
          heading('Order of assembly'),
          ...assemblyOrder(laid, drawn.kinds, plan.units).map((line) =>
            asPart(paragraph(line, { size: letterSizes.text }, width, typefaces)),
          ),
        ]),
    ...(motifs.length === 0 ? [] : [asPart(space(2)), heading('Which piece goes where'), ...motifs.map(asPart)]),
  ];
}

const perRow = 3;
const picture = { width: 54, height: 46 };
const captionHeight = 8;

function motifRows(laid: LaidPanel, context: PrintContext): Block[] {
  const { motifs } = planChart(laid);
  const rows = Array.from({ length: Math.ceil(motifs.length / perRow) }, (_, index) =>
    motifs.slice(index * perRow, (index + 1) * perRow),
  );
  return rows.map((row) =>
    blockOf(
      picture.height + captionHeight + 2,
      row.flatMap((motif, index) => movedItems(motifCell(laid, motif, context), (index * context.width) / perRow, 2)),
    ),
  );
}

/** One cell of a motif, enlarged, the mark in the middle of every piece. */
function motifCell(
  laid: LaidPanel,
  { name, count, sample }: ChartMotif,
  { drawn, typefaces }: PrintContext,
): PageItem[] {
  const { left, right, bottom, top } = boundsOf(sample.opening);
  const scale = Math.min(picture.width / (right - left), picture.height / (top - bottom));
  const place = ({ x, y }: { x: number; y: number }) => ({ x: (x - left) * scale, y: (top - y) * scale });
  const pieces = groupsInCell(laid, sample);
  const caption = `${name}: ${count} cells`;
  const look = { size: letterSizes.text };
  return [
    {
      kind: 'group',
      name: 'picture',
      facts: { motif: name },
      clip: null,
      items: [
        area('box', sample.opening.map(place)),
        ...pieces.map(({ outline }) => area('wood', outline.map(place))),
        ...pieces.map(({ outline, group }) => {
          const { x, y } = place(middleOf(outline));
          return textAt(markOf(group, drawn), { x, y: y + 1.2 }, { size: 3.4, look: 'strong halo', anchor: 'middle' });
        }),
      ],
    },
    textAt(
      caption,
      { x: 0, y: (top - bottom) * scale + 6 },
      { ...look, size: fittingSize(caption, look, picture.width, typefaces) },
    ),
  ];
}

const markOf = (group: PieceGroup, { kinds }: PrintContext['drawn']): string =>
  kinds.pieces.find(({ groups }) => groups.some((each) => each.group === group))?.mark ?? '';
