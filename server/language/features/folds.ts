/** Blocks that can be folded away. */
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Analysis } from '../../analyse.ts';

/** From the keyword to the closing brace of every block that has one. */
export function foldsOf({ tree }: Analysis): SourceRange[] {
  return tree.declarations.flatMap((declaration) => [
    ...('close' in declaration && declaration.close !== null
      ? [{ start: declaration.keyword.start, end: declaration.close.end }]
      : []),
    ...(declaration.kind === 'panel' ? declaration.properties : [])
      .filter((property) => property.kind === 'map')
      .map(({ range }) => range),
  ]);
}
