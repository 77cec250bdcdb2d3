/** Text to design, for tests. */
import { parseDocument } from '../../grammar/reading/parse-document.ts';
import { buildDesign } from '../../server/design/builders/build-design.ts';
import { told } from '../told.ts';
import type { Outline } from '../../server/design/design-model.ts';
import type { Design } from '../../server/design/design.ts';

/** The design of a text that must be sound. */
export function designOf(text: string): Design {
  const { tree, problems: syntaxProblems } = parseDocument(text);
  const { design, problems } = buildDesign(tree);
  const messages = [...syntaxProblems, ...problems].map((problem) => told(problem));
  if (messages.length > 0) throw new Error(messages.join('\n'));
  return design;
}

/** The outline drawn by steps. */
export function outlineOf(steps: string): Outline {
  const [outline] = designOf(`outline o { ${steps} }`).outlines;
  if (!outline) throw new Error('no outline was built');
  return outline;
}

/** The first of a list that must not be empty. */
export function only<Thing>(things: readonly Thing[]): Thing {
  const [first] = things;
  if (first === undefined || things.length > 1) throw new Error(`expected one, found ${String(things.length)}`);
  return first;
}
