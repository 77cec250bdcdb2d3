/** What a rule expected where a phrase breaks off; `syntax-problems.ts` makes the sentence. */
import { tokenLabel, tokenName } from 'chevrotain';
import type { IParserErrorMessageProvider, TokenType } from 'chevrotain';
import { listed } from '../problems/listed-words.ts';

const expectedOf = (type: TokenType): string => tokenLabel(type) || tokenName(type);

/** Messages of the parser hold only what was expected. */
export const expectedMessages: IParserErrorMessageProvider = {
  buildMismatchTokenMessage: ({ expected }) => expectedOf(expected),
  buildNotAllInputParsedMessage: () => 'the next property',
  buildNoViableAltMessage: ({ expectedPathsPerAlt, customUserDescription }) =>
    customUserDescription ||
    listed([
      ...new Set(expectedPathsPerAlt.flatMap((paths) => paths.flatMap((path) => path.slice(0, 1).map(expectedOf)))),
    ]),
  buildEarlyExitMessage: ({ expectedIterationPaths, customUserDescription }) =>
    customUserDescription ||
    listed([...new Set(expectedIterationPaths.flatMap((path) => path.slice(0, 1).map(expectedOf)))]),
};
