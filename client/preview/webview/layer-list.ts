/** The list of layers: each with a sample of its look, and a box to switch it off. */
import type { DrawingLayer } from '../../../server/drawing/drawing.ts';
import { paintAtOnce } from './painter.ts';
import type { Palette } from './palette.ts';
import { prepared, type PreparedDrawing } from './prepared-drawing.ts';

const sampleSize = { width: 44, height: 16 };
/** Pixels a millimetre in a sample. */
const sampleScale = 4;

/** Writes one entry a layer name, where they differ from what stands there. */
export function writeLayers(
  list: HTMLUListElement,
  drawing: PreparedDrawing | null,
  hidden: ReadonlySet<string>,
  palette: Palette,
  onSwitch: (name: string, isShown: boolean) => void,
): void {
  const layers = drawing === null ? [] : switchable(drawing);
  const written = JSON.stringify([layers.map(({ name, kind, wood }) => [name, kind, wood]), [...hidden], palette]);
  if (list.dataset['written'] === written) return;
  list.dataset['written'] = written;
  const focused = document.activeElement instanceof HTMLInputElement ? document.activeElement.value : null;
  const hadFocus = list.contains(document.activeElement);
  list.replaceChildren(...layers.map((layer) => entry(layer, !hidden.has(layer.name), palette, onSwitch)));
  if (hadFocus) [...list.querySelectorAll('input')].find(({ value }) => value === focused)?.focus();
}

/** One layer a name: all but the ground. */
function switchable({ layers }: PreparedDrawing): DrawingLayer[] {
  const byName = new Map(layers.map(({ layer }) => [layer.name, layer] as const));
  return [...byName.values()].filter(({ kind }) => kind !== 'region');
}

function entry(
  layer: DrawingLayer,
  isShown: boolean,
  palette: Palette,
  onSwitch: (name: string, isShown: boolean) => void,
): HTMLLIElement {
  const item = document.createElement('li');
  const label = document.createElement('label');
  const box = document.createElement('input');
  box.type = 'checkbox';
  box.value = layer.name;
  box.checked = isShown;
  box.addEventListener('change', () => onSwitch(layer.name, box.checked));
  label.append(box, sample(layer, palette), layer.name);
  item.append(label);
  return item;
}

/** A length of the layer's material. */
function sample({ name, kind, level, wood }: DrawingLayer, palette: Palette): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  const density = window.devicePixelRatio;
  canvas.width = sampleSize.width * density;
  canvas.height = sampleSize.height * density;
  canvas.setAttribute('aria-hidden', 'true');
  const context = canvas.getContext('2d');
  const [half, high] = [sampleSize.width / sampleScale / 2 - 0.3, sampleSize.height / sampleScale / 2 - 0.3];
  const shape = {
    ...{ mark: '', label: name, placements: [0, 0, 0], range: { start: 0, end: 0 } },
    rings: [[-half, -high, half, -high, half, high, -half, high]],
  };
  const drawing = prepared({
    ...{ title: '', name: '', heading: '', units: 'mm', summary: [], texts: [] },
    bounds: { left: -half, right: half, bottom: -high, top: high },
    layers: [{ name, level, wood, kind: kind === 'outline' ? 'note' : kind, kinds: [shape] }],
  });
  if (context)
    paintAtOnce(context, {
      ...{ prepared: drawing, palette, size: sampleSize, density, hidden: new Set(), isLit: () => false },
      camera: { scale: sampleScale, x: 0, y: 0 },
    });
  return canvas;
}
