/** A drawing as SVG at full size: one user unit is a millimetre, and the design's own coordinates are kept with y turned down. */
import type { Drawing, DrawingLayer, DrawnKind, Rings } from './drawing.ts';
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
    ...clippedRuns(drawing.layers).flatMap(({ clip, layers, first }) =>
      clipped(
        clip,
        first,
        layers.flatMap((layer, index) => layerGroup(layer, first + index, page, nextId)),
      ),
    ),
    ...svgItems([...markTexts(drawing), ...caption.items]),
    '</svg>',
    '',
  ].join('\n');
}

/** Layers that follow one another and are cut down to the same rings, with the index of the first. */
interface ClippedRun {
  readonly clip: Rings | undefined;
  readonly first: number;
  readonly layers: DrawingLayer[];
}

function clippedRuns(layers: readonly DrawingLayer[]): ClippedRun[] {
  const runs: ClippedRun[] = [];
  for (const [first, layer] of layers.entries()) {
    const last = runs.at(-1);
    if (last && last.clip === layer.clip) last.layers.push(layer);
    else runs.push({ clip: layer.clip, first, layers: [layer] });
  }
  return runs;
}

/** One clip for a whole run: painting programs need a picture of its own for each. */
function clipped(clip: Rings | undefined, first: number, elements: string[]): string[] {
  if (clip === undefined) return elements;
  const id = `layer-clip-${first}`;
  return [
    `<clipPath id="${id}"><path clip-rule="evenodd" d="${pathData(clip)}"/></clipPath>`,
    `<g clip-path="url(#${id})">`,
    ...elements,
    '</g>',
  ];
}

function layerGroup(layer: DrawingLayer, index: number, page: PictureArea, nextId: (mark: string) => string): string[] {
  const part = layer.part === undefined ? '' : ` data-part="${escaped(layer.part)}"`;
  return [
    `<g id="layer-${index}" class="${layer.kind} layer-${index}" data-layer="${escaped(layer.name)}"${part}>`,
    ...layer.kinds.flatMap((kind) => kindPaths(layer, kind, page, nextId)),
    ...(layer.kind === 'board' ? grainLines(layer, index, page) : []),
    '</g>',
  ];
}

const grainSpacing = 2.5;

/** Grain over all boards of the layer, along the axis of the first. */
function grainLines({ kinds }: DrawingLayer, index: number, { left, top, width, height }: PictureArea): string[] {
  const reach = Math.hypot(width, height);
  const lines = Array.from({ length: Math.floor(reach / grainSpacing) }, (_, line) => {
    return `M${number(-reach / 2)} ${number((line + 0.5) * grainSpacing - reach / 2)}h${number(reach)}`;
  });
  const turn = kinds[0]?.placements[2] ?? 0;
  const place = `translate(${number(left + width / 2)} ${number(top + height / 2)}) rotate(${number(-turn)})`;
  const boards = kinds.flatMap((kind) => [...placedRings(kind)].map(pathData)).join('');
  return [
    `<clipPath id="grain-clip-${index}"><path d="${boards}"/></clipPath>`,
    `<g clip-path="url(#grain-clip-${index})"><path class="grain" transform="${place}" d="${lines.join('')}"/></g>`,
  ];
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
