/** Names given twice, used without being given, or used for the wrong thing. */
import { nearestWord } from '../../grammar/nearest-word.ts';
import { problemAt } from '../../grammar/problem-catalogue.ts';
import type { Problem } from '../../grammar/problem.ts';
import type { SourceRange } from '../../grammar/source-range.ts';
import type { SyntaxTree } from '../../grammar/syntax-tree.ts';
import type { Given } from './given.ts';
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

/** All problems of names. Names of phrases, or of used files, that could not be read count as given. */
export function checkNames(tree: SyntaxTree, index: NameIndex, given: Given): Problem[] {
  const unread = new Set([...tree.unreadNames, ...given.unreadNames].map(({ text }) => text));
  const unnamed = [...tree.unnamed, ...given.unnamed];
  const unresolved = index.references.filter(
    (reference) =>
      !reference.definition &&
      !unread.has(reference.name) &&
      !unnamed.includes(reference.kind) &&
      !(given.incomplete && reference.scope === null) &&
      scopeIsKnown(reference, index),
  );
  return [...repeatedNames(index), ...unresolved.map((reference) => unknownName(reference, index))];
}

/** A node of a motif that does not exist is no further error. */
const scopeIsKnown = ({ scope }: Reference, { definitions, used }: NameIndex): boolean =>
  scope === null || [...definitions, ...used].some(({ kind, name }) => kind === 'motif' && name === scope);

const isOfWholeFile = ({ scope }: Definition): boolean => scope === null;

const keyOf = ({ kind, scope, name }: Definition): string => `${kind} ${scope ?? ''} ${name}`;

/** A name that two used files give, as a problem at the `use` of the second; null where there is none. */
export function clashBetween(
  first: readonly Definition[],
  second: readonly Definition[],
  range: SourceRange,
): Problem | null {
  const known = new Map(first.filter(isOfWholeFile).map((definition) => [keyOf(definition), definition]));
  for (const definition of second) {
    const before = known.get(keyOf(definition));
    if (!before || before === definition) continue;
    const { kind, name, nameRange } = definition;
    const message = `This file gives ${withArticle(kindNames[kind])} \`${name}\`, and a file used before it does too. Rename one of the two.`;
    return problemAt('repeatedName', range, message, [
      { range: before.nameRange, message: `\`${name}\` is given here first.` },
      { range: nameRange, message: `And here \`${name}\` is given again.` },
    ]);
  }
  return null;
}

function repeatedNames({ definitions, used }: NameIndex): Problem[] {
  const seen = new Map(used.filter(isOfWholeFile).map((definition) => [keyOf(definition), definition]));
  const problems: Problem[] = [];
  for (const definition of definitions) {
    const { kind, name, nameRange } = definition;
    if (kind === 'let' && name === 'pi') {
      problems.push(problemAt('repeatedName', nameRange, '`pi` is a number already, 3.14159… Choose another name.'));
    }
    if (kind === 'piece' || kind === 'divider') continue;
    const key = keyOf(definition);
    const first = seen.get(key);
    if (first) {
      const where = used.includes(first) ? ' in a file used here' : '';
      const message = `There is already ${withArticle(kindNames[kind])} \`${name}\`${where}. Give this one another name.`;
      problems.push(
        problemAt('repeatedName', nameRange, message, [
          { range: first.nameRange, message: `\`${name}\` is given here first.` },
        ]),
      );
    } else seen.set(key, definition);
  }
  return problems;
}

function unknownName(reference: Reference, index: NameIndex): Problem {
  const definitions = [...index.definitions, ...index.used];
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
