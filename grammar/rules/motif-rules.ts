/** Grammar of the phrases inside a motif. */
import { PlaceRules } from './place-rules.ts';
import type {
  AboveClause,
  CornersSyntax,
  DividerProperty,
  EveryClause,
  FitOrderProperty,
  HingeProperty,
  MirroredClause,
  NodeProperty,
  PartFillProperty,
  PieceProperty,
  TipProperty,
} from '../tree/motif-syntax.ts';
import type { Expression, Name } from '../tree/syntax-nodes.ts';
import { Comma, keyword } from '../vocabulary/tokens.ts';
import { rangeOf, type SourceRange, spanOf } from '../tree/source-range.ts';
import { phraseOf } from './property-rules.ts';

interface Ranged {
  readonly range: SourceRange;
}

export class MotifRules extends PlaceRules {
  public node = this.RULE('node', (): NodeProperty => {
    const word = this.CONSUME(keyword.node);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the node'] });
    this.CONSUME(keyword.at);
    const place = this.SUBRULE(this.place);
    return this.ACTION(() => ({ ...phraseOf('node', word, place.range), name, place }));
  });

  public divider = this.RULE('divider', (): DividerProperty => {
    const word = this.CONSUME(keyword.divider);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the divider'] });
    this.CONSUME(keyword.from);
    const from = this.SUBRULE(this.place);
    this.CONSUME(keyword.to);
    const to = this.SUBRULE2(this.place);
    const above: AboveClause[] = [];
    this.MANY(() => {
      this.CONSUME(Comma);
      const clause = this.SUBRULE(this.aboveClause);
      this.ACTION(() => above.push(clause));
    });
    return this.ACTION(() => ({
      ...phraseOf('divider', word, above.at(-1)?.range ?? to.range),
      name,
      from,
      to,
      above,
    }));
  });

  public piece = this.RULE('piece', (): PieceProperty => {
    const every: EveryClause[] = [];
    const above: AboveClause[] = [];
    const mirrored: MirroredClause[] = [];
    const word = this.CONSUME(keyword.piece);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the piece'] });
    this.CONSUME(keyword.from);
    const from = this.SUBRULE(this.place);
    this.CONSUME(keyword.to);
    const to = this.SUBRULE2(this.place);
    let range = this.ACTION(() => spanOf(rangeOf(word), to.range));
    const note = <Clause extends Ranged>(clauses: Clause[], clause: Clause): void =>
      this.ACTION(() => {
        clauses.push(clause);
        range = spanOf(range, clause.range);
      });
    this.MANY(() => {
      this.CONSUME(Comma);
      this.OR({
        DEF: [
          { ALT: () => note(every, this.SUBRULE(this.everyClause)) },
          { ALT: () => note(mirrored, this.SUBRULE(this.mirroredClause)) },
          { ALT: () => note(above, this.SUBRULE(this.aboveClause)) },
        ],
        ERR_MSG: '`every corner`, `every edge`, `mirrored` or `above` and the name of a piece',
      });
    });
    return this.ACTION(() => ({
      kind: 'piece',
      keyword: rangeOf(word),
      name,
      from,
      to,
      every,
      mirrored,
      above,
      range,
    }));
  });

  private everyClause = this.RULE('everyClause', (): EveryClause => {
    const first = this.CONSUME(keyword.every);
    const over = this.OR({
      DEF: [{ ALT: () => this.CONSUME(keyword.corner) }, { ALT: () => this.CONSUME(keyword.edge) }],
      ERR_MSG: '`corner` or `edge`',
    });
    return this.ACTION(() => ({
      over: over.image as EveryClause['over'],
      range: spanOf(rangeOf(first), rangeOf(over)),
    }));
  });

  private mirroredClause = this.RULE('mirroredClause', (): MirroredClause => {
    const word = this.CONSUME(keyword.mirrored);
    const line = this.OPTION(() => {
      this.CONSUME(keyword.over);
      return this.SUBRULE(this.mirrorLine);
    });
    return this.ACTION(() => ({ line: line ?? null, range: spanOf(rangeOf(word), line?.range ?? rangeOf(word)) }));
  });

  private aboveClause = this.RULE('aboveClause', (): AboveClause => {
    const word = this.CONSUME(keyword.above);
    const name = this.SUBRULE(this.name, { ARGS: ['the name of a piece or divider'] });
    return this.ACTION(() => ({ name, range: spanOf(rangeOf(word), name.range) }));
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
      return { ...phraseOf('fit_order', word, end), roles };
    });
  });

  public hinge = this.RULE('hinge', (): HingeProperty => {
    const word = this.CONSUME(keyword.hinge);
    const first = this.SUBRULE(this.name, { ARGS: ['the name of a piece'] });
    this.CONSUME(Comma);
    const second = this.SUBRULE2(this.name, { ARGS: ['the name of the piece folded from it'] });
    return this.ACTION(() => ({ ...phraseOf('hinge', word, second.range), first, second }));
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
      ...phraseOf('part fill', word, motif.range),
      parts: parts.image as PartFillProperty['parts'],
      motif,
      tips: [],
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
      ...phraseOf('tip', word, corners?.range ?? node.range),
      angle,
      node,
      corners: corners ?? null,
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
              kind: 'corner by number',
              number,
              range: spanOf(rangeOf(word), number.range),
            }));
          },
        },
        {
          ALT: () => {
            this.OPTION(() => this.CONSUME(keyword.the));
            const form = this.OR2({
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
              kind: 'corners by form',
              form: form.image as 'square' | 'sharp' | 'wide' | 'every',
              range: spanOf(rangeOf(form), rangeOf(corner)),
            }));
          },
        },
      ],
      ERR_MSG: '`corner 1`, `the square corner`, `the sharp corner`, `the wide corner` or `every corner`',
    }),
  );
}
