/** Money: an amount in the one currency of a file. */
import { problemAt } from '../../../grammar/problems/problem-catalogue.ts';
import type { Problem } from '../../../grammar/problems/problem.ts';
import type { MoneySyntax } from '../../../grammar/tree/syntax-nodes.ts';
import type { SyntaxTree } from '../../../grammar/tree/syntax-tree.ts';
import type { DesignContext } from '../design-context.ts';
import type { Design } from '../design.ts';
import { nodesOf } from '../../../grammar/tree/walk-tree.ts';
import { findNodes } from '../names/find-nodes.ts';
import type { Money } from '../material-model.ts';
import { readFigure } from './read-values.ts';

/** A code of ISO 4217 has three capital letters. */
const currencyForm = /^[A-Z]{3}$/;

/** An amount of money, 0 or more; `what` names it in messages: "price". */
export function readMoney({ amount, currency }: MoneySyntax, what: string, context: DesignContext): Money | null {
  const figure = readFigure(amount, what, 'notNegative', currency.text, context);
  if (!currencyForm.test(currency.text)) {
    const message = `\`${currency.text}\` is no currency. Write its three capital letters, such as \`EUR\` or \`USD\`.`;
    context.report(problemAt('notACurrency', currency.range, message));
    return null;
  }
  return figure === null ? null : { amount: figure, currency: currency.text };
}

/** Every amount in another currency than the first of the file, or of the files it uses: they could not be added up. */
export function checkCurrencies(tree: SyntaxTree, given: Design): Problem[] {
  const written = nodesOf(tree, 'money')
    .map(({ currency }) => currency)
    .filter(({ text }) => currencyForm.test(text));
  const [first] = written;
  const { strips, sheets, resins, finishes } = given;
  const used = findNodes([strips, sheets, resins, finishes], isMoney)[0]?.currency;
  return written.flatMap(({ text, range }) => {
    if (!first || text === (used ?? first.text)) return [];
    const message = used
      ? `A file used here reckons in ${used}, and this is ${text}. Give every price in one currency.`
      : `The file reckons in ${first.text}, and this is ${text}. Give every price in one currency.`;
    const related = used ? [] : [{ range: first.range, message: `\`${first.text}\` stands here first.` }];
    return [problemAt('secondCurrency', range, message, related)];
  });
}

const isMoney = (node: object): node is Money => 'currency' in node;
