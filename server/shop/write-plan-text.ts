/** The shop plan as plain text, to read at the bench: one table a kind of thing, lengths to 0.1 mm, angles to 0.5°. */
import { sameLength } from '../geometry/tolerance.ts';
import type {
  PlanNotch,
  PlanPanel,
  PlanPiece,
  PlanPieceEnd,
  PlanSetting,
  PlanStock,
  PlanStrip,
  ShopPlan,
} from './shop-plan.ts';
import { textTable, type Column } from './text-table.ts';

/** The whole plan; ends with a line break. */
export function writePlanText(plan: ShopPlan): string {
  const parts = [
    heading(plan),
    ...section('Taken as given', assumptions(plan)),
    ...section('Panels, one copy of each', textTable(panelColumns, plan.panels)),
    ...section('Strips to cut and notch', textTable(stripColumns, plan.strips)),
    ...section('Notches, from end 1 to the middle of each crossing', plan.strips.map(notchLines).join('\n')),
    ...section('Infill pieces', textTable(pieceColumns, plan.pieces)),
    ...section(
      'Notches of lapped infill',
      plan.pieces
        .filter((piece) => piece.notches.length > 0)
        .map(notchLines)
        .join('\n'),
    ),
    ...section('Sticks to cut from', plan.stock.map(stockLines).join('\n')),
    ...section('Settings in the order of the bench', textTable(settingColumns, plan.settings)),
    ...section(
      'Gates',
      plan.settings.flatMap(({ step, gate }) => (gate ? [`after “${step}”: ${gate}`] : [])).join('\n'),
    ),
    ...section('Take care', plan.cautions.map(({ step, text }) => `${step}: ${text}`).join('\n')),
  ];
  return `${parts.join('\n\n')}\n`;
}

function heading(plan: ShopPlan): string {
  const lines = [plan.title ?? 'Shop plan', `from ${plan.source}, text ${plan.revision}`];
  if (plan.incomplete) lines.push('INCOMPLETE: the file has errors, and what they touch is missing here.');
  lines.push('Lengths in mm, tip to tip. Bevels in degrees inside the wood, left and right seen from end 1.');
  lines.push('Not tested in wood: cut a test notch and a test cell first.');
  return lines.join('\n');
}

/** What the figures rest on, and what can be checked with a rule. */
function assumptions({ grids, benches }: ShopPlan): string {
  const gridLines = grids.map(
    ({ name, sideMm, fitMm, tenSidesMm }) =>
      `grid ${name}: side ${millimetres(sideMm)}, fit ${fitMm.toFixed(2)}; check: ten sides along a strip measure ${millimetres(tenSidesMm)}`,
  );
  const benchLines = benches.map(({ name, kerfMm, bevels: angles }) => {
    const kerf = kerfMm === null ? 'kerf not stated' : `kerf ${kerfMm.toFixed(2)}`;
    return `bench ${name}: ${kerf}${angles.length > 0 ? `, bevels ${angles.map(halfDegrees).join(', ')}` : ''}`;
  });
  return [...gridLines, ...benchLines].join('\n');
}

const section = (title: string, body: string): string[] => (body === '' ? [] : [`${title}\n\n${body}`]);

function stockLines({ stock, sticks, sticksUsed, bound, proven, wastePct, kerfMm, problems }: PlanStock): string {
  const proof = proven ? 'proven fewest' : `not proven; no plan takes fewer than ${Math.ceil(bound)}`;
  const cuts = sticks.map(
    (stick) =>
      `    ${stick.count} × ${millimetres(stick.lengthMm)}: ${stick.cuts.map(({ mark, n }) => `${n} × ${mark}`).join(', ')}; left over ${millimetres(stick.offcutMm)}`,
  );
  const head = `${stock}: ${sticksUsed} sticks (${proof}), kerf ${kerfMm.toFixed(2)} between pieces, ${wastePct.toFixed(1)} % waste`;
  return [head, ...cuts, ...problems.map((problem) => `    ${problem}`)].join('\n');
}

const settingColumns: readonly Column<PlanSetting>[] = [
  { title: '', right: true, cell: (setting) => String(setting.order) },
  { title: 'step', cell: (setting) => setting.step },
  { title: 'tool', cell: (setting) => setting.jig ?? setting.tool },
  { title: 'angle', right: true, cell: ({ angle }) => (angle === null ? '' : `${halfDegrees(angle)}°`) },
  { title: 'stop', right: true, cell: ({ stopMm, notching }) => optional(notching?.firstStopMm ?? stopMm) },
  { title: 'pin', right: true, cell: ({ notching }) => optional(notching?.pinPitchMm ?? null) },
  { title: 'notches', right: true, cell: ({ notching }) => (notching ? String(notching.notches) : '') },
  { title: 'height', right: true, cell: ({ notching }) => optional(notching?.bladeHeightMm ?? null) },
  { title: 'caliper', right: true, cell: ({ caliperMm }) => optional(caliperMm) },
  { title: 'flip', cell: ({ flip }) => (flip ? 'flip' : '') },
  { title: 'pieces', right: true, cell: (setting) => String(setting.pieces) },
  { title: 'marks', cell: (setting) => setting.marks.join(' ') },
];

const optional = (length: number | null): string => (length === null ? '' : millimetres(length));

const panelColumns: readonly Column<PlanPanel>[] = [
  { title: 'panel', cell: (panel) => panel.name },
  { title: 'copies', right: true, cell: (panel) => String(panel.copies) },
  { title: 'edge', cell: (panel) => panel.edge },
  { title: 'area cm²', right: true, cell: (panel) => (panel.areaMm2 / 100).toFixed(1) },
  { title: 'edge length', right: true, cell: (panel) => millimetres(panel.perimeterMm) },
  { title: 'nodes', right: true, cell: (panel) => String(panel.nodes) },
  { title: 'strips', right: true, cell: (panel) => String(panel.strips) },
  { title: 'infill', right: true, cell: (panel) => String(panel.infill.make) },
  { title: 'whole', right: true, cell: (panel) => String(panel.infill.whole) },
  { title: 'trimmed', right: true, cell: (panel) => String(panel.infill.trimmed) },
  { title: 'cells filled', cell: (panel) => panel.cells.map((cell) => `${cell.needed} ${cell.shape}`).join(', ') },
];

const stripColumns: readonly Column<PlanStrip>[] = [
  { title: 'mark', cell: (strip) => strip.mark },
  { title: 'stock', cell: (strip) => strip.stock },
  { title: 'section', cell: sectionOf },
  { title: 'length', right: true, cell: (strip) => millimetres(strip.lengthMm) },
  { title: 'notches', right: true, cell: (strip) => String(strip.notches.length) },
  { title: 'hand', cell: (strip) => strip.hand ?? '' },
  { title: 'make', right: true, cell: (strip) => String(strip.make) },
  { title: 'spare', right: true, cell: (strip) => String(strip.spare) },
  { title: 'cut', right: true, cell: (strip) => String(strip.total) },
  { title: 'for', cell: panelList },
];

const pieceColumns: readonly Column<PlanPiece>[] = [
  { title: 'mark', cell: (piece) => piece.mark },
  { title: 'piece', cell: (piece) => piece.from.map((from) => `${from.motif} ${from.piece}`).join(', ') },
  { title: 'stock', cell: (piece) => piece.stock },
  { title: 'section', cell: sectionOf },
  { title: 'length', right: true, cell: (piece) => millimetres(piece.lengthMm) },
  { title: 'edges', cell: (piece) => piece.edgesMm.map(millimetres).join(' / ') },
  { title: 'end 1', cell: (piece) => bevels(piece.ends[0]) },
  { title: 'end 2', cell: (piece) => bevels(piece.ends[1]) },
  { title: 'whole', right: true, cell: (piece) => String(piece.whole) },
  { title: 'trimmed', right: true, cell: (piece) => String(piece.trimmed) },
  { title: 'spare', right: true, cell: (piece) => String(piece.spare) },
  { title: 'cut', right: true, cell: (piece) => String(piece.total) },
  { title: 'for', cell: panelList },
];

function sectionOf(item: { face: number; depth: number }): string {
  return `${millimetres(item.face)} × ${millimetres(item.depth)}`;
}

function bevels(end: PlanPieceEnd): string {
  return end.bevels ? end.bevels.map(halfDegrees).join(' / ') : 'fitted';
}

function panelList(item: { panels: Record<string, number> }): string {
  return Object.entries(item.panels)
    .map(([name, count]) => `${name} ${count}`)
    .join(', ');
}

/** One paragraph a mark: cuts of one setting together, with their places along the strip. */
function notchLines(item: { mark: string; notches: PlanNotch[] }): string {
  const settings = new Map<string, number[]>();
  for (const notch of item.notches) {
    const setting = `from ${notch.from}, ${millimetres(notch.depthMm)} deep, ${notch.widthMm.toFixed(2)} wide, ${halfDegrees(notch.angle)}°`;
    settings.set(setting, [...(settings.get(setting) ?? []), notch.atMm]);
  }
  return [...settings].map(([setting, places]) => `${item.mark}  ${setting}\n    ${placesText(places)}`).join('\n');
}

/** Three places or more at one distance are said as a run, the way a stop or pin is set; others one by one. */
function placesText(places: readonly number[]): string {
  const [first, second] = places;
  const last = places.at(-1);
  if (first === undefined || second === undefined || last === undefined)
    return `at ${places.map(millimetres).join('')}`;
  const step = second - first;
  const even = places.every((place, index) => sameLength(place, first + index * step));
  if (places.length < 3 || !even) return `at ${places.map(millimetres).join('  ')}`;
  return `at ${millimetres(first)}, then every ${millimetres(step)} to ${millimetres(last)}: ${places.length} cuts`;
}

const millimetres = (value: number): string => value.toFixed(1);

function halfDegrees(angle: number): string {
  return String(Math.round(angle * 2) / 2);
}
