/** Versions of a small design as text, and what is compared of them. */
import { analyse } from '../../server/analyse.ts';
import type { ComparedDesign } from '../../server/compare/compared-design.ts';
import type { DesignChange } from '../../server/compare/design-change.ts';
import { plannedAtSight } from '../plan-at-sight.ts';

/** A tray of three-way lattice, with the parts that tests like to change. */
export interface TrayWords {
  readonly side?: string;
  readonly radius?: string;
  readonly copies?: number;
  readonly panel?: string;
  readonly bevels?: string;
  readonly motif?: string;
  readonly extra?: string;
  readonly phase?: string;
}

export function trayText(words: TrayWords = {}): string {
  const { side = '40mm', radius = '72mm', copies = 1, panel = 'tray', bevels = '30, 60' } = words;
  const { motif = 'piece arm from corner to hub, every corner', extra = '', phase = 'centred node' } = words;
  return `title "Tray"
units mm

strip ash { wood white_ash  section face 3mm depth 10mm  lengths 600mm, 900mm }
strip bass { wood basswood  section face 3mm depth 10mm  lengths 600mm  spare 8% }
bench shop { bevels ${bevels}  kerf 3mm }
grid mesh { three_way  side ${side}  of ash  fit 0.05mm }
motif hemp for triangle {
  node hub at incentre
  ${motif}
}
outline round { circle radius ${radius} }
panel ${panel} {
  grid mesh
  ${phase}
  shape round
  edge sawn
  fill triangle with hemp of bass
  copies ${copies}
}
${extra}`;
}

export function versionOf(text: string, source = 'tray.lap'): ComparedDesign {
  return plannedAtSight(analyse(text), source);
}

/** The change with its versions exchanged. */
export function mirrored(change: DesignChange): DesignChange {
  return mirrorOf(change) as DesignChange;
}

const negated = new Set(['longerByMm', 'more']);
const exchanged = new Map([
  ['old', 'new'],
  ['new', 'old'],
  ['oldName', 'newName'],
  ['newName', 'oldName'],
  ['onlyOld', 'onlyNew'],
  ['onlyNew', 'onlyOld'],
  ['oldStopMm', 'newStopMm'],
  ['newStopMm', 'oldStopMm'],
  ['oldPinMm', 'newPinMm'],
  ['newPinMm', 'oldPinMm'],
  ['oldPieces', 'newPieces'],
  ['newPieces', 'oldPieces'],
]);

function mirrorOf(value: unknown, key = ''): unknown {
  if (key === 'change') return value === 'new' ? 'gone' : value === 'gone' ? 'new' : value;
  if (typeof value === 'number' && negated.has(key)) return -value + 0;
  if (Array.isArray(value)) return value.map((item) => mirrorOf(item));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, item]) => [exchanged.get(name) ?? name, mirrorOf(item, name)]),
  );
}

/** The change with its lists in an order of their own, so that the order of the file does not matter. */
export function unordered(value: unknown): unknown {
  if (Array.isArray(value))
    return value.map(unordered).sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([name, item]) => [name, unordered(item)]));
}
