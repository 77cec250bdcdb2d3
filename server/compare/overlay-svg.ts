/**
 * Two versions of panels over one another as SVG, one drawn millimetre to the millimetre. What only the old version has
 * is hatched with a dashed line, what only the new one has is dotted with a heavy line, what both have is pale:
 * three looks that need no colour. Every shape carries its mark and the version it belongs to.
 */
import { maximum } from '../geometry/numbers.ts';
import { boundsOf, type Bounds } from '../geometry/polygons.ts';
import type { Point } from '../geometry/point.ts';
import { escaped, number, pathData } from '../drawing/svg-text.ts';
import type { Overlay, PlacedShape } from './overlay-panels.ts';

export interface NamedOverlay {
  /** Name of the panel, or both names of a renamed one. */
  readonly name: string;
  readonly overlay: Overlay;
}

const margin = 12;
const narrowest = 150;

/** Size of the words in mm: small beside the drawing, and still readable where a wide one is shown in a narrow place. */
const wordSize = (width: number): number => Math.max(3.4, width / 75);

interface PlacedOverlay extends NamedOverlay {
  readonly bounds: Bounds;
  /** Base line of its caption, and where its drawing begins, y down. */
  readonly caption: number;
  readonly top: number;
}

/** All panels below one another; ends with a line break. `versions` says which text is compared with which. */
export function writeOverlaySvg(overlays: readonly NamedOverlay[], versions: string): string {
  const bounded = overlays.map((each) => ({ ...each, bounds: boundsOfOverlay(each.overlay) }));
  const width = 2 * margin + Math.max(narrowest, maximum(bounded.map(({ bounds }) => bounds.right - bounds.left)));
  const size = wordSize(width);
  let below = margin + size;
  const placed = bounded.map((each): PlacedOverlay => {
    const caption = below + 2 * size;
    const top = caption + size;
    below = top + each.bounds.top - each.bounds.bottom + margin;
    return { ...each, caption, top };
  });
  const height = below + legendLines * 2 * size + margin;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="overlay" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}" role="img">`,
    `<title>${escaped(versions)}</title>`,
    ...overlayStyle(size),
    `<rect class="paper" width="${number(width)}" height="${number(height)}"/>`,
    `<text class="words" x="${margin}" y="${number(margin)}">${escaped(versions)}</text>`,
    ...placed.flatMap(panelPart),
    ...legend(below, size),
    '</svg>',
    '',
  ].join('\n');
}

/** Inks of the project: brown for what goes, blue-green for what comes. */
const overlayStyle = (size: number): string[] => [
  '<style>',
  '.paper { fill: #ffffff; }',
  '.both path { fill: #efe9dc; stroke: #9c9282; stroke-width: 0.15; }',
  '.old path { fill: url(#hatch-old); stroke: #9a4a1c; stroke-width: 0.3; stroke-dasharray: 1.4 0.9; }',
  '.new path { fill: url(#dots-new); stroke: #0f5257; stroke-width: 0.55; }',
  '.both .edge, .old .edge, .new .edge { fill: none; }',
  `.words { fill: #33281d; font-family: sans-serif; font-size: ${number(size)}px; }`,
  '</style>',
  '<defs>',
  '<pattern id="hatch-old" patternUnits="userSpaceOnUse" width="1.1" height="1.1" patternTransform="rotate(45)"><path stroke="#9a4a1c" stroke-width="0.22" d="M0 0.5h1.1"/></pattern>',
  '<pattern id="dots-new" patternUnits="userSpaceOnUse" width="1.2" height="1.2"><rect width="1.2" height="1.2" fill="#d5e8e6"/><circle cx="0.6" cy="0.6" r="0.24" fill="#0f5257"/></pattern>',
  '</defs>',
];

function panelPart({ name, overlay, bounds, caption, top }: PlacedOverlay): string[] {
  const { same, onlyOld, onlyNew } = overlay;
  const words = `panel ${name}: ${onlyOld.length} shapes only in the old version, ${onlyNew.length} only in the new, ${same.length} in both`;
  return [
    `<text class="words" x="${margin}" y="${number(caption)}">${escaped(words)}</text>`,
    `<g data-panel="${escaped(name)}" transform="translate(${number(margin - bounds.left)} ${number(top + bounds.top)})">`,
    ...group('both', same),
    ...group('old', onlyOld),
    ...group('new', onlyNew),
    '</g>',
  ];
}

function group(look: 'both' | 'old' | 'new', shapes: readonly PlacedShape[]): string[] {
  const paths = shapes.map(({ kind, mark, label, rings }) => {
    const edge = kind === 'outline' ? ' class="edge"' : '';
    return `<path data-mark="${escaped(mark)}"${edge} d="${pathData(rings)}"><title>${escaped(label)}</title></path>`;
  });
  return [`<g class="${look}">`, ...paths, '</g>'];
}

const legendEntries = [
  ['old', 'only in the old version (hatched, dashed line)'],
  ['new', 'only in the new version (dotted, heavy line)'],
  ['both', 'in both versions (pale)'],
] as const;
const legendLines = legendEntries.length;

function legend(top: number, size: number): string[] {
  return legendEntries.flatMap(([look, words], index) => {
    const y = top + index * 2 * size;
    return [
      `<g class="${look} sample"><path d="M${margin} ${number(y)}h${number(3 * size)}v${number(size)}h${number(-3 * size)}Z"/></g>`,
      `<text class="words" x="${number(margin + 4 * size)}" y="${number(y + 0.9 * size)}">${words}</text>`,
    ];
  });
}

/** The bounds of everything in the overlay; a point where there is nothing. */
function boundsOfOverlay({ same, onlyOld, onlyNew }: Overlay): Bounds {
  const points = [...same, ...onlyOld, ...onlyNew].flatMap(({ rings }) => rings.flatMap(pointsOf));
  return points.length === 0 ? { left: 0, bottom: 0, right: 0, top: 0 } : boundsOf(points);
}

function pointsOf(ring: readonly number[]): Point[] {
  const points: Point[] = [];
  for (let index = 0; index + 1 < ring.length; index += 2)
    points.push({ x: ring[index] ?? 0, y: ring[index + 1] ?? 0 });
  return points;
}
