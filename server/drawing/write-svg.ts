/** A drawing as SVG at full size: one user unit is a millimetre, and the design's own coordinates are kept with y turned down. */
import type { Drawing, DrawingLayer, DrawnKind } from './drawing.ts';
import { svgItems } from './page/page-svg.ts';
import { placedRings } from './placed-rings.ts';
import { pictureFrame, type PictureArea } from './picture-frame.ts';
import { markTexts } from './svg-marks.ts';
import { styleSheet } from './svg-style.ts';
import { escaped, idPart, number, pathData } from './svg-text.ts';

/** The whole file, ending with a line break; `source` names the design's file. Ids are unique; every strip and piece is one path with its `data-mark`. */
export function writeSvg(drawing: Drawing, source: string): string {
  const { page, caption } = pictureFrame(drawing, source);
  const size = `width="${number(page.width)}mm" height="${number(page.height)}mm"`;
  const viewBox = [page.left, page.top, page.width, page.height].map(number).join(' ');
  const nextId = idCounter(drawing.name);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} viewBox="${viewBox}" role="img" aria-labelledby="drawing-title drawing-summary">`,
    `<title id="drawing-title">${escaped(drawing.title)}, ${escaped(drawing.heading)}</title>`,
    `<desc id="drawing-summary">${escaped(drawing.summary.join('. '))}</desc>`,
    ...styleSheet(drawing),
    `<rect class="sheet" x="${number(page.left)}" y="${number(page.top)}" width="${number(page.width)}" height="${number(page.height)}"/>`,
    ...drawing.layers.flatMap((layer, index) => layerGroup(layer, index, page, nextId)),
    ...svgItems([...markTexts(drawing), ...caption.items]),
    '</svg>',
    '',
  ].join('\n');
}

function layerGroup(layer: DrawingLayer, index: number, page: PictureArea, nextId: (mark: string) => string): string[] {
  const clip = layer.clip === undefined ? '' : ` clip-path="url(#layer-clip-${index})"`;
  const open = `<g id="layer-${index}" class="${layer.kind} layer-${index}" data-layer="${escaped(layer.name)}"${clip}>`;
  return [
    ...clipPath(layer, index),
    open,
    ...layer.kinds.flatMap((kind) => kindPaths(layer, kind, page, nextId)),
    '</g>',
  ];
}

function clipPath({ clip }: DrawingLayer, index: number): string[] {
  if (clip === undefined) return [];
  return [`<clipPath id="layer-clip-${index}"><path clip-rule="evenodd" d="${pathData(clip)}"/></clipPath>`];
}

function kindPaths(
  layer: DrawingLayer,
  kind: DrawnKind,
  page: PictureArea,
  nextId: (mark: string) => string,
): string[] {
  const shapes = [...placedRings(kind)].map(pathData);
  if (layer.kind === 'note') return shapes.map((data) => `<path class="edge" d="${data}"/>`);
  if (layer.kind === 'region') return shapes.map((data) => `<path class="ground" fill-rule="evenodd" d="${data}"/>`);
  if (layer.kind === 'outline') return shapes.flatMap((data) => [veil(page, data), `<path class="edge" d="${data}"/>`]);
  const mark = escaped(kind.mark);
  return [
    `<g><title>${escaped(kind.label)}</title>`,
    ...shapes.map((data) => `<path id="${nextId(kind.mark)}" data-mark="${mark}" d="${data}"/>`),
    '</g>',
  ];
}

/** Pales everything outside the outline: what is sawn away later, or hidden in the frame. */
function veil(page: PictureArea, outline: string): string {
  const { left, top, width, height } = page;
  const sheet = `M${number(left)} ${number(top)}h${number(width)}v${number(height)}h${number(-width)}Z`;
  return `<path class="veil" fill-rule="evenodd" d="${sheet}${outline}"/>`;
}

/** Ids such as blade-A1-17: what is drawn, mark, and a count of its own for each mark. */
function idCounter(name: string): (mark: string) => string {
  const counts = new Map<string, number>();
  return (mark) => {
    const kind = `${idPart(name)}-${idPart(mark)}`;
    const count = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, count);
    return `${kind}-${count}`;
  };
}
