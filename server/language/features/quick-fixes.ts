/** Edits that put a problem right, found by the problem's code and place, never by its wording. */
import { phraseAt } from '../../../grammar/reading/word-places.ts';
import { renamedWord } from '../../../grammar/reading/renamed-words.ts';
import { nearestName, nearestWord } from '../../../grammar/problems/nearest-word.ts';
import { problemCatalogue } from '../../../grammar/problems/problem-catalogue.ts';
import type { WrittenProblem } from '../../words/write-words.ts';
import type { SourceRange } from '../../../grammar/tree/source-range.ts';
import { wordsOf } from '../../../grammar/phrases/phrase-forms.ts';
import type { Analysis } from '../../analyse.ts';
import { knownWoods } from '../../shop/wood/unknown-woods.ts';
import { blockKindAt } from './block-at.ts';

/** Puts `newText` in the place of the problem's words. */
export interface QuickFix {
  readonly title: string;
  readonly problem: WrittenProblem;
  readonly newText: string;
}

/** The fixes of all problems that touch `range`. */
export function quickFixes(analysis: Analysis, range: SourceRange): QuickFix[] {
  const touched = analysis.problems.filter(
    (problem) => problem.range.start <= range.end && range.start <= problem.range.end,
  );
  return touched.flatMap((problem) => {
    const word = nearest(analysis, problem);
    return word === null ? [] : [{ title: `Change to \`${word}\``, problem, newText: word }];
  });
}

/** The word that may have been meant by the words of a problem. */
function nearest(analysis: Analysis, { code, range }: WrittenProblem): string | null {
  const written = analysis.text.slice(range.start, range.end);
  switch (code) {
    case problemCatalogue.unknownName.code:
      return nearestName(written, namesFor(analysis, range));
    case problemCatalogue.woodNotKnown.code:
      return nearestName(written, knownWoods(analysis.names));
    case problemCatalogue.unexpectedWord.code: {
      const phrase = phraseAt(analysis.files[0].parsed.phrases, range.start);
      const place = phrase?.form.rule;
      return (place && renamedWord(place, written)) ?? renamedWord(blockKindAt(analysis, range.start), written);
    }
    case problemCatalogue.unknownDeclaration.code:
    case problemCatalogue.unknownProperty.code:
      return nearestWord(written, wordsOf(blockKindAt(analysis, range.start)));
    default:
      return null;
  }
}

/** Names of the kind that the reference at `range` asks for. */
function namesFor({ names: { definitions, used, references } }: Analysis, range: SourceRange): string[] {
  const reference = references.find((candidate) => candidate.range.start === range.start);
  if (!reference) return [];
  const isWanted = (kind: string): boolean =>
    kind === reference.kind || (reference.kind === 'piece' && kind === 'divider');
  return [...definitions, ...used]
    .filter(({ kind, scope }) => isWanted(kind) && scope === reference.scope)
    .map(({ name }) => name);
}
