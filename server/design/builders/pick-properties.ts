/** Picking the properties of a declaration: one of each kind, and those that must be there. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { Name } from '../../../grammar/tree/syntax-nodes.ts';
import type { DesignContext } from '../design-context.ts';

interface PropertyLike {
  readonly kind: string;
  readonly keyword: SourceRange;
}

interface BlockLike<Property extends PropertyLike> {
  readonly kind: string;
  readonly name: Name;
  readonly properties: readonly Property[];
  readonly incomplete: boolean;
}

/** Reports each property of the block that stands twice, but for those of the kinds in `many`. */
export function reportRepeated<Property extends PropertyLike>(
  block: BlockLike<Property>,
  many: readonly Property['kind'][],
  context: DesignContext,
): void {
  const seen = new Map<string, Property>();
  for (const property of block.properties) {
    if (many.includes(property.kind)) continue;
    const first = seen.get(property.kind);
    if (first) {
      const message = `This ${block.kind} already has this property. Keep one of the two.`;
      const related = [{ range: first.keyword, message: 'It stands here first.' }];
      context.report(problemAt('repeatedProperty', property.keyword, message, related));
    } else seen.set(property.kind, property);
  }
}

/** The first property of a kind, undefined where there is none. */
export function propertyOf<Property extends PropertyLike, Kind extends Property['kind']>(
  block: BlockLike<Property>,
  kind: Kind,
): Extract<Property, { readonly kind: Kind }> | undefined {
  return block.properties.find(
    (property): property is Extract<Property, { readonly kind: Kind }> => property.kind === kind,
  );
}

/** Reports that the block lacks something it must have; silent where part of it could not be read. */
export function reportMissing<Property extends PropertyLike>(
  block: BlockLike<Property>,
  what: string,
  example: string,
  context: DesignContext,
): void {
  if (block.incomplete) return;
  const message = `The ${block.kind} \`${block.name.text}\` has no ${what}. Add it like \`${example}\`.`;
  context.report(problemAt('missingProperty', block.name.range, message));
}
