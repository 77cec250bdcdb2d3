/** Finds numbers and names in the expressions of a tree, wherever they stand in it. */
import type { Name, NameUse, NumberLiteral, SyntaxTree } from '../../../grammar/syntax-tree.ts';

/** Names used in arithmetic, in the order of the tree. */
export function namesInExpressions(tree: SyntaxTree): Name[] {
  return nodesOf(tree)
    .filter((node): node is object & NameUse => 'kind' in node && node.kind === 'name')
    .map(({ name }) => name);
}

/** The number literal whose words hold `offset`. */
export function numberAt(tree: SyntaxTree, offset: number): NumberLiteral | null {
  const found = nodesOf(tree).find(
    (node): node is object & NumberLiteral =>
      isNumberLiteral(node) && node.range.start <= offset && offset <= node.range.end,
  );
  return found ?? null;
}

/** The plain word `number` is also a property of some nodes; only a literal has it as its kind. */
const isNumberLiteral = (node: object): node is NumberLiteral => 'amount' in node && 'unit' in node;

/** Every object of the tree, parents first. */
function nodesOf(value: object): object[] {
  const children = Object.values(value).filter((child): child is object => typeof child === 'object' && child !== null);
  return [value, ...children.flatMap(nodesOf)];
}
