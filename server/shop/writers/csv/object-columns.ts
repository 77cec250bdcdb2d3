/** Columns for frames, bands, castings, sheets and boards. */
import type { PlanBand, PlanBoard, PlanPour, PlanPourLayer } from '../../sections/object-sections.ts';
import type { ShopPlan } from '../../shop-plan.ts';
import type { Column } from '../text-table.ts';
import type { PlanFrame, PlanSheet } from '../../sections/work-sections.ts';
import { figure, optionalFigure, text } from './csv-columns.ts';

/** A member of a frame, or (without an inner edge) what fills its groove. */
export interface FrameRow {
  readonly frame: PlanFrame;
  readonly mark: string;
  readonly lengthMm: number;
  readonly innerMm: number | null;
  readonly widthMm: number;
  readonly ends: readonly [number, number];
  readonly make: number;
}

export const frameRows = ({ frames }: ShopPlan): FrameRow[] =>
  frames.flatMap((frame) => [
    ...frame.members.map((member): FrameRow => ({ frame, ...member })),
    ...frame.groovePieces.map((piece): FrameRow => ({ frame, innerMm: null, ends: [90, 90], ...piece })),
  ]);

export const frameColumns: readonly Column<FrameRow>[] = [
  text('panel', ({ frame }) => frame.panel),
  text('stock', ({ frame }) => frame.stock),
  text('mark', ({ mark }) => mark),
  text('what', ({ frame, innerMm }) => (innerMm === null ? (frame.bearing ?? '') : 'member')),
  figure('length_mm', ({ lengthMm }) => lengthMm),
  optionalFigure('inner_mm', ({ innerMm }) => innerMm),
  figure('width_mm', ({ widthMm }) => widthMm),
  figure('end_1', ({ ends }) => ends[0]),
  figure('end_2', ({ ends }) => ends[1]),
  figure('make', ({ make }) => make),
  text('corners', ({ frame }) => frame.corners),
  text('joint', ({ frame }) => frame.joint),
  figure('joint_depth_mm', ({ frame }) => frame.jointDepthMm),
  figure('joint_width_mm', ({ frame }) => frame.jointWidthMm),
];

/** One lamination of one run. */
export interface BandRow {
  readonly band: PlanBand;
  readonly lamination: number;
  readonly mark: string;
  readonly lengthMm: number;
  readonly cutMm: number;
}

export const bandRows = ({ bands }: ShopPlan): BandRow[] =>
  bands.flatMap((band) =>
    band.laminations.flatMap(({ pieces }, index) =>
      pieces.map((piece): BandRow => ({ band, lamination: index + 1, ...piece })),
    ),
  );

export const bandColumns: readonly Column<BandRow>[] = [
  text('band', ({ band }) => band.name),
  text('around', ({ band }) => band.around),
  text('stock', ({ band }) => band.stock),
  text('mark', ({ mark }) => mark),
  figure('lamination', ({ lamination }) => lamination),
  figure('length_mm', ({ lengthMm }) => lengthMm),
  figure('cut_mm', ({ cutMm }) => cutMm),
  figure('make', ({ band }) => band.quantity),
  optionalFigure('smallest_radius_mm', ({ band }) => band.smallestRadiusMm),
  optionalFigure('limit_mm', ({ band }) => band.limitMm),
  text('grade', ({ band }) => band.grade),
];

/** A board's place on a sheet. */
export interface SheetRow {
  readonly sheet: PlanSheet;
  readonly place: PlanSheet['places'][number];
}

export const sheetRows = ({ sheets }: ShopPlan): SheetRow[] =>
  sheets.flatMap((sheet) => sheet.places.map((place): SheetRow => ({ sheet, place })));

export const sheetColumns: readonly Column<SheetRow>[] = [
  text('sheet', ({ sheet }) => sheet.sheet),
  text('layout', ({ sheet }) => sheet.layout),
  figure('sheets', ({ sheet }) => sheet.count),
  figure('sheet_width_mm', ({ sheet }) => sheet.widthMm),
  figure('sheet_height_mm', ({ sheet }) => sheet.heightMm),
  text('board', ({ place }) => place.board),
  text('outline', ({ place }) => place.outline),
  figure('right_mm', ({ place }) => place.move.dx),
  figure('up_mm', ({ place }) => place.move.dy),
  figure('turn_degrees', ({ place }) => place.move.turn),
  figure('used_percent', ({ sheet }) => sheet.usedPct),
  optionalFigure('cost_of_these_sheets', ({ sheet }) => sheet.cost),
  text('currency', ({ sheet }) => sheet.currency ?? ''),
];

/** One layer, with the casting it belongs to. */
export interface PourRow {
  readonly pour: PlanPour;
  readonly layer: number;
  readonly figures: PlanPourLayer;
}

export const pourRows = ({ pours }: ShopPlan): PourRow[] =>
  pours.flatMap((pour) => pour.layers.map((figures, index): PourRow => ({ pour, layer: index + 1, figures })));

export const pourColumns: readonly Column<PourRow>[] = [
  text('casting', ({ pour }) => pour.name),
  figure('castings', ({ pour }) => pour.castings),
  figure('layer', ({ layer }) => layer),
  text('resin', ({ figures }) => figures.resin),
  text('colour', ({ figures }) => figures.colour ?? ''),
  figure('poured_mm', ({ figures }) => figures.pouredMm),
  figure('volume_ml', ({ figures }) => figures.volumeMl),
  figure('mass_g', ({ figures }) => figures.massG),
  optionalFigure('part_a_ml', ({ figures }) => figures.partA_mL),
  optionalFigure('part_b_ml', ({ figures }) => figures.partB_mL),
  optionalFigure('part_a_g', ({ figures }) => figures.partA_g),
  optionalFigure('part_b_g', ({ figures }) => figures.partB_g),
  figure('mixes', ({ figures }) => figures.mixes),
  optionalFigure('recoat_from_h', ({ figures }) => figures.recoatFromH),
  optionalFigure('recoat_to_h', ({ figures }) => figures.recoatToH),
];

export const boardColumns: readonly Column<PlanBoard>[] = [
  text('board', ({ name }) => name),
  text('sheet', ({ sheet }) => sheet),
  figure('thickness_mm', ({ thicknessMm }) => thicknessMm),
  figure('make', ({ quantity }) => quantity),
  figure('width_mm', ({ widthMm }) => widthMm),
  figure('height_mm', ({ heightMm }) => heightMm),
  figure('saw_from_width_mm', ({ blankMm }) => blankMm[0]),
  figure('saw_from_height_mm', ({ blankMm }) => blankMm[1]),
  figure('face_area_mm2', ({ areaMm2 }) => areaMm2),
  figure('edge_area_mm2', ({ edgeAreaMm2 }) => edgeAreaMm2),
  optionalFigure('mass_g', ({ massG }) => massG),
];
