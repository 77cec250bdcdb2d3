/** Which block of a text an offset lies in. */
import type { MapProperty } from '../../../grammar/fill-syntax.ts';
import type { BlockDeclaration } from '../../../grammar/syntax-tree.ts';
import type { BlockKind } from '../../../grammar/vocabulary.ts';
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
  const isInMap =
    block?.kind === 'panel' && block.properties.some((each) => each.kind === 'map' && isBehindBrace(each));
  return isInMap ? 'map' : (block?.kind ?? 'document'); // an unclosed block seems to reach over later ones

  function isBehindBrace({ keyword, range }: MapProperty): boolean {
    return text.indexOf('{', keyword.end) < offset && offset < range.end;
  }
}
