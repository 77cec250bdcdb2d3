/** The one walk through the tree. */
import type { NodeOf, SyntaxTree, TreeNode } from './syntax-tree.ts';

/** Every node of `root` that has a kind, itself included, in no certain order; on a stack of its own, for an expression may be deep. */
export function nodesIn(root: SyntaxTree | TreeNode): TreeNode[] {
  const nodes: TreeNode[] = [];
  const waiting: unknown[] = [root];
  while (waiting.length > 0) {
    const value = waiting.pop();
    if (typeof value !== 'object' || value === null) continue;
    if ('kind' in value) nodes.push(value as TreeNode);
    for (const part of Object.values(value) as unknown[]) waiting.push(part);
  }
  return nodes;
}

/** Every node of `root` of one of `kinds`, in order of writing. */
export function nodesOf<Kind extends TreeNode['kind']>(
  root: SyntaxTree | TreeNode,
  ...kinds: readonly Kind[]
): NodeOf<Kind>[] {
  const wanted: ReadonlySet<string> = new Set(kinds);
  return nodesIn(root)
    .filter((node): node is NodeOf<Kind> => wanted.has(node.kind))
    .sort((first, second) => first.range.start - second.range.start);
}
