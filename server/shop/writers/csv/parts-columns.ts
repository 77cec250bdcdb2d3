/** Columns for panels, cells, strips, pieces and notches. */
import type { PlanNotch, PlanPanel, PlanPiece, PlanPieceEnd, PlanStrip } from '../../shop-plan.ts';
import type { Column } from '../text-table.ts';
import { figure, optionalFigure, text } from './csv-columns.ts';

type Quantities = Pick<PlanStrip, 'make' | 'spare' | 'total' | 'panels'>;

export const panelColumns: readonly Column<PlanPanel>[] = [
  text('panel', (panel) => panel.name),
  figure('copies', (panel) => panel.copies),
  text('edge', (panel) => panel.edge),
  figure('area_mm2', (panel) => panel.areaMm2),
  figure('perimeter_mm', (panel) => panel.perimeterMm),
  figure('nodes', (panel) => panel.nodes),
  figure('strips', (panel) => panel.strips),
  figure('infill_make', (panel) => panel.infill.make),
  figure('infill_whole', (panel) => panel.infill.whole),
  figure('infill_trimmed', (panel) => panel.infill.trimmed),
];

export const cellColumns: readonly Column<PlanPanel['cells'][number] & { panel: string }>[] = [
  text('panel', (cell) => cell.panel),
  text('shape', (cell) => cell.shape),
  figure('met', (cell) => cell.met),
  figure('needed', (cell) => cell.needed),
];

const quantityColumns: readonly Column<Quantities>[] = [
  figure('make', (item) => item.make),
  figure('spare', (item) => item.spare),
  figure('total', (item) => item.total),
  text('panels', (item) => perPanel(item.panels)),
];

/** Empty where a small change of the lattice makes another piece. */
const changeColumns: readonly Column<Pick<PlanStrip, 'perTenth'>>[] = [
  optionalFigure('mm_per_0.1_mm_of_pitch', ({ perTenth }) => perTenth?.pitchMm ?? null),
  optionalFigure('mm_per_0.1_mm_of_face', ({ perTenth }) => perTenth?.faceMm ?? null),
];

export const stripColumns: readonly Column<PlanStrip>[] = [
  text('mark', (strip) => strip.mark),
  text('grid', (strip) => strip.grid),
  figure('family', (strip) => strip.family),
  text('stock', (strip) => strip.stock),
  figure('face_mm', (strip) => strip.face),
  figure('depth_mm', (strip) => strip.depth),
  figure('length_mm', (strip) => strip.lengthMm),
  text('hand', (strip) => strip.hand ?? ''),
  figure('notches', (strip) => strip.notches.length),
  ...quantityColumns,
  ...changeColumns,
];

export const pieceColumns: readonly Column<PlanPiece>[] = [
  text('mark', (piece) => piece.mark),
  text('from', (piece) => piece.from.map((from) => `${from.motif} ${from.piece}`).join('; ')),
  text('stock', (piece) => piece.stock),
  figure('face_mm', (piece) => piece.face),
  figure('depth_mm', (piece) => piece.depth),
  figure('length_mm', (piece) => piece.lengthMm),
  figure('left_edge_mm', (piece) => piece.edgesMm[0]),
  figure('right_edge_mm', (piece) => piece.edgesMm[1]),
  ...bevelColumns('end_1', (piece) => piece.ends[0]),
  ...bevelColumns('end_2', (piece) => piece.ends[1]),
  figure('notches', (piece) => piece.notches.length),
  figure('whole', (piece) => piece.whole),
  figure('trimmed', (piece) => piece.trimmed),
  ...quantityColumns,
  ...changeColumns,
];

export const notchColumns: readonly Column<PlanNotch & { mark: string }>[] = [
  text('mark', (notch) => notch.mark),
  figure('at_mm', (notch) => notch.atMm),
  figure('width_mm', (notch) => notch.widthMm),
  figure('run_mm', (notch) => notch.runMm),
  figure('angle', (notch) => notch.angle),
  figure('depth_mm', (notch) => notch.depthMm),
  text('from', (notch) => notch.from),
];

/** Left and right bevel of one end; both empty where a fitted piece's outline rules. */
function bevelColumns(title: string, endOf: (piece: PlanPiece) => PlanPieceEnd): Column<PlanPiece>[] {
  return [
    text(`${title}_left`, (piece) => String(endOf(piece).bevels?.[0] ?? '')),
    text(`${title}_right`, (piece) => String(endOf(piece).bevels?.[1] ?? '')),
  ];
}

function perPanel(panels: Record<string, number>): string {
  return Object.entries(panels)
    .map(([name, count]) => `${name} ${count}`)
    .join('; ');
}
