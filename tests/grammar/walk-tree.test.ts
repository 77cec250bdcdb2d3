/** The one walk finds every node, wherever it stands, and a node's kind tells its type. */
import { expect, expectTypeOf, test } from 'vitest';
import { parseDocument } from '../../grammar/reading/parse-document.ts';
import type { NodeOf, TreeNode } from '../../grammar/tree/syntax-tree.ts';
import { nodesIn, nodesOf } from '../../grammar/tree/walk-tree.ts';
import { referenceText } from './reference-text.ts';

type IsUnion<Type, Whole = Type> = Type extends unknown ? ([Whole] extends [Type] ? false : true) : never;

/** The kinds that more than one type of node has. */
type DoubledKind = {
  [Kind in TreeNode['kind']]: true extends IsUnion<NodeOf<Kind>> ? Kind : never;
}[TreeNode['kind']];

test('no kind is of two types of node', () => {
  expectTypeOf<DoubledKind>().toBeNever();
});

const text = `
let a = -(2 + b) * max(c, 3deg)
motif m for square { node hub at mirrored half over 0.3 along edge 2 to corner 1 }
panel p { frame { end_gap e }  fill within f of rim square with m of s turned g { tip h at hub } }
outline o { start 0, 0  arc to 1, i radius j left  path from "x.svg" id "y" }
`;
const { tree } = parseDocument(text);
const wordsOf = (nodes: readonly TreeNode[]): string[] => nodes.map(({ range }) => text.slice(range.start, range.end));

test('names of numbers are found in every place, in order of writing', () => {
  const names = nodesOf(tree, 'name').map(({ name }) => name.text);
  expect(names).toEqual(['b', 'c', 'e', 'f', 'g', 'h', 'i', 'j']);
});

test('nodes are found by kind, those inside others too', () => {
  expect(wordsOf(nodesOf(tree, 'negation', 'operation'))).toEqual(['-(2 + b) * max(c, 3deg)', '-(2 + b)', '(2 + b)']);
  expect(wordsOf(nodesOf(tree, 'edge line', 'along', 'corner'))).toEqual(['0.3 along edge 2', 'corner 1']);
  expect(wordsOf(nodesOf(tree, 'arc by radius', 'drawing', 'by distance'))).toEqual([
    'within f of rim',
    'radius j left',
    'from "x.svg" id "y"',
  ]);
});

test('every node of the reference page has its place inside the text', () => {
  const reference = parseDocument(referenceText).tree;
  const nodes = nodesIn(reference);
  expect(nodes.length).toBeGreaterThan(500);
  expect(
    nodes.filter(({ range }) => range.start < 0 || range.end > referenceText.length || range.end <= range.start),
  ).toEqual([]);
});
