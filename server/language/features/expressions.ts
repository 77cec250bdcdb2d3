/** Finds numbers in a tree, wherever they stand in it. */
import type { NumberLiteral } from '../../../grammar/tree/syntax-nodes.ts';
import type { SyntaxTree } from '../../../grammar/tree/syntax-tree.ts';
import { nodesOf } from '../../../grammar/tree/walk-tree.ts';

/** The number literal whose words hold `offset`, their end included. */
export const numberAt = (tree: SyntaxTree, offset: number): NumberLiteral | null =>
  nodesOf(tree, 'number').find(({ range }) => range.start <= offset && offset <= range.end) ?? null;
