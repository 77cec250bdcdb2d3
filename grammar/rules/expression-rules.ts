/** Grammar of names, points and arithmetic: the parts every phrase is made of. */
import { EmbeddedActionsParser, tokenMatcher } from 'chevrotain';
import type { IToken, ParserMethod, TokenType } from 'chevrotain';
import { expectedMessages } from './expected-messages.ts';
import type {
  Expression,
  Name,
  NumberLiteral,
  Operation,
  Ordinal,
  PointSyntax,
  QuantityUnit,
  TextLiteral,
} from '../tree/syntax-nodes.ts';
import {
  allTokens,
  Comma,
  Divide,
  LeftBracket,
  Minus,
  NumberToken,
  Plus,
  Quantity,
  RightBracket,
  Text,
  Times,
  UnknownQuantity,
  Word,
} from '../vocabulary/tokens.ts';
import { rangeOf, spanOf } from '../tree/source-range.ts';

const nameOf = (token: IToken): Name => ({ text: token.image, range: rangeOf(token) });

/** Amount and unit of a number as written: 36mm, 1/8in, 3 1/2in, 3-1/2", 12deg, 5%. */
export function readNumber(token: IToken): NumberLiteral {
  const parts = /^(?:(\d+)(?: +|-))?(?:(\d+)\/(\d+)|([\d.]+))(.*)$/su.exec(token.image) ?? [];
  const [, whole, numerator, denominator, plain, letters] = parts;
  const amount = plain !== undefined ? Number(plain) : Number(whole ?? 0) + Number(numerator) / Number(denominator);
  const unit = tokenMatcher(token, UnknownQuantity) ? 'unknown' : unitOf(letters);
  return { kind: 'number', amount, unit, range: rangeOf(token) };
}

const unitOf = (letters = ''): QuantityUnit | null =>
  letters === '"' ? 'in' : letters === '' ? null : (letters as QuantityUnit);

/** Text without its quotes, `\"` and `\\` read as the character behind the stroke. */
function readText(token: IToken): TextLiteral {
  const inner = token.image.replace(/^"/, '').replace(/(?<!\\)((?:\\\\)*)"$/, '$1');
  return { text: inner.replace(/\\(.)/g, '$1'), range: rangeOf(token) };
}

/** Signs, brackets, calls and operators one phrase may hold; a person writes a handful. Keeps the tree from outgrowing the stack. */
const mostNesting = 100;
const mostOperations = 1000;

export class ExpressionRules extends EmbeddedActionsParser {
  private nesting = 0;
  private operations = 0;

  /** A phrase is told by its next word; looking further is worked out at every start, and costs a second. */
  constructor() {
    super(allTokens, { recoveryEnabled: false, errorMessageProvider: expectedMessages, maxLookahead: 1 });
  }

  override reset(): void {
    super.reset();
    this.nesting = 0;
    this.operations = 0;
  }

  /** Whether the phrase may hold one more thing inside another; `nest` counts it. */
  protected mayNest = (): boolean => this.nesting < mostNesting;

  protected nest(): void {
    this.ACTION(() => (this.nesting += 1));
  }

  private mayOperate = (): boolean => this.operations < mostOperations;

  /** Whether the token `ahead` places on may be read as `type`. */
  protected isAhead(ahead: number, type: TokenType): boolean {
    return tokenMatcher(this.LA(ahead), type);
  }

  /** Whether arithmetic goes on at the token `ahead` places on. */
  protected arithmeticAhead(ahead: number): boolean {
    return [Plus, Minus, Times, Divide, LeftBracket].some((type) => this.isAhead(ahead, type));
  }

  public name = this.RULE('name', (what: string): Name => {
    const token = this.CONSUME(Word, { ERR_MSG: what });
    return this.ACTION(() => nameOf(token));
  });

  public text = this.RULE('text', (): TextLiteral => {
    const token = this.CONSUME(Text);
    return this.ACTION(() => readText(token));
  });

  public ordinal = this.RULE('ordinal', (): Ordinal => {
    const token = this.CONSUME(NumberToken, { ERR_MSG: 'its number' });
    return this.ACTION(() => ({ value: Number(token.image), range: rangeOf(token) }));
  });

  public expression: ParserMethod<[], Expression> = this.RULE('expression', (): Expression => {
    let left = this.SUBRULE(this.term);
    this.MANY({
      GATE: this.mayOperate,
      DEF: () => {
        const sign = this.OR([{ ALT: () => this.CONSUME(Plus) }, { ALT: () => this.CONSUME(Minus) }]);
        const right = this.SUBRULE2(this.term);
        left = this.ACTION(() => operation(sign, left, right));
        this.ACTION(() => (this.operations += 1));
      },
    });
    return left;
  });

  private term: ParserMethod<[], Expression> = this.RULE('term', (): Expression => {
    let left = this.SUBRULE(this.factor);
    this.MANY({
      GATE: this.mayOperate,
      DEF: () => {
        const sign = this.OR([{ ALT: () => this.CONSUME(Times) }, { ALT: () => this.CONSUME(Divide) }]);
        const right = this.SUBRULE2(this.factor);
        left = this.ACTION(() => operation(sign, left, right));
        this.ACTION(() => (this.operations += 1));
      },
    });
    return left;
  });

  private factor: ParserMethod<[], Expression> = this.RULE('factor', (): Expression =>
    this.OR({
      DEF: [
        { GATE: this.mayNest, ALT: () => this.SUBRULE(this.negation) },
        { ALT: () => this.SUBRULE(this.number) },
        { GATE: this.mayNest, ALT: () => this.SUBRULE(this.bracketed) },
        { ALT: () => this.SUBRULE(this.nameOrCall) },
      ],
      ERR_MSG: 'a number, a name or arithmetic',
    }),
  );

  private negation = this.RULE('negation', (): Expression => {
    const sign = this.CONSUME(Minus);
    this.nest();
    const operand = this.SUBRULE(this.factor);
    return this.ACTION(() => ({ kind: 'negation', operand, range: spanOf(rangeOf(sign), operand.range) }));
  });

  private number = this.RULE('number', (): Expression => {
    const token = this.OR([
      { ALT: () => this.CONSUME(NumberToken) },
      { ALT: () => this.CONSUME(Quantity) },
      { ALT: () => this.CONSUME(UnknownQuantity) },
    ]);
    return this.ACTION(() => readNumber(token));
  });

  private bracketed = this.RULE('bracketed', (): Expression => {
    const open = this.CONSUME(LeftBracket);
    this.nest();
    const inner = this.SUBRULE(this.expression);
    const close = this.CONSUME(RightBracket);
    return this.ACTION(() => ({ ...inner, range: spanOf(rangeOf(open), rangeOf(close)) }));
  });

  private nameOrCall = this.RULE('nameOrCall', (): Expression => {
    const name = this.SUBRULE(this.name, { ARGS: ['a name'] });
    let expression: Expression = this.ACTION(() => ({ kind: 'name', name, range: name.range }));
    this.OPTION({
      GATE: this.mayNest,
      DEF: () => {
        const values: Expression[] = [];
        this.CONSUME(LeftBracket);
        this.nest();
        this.AT_LEAST_ONE_SEP({
          SEP: Comma,
          DEF: () => {
            const value = this.SUBRULE(this.expression);
            this.ACTION(() => values.push(value));
          },
        });
        const close = this.CONSUME(RightBracket);
        expression = this.ACTION(() => ({ kind: 'call', name, values, range: spanOf(name.range, rangeOf(close)) }));
      },
    });
    return expression;
  });

  public expressionList = this.RULE('expressionList', (): readonly Expression[] => {
    const values: Expression[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: Comma,
      DEF: () => {
        const value = this.SUBRULE(this.expression);
        this.ACTION(() => values.push(value));
      },
    });
    return values;
  });

  public point = this.RULE('point', (): PointSyntax => {
    const x = this.SUBRULE(this.expression);
    this.CONSUME(Comma, { ERR_MSG: '`,` between x and y' });
    const y = this.SUBRULE2(this.expression);
    return this.ACTION(() => ({ x, y, range: spanOf(x.range, y.range) }));
  });
}

function operation(sign: IToken, left: Expression, right: Expression): Operation {
  return {
    kind: 'operation',
    operator: sign.image as Operation['operator'],
    left,
    right,
    range: spanOf(left.range, right.range),
  };
}
