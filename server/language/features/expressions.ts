/** Finds numbers in the expressions of a tree, wherever they stand in it. */
import type {
  Declaration,
  Expression,
  NumberLiteral,
  Property,
  SyntaxTree,
} from '../../../grammar/tree/syntax-tree.ts';
import { expressionsIn } from '../../design/values/tree-expressions.ts';

/** The number literal whose words hold `offset`, their end included. */
export function numberAt(tree: SyntaxTree, offset: number): NumberLiteral | null {
  const numbers = tree.declarations.flatMap(expressionsOf).flatMap(numbersIn);
  return numbers.find(({ range }) => range.start <= offset && offset <= range.end) ?? null;
}

function expressionsOf(declaration: Declaration): readonly Expression[] {
  if (declaration.kind === 'let') return [declaration.value];
  if (!('properties' in declaration)) return [];
  return (declaration.properties as readonly Property[]).flatMap(expressionsIn);
}

function numbersIn(expression: Expression): NumberLiteral[] {
  switch (expression.kind) {
    case 'number':
      return [expression];
    case 'name':
      return [];
    case 'negation':
      return numbersIn(expression.operand);
    case 'operation':
      return [...numbersIn(expression.left), ...numbersIn(expression.right)];
    case 'call':
      return expression.values.flatMap(numbersIn);
  }
}
