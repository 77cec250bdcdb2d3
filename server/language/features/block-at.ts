/** Which block of a text an offset lies in. */
import { type BlockKind } from '../../../grammar/vocabulary/known-words.ts';
import type { BlockDeclaration, Property } from '../../../grammar/tree/syntax-tree.ts';
import type { Analysis } from '../../analyse.ts';

/** The kind of block whose braces are round `offset`; `document` between blocks. */
export function blockKindAt({ tree, text }: Analysis, offset: number): BlockKind {
  const around = tree.declarations.filter(
    (declaration): declaration is BlockDeclaration =>
      'open' in declaration &&
      declaration.open !== null &&
      declaration.open.end <= offset &&
      offset <= (declaration.close?.start ?? text.length),
  );
  const block = around.at(-1);
  const inner = block?.kind === 'panel' ? block.properties.find(isAround)?.kind : undefined;
  if (inner === 'map' || inner === 'frame') return inner;
  return block?.kind ?? 'document'; // an unclosed block seems to reach over later ones

  function isAround({ kind, keyword, range }: Property): boolean {
    const opensBlock = kind === 'map' || kind === 'frame';
    return opensBlock && text.indexOf('{', keyword.end) < offset && offset < range.end;
  }
}
