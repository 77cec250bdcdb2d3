/** A panel's drawing as a page of its own size, full size, for formats that know no patterns: tints tell the layers apart. */
import { maximum } from '../geometry/numbers.ts';
import type { Point } from '../geometry/point.ts';
import type { Drawing, DrawingLayer, Rings } from './drawing.ts';
import { movedItems } from './page/moved-items.ts';
import type { Look, PageFile, PageItem } from './page/page-model.ts';
import { coloured, ink } from './page/palettes.ts';
import { ringSteps } from './page/path-steps.ts';
import { pictureFrame } from './picture-frame.ts';
import { placedRings } from './placed-rings.ts';
import { markTexts } from './svg-marks.ts';
import { resinOpacity, resinTint, woodTint } from './wood-tints.ts';

/** One page around the panel and its caption; `source` names the design's file. */
export function panelPage(drawing: Drawing, source: string): PageFile {
  const { page, caption } = pictureFrame(drawing, source);
  const items = [...layerItems(drawing, coloured.looks.outline), ...markTexts(drawing), ...caption.items];
  const title = `${drawing.title}, ${drawing.heading}`;
  return {
    title,
    summary: drawing.summary.join('. '),
    palette: coloured,
    pages: [{ width: page.width, height: page.height, title, items: movedItems(items, -page.left, -page.top) }],
  };
}

/** Every layer from the back to the front, in coordinates with y turned down. */
function layerItems(drawing: Drawing, outline: Look): PageItem[] {
  const front = Math.max(0, maximum(drawing.layers.filter(({ kind }) => kind === 'strip').map(({ level }) => level)));
  return drawing.layers.flatMap((layer): PageItem[] => {
    const look = layerLook(layer, front, outline);
    const items = layer.kinds.flatMap((kind): PageItem[] =>
      [...placedRings(kind)].map((rings) => ({
        kind: 'path',
        look,
        steps: rings.flatMap((ring) => ringSteps(ring, { x: 0, y: 0 })),
        facts: layer.kind === 'region' || layer.kind === 'outline' ? {} : { mark: kind.mark },
      })),
    );
    if (layer.clip === undefined) return items;
    return [{ kind: 'group', name: 'sawn', facts: {}, items, clip: bridged(layer.clip) }];
  });
}

/** One ring that covers the same as `rings`, y turned down: it goes to each further ring and back along one line. */
function bridged(rings: Rings): Point[] {
  const [outer = [], ...others] = rings.map((ring) => {
    const points = Array.from({ length: ring.length / 2 }, (_, index) => ({
      x: ring[2 * index] ?? 0,
      y: -(ring[2 * index + 1] ?? 0),
    }));
    return [...points, ...points.slice(0, 1)];
  });
  return [...outer, ...others.flatMap((ring) => [...ring, ...outer.slice(0, 1)])];
}

function layerLook({ kind, level, wood }: DrawingLayer, front: number, outline: Look): Look {
  if (kind === 'region') return { fill: '#f6f4ee', stroke: null, width: 0, dash: [] };
  if (kind === 'strip') return { fill: woodTint(wood, front - level + 1), stroke: ink, width: 0.22, dash: [] };
  if (kind === 'board') return { fill: woodTint(wood, 0), stroke: ink, width: 0.22, dash: [] };
  if (kind === 'offcut') return { fill: '#f3f0ea', stroke: ink, width: 0.18, dash: [1, 0.5] };
  if (kind === 'resin') return { fill: resinTint(wood), opacity: resinOpacity, stroke: ink, width: 0.22, dash: [] };
  if (kind === 'piece') return { fill: woodTint(wood, 0), stroke: ink, width: 0.18, dash: [] };
  if (kind === 'trimmed') return { fill: woodTint(wood, 1), stroke: ink, width: 0.18, dash: [1, 0.5] };
  return outline;
}
