/** A name for a number or for a point, said as the text says it. */
import type { SourceRange } from '../../../grammar/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import type { Definition } from '../../design/name-index.ts';
import { heading, type HoverLines } from './hover-text.ts';

/** The words behind a `let` or a `node`. */
export function expressionHover(analysis: Analysis, definition: Definition): HoverLines | null {
  const said = saidRange(analysis, definition);
  return said && [heading(definition.kind, definition.name), `\`${analysis.text.slice(said.start, said.end)}\``];
}

function saidRange({ tree }: Analysis, { nameRange }: Definition): SourceRange | null {
  for (const declaration of tree.declarations) {
    if (declaration.kind === 'let' && declaration.name.range.start === nameRange.start) return declaration.value.range;
    if (declaration.kind !== 'motif') continue;
    const node = declaration.properties.find(
      (property) => property.kind === 'node' && property.name.range.start === nameRange.start,
    );
    if (node?.kind === 'node') return node.place.range;
  }
  return null;
}
