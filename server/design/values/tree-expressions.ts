/** The expressions written in a phrase. */
import type { Expression, Property } from '../../../grammar/tree/syntax-tree.ts';
import { findNodes } from '../names/find-nodes.ts';

/** Every expression of a property, in order of writing; parts of an expression are not listed apart. */
export const expressionsIn = (property: Property): readonly Expression[] =>
  findNodes(property, isExpression).sort((first, second) => first.range.start - second.range.start);

/** Each kind of expression with the part that tells it from other nodes of that kind, such as a corner by its number. */
const tellingParts: Readonly<Record<Expression['kind'], string>> = {
  number: 'amount',
  name: 'name',
  negation: 'operand',
  operation: 'operator',
  call: 'values',
};

function isExpression(node: object): node is Expression {
  if (!('kind' in node) || typeof node.kind !== 'string' || !Object.hasOwn(tellingParts, node.kind)) return false;
  return tellingParts[node.kind as Expression['kind']] in node;
}
