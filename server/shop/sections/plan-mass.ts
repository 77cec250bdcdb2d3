/** What one copy of the work weighs, part by part, and where its weight hangs. Masses g, lengths mm. */
import type { Design } from '../../design/design.ts';
import type { Band, Board, Pour, WorkPart } from '../../design/work-model.ts';
import { contourArea } from '../../geometry/measure-path.ts';
import { sum } from '../../geometry/numbers.ts';
import type { LaidPanel } from '../../lattice/laid-panel.ts';
import { gramsPerCubicMillimetre, massOfPanel } from '../mass/mass.ts';
import { bandQuantity } from '../bands/band-quantity.ts';
import { measureBand } from '../bands/measure-band.ts';
import { castOfPanel, edgeDepth } from '../lines/work-depth.ts';
import { contentOfCutOut, volumeBetween } from '../pours/mould-content.ts';
import type { PlanMass, PlanMassPart } from './object-sections.ts';
import { centroidOf, outlineOf, type PlacedPart, placedParts } from '../placed-parts.ts';
import { partName } from '../work/plan-work.ts';
import { planLength } from './plan-rounding.ts';
import { woodFigures } from '../wood/wood-figures.ts';

export function planMass(design: Design, panels: readonly LaidPanel[]): PlanMass {
  const parts = [
    ...panels.flatMap((laid) => [...panelParts(laid, design), ...resinRound(laid, design)]),
    ...design.bands.map((band) => bandPart(band, design)),
    ...design.boards.map((board) => boardPart(board)),
    ...design.pours.filter(({ mould }) => mould.kind !== 'blank').map((pour) => castPart(pour)),
  ];
  const masses = parts.flatMap(({ massG }) => massG ?? []);
  const isKnown = parts.length > 0 && masses.length === parts.length;
  return {
    perCopyG: isKnown ? rounded(sum(masses)) : null,
    parts: parts.map((part) => ({ ...part, massG: part.massG === null ? null : rounded(part.massG) })),
    centre: isKnown ? centreOf(design, panels, parts) : null,
    notes: notesFor(design, panels, parts),
  };
}

/** To a tenth of a gram, as finely as a kitchen scale tells. */
const rounded = (mass: number): number => Math.round(mass * 10) / 10;

function panelParts(laid: LaidPanel, { woods }: Design): PlanMassPart[] {
  const { parts } = massOfPanel(laid, ({ wood }) => woodFigures(wood, woods)?.density ?? null);
  return parts.map(({ stock, part, mass }) => ({
    part: `panel ${laid.panel.name}, ${part}`,
    material: stock.wood === null ? stock.name : `${stock.name} (${stock.wood})`,
    count: laid.panel.copies,
    massG: mass === null ? null : mass * laid.panel.copies,
  }));
}

/** The resin that a panel keeps of the blank it is sawn from. */
function resinRound(laid: LaidPanel, design: Design): PlanMassPart[] {
  const { panel } = laid;
  const cast = castOfPanel(panel, design);
  if (!cast) return [];
  const volume = volumeBetween(contentOfCutOut(laid, design.woods), 0, cast.depth);
  const massG = volume * cast.resin.density * kilogramsPerCubicMetre * gramsPerCubicMillimetre * panel.copies;
  return [{ part: `panel ${panel.name}, resin`, material: cast.resin.name, count: panel.copies, massG }];
}

/** Trimmed to its lengths and to the depth of its edge. */
function bandPart(band: Band, design: Design): PlanMassPart {
  const { name, stock, around } = band;
  const density = woodFigures(stock.wood, design.woods)?.density ?? null;
  const lengths = measureBand(band, design.woods).runs.flatMap(({ pieces }) => pieces.map(({ length }) => length));
  const volume = sum(lengths) * stock.face * Math.min(stock.depth, edgeDepth(around, design) ?? stock.depth);
  const count = 'contours' in around ? bandQuantity(band, design) / (design.work?.copies ?? 1) : around.copies;
  return {
    part: `band ${name}`,
    material: stock.wood === null ? stock.name : `${stock.name} (${stock.wood})`,
    count,
    massG: density === null ? null : volume * density * gramsPerCubicMillimetre * count,
  };
}

/** A chamfer or round-over is not taken off. */
function boardPart({ name, outline, sheet, copies }: Board): PlanMassPart {
  const area = sum(outline.contours.map(contourArea));
  const massG =
    sheet.density === null ? null : area * sheet.thickness * sheet.density * gramsPerCubicMillimetre * copies;
  return { part: `board ${name}`, material: sheet.name, count: copies, massG };
}

/** Resin of 1 g/mL weighs as much a volume as 1000 kg/m³. */
const kilogramsPerCubicMetre = 1000;

/** Layers less the inserts as far as they stand in them; inserts weigh where their density is known. */
function castPart({ name, mould, resin, layers, inserts, copies }: Pour): PlanMassPart {
  const area =
    mould.kind === 'outline'
      ? sum(mould.outline.contours.map(contourArea))
      : mould.kind === 'rectangle'
        ? mould.width * mould.height
        : 0;
  const depth = sum(layers.map((layer) => layer.depth));
  const bodies = inserts.map(({ outline, from, to, density }) => ({
    volume: sum(outline.contours.map(contourArea)) * Math.max(0, Math.min(to, depth) - Math.max(from, 0)),
    density,
  }));
  const volume = area * depth - sum(bodies.map((body) => body.volume));
  const resinMass = volume * resin.density * kilogramsPerCubicMetre * gramsPerCubicMillimetre;
  const insertMasses = bodies.map((body) =>
    body.density === null ? null : body.volume * body.density * gramsPerCubicMillimetre,
  );
  const isKnown = insertMasses.every((mass) => mass !== null);
  const massG = isKnown ? copies * (resinMass + sum(insertMasses)) : null;
  return { part: `cast ${name}`, material: resin.name, count: copies, massG };
}

/** Σ mass × centre of each placed part's outline ÷ Σ mass; null unless every part of the work is placed. */
function centreOf(design: Design, panels: readonly LaidPanel[], parts: readonly PlanMassPart[]): PlanMass['centre'] {
  if (!design.work || design.work.placements.length === 0) return null;
  let [x, y, all] = [0, 0, 0];
  for (const placed of placedParts(design.work, panels)) {
    const centre = centroidOf(placed.rings);
    if (!centre) return null;
    const mass = massOfPlaced(placed, parts, design);
    x += centre.x * mass;
    y += centre.y * mass;
    all += mass;
  }
  return all === 0 ? null : { xMm: planLength(x / all), yMm: planLength(y / all) };
}

/** One copy of the part that stands there, with the bands round it. */
function massOfPlaced({ part }: PlacedPart, parts: readonly PlanMassPart[], { bands }: Design): number {
  const edges = edgeNames(part);
  const round = bands.filter(({ around }) => edges.includes(around.name)).map(({ name }) => `band ${name}`);
  const belongs = ({ part: name }: PlanMassPart): boolean =>
    round.includes(name) || (part.kind === 'panel' ? name.startsWith(`${ownName(part)}, `) : name === ownName(part));
  return sum(parts.filter(belongs).map(({ massG, count }) => (massG ?? 0) / count));
}

/** What the parts of a mass are called after. */
const kindNames = { panel: 'panel', board: 'board', pour: 'cast' } as const;
const ownName = (part: WorkPart): string => `${kindNames[part.kind]} ${partName(part)}`;

/** What a band may name to run round the part: a panel, and the outline that anything has. */
function edgeNames(part: WorkPart): string[] {
  const outline = outlineOf(part);
  return [...(part.kind === 'panel' ? [part.panel.name] : []), ...(outline ? [outline.name] : [])];
}

function notesFor(design: Design, panels: readonly LaidPanel[], parts: readonly PlanMassPart[]): string[] {
  const unknown = parts.filter(({ massG }) => massG === null).map(({ part, material }) => `${part} of ${material}`);
  const notes = ['Wood at 12 % moisture, notches taken off.'];
  if (unknown.length > 0) notes.push(`Not known: ${unknown.join('; ')}. State the density, or weigh a piece.`);
  if (panels.some(({ panel }) => panel.edge === 'sawn'))
    notes.push('The wood of sawn panels is weighed before sawing: an upper limit.');
  if (design.work && design.work.placements.length > 0)
    notes.push('The centre takes every part as evenly heavy over its outline.');
  return notes;
}
