/**
 * Two versions of panels over one another as SVG, one drawn millimetre to the millimetre. What only the old version has
 * is hatched with a dashed line, what only the new one has is dotted with a heavy line, what both have is pale:
 * three looks that need no colour. Every shape carries its mark and the version it belongs to.
 */
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
const captionHeight = 16;
const narrowest = 150;

interface PlacedOverlay extends NamedOverlay {
  readonly bounds: Bounds;
  /** Top of its part of the page, y down. */
  readonly top: number;
}

/** All panels below one another; ends with a line break. `versions` says which text is compared with which. */
export function writeOverlaySvg(overlays: readonly NamedOverlay[], versions: string): string {
  const placed: PlacedOverlay[] = [];
  let height = captionHeight;
  for (const each of overlays) {
    const bounds = boundsOfOverlay(each.overlay);
    placed.push({ ...each, bounds, top: height });
    height += bounds.top - bounds.bottom + captionHeight + margin;
  }
  const width = 2 * margin + Math.max(narrowest, ...placed.map(({ bounds }) => bounds.right - bounds.left));
  height += 3 * legendStep + margin;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" class="overlay" width="${number(width)}mm" height="${number(height)}mm" viewBox="0 0 ${number(width)} ${number(height)}" role="img">`,
    `<title>${escaped(versions)}</title>`,
    ...overlayStyle,
    `<rect class="paper" width="${number(width)}" height="${number(height)}"/>`,
    `<text class="words" x="${margin}" y="10">${escaped(versions)}</text>`,
    ...placed.flatMap(panelPart),
    ...legend(height - 3 * legendStep - margin / 2),
    '</svg>',
    '',
  ].join('\n');
}

/** Inks of the project: brown for what goes, blue-green for what comes. */
const overlayStyle = [
  '<style>',
  '.paper { fill: #ffffff; }',
  '.both path { fill: #efe9dc; stroke: #9c9282; stroke-width: 0.15; }',
  '.old path { fill: url(#hatch-old); stroke: #9a4a1c; stroke-width: 0.3; stroke-dasharray: 1.4 0.9; }',
  '.new path { fill: url(#dots-new); stroke: #0f5257; stroke-width: 0.55; }',
  '.both .edge, .old .edge, .new .edge { fill: none; }',
  '.words { fill: #33281d; font-family: sans-serif; font-size: 3.4px; }',
  '</style>',
  '<defs>',
  '<pattern id="hatch-old" patternUnits="userSpaceOnUse" width="1.1" height="1.1" patternTransform="rotate(45)"><path stroke="#9a4a1c" stroke-width="0.22" d="M0 0.5h1.1"/></pattern>',
  '<pattern id="dots-new" patternUnits="userSpaceOnUse" width="1.2" height="1.2"><rect width="1.2" height="1.2" fill="#d5e8e6"/><circle cx="0.6" cy="0.6" r="0.24" fill="#0f5257"/></pattern>',
  '</defs>',
];

function panelPart({ name, overlay, bounds, top }: PlacedOverlay): string[] {
  const { same, onlyOld, onlyNew } = overlay;
  const words = `panel ${name}: ${onlyOld.length} shapes only in the old version, ${onlyNew.length} only in the new, ${same.length} in both`;
  return [
    `<text class="words" x="${margin}" y="${number(top + 4)}">${escaped(words)}</text>`,
    `<g data-panel="${escaped(name)}" transform="translate(${number(margin - bounds.left)} ${number(top + 8 + bounds.top)})">`,
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

const legendStep = 6;

function legend(top: number): string[] {
  const entries = [
    ['old', 'only in the old version (hatched, dashed line)'],
    ['new', 'only in the new version (dotted, heavy line)'],
    ['both', 'in both versions (pale)'],
  ] as const;
  return entries.flatMap(([look, words], index) => {
    const y = top + index * legendStep;
    return [
      `<g class="${look}"><path d="M${margin} ${number(y)}h10v4h-10Z"/></g>`,
      `<text class="words" x="${margin + 13}" y="${number(y + 3.2)}">${words}</text>`,
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
