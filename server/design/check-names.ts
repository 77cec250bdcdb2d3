/** Names given twice, used without being given, or used for the wrong thing. */
import { nearestWord } from '../../grammar/nearest-word.ts';
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { Problem } from '../../grammar/problem.ts';
import type { SyntaxTree } from '../../grammar/syntax-tree.ts';
import type { Definition, NameIndex, NameKind, Reference } from './name-index.ts';

const kindNames: Readonly<Record<NameKind, string>> = {
  let: 'number',
  strip: 'strip',
  bench: 'bench',
  grid: 'grid',
  motif: 'motif',
  outline: 'outline',
  panel: 'panel',
  node: 'node',
  piece: 'piece',
  divider: 'divider',
};

/** "a strip", "an outline". */
export const withArticle = (noun: string): string => `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;

/** How a name of a kind is given, for advice. */
const giving: Readonly<Record<NameKind, (name: string) => string>> = {
  let: (name) => `let ${name} = …`,
  strip: (name) => `strip ${name} { … }`,
  bench: (name) => `bench ${name} { … }`,
  grid: (name) => `grid ${name} { … }`,
  motif: (name) => `motif ${name} for … { … }`,
  outline: (name) => `outline ${name} { … }`,
  panel: (name) => `panel ${name} { … }`,
  node: (name) => `node ${name} at …`,
  piece: (name) => `piece ${name} from … to …`,
  divider: (name) => `divider ${name} from … to …`,
};

/** All problems of names. Names of phrases that could not be read count as given. */
export function checkNames(tree: SyntaxTree, index: NameIndex): Problem[] {
  const unread = new Set(tree.unreadNames.map(({ text }) => text));
  const unresolved = index.references.filter(
    (reference) =>
      !reference.definition &&
      !unread.has(reference.name) &&
      !tree.unnamed.includes(reference.kind) &&
      scopeIsKnown(reference, index),
  );
  return [...repeatedNames(index.definitions), ...unresolved.map((reference) => unknownName(reference, index))];
}

/** A node of a motif that does not exist is no further error. */
const scopeIsKnown = ({ scope }: Reference, { definitions }: NameIndex): boolean =>
  scope === null || definitions.some(({ kind, name }) => kind === 'motif' && name === scope);

function repeatedNames(definitions: readonly Definition[]): Problem[] {
  const seen = new Map<string, Definition>();
  const problems: Problem[] = [];
  for (const definition of definitions) {
    const { kind, name, scope, nameRange } = definition;
    if (kind === 'let' && name === 'pi') {
      problems.push(problemAt('repeatedName', nameRange, '`pi` is a number already, 3.14159… Choose another name.'));
    }
    if (kind === 'piece' || kind === 'divider') continue;
    const key = `${kind} ${scope ?? ''} ${name}`;
    const first = seen.get(key);
    if (first) {
      const message = `There is already ${withArticle(kindNames[kind])} \`${name}\`. Give this one another name.`;
      problems.push(
        problemAt('repeatedName', nameRange, message, [
          { range: first.nameRange, message: `\`${name}\` is given here first.` },
        ]),
      );
    } else seen.set(key, definition);
  }
  return problems;
}

function unknownName(reference: Reference, { definitions }: NameIndex): Problem {
  const { name, kind, scope, range } = reference;
  const other = scope === null ? definitions.find((found) => found.name === name && found.scope === null) : undefined;
  if (other) {
    const message = `\`${name}\` is ${withArticle(kindNames[other.kind])}, and ${withArticle(kindNames[kind])} is needed here. Use the name of ${withArticle(kindNames[kind])}.`;
    return problemAt('wrongKindOfName', range, message, [
      { range: other.nameRange, message: `\`${name}\` is given here.` },
    ]);
  }
  const candidates = definitions
    .filter((found) => (found.kind === kind || (kind === 'piece' && found.kind === 'divider')) && found.scope === scope)
    .map((found) => found.name);
  const near = nearestWord(name, candidates);
  const where = scope === null ? '' : ` in the motif \`${scope}\``;
  const advice = near ? `Did you mean \`${near}\`?` : `Add \`${giving[kind](name)}\` or use another name.`;
  return problemAt('unknownName', range, `There is no ${kindNames[kind]} \`${name}\`${where}. ${advice}`);
}
