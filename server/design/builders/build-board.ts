/** Boards of the design. */
import { measure, words } from '../../../grammar/words.ts';
import type { BoardDeclaration } from '../../../grammar/tree/object-syntax.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { DesignContext } from '../design-context.ts';
import type { Outline } from '../design-model.ts';
import type { SheetStock } from '../material-model.ts';
import { propertyOf, reportMissing, reportRepeated } from './pick-properties.ts';
import { optional, readCount, readLength, readPoint } from '../values/read-values.ts';
import type { Board } from '../work-model.ts';

export interface BoardParts {
  readonly outlines: ReadonlyMap<string, Outline>;
  readonly sheets: ReadonlyMap<string, SheetStock>;
}

const mostBoards = 100_000;

/** The board a declaration describes; null where its outline or sheet is missing or broken. */
export function buildBoard(board: BoardDeclaration, parts: BoardParts, context: DesignContext): Board | null {
  reportRepeated(board, [], context);
  const shape = propertyOf(board, 'board shape');
  const of = propertyOf(board, 'of sheet');
  if (!shape) reportMissing(board, 'shape', 'shape oval', context);
  if (!of) reportMissing(board, 'sheet', 'of birch_ply', context);
  const outline = shape && parts.outlines.get(shape.name.text);
  const sheet = of && parts.sheets.get(of.name.text);
  const edge = buildEdge(board, sheet, context);
  const pivot = propertyOf(board, 'pivot');
  const at = pivot ? readPoint(pivot.at, context) : null;
  const copies = optional(propertyOf(board, 'copies')?.value, (value) =>
    readCount(value, 'number of copies', 1, mostBoards, context),
  );
  if (!outline || !sheet) return null;
  return {
    name: board.name.text,
    range: board.range,
    nameRange: board.name.range,
    outline,
    sheet,
    edge,
    pivot: at,
    copies: copies ?? 1,
  };
}

/** A chamfer may be flatter than 45°, so wider than the sheet is thick; a rounding cannot. */
function buildEdge(board: BoardDeclaration, sheet: SheetStock | undefined, context: DesignContext): Board['edge'] {
  const property = propertyOf(board, 'board edge');
  const size = property ? readLength(property.value, 'size of the edge', 'positive', context) : null;
  if (!property || size === null) return { kind: 'square' };
  if (property.choice === 'chamfer') return { kind: 'chamfer', size };
  if (!sheet || size <= sheet.thickness) return { kind: 'round', size };
  const message = words`A rounding of ${measure.given(size)} is more than the sheet is thick, ${measure.given(sheet.thickness)}. Round it less.`;
  context.report(problemAt('outOfRange', property.value.range, message));
  return { kind: 'square' };
}
