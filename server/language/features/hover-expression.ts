/** A name for a number or for a point, said as the text says it. */
import type { SourceRange } from '../../../grammar/source-range.ts';
import type { Analysis } from '../../analyse.ts';
import { heading, type HoverLines } from './hover-text.ts';
import type { NameMention } from './name-mentions.ts';

/** The words behind a `let` or a `node`; null for one that is given nowhere. */
export function expressionHover({ tree, text }: Analysis, { kind, text: name, motif }: NameMention): HoverLines | null {
  const said = tree.declarations.flatMap((declaration): SourceRange[] => {
    if (kind === 'let' && declaration.kind === 'let' && declaration.name.text === name)
      return [declaration.value.range];
    if (kind !== 'node' || declaration.kind !== 'motif' || declaration.name.text !== motif) return [];
    return declaration.properties.flatMap((property) =>
      property.kind === 'node' && property.name.text === name ? [property.place.range] : [],
    );
  });
  const [range] = said;
  return range ? [heading(kind, name), `\`${text.slice(range.start, range.end)}\``] : null;
}
