/** The shop plan as tables for a spreadsheet: one file a kind of thing, the same figures as the JSON. */
import { csvTable } from './csv-table.ts';
import { cellColumns, notchColumns, panelColumns, pieceColumns, stripColumns } from './csv/parts-columns.ts';
import {
  bandColumns,
  bandRows,
  boardColumns,
  frameColumns,
  frameRows,
  pourColumns,
  pourRows,
  sheetColumns,
  sheetRows,
} from './csv/object-columns.ts';
import {
  cautionColumns,
  costColumns,
  cutColumns,
  cutRows,
  kitColumns,
  kitRows,
  labourColumns,
  massColumns,
  materialColumns,
  millColumns,
  settingColumns,
  stepColumns,
  totalColumns,
  totalRows,
} from './csv/work-columns.ts';
import type { ShopPlan } from '../shop-plan.ts';

/** Names of the files that `writePlanCsv` makes. */
export const planCsvFiles = [
  'panels.csv',
  'cells.csv',
  'strips.csv',
  'pieces.csv',
  'notches.csv',
  'settings.csv',
  'stock.csv',
  'mill.csv',
  'frames.csv',
  'bands.csv',
  'pours.csv',
  'sheets.csv',
  'boards.csv',
  'steps.csv',
  'labour.csv',
  'materials.csv',
  'cost.csv',
  'totals.csv',
  'mass.csv',
  'kit.csv',
  'cautions.csv',
] as const;

/** The text of every file; a table without rows has its heads. */
export function writePlanCsv(plan: ShopPlan): Record<(typeof planCsvFiles)[number], string> {
  const notches = [...plan.strips, ...plan.pieces].flatMap((item) =>
    item.notches.map((notch) => ({ mark: item.mark, ...notch })),
  );
  const cells = plan.panels.flatMap((panel) => panel.cells.map((cell) => ({ panel: panel.name, ...cell })));
  return {
    'panels.csv': csvTable(panelColumns, plan.panels),
    'cells.csv': csvTable(cellColumns, cells),
    'strips.csv': csvTable(stripColumns, plan.strips),
    'pieces.csv': csvTable(pieceColumns, plan.pieces),
    'notches.csv': csvTable(notchColumns, notches),
    'settings.csv': csvTable(settingColumns, plan.settings),
    'stock.csv': csvTable(cutColumns, cutRows(plan)),
    'mill.csv': csvTable(millColumns, plan.mill),
    'frames.csv': csvTable(frameColumns, frameRows(plan)),
    'bands.csv': csvTable(bandColumns, bandRows(plan)),
    'pours.csv': csvTable(pourColumns, pourRows(plan)),
    'sheets.csv': csvTable(sheetColumns, sheetRows(plan)),
    'boards.csv': csvTable(boardColumns, plan.boards),
    'steps.csv': csvTable(stepColumns, plan.steps),
    'labour.csv': csvTable(labourColumns, plan.labour.lines),
    'materials.csv': csvTable(materialColumns(plan.cost.currency), plan.cost.materials),
    'cost.csv': csvTable(costColumns(plan.cost.currency), plan.cost.lines),
    'totals.csv': csvTable(totalColumns, totalRows(plan)),
    'mass.csv': csvTable(massColumns, plan.mass.parts),
    'kit.csv': csvTable(kitColumns, kitRows(plan)),
    'cautions.csv': csvTable(cautionColumns, plan.cautions),
  };
}
