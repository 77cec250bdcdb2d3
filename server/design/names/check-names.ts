/** Names given twice, used without being given, or used for the wrong thing. */
import { listed } from '../../../grammar/problems/listed-words.ts';
import { nearestName } from '../../../grammar/problems/nearest-word.ts';
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import type { SyntaxTree } from '../../../grammar/tree/syntax-tree.ts';
import type { Given } from './given.ts';
import type { Definition, NameIndex, NameKind, Reference } from './name-index.ts';

/** A kind of thing is called by its word, but for a `let`. */
const kindName = (kind: NameKind): string => (kind === 'let' ? 'number' : kind);

/** "a strip", "an outline". */
export const withArticle = (noun: string): string => `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;

/** How a name of a kind is given, for advice. */
const giving: Readonly<Partial<Record<NameKind, (name: string) => string>>> = {
  let: (name) => `let ${name} = …`,
  motif: (name) => `motif ${name} for … { … }`,
  node: (name) => `node ${name} at …`,
  piece: (name) => `piece ${name} from … to …`,
  divider: (name) => `divider ${name} from … to …`,
};

const givenAs = (kind: NameKind, name: string): string => giving[kind]?.(name) ?? `${kind} ${name} { … }`;

/** All problems of names. Names of phrases, or of used files, that could not be read count as given. */
export function checkNames(tree: SyntaxTree, index: NameIndex, given: Given): Problem[] {
  const unread = new Set([...tree.unreadNames, ...given.unreadNames].map(({ text }) => text));
  const unnamed = [...tree.unnamed, ...given.unnamed];
  const unresolved = index.references.filter(
    (reference) =>
      !reference.definition &&
      !reference.mayBeBuiltIn &&
      !unread.has(reference.name) &&
      ![reference.kind, ...reference.otherKinds].some((kind) => unnamed.includes(kind)) &&
      !(given.incomplete && reference.scope === null) &&
      scopeIsKnown(reference, index),
  );
  return [
    ...repeatedNames(index),
    ...unresolved.map((reference) => unknownName(reference, index)),
    ...index.references.flatMap((reference) => ambiguousName(reference, index)),
  ];
}

/** A name that several things have where any of them would do: the first kind is taken. */
function ambiguousName({ name, kind, otherKinds, scope, range, definition }: Reference, index: NameIndex): Problem[] {
  if (!definition || scope !== null || otherKinds.length === 0) return [];
  const others = [...index.definitions, ...index.used].filter(
    (found) => found.name === name && found.kind !== definition.kind && [kind, ...otherKinds].includes(found.kind),
  );
  const [other] = others;
  if (!other) return [];
  const message = `\`${name}\` is ${withArticle(kindName(definition.kind))} and ${withArticle(kindName(other.kind))}; the ${kindName(definition.kind)} is meant here. Give one of them another name.`;
  return [
    problemAt('ambiguousName', range, message, [
      { range: other.nameRange, message: `The ${kindName(other.kind)} \`${name}\` is given here.` },
    ]),
  ];
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
    const message = `This file gives ${withArticle(kindName(kind))} \`${name}\`, and a file used before it does too. Rename one of the two.`;
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
    if (kind === 'piece' || kind === 'divider' || kind === 'work') continue; // a second work is reported as such
    const key = keyOf(definition);
    const first = seen.get(key);
    if (first) {
      const where = used.includes(first) ? ' in a file used here' : '';
      const message = `There is already ${withArticle(kindName(kind))} \`${name}\`${where}. Give this one another name.`;
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
  const { name, kind, otherKinds, scope, range } = reference;
  const kinds = [kind, ...otherKinds];
  const wanted = listed(kinds.map(kindName));
  const other = scope === null ? definitions.find((found) => found.name === name && found.scope === null) : undefined;
  if (other) {
    const message = `\`${name}\` is ${withArticle(kindName(other.kind))}, and ${withArticle(wanted)} is needed here. Use the name of ${withArticle(wanted)}.`;
    return problemAt('wrongKindOfName', range, message, [
      { range: other.nameRange, message: `\`${name}\` is given here.` },
    ]);
  }
  if (kind === 'node' && name === 'edge') {
    const message = 'An edge is no place by itself. Write `mid edge 1`, or `0.3 along edge 1`.';
    return problemAt('unknownName', range, message);
  }
  const candidates = definitions
    .filter((found) => kinds.includes(found.kind) && found.scope === scope)
    .map((found) => found.name);
  const near = nearestName(name, candidates);
  const where = scope === null ? '' : ` in the motif \`${scope}\``;
  const advice = near ? `Did you mean \`${near}\`?` : `Add \`${givenAs(kind, name)}\` or use another name.`;
  return problemAt('unknownName', range, `There is no ${wanted} \`${name}\`${where}. ${advice}`);
}
