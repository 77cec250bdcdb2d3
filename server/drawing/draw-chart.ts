/** The placement chart of a panel: which motif goes into which cell, and which way round, from the front and from the back. */
import { boundsOf } from '../geometry/polygons.ts';
import type { LaidPanel } from '../lattice/laid-panel.ts';
import { assemblyOrder } from './assembly-order.ts';
import type { PageFile, PageItem } from './page/page-model.ts';
import { piecesInCell } from './cell-picture.ts';
import { type ChartMotif, type ChartPlan, isUpright, planChart } from './chart-plan.ts';
import { chartBounds, chartView, labelRoom } from './chart-view.ts';
import { countBoxes } from './sheet/count-boxes.ts';
import { headHeight, footHeight, margin, type Paper, papers, sheetPage } from './sheet/sheet-page.ts';
import { area, textAt, textBlock, wrapped } from './sheet/sheet-lines.ts';
import { copiesText } from './shared-words.ts';
import { type DrawnDesign, sheetFacts } from './sheet-facts.ts';

/** Smallest circle on paper that letters and a tick box can be read in at arm's length. */
const readableRadius = 3.1;
/** The same where the column's number stands in the cell too. */
const readableWithColumn = 5;
const captionHeight = 7;
const orderLeading = 4.8;
const pictureWidth = 34;
const pictureHeight = 30;

/** How a chart lies on its paper: both views under one another, or side by side. */
interface Layout {
  readonly paper: Paper;
  readonly stacked: boolean;
  readonly scale: number;
  readonly orderLines: readonly string[];
}

/** A sheet on the smallest paper on which it can be read. `source` names the file and the state of its text. */
export function drawChart(drawn: DrawnDesign, laid: LaidPanel, source: string): PageFile {
  const plan = planChart(laid);
  const { panel } = laid;
  const count = plan.rows.reduce((total, { cells }) => total + cells.length, 0);
  const layout = layoutFor(drawn, laid, plan);
  const { paper } = layout;
  const { units } = drawn.design;
  return sheetPage(
    paper,
    units,
    {
      mark: panel.name,
      heading: 'placement chart',
      subheading: `${copiesText(panel.copies)}, this is one; not to scale`,
      ...sheetFacts(drawn, [laid], source),
    },
    `Placement chart of panel ${panel.name}: ${count} cells in ${plan.rows.length} rows. ${assemblyOrder(laid, drawn.kinds, units).join('. ')}`,
    [
      ...countBoxes({ x: paper.width - margin, y: margin - 3 }, [
        ['rows', plan.rows.length],
        ['cells to fill', count],
      ]),
      ...(count === 0
        ? [textAt('This panel has no infill.', { x: margin, y: margin + headHeight + 8 }, { size: 4 })]
        : [
            ...views(laid, plan, layout),
            textAt(howToRead(plan), { x: margin, y: legendTop(laid, plan, layout) - 4 }, { size: 3.1, look: 'quiet' }),
          ]),
      ...legend(laid, plan.motifs, layout, legendTop(laid, plan, layout)),
    ],
  );
}

function howToRead(plan: ChartPlan): string {
  const turns = plan.rows.some(({ cells }) => cells.some(({ cell }) => cell.turned !== 0));
  const mirrors = plan.rows.some(({ cells }) => cells.some(({ cell }) => cell.mirrored));
  return [
    'The dot is the motif’s corner 1.',
    ...(mirrors ? ['An m after the letters: mirrored, pieces flipped over.'] : []),
    ...(turns ? ['+1, +2 …: turned on by so many corners.'] : []),
    ...(isUpright(plan) ? [] : ['The figure over the letters is the column.']),
    'A dashed cell is cut by the outline.',
  ].join(' ');
}

function layoutFor(drawn: DrawnDesign, laid: LaidPanel, plan: ChartPlan): Layout {
  const order = assemblyOrder(laid, drawn.kinds, drawn.design.units);
  const layouts = papers.flatMap((paper) => {
    const roomForOrder = paper.width - 2 * margin - legendWidth(plan.motifs.length);
    const orderLines = order.flatMap((line) => wrapped(line, Math.floor(roomForOrder / 1.85)));
    const bandHeight = Math.max(pictureHeight + 12, orderLines.length * orderLeading + 12);
    return [true, false].map((stacked): Layout => ({
      paper,
      stacked,
      orderLines,
      scale: plan.rows.length === 0 ? 1 : scaleOn(paper, bandHeight, stacked, laid, plan),
    }));
  });
  const larger = (best: Layout, each: Layout): Layout => (each.scale > best.scale ? each : best);
  const readable = layouts.find(
    ({ scale }) => scale * plan.inradius >= (isUpright(plan) ? readableRadius : readableWithColumn),
  );
  return layouts.filter(({ paper }) => !readable || areaOf(paper) === areaOf(readable.paper)).reduce(larger);
}

const areaOf = ({ width, height }: Paper): number => width * height;

/** Where the views end and the legend begins. */
function legendTop(laid: LaidPanel, plan: ChartPlan, { stacked, scale }: Layout): number {
  const { bottom, top } = chartBounds(laid, plan);
  const height = plan.rows.length === 0 ? 0 : (top - bottom) * scale + labelRoom.up + captionHeight;
  return margin + headHeight + height * (stacked ? 2 : 1) + 10;
}

/** Paper millimetres a panel millimetre, never above full size. */
function scaleOn(paper: Paper, bandHeight: number, stacked: boolean, laid: LaidPanel, plan: ChartPlan): number {
  const { left, right, bottom, top } = chartBounds(laid, plan);
  const across = (paper.width - 2 * margin) / (stacked ? 1 : 2) - 2 * labelRoom.across;
  const bodyHeight = paper.height - margin - headHeight - footHeight - bandHeight - 6;
  const up = bodyHeight / (stacked ? 2 : 1) - labelRoom.up - captionHeight;
  return Math.max(0, Math.min(1, across / (right - left), up / (top - bottom)));
}

function views(laid: LaidPanel, plan: ChartPlan, { paper, stacked, scale }: Layout): PageItem[] {
  const { left, right, bottom, top } = chartBounds(laid, plan);
  const width = (right - left) * scale;
  const height = (top - bottom) * scale;
  const column = (paper.width - 2 * margin) / (stacked ? 1 : 2);
  const start = margin + headHeight;
  const step = height + labelRoom.up + captionHeight;
  return (['front', 'back'] as const).flatMap((side, index) => {
    const columnLeft = margin + (stacked ? 0 : index * column);
    const viewTop = start + (stacked ? index * step : 0);
    const caption = side === 'front' ? 'Seen from the front' : 'Seen from the back, mirrored';
    return [
      textAt(caption, { x: columnLeft, y: viewTop + 3 }, { size: 3.8, look: 'strong' }),
      ...chartView(laid, plan, {
        side,
        scale,
        left: columnLeft + (column - width) / 2,
        top: viewTop + captionHeight + labelRoom.up - 2,
      }),
    ];
  });
}

const legendWidth = (motifs: number): number => motifs * (pictureWidth + 4) + 4;

/** Every motif in a cell of its own, and the order of assembly beside them. */
function legend(laid: LaidPanel, motifs: readonly ChartMotif[], { orderLines }: Layout, top: number): PageItem[] {
  const textLeft = margin + legendWidth(motifs.length);
  return [
    ...motifs.flatMap((motif, index) => motifPicture(laid, motif, margin + index * (pictureWidth + 4), top)),
    textAt('Order of assembly', { x: textLeft, y: top + 4 }, { size: 3.8, look: 'strong' }),
    ...textBlock(orderLines, { x: textLeft, y: top + 9.5 }, orderLeading, { size: 3.3 }),
  ];
}

function motifPicture(
  laid: LaidPanel,
  { name, letters, count, sample }: ChartMotif,
  left: number,
  top: number,
): PageItem[] {
  const bounds = boundsOf(sample.opening);
  const scale = Math.min(
    pictureWidth / (bounds.right - bounds.left),
    (pictureHeight - 7) / (bounds.top - bounds.bottom),
  );
  const place = ({ x, y }: { x: number; y: number }) => ({
    x: left + (x - bounds.left) * scale,
    y: top + (bounds.top - y) * scale,
  });
  return [
    area('cut', sample.opening.map(place)),
    ...piecesInCell(laid, sample).map((ring) => area('wood', ring.map(place))),
    textAt(
      `${letters}: ${name} × ${count}`,
      { x: left, y: top + (bounds.top - bounds.bottom) * scale + 5 },
      { size: 3.3, look: 'strong' },
    ),
  ];
}
