/** Grammar of the phrases inside a motif. */
import type { ParserMethod } from 'chevrotain';
import { ExpressionRules, rangeOf } from './expression-rules.ts';
import { spanOf } from './source-range.ts';
import type {
  CornersSyntax,
  DividerProperty,
  EveryClause,
  Expression,
  FitOrderProperty,
  Name,
  NodeProperty,
  Ordinal,
  PartFillProperty,
  PieceProperty,
  PlaceSyntax,
  ShapeName,
  ShapeWord,
  TipProperty,
} from './syntax-tree.ts';
import { Comma, keyword, NumberToken, Word } from './tokens.ts';

export class MotifRules extends ExpressionRules {
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

  public place: ParserMethod<[], PlaceSyntax> = this.RULE('place', (): PlaceSyntax =>
    this.OR({
      DEF: [
        { ALT: () => this.SUBRULE(this.cornerPlace) },
        { ALT: () => this.SUBRULE(this.midPlace) },
        { ALT: () => this.SUBRULE(this.middlePlace) },
        { GATE: this.mayNest, ALT: () => this.SUBRULE(this.betweenPlace) },
        {
          GATE: () => this.isAhead(1, Word) && !this.isAhead(2, keyword.along) && !this.arithmeticAhead(2),
          ALT: () => {
            const name = this.SUBRULE(this.name, { ARGS: ['a node'] });
            return this.ACTION((): PlaceSyntax => ({ kind: 'named', name, range: name.range }));
          },
        },
        { ALT: () => this.SUBRULE(this.alongPlace) },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: 'a node or a place, such as `corner 1`, `mid edge 2`, `0.3 along edge 1`, `centroid` or `incentre`',
    }),
  );

  private cornerPlace = this.RULE('cornerPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.corner);
    const number = this.SUBRULE(this.optionalOrdinal);
    return this.ACTION(() => ({
      kind: 'corner',
      number,
      range: spanOf(rangeOf(word), number?.range ?? rangeOf(word)),
    }));
  });

  private midPlace = this.RULE('midPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.mid);
    this.OPTION(() => this.CONSUME(keyword.of));
    const edge = this.CONSUME(keyword.edge);
    const number = this.SUBRULE(this.optionalOrdinal);
    return this.ACTION(() => ({ kind: 'mid', number, range: spanOf(rangeOf(word), number?.range ?? rangeOf(edge)) }));
  });

  private middlePlace = this.RULE('middlePlace', (): PlaceSyntax => {
    const word = this.OR([
      { ALT: () => this.CONSUME(keyword.centroid) },
      { ALT: () => this.CONSUME(keyword.incentre) },
    ]);
    return this.ACTION(() => ({ kind: word.image as 'centroid' | 'incentre', range: rangeOf(word) }));
  });

  private betweenPlace = this.RULE('betweenPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.between);
    this.nest();
    const first = this.SUBRULE(this.place);
    this.CONSUME(keyword.and);
    const second = this.SUBRULE2(this.place);
    const fraction = this.OPTION(() => {
      this.CONSUME(keyword.at);
      return this.SUBRULE(this.expression);
    });
    return this.ACTION(() => ({
      kind: 'between',
      first,
      second,
      fraction: fraction ?? null,
      range: spanOf(rangeOf(word), fraction?.range ?? second.range),
    }));
  });

  private alongPlace = this.RULE('alongPlace', (): PlaceSyntax => {
    const fraction = this.SUBRULE(this.expression);
    this.CONSUME(keyword.along);
    const edge = this.CONSUME(keyword.edge);
    const number = this.SUBRULE(this.optionalOrdinal);
    return this.ACTION(() => ({
      kind: 'along',
      fraction,
      number,
      range: spanOf(fraction.range, number?.range ?? rangeOf(edge)),
    }));
  });

  private optionalOrdinal = this.RULE('optionalOrdinal', (): Ordinal | null => {
    const number = this.OPTION({
      GATE: () => this.isAhead(1, NumberToken) && !this.isAhead(2, keyword.along),
      DEF: () => this.SUBRULE(this.ordinal),
    });
    return number ?? null;
  });

  public node = this.RULE('node', (): NodeProperty => {
    const word = this.CONSUME(keyword.node);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the node'] });
    this.CONSUME(keyword.at);
    const place = this.SUBRULE(this.place);
    return this.ACTION(() => ({
      kind: 'node',
      keyword: rangeOf(word),
      name,
      place,
      range: spanOf(rangeOf(word), place.range),
    }));
  });

  public divider = this.RULE('divider', (): DividerProperty => {
    const word = this.CONSUME(keyword.divider);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the divider'] });
    this.CONSUME(keyword.from);
    const from = this.SUBRULE(this.place);
    this.CONSUME(keyword.to);
    const to = this.SUBRULE2(this.place);
    return this.ACTION(() => ({
      kind: 'divider',
      keyword: rangeOf(word),
      name,
      from,
      to,
      range: spanOf(rangeOf(word), to.range),
    }));
  });

  public piece = this.RULE('piece', (): PieceProperty => {
    const every: EveryClause[] = [];
    const word = this.CONSUME(keyword.piece);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the piece'] });
    this.CONSUME(keyword.from);
    const from = this.SUBRULE(this.place);
    this.CONSUME(keyword.to);
    const to = this.SUBRULE2(this.place);
    this.MANY(() => {
      this.CONSUME(Comma);
      const first = this.CONSUME(keyword.every);
      const over = this.OR({
        DEF: [{ ALT: () => this.CONSUME(keyword.corner) }, { ALT: () => this.CONSUME(keyword.edge) }],
        ERR_MSG: '`corner` or `edge`',
      });
      this.ACTION(() =>
        every.push({ over: over.image as EveryClause['over'], range: spanOf(rangeOf(first), rangeOf(over)) }),
      );
    });
    return this.ACTION(() => ({
      kind: 'piece',
      keyword: rangeOf(word),
      name,
      from,
      to,
      every,
      range: spanOf(rangeOf(word), every.at(-1)?.range ?? to.range),
    }));
  });

  public fitOrder = this.RULE('fitOrder', (): FitOrderProperty => {
    const roles: { name: Name; key: Expression | null }[] = [];
    const word = this.CONSUME(keyword.fit_order);
    this.AT_LEAST_ONE_SEP({
      SEP: Comma,
      DEF: () => {
        const name = this.SUBRULE(this.name, { ARGS: ['the name of a piece'] });
        const key = this.OPTION(() => {
          this.CONSUME(keyword.key);
          return this.SUBRULE(this.expression);
        });
        this.ACTION(() => roles.push({ name, key: key ?? null }));
      },
    });
    return this.ACTION(() => {
      const last = roles.at(-1);
      const end = last?.key?.range ?? last?.name.range ?? rangeOf(word);
      return { kind: 'fit_order', keyword: rangeOf(word), roles, range: spanOf(rangeOf(word), end) };
    });
  });

  public partFill = this.RULE('partFill', (): PartFillProperty => {
    const word = this.CONSUME(keyword.fill);
    const parts = this.OR({
      DEF: [
        { ALT: () => this.CONSUME(keyword.halves) },
        { ALT: () => this.CONSUME(keyword.parts) },
        { ALT: () => this.CONSUME(keyword.triangle) },
        { ALT: () => this.CONSUME(keyword.square) },
        { ALT: () => this.CONSUME(keyword.rhombus) },
        { ALT: () => this.CONSUME(keyword.hexagon) },
      ],
      ERR_MSG: '`halves`, `parts` or a shape such as `triangle`',
    });
    this.CONSUME(keyword.with);
    const motif = this.SUBRULE(this.name, { ARGS: ['the name of a motif'] });
    return this.ACTION(() => ({
      kind: 'part fill',
      keyword: rangeOf(word),
      parts: parts.image as PartFillProperty['parts'],
      motif,
      tips: [],
      range: spanOf(rangeOf(word), motif.range),
    }));
  });

  public tip = this.RULE('tip', (): TipProperty => {
    const word = this.CONSUME(keyword.tip);
    const angle = this.SUBRULE(this.expression);
    this.CONSUME(keyword.at);
    const node = this.SUBRULE(this.name, { ARGS: ['the name of a node'] });
    const corners = this.OPTION(() => {
      const of = this.CONSUME(keyword.of);
      const choice = this.SUBRULE(this.cornerChoice);
      return this.ACTION(() => ({ ...choice, range: spanOf(rangeOf(of), choice.range) }));
    });
    return this.ACTION(() => ({
      kind: 'tip',
      keyword: rangeOf(word),
      angle,
      node,
      corners: corners ?? null,
      range: spanOf(rangeOf(word), corners?.range ?? node.range),
    }));
  });

  private cornerChoice = this.RULE('cornerChoice', (): CornersSyntax =>
    this.OR({
      DEF: [
        {
          ALT: () => {
            const word = this.CONSUME(keyword.corner);
            const number = this.SUBRULE(this.ordinal);
            return this.ACTION((): CornersSyntax => ({
              kind: 'number',
              number,
              range: spanOf(rangeOf(word), number.range),
            }));
          },
        },
        {
          ALT: () => {
            this.OPTION(() => this.CONSUME(keyword.the));
            const kind = this.OR2({
              DEF: [
                { ALT: () => this.CONSUME(keyword.square) },
                { ALT: () => this.CONSUME(keyword.sharp) },
                { ALT: () => this.CONSUME(keyword.wide) },
                { ALT: () => this.CONSUME(keyword.every) },
              ],
              ERR_MSG: '`square`, `sharp`, `wide` or `every`',
            });
            const corner = this.CONSUME2(keyword.corner);
            return this.ACTION((): CornersSyntax => ({
              kind: kind.image as 'square' | 'sharp' | 'wide' | 'every',
              range: spanOf(rangeOf(kind), rangeOf(corner)),
            }));
          },
        },
      ],
      ERR_MSG: '`corner 1`, `the square corner`, `the sharp corner`, `the wide corner` or `every corner`',
    }),
  );
}
