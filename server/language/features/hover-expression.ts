/** A name for a number or for a point, said as the text says it. */
import { rangeInFile, type SourceRange } from '../../../grammar/tree/source-range.ts';
import type { SyntaxTree } from '../../../grammar/tree/syntax-tree.ts';
import { nodesOf } from '../../../grammar/tree/walk-tree.ts';
import type { Analysis } from '../../analyse.ts';
import type { Definition } from '../../design/names/name-index.ts';
import { fileAt } from '../../design/files/source-file.ts';
import { heading, type HoverLines } from './hover-text.ts';

/** The words behind a `let` or a `node`. */
export function expressionHover(analysis: Analysis, definition: Definition): HoverLines | null {
  const file = fileAt(analysis.files, definition.nameRange.start);
  const range = file && saidRange(file.parsed.tree, definition);
  if (!range) return null;
  const said = rangeInFile(range);
  return [heading(definition.kind, definition.name), `\`${file.text.slice(said.start, said.end)}\``];
}

function saidRange(tree: SyntaxTree, { nameRange }: Definition): SourceRange | null {
  const given = nodesOf(tree, 'let', 'node').find(({ name }) => name.range.start === nameRange.start);
  if (!given) return null;
  return given.kind === 'let' ? given.value.range : given.place.range;
}
