/** Grammar of the steps that change what is drawn of an outline so far, or bring in another. */
import type { IToken } from 'chevrotain';
import { OutlineRules } from './outline-rules.ts';
import type {
  CombineStep,
  CopyStep,
  GrowStep,
  MirrorStep,
  MoveStep,
  ScaleStep,
  TurnStep,
} from '../tree/outline-syntax.ts';
import type { PointSyntax } from '../tree/syntax-nodes.ts';
import { Comma, keyword } from '../vocabulary/tokens.ts';
import { rangeOf, type SourceRange } from '../tree/source-range.ts';
import { phraseOf } from './property-rules.ts';

interface MirrorPlace {
  readonly over: MirrorStep['over'];
  readonly range: SourceRange;
}

export class OutlineChangeRules extends OutlineRules {
  public copy = this.RULE('copy', (): CopyStep => {
    const word = this.CONSUME(keyword.copy);
    const name = this.SUBRULE(this.name, { ARGS: ['the name of an outline'] });
    return this.ACTION(() => ({ ...phraseOf('copy', word, name.range), name }));
  });

  public move = this.RULE('move', (): MoveStep => {
    const word = this.CONSUME(keyword.move);
    const by = this.SUBRULE(this.point);
    return this.ACTION(() => ({ ...phraseOf('move', word, by.range), by }));
  });

  public mirror = this.RULE('mirror', (): MirrorStep => {
    const word = this.CONSUME(keyword.mirror);
    this.CONSUME(keyword.over);
    const { over, range } = this.SUBRULE(this.mirrorPlace);
    return this.ACTION(() => ({ ...phraseOf('mirror', word, range), over }));
  });

  private mirrorPlace = this.RULE('mirrorPlace', (): MirrorPlace =>
    this.OR<MirrorPlace>({
      DEF: [
        {
          GATE: () => !this.isAhead(2, Comma) && !this.arithmeticAhead(2),
          ALT: () => {
            const axis = this.OR2([{ ALT: () => this.CONSUME(keyword.x) }, { ALT: () => this.CONSUME(keyword.y) }]);
            return this.ACTION(() => ({ over: axis.image as 'x' | 'y', range: rangeOf(axis) }));
          },
        },
        {
          ALT: () => {
            const first = this.SUBRULE(this.point);
            this.CONSUME(keyword.and);
            const second = this.SUBRULE2(this.point);
            return this.ACTION((): MirrorPlace => ({ over: [first, second], range: second.range }));
          },
        },
      ],
      // The second word tells an axis from a name.
      MAX_LOOKAHEAD: 2,
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: '`x`, `y` or two points joined by `and`',
    }),
  );

  public turnOutline = this.RULE('turnOutline', (): TurnStep => {
    const word = this.CONSUME(keyword.turn);
    const angle = this.SUBRULE(this.expression);
    const about = this.SUBRULE(this.optionalAbout);
    return this.ACTION(() => ({ ...phraseOf('turn about', word, (about ?? angle).range), angle, about }));
  });

  public scale = this.RULE('scale', (): ScaleStep => {
    const word = this.CONSUME(keyword.scale);
    const factor = this.SUBRULE(this.expression);
    const about = this.SUBRULE(this.optionalAbout);
    return this.ACTION(() => ({ ...phraseOf('scale', word, (about ?? factor).range), factor, about }));
  });

  private optionalAbout = this.RULE('optionalAbout', (): PointSyntax | null => {
    const point = this.OPTION(() => {
      this.CONSUME(keyword.about);
      return this.SUBRULE(this.point);
    });
    return point ?? null;
  });

  public grow = this.RULE('grow', (): GrowStep => {
    const word = this.CONSUME(keyword.grow);
    const by = this.SUBRULE(this.expression);
    const sharp: IToken | undefined = this.OPTION(() => this.CONSUME(keyword.sharp));
    return this.ACTION(() => ({
      ...phraseOf('grow', word, sharp ? rangeOf(sharp) : by.range),
      by,
      sharp: sharp !== undefined,
    }));
  });

  public combine = this.RULE('combine', (): CombineStep => {
    const word = this.OR([
      { ALT: () => this.CONSUME(keyword.plus) },
      { ALT: () => this.CONSUME(keyword.minus) },
      { ALT: () => this.CONSUME(keyword.common) },
    ]);
    const name = this.SUBRULE(this.name, { ARGS: ['the name of an outline'] });
    return this.ACTION(() => ({ ...phraseOf(word.image as CombineStep['kind'], word, name.range), name }));
  });
}
