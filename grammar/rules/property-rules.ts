/** Rules that properties of several blocks share: a choice of words, money, three measures with `x`. */
import type { IToken, ParserMethod } from 'chevrotain';
import { listed, typed } from '../problems/listed-words.ts';
import type { PriceProperty } from '../tree/material-syntax.ts';
import type {
  ChoiceProperty,
  ChosenValueProperty,
  Expression,
  ListProperty,
  MoneyProperty,
  MoneySyntax,
  NameProperty,
  Phrase,
  ShapeName,
  ShapeWord,
  ValueProperty,
} from '../tree/syntax-nodes.ts';
import { keyword, LeftBracket, NumberToken, Quantity, UnknownQuantity, Word } from '../vocabulary/tokens.ts';
import type { KnownWord } from '../vocabulary/known-words.ts';
import { rangeOf, type SourceRange, spanOf } from '../tree/source-range.ts';
import { ExpressionRules } from './expression-rules.ts';

/** The letters and digits of a property's kind, as a rule may be named. */
const ruleName = (kind: string, ending: string): string => `${kind.replaceAll(' ', '_')}_${ending}`;

/** A phrase from its first word to the last of what it holds. */
export const phraseOf = <Kind extends string>(
  kind: Kind,
  first: IToken,
  last: SourceRange,
): Phrase & { readonly kind: Kind } => ({ kind, keyword: rangeOf(first), range: spanOf(rangeOf(first), last) });

export class PropertyRules extends ExpressionRules {
  /**
   * Whether a value stands at the token `ahead` places on that cannot be the next property: a known word that is also
   * the name of a number must stand in brackets there.
   */
  protected valueAhead(ahead: number): boolean {
    const isPlainWord = this.LA(ahead).tokenType === Word;
    return (
      isPlainWord || [NumberToken, Quantity, UnknownQuantity, LeftBracket].some((type) => this.isAhead(ahead, type))
    );
  }

  /** A property of one value behind its word. */
  protected valueRule<Kind extends KnownWord>(word: Kind): ParserMethod<[], ValueProperty<Kind>> {
    return this.RULE(`${word}_value`, (): ValueProperty<Kind> => {
      const first = this.CONSUME(keyword[word]);
      const value = this.SUBRULE(this.expression);
      return this.ACTION(() => ({ ...phraseOf(word, first, value.range), value }));
    });
  }

  /** A property of a list of values behind its word. */
  protected listRule<Kind extends KnownWord>(word: Kind): ParserMethod<[], ListProperty<Kind>> {
    return this.RULE(`${word}_list`, (): ListProperty<Kind> => {
      const first = this.CONSUME(keyword[word]);
      const values = this.SUBRULE(this.expressionList);
      return this.ACTION(() => ({ ...phraseOf(word, first, values.at(-1)?.range ?? rangeOf(first)), values }));
    });
  }

  protected money = this.RULE('money', (): MoneySyntax => {
    const amount = this.SUBRULE(this.expression);
    const currency = this.SUBRULE(this.name, { ARGS: ['a currency such as `EUR`'] });
    return this.ACTION(() => ({ kind: 'money', amount, currency, range: spanOf(amount.range, currency.range) }));
  });

  /** `at 4.20 EUR`, or nothing. */
  protected priceBehindAt = this.RULE('priceBehindAt', (): MoneySyntax | null => {
    const price = this.OPTION(() => {
      this.CONSUME(keyword.at);
      return this.SUBRULE(this.money);
    });
    return price ?? null;
  });

  protected moneyRule<Kind extends KnownWord>(word: Kind): ParserMethod<[], MoneyProperty<Kind>> {
    return this.RULE(ruleName(word, 'money'), (): MoneyProperty<Kind> => {
      const first = this.CONSUME(keyword[word]);
      const money = this.SUBRULE(this.money);
      return this.ACTION(() => ({ ...phraseOf(word, first, money.range), money }));
    });
  }

  /** A name behind `word`, of which `kind` says what it must be the name of. */
  protected usedNameRule<Kind extends string>(
    kind: Kind,
    word: KnownWord,
    what: string,
  ): ParserMethod<[], NameProperty<Kind>> {
    return this.RULE(ruleName(kind, 'used'), (): NameProperty<Kind> => {
      const first = this.CONSUME(keyword[word]);
      const name = this.SUBRULE(this.name, { ARGS: [what] });
      return this.ACTION(() => ({ ...phraseOf(kind, first, name.range), name }));
    });
  }

  /** A property that is itself one of `words`, such as `porous` or `closed`. */
  protected wordRule<Kind extends string, Choice extends KnownWord>(
    kind: Kind,
    words: readonly Choice[],
  ): ParserMethod<[], ChoiceProperty<Kind, Choice>> {
    return this.RULE(ruleName(kind, 'word'), (): ChoiceProperty<Kind, Choice> => {
      const word = this.OR(words.map((choice) => ({ ALT: () => this.CONSUME(keyword[choice]) })));
      return this.ACTION(() => ({ ...phraseOf(kind, word, rangeOf(word)), choice: word.image as Choice }));
    });
  }

  /** One of `choices` behind `word`, such as `corners mitred`. */
  protected choiceRule<Kind extends KnownWord, Choice extends KnownWord>(
    word: Kind,
    choices: readonly Choice[],
  ): ParserMethod<[], ChoiceProperty<Kind, Choice>> {
    return this.RULE(ruleName(word, 'choice'), (): ChoiceProperty<Kind, Choice> => {
      const first = this.CONSUME(keyword[word]);
      const choice = this.OR({
        DEF: choices.map((each) => ({ ALT: () => this.CONSUME2(keyword[each]) })),
        ERR_MSG: listed(typed(choices)),
      });
      return this.ACTION(() => ({ ...phraseOf(word, first, rangeOf(choice)), choice: choice.image as Choice }));
    });
  }

  /** A value behind one of `words`, such as `chamfer 10` or `round_over 6`. */
  protected chosenValueRule<Kind extends string, Choice extends KnownWord>(
    kind: Kind,
    words: readonly Choice[],
  ): ParserMethod<[], ChosenValueProperty<Kind, Choice>> {
    return this.RULE(ruleName(kind, 'chosen'), (): ChosenValueProperty<Kind, Choice> => {
      const word = this.OR(words.map((choice) => ({ ALT: () => this.CONSUME(keyword[choice]) })));
      const value = this.SUBRULE(this.expression);
      return this.ACTION(() => ({ ...phraseOf(kind, word, value.range), choice: word.image as Choice, value }));
    });
  }

  /** A list behind two words, such as `pin pitches 40, 60`. */
  protected twoWordListRule<Kind extends string>(
    kind: Kind,
    first: KnownWord,
    second: KnownWord,
  ): ParserMethod<[], ListProperty<Kind>> {
    return this.RULE(ruleName(kind, 'list'), (): ListProperty<Kind> => {
      const one = this.CONSUME(keyword[first]);
      const other = this.CONSUME(keyword[second]);
      const values = this.SUBRULE(this.expressionList);
      return this.ACTION(() => ({
        ...phraseOf(kind, one, values.at(-1)?.range ?? rangeOf(other)),
        keyword: spanOf(rangeOf(one), rangeOf(other)),
        values,
      }));
    });
  }

  /** `1220 x 610`. */
  protected twoMeasures = this.RULE('twoMeasures', (): { readonly width: Expression; readonly height: Expression } => {
    const width = this.SUBRULE(this.expression);
    this.CONSUME(keyword.x, { ERR_MSG: '`x` between the two measures' });
    const height = this.SUBRULE2(this.expression);
    return { width, height };
  });

  public shapeName = this.RULE('shapeName', (): ShapeName =>
    this.OR<ShapeName>({
      DEF: [{ ALT: () => this.SUBRULE(this.shapeWord) }, { ALT: () => this.SUBRULE(this.polygonName) }],
      ERR_MSG: '`triangle`, `square`, `rhombus`, `hexagon` or `polygon 5`',
    }),
  );

  private shapeWord = this.RULE('shapeWord', (): ShapeName => {
    const token = this.OR([
      { ALT: () => this.CONSUME(keyword.triangle) },
      { ALT: () => this.CONSUME(keyword.square) },
      { ALT: () => this.CONSUME(keyword.rhombus) },
      { ALT: () => this.CONSUME(keyword.hexagon) },
    ]);
    return this.ACTION(() => ({ shape: token.image as ShapeWord, range: rangeOf(token) }));
  });

  private polygonName = this.RULE('polygonName', (): ShapeName => {
    const word = this.CONSUME(keyword.polygon);
    const corners = this.CONSUME(NumberToken, { ERR_MSG: 'its number of corners' });
    return this.ACTION(() => ({
      shape: `polygon ${Number(corners.image)}`,
      range: spanOf(rangeOf(word), rangeOf(corners)),
    }));
  });

  public density = this.valueRule('density');
  public kerf = this.valueRule('kerf');
  public margin = this.valueRule('margin');
  public turns = this.listRule('turns');
  public copies = this.valueRule('copies');
  public corners = this.choiceRule('corners', ['mitred', 'lapped']);
  public ofStrip = this.usedNameRule('of strip', 'of', 'the name of a strip');
  public ofResin = this.usedNameRule('of resin', 'of', 'the name of a resin');
  public ofGrid = this.usedNameRule('of grid', 'grid', 'the name of a grid');

  public price = this.RULE('price', (): PriceProperty => {
    const word = this.CONSUME(keyword.price);
    const money = this.SUBRULE(this.money);
    const per = this.OPTION(() => {
      this.CONSUME(keyword.per);
      return this.SUBRULE(this.expression);
    });
    return this.ACTION(() => ({ ...phraseOf('price', word, (per ?? money).range), money, per: per ?? null }));
  });
}
