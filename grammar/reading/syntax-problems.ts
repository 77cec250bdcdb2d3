/** What the lexer and the parser stumble over, said in the maker's words. */

import { oldWord } from './renamed-words.ts';
import { type BlockKind } from '../vocabulary/known-words.ts';
import type { ILexingError, IRecognitionException, IToken } from 'chevrotain';
import { listed, typed } from '../problems/listed-words.ts';
import { adviceFor, commonMistake, decimalComma, type Misfit, partedUnit } from './common-mistakes.ts';
import { nearestWord } from '../problems/nearest-word.ts';
import { problemAt } from '../problems/problem-catalogue.ts';
import type { Problem } from '../problems/problem.ts';
import { quantityUnits } from '../vocabulary/tokens.ts';
import { blockNames, formOf, phraseForms, wordsOf } from '../phrases/phrase-forms.ts';
import type { PhraseForm } from '../phrases/phrase-forms.ts';
import { rangeOf, type SourceRange } from '../tree/source-range.ts';

/** Parts what was expected from an example of it that serves better than that of the whole phrase. */
const ownExampleMark = ', as in ';

/** A phrase that breaks off: `found` is the word that does not fit, null where the phrase ends too soon. */
export function unreadPhrase(
  error: IRecognitionException,
  found: IToken | null,
  before: IToken,
  form: PhraseForm,
  behind: IToken | null,
): Problem {
  const habit =
    found &&
    (oldWord(form.rule, [found]) ??
      oldWord(form.rule, [before, found]) ??
      decimalComma({ token: found, before, behind }) ??
      partedUnit({ token: found, before, behind }));
  if (habit) return habit;
  const [expected = '', ownExample = `\`${form.example}\``] = error.message.split(ownExampleMark);
  const write = ` Write it like ${ownExample}.`;
  if (expected === `\`${before.image}\``) {
    return problemAt('unexpectedWord', rangeOf(before), `A name is missing before \`${before.image}\`.${write}`);
  }
  if (found === null) {
    return problemAt('unexpectedWord', rangeOf(before), `\`${before.image}\` must be followed by ${expected}.${write}`);
  }
  return problemAt(
    'unexpectedWord',
    rangeOf(found),
    `Expected ${expected} after \`${before.image}\`, not \`${found.image}\`.${write}`,
  );
}

/** A token at the place of a new phrase that begins none. */
export function unknownPhrase(misfit: Misfit, block: BlockKind): Problem {
  const { token, before } = misfit;
  const range = rangeOf(token);
  const habit = oldWord(block, [token]) ?? commonMistake(misfit, block);
  if (habit) return habit;
  if (block !== 'document' && !/^[\p{L}_]/u.test(token.image)) {
    const after = before ? ` after \`${before.image}\`` : '';
    return problemAt(
      'unexpectedWord',
      range,
      `\`${token.image}\` does not belong${after}. Delete it, or put a property before it.`,
    );
  }
  const words = wordsOf(block);
  const near = nearestWord(token.image, words);
  const home = near ? undefined : blockWith(token.image);
  const advice = near
    ? `Did you mean \`${near}\`?`
    : home
      ? `It belongs to ${blockNames[home]}.`
      : `Use one of ${listed(typed(words))}.`;
  return block === 'document'
    ? problemAt('unknownDeclaration', range, `\`${token.image}\` does not begin a declaration. ${advice}`)
    : problemAt(
        'unknownProperty',
        range,
        `${capital(blockNames[block])} has no property \`${token.image}\`. ${advice}`,
      );
}

/** The first kind of block that has the word. */
const blockWith = (word: string): BlockKind | undefined =>
  (Object.keys(phraseForms) as BlockKind[]).find((block) => block !== 'document' && formOf(block, word) !== undefined);

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** A declaration whose braces do not follow its head; `next` is what follows instead. */
export function missingBlock(head: SourceRange, next: IToken | null, form: PhraseForm): Problem {
  const range = next ? rangeOf(next) : head;
  const found = next ? `, not \`${next.image}\`` : '';
  return problemAt(
    'unexpectedWord',
    range,
    `Expected \`{\` after the head of a declaration${found}. Write it like \`${form.example}\`.`,
  );
}

/** A property behind the brace of the block it belongs to. */
export function outsideBlock(token: IToken, block: BlockKind): Problem {
  const message = `\`${token.image}\` is outside ${blockNames[block]}, whose \`}\` comes too early. Move that \`}\` to after its last property.`;
  return problemAt('unknownDeclaration', rangeOf(token), message);
}

export function unclosedBlock(open: IToken, next: IToken | null): Problem {
  const where = next ? `before \`${next.image}\`` : 'at the end of the file';
  return problemAt('unclosedBlock', rangeOf(open), `This \`{\` is never closed. Add a \`}\` ${where}.`);
}

export function strayBrace(token: IToken): Problem {
  return problemAt('unexpectedWord', rangeOf(token), `This \`${token.image}\` closes nothing here. Delete it.`);
}

export function unclosedText(token: IToken): Problem {
  return problemAt('unexpectedWord', rangeOf(token), 'The closing quote is missing. Add a `"` at the end of the text.');
}

export function unknownUnit(token: IToken): Problem {
  const letters = token.image.replace(/^[\d.]+/, '');
  return problemAt(
    'notANumber',
    rangeOf(token),
    `\`${letters}\` is not a unit. Use one of ${quantityUnits.join(', ')}, or put a space before a word.`,
  );
}

export function unreadableCharacters({ offset, length }: ILexingError, text: string, begin: number): Problem {
  const range = { start: begin + offset, end: begin + offset + length };
  const characters = text.slice(offset, offset + length);
  return problemAt('unreadableCharacter', range, `\`${characters}\` has no meaning here. ${adviceFor(characters)}`);
}
