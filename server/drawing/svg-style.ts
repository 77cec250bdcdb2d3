/** Looks of an SVG drawing: one fill a layer, made of a wood's tint and of lines that tell the layers apart without colour. */
import { maximum } from '../geometry/numbers.ts';
import type { Drawing, DrawingLayer, LayerKind } from './drawing.ts';
import { ink } from './page/palettes.ts';
import { number } from './svg-text.ts';
import { resinOpacity, resinTint, woodTint } from './wood-tints.ts';

/** Tiles are long, so that their seams do not show as lines across the grain. */
const tileLength = 400;

/** The <style> and <defs> of the drawing. */
export function styleSheet(drawing: Drawing): string[] {
  const front = Math.max(
    0,
    maximum(drawing.layers.filter((layer) => layer.kind === 'strip').map((layer) => layer.level)),
  );
  const filled = drawing.layers.map((layer, index) => ({ layer, index })).filter(({ layer }) => isGrained(layer));
  return [
    '<style>',
    '.sheet { fill: #ffffff; }',
    '.ground { fill: #f6f4ee; }',
    `.strip { stroke: ${ink}; stroke-width: 0.22; stroke-linejoin: round; }`,
    `.board, .offcut, .resin { stroke: ${ink}; stroke-width: 0.22; stroke-linejoin: round; }`,
    `.resin { fill-opacity: ${resinOpacity}; }`,
    `.piece, .trimmed { stroke: ${ink}; stroke-width: 0.18; stroke-linejoin: round; }`,
    '.veil { fill: #ffffff; fill-opacity: 0.66; }',
    '.edge { fill: none; stroke: #0f5257; stroke-width: 0.6; stroke-linejoin: round; }',
    `.grain { fill: none; stroke: ${ink}; stroke-opacity: 0.2; stroke-width: 0.14; }`,
    `text { fill: ${ink}; font-family: sans-serif; }`,
    `.rule { fill: none; stroke: ${ink}; stroke-width: 0.25; }`,
    ...filled.map(({ index }) => `.layer-${index} { fill: url(#fill-${index}); }`),
    ...drawing.layers.flatMap(({ kind, wood }, index) =>
      plain.includes(kind)
        ? [`.layer-${index} { fill: ${kind === 'resin' ? resinTint(wood) : woodTint(wood, 0)}; }`]
        : [],
    ),
    '</style>',
    '<defs>',
    ...filled.map(({ layer, index }) => fillPattern(layer, index, front)),
    '</defs>',
  ];
}

/** Filled with a pattern. Whole pieces are plain, and boards have lines of their own: a pattern as large takes long to paint. */
const grained: readonly LayerKind[] = ['offcut', 'strip', 'trimmed'];

const plain: readonly LayerKind[] = ['resin', 'board', 'piece'];

const isGrained = ({ kind }: DrawingLayer): boolean => grained.includes(kind);

function fillPattern(layer: DrawingLayer, index: number, front: number): string {
  const steps = layer.kind === 'strip' ? front - layer.level : 0;
  const { spacing, angle, width } = linesOf(layer, steps);
  const tint = woodTint(layer.wood, layer.kind === 'strip' ? steps + 1 : 0);
  return (
    `<pattern id="fill-${index}" patternUnits="userSpaceOnUse" width="${tileLength}" height="${spacing}" patternTransform="rotate(${number(angle)})">` +
    `<rect width="${tileLength}" height="${spacing}" fill="${tint}"/>` +
    `<path d="M0 ${number(spacing / 2)}h${tileLength}" stroke="${ink}" stroke-opacity="0.32" stroke-width="${width}"/></pattern>`
  );
}

/** Strips show grain along their axis, denser the further back; trimmed pieces and off-cuts are hatched askew. */
function linesOf(layer: DrawingLayer, steps: number): { spacing: number; angle: number; width: number } {
  if (layer.kind === 'trimmed' || layer.kind === 'offcut') return { spacing: 1.1, angle: -52, width: 0.16 };
  return { spacing: 1.5 / (1 + steps), angle: -(layer.kinds[0]?.placements[2] ?? 0), width: 0.12 };
}
