/** Every name is found where it is given and where it is used, in its own motif. */
import { expect, test } from 'vitest';
import { parseDocument } from '../../../grammar/reading/parse-document.ts';
import { indexNames } from '../../../server/design/names/name-index.ts';
import { referenceText } from '../../grammar/reference-text.ts';

const text = `let side = 40
strip ash { section face side / 10 depth max(side, 3) }
grid side { square pitch side of ash }
motif one for square { node hub at centroid  divider cut from corner 1 to corner 3  piece arm from hub to corner 2
  fill halves with two { tip 45deg at hub }  fit_order cut, arm  tip side at hub }
motif two for triangle { node hub at incentre  piece arm from between hub and corner 1 to mid edge 2 }
panel p { grid side  shape side x round  fill square with one of ash { tip 1 at hub }  node at pi, nowhere }`;

test('definitions', () => {
  const { definitions } = indexNames(parseDocument(text).tree);
  expect(
    definitions.map(({ kind, scope, nameRange }) => [kind, scope, text.slice(nameRange.start, nameRange.end)]),
  ).toEqual([
    ['let', null, 'side'],
    ['strip', null, 'ash'],
    ['grid', null, 'side'],
    ['motif', null, 'one'],
    ['node', 'one', 'hub'],
    ['divider', 'one', 'cut'],
    ['piece', 'one', 'arm'],
    ['motif', null, 'two'],
    ['node', 'two', 'hub'],
    ['piece', 'two', 'arm'],
    ['panel', null, 'p'],
  ]);
});

test('references lead to the definition of their kind and motif', () => {
  const { references } = indexNames(parseDocument(text).tree);
  const found = references.map(({ name, kind, definition }) => {
    const where = definition ? `${definition.kind}${definition.scope ? ` of ${definition.scope}` : ''}` : 'nothing';
    return `${name}: ${kind} → ${where}`;
  });
  expect(found).toEqual([
    'side: let → let',
    'side: let → let',
    'side: let → let',
    'ash: strip → strip',
    'hub: node → node of one',
    'two: motif → motif',
    'hub: node → node of two',
    'cut: piece → divider of one',
    'arm: piece → piece of one',
    'side: let → let',
    'hub: node → node of one',
    'hub: node → node of two',
    'side: grid → grid',
    'side: let → let',
    'round: let → nothing',
    'one: motif → motif',
    'ash: strip → strip',
    'hub: node → node of one',
    'nowhere: let → nothing',
  ]);
});

test('the text at every range is the name itself', () => {
  const { definitions, references } = indexNames(parseDocument(referenceText).tree);
  const places = [...definitions.map(({ name, nameRange }) => ({ name, range: nameRange })), ...references];
  expect(places.filter(({ name, range }) => referenceText.slice(range.start, range.end) !== name)).toEqual([]);
  expect(references.filter(({ definition, mayBeBuiltIn }) => definition === null && !mayBeBuiltIn)).toEqual([]);
});
