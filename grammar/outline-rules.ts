/** Grammar of the steps of an outline. */
import type { IToken } from 'chevrotain';
import { rangeOf } from './expression-rules.ts';
import { MotifRules } from './motif-rules.ts';
import { spanOf } from './source-range.ts';
import type {
  ArcStep,
  CircleStep,
  CurveStep,
  LineStep,
  PathStep,
  PointSyntax,
  RectangleStep,
  StartStep,
} from './syntax-tree.ts';
import { keyword } from './tokens.ts';

export class OutlineRules extends MotifRules {
  public start = this.RULE('start', (): StartStep => {
    const word = this.CONSUME(keyword.start);
    const at = this.SUBRULE(this.point);
    return this.ACTION(() => ({ kind: 'start', keyword: rangeOf(word), at, range: spanOf(rangeOf(word), at.range) }));
  });

  public line = this.RULE('line', (): LineStep => {
    const word = this.CONSUME(keyword.line);
    this.CONSUME(keyword.to);
    const { end, range } = this.SUBRULE(this.stepEnd);
    return this.ACTION(() => ({
      kind: 'line',
      keyword: rangeOf(word),
      to: end,
      range: spanOf(rangeOf(word), range),
    }));
  });

  public arc = this.RULE('arc', (): ArcStep => {
    const word = this.CONSUME(keyword.arc);
    this.CONSUME(keyword.to);
    const { end } = this.SUBRULE(this.stepEnd);
    this.CONSUME(keyword.radius);
    const radius = this.SUBRULE(this.expression);
    const turn = this.OR({
      DEF: [{ ALT: () => this.CONSUME(keyword.left) }, { ALT: () => this.CONSUME(keyword.right) }],
      ERR_MSG: '`left` (turning counter-clockwise) or `right` (clockwise)',
    });
    const large: IToken | undefined = this.OPTION(() => this.CONSUME(keyword.large));
    return this.ACTION(() => ({
      kind: 'arc',
      keyword: rangeOf(word),
      to: end,
      radius,
      turn: turn.image as ArcStep['turn'],
      large: large !== undefined,
      range: spanOf(rangeOf(word), rangeOf(large ?? turn)),
    }));
  });

  public curve = this.RULE('curve', (): CurveStep => {
    const word = this.CONSUME(keyword.curve);
    this.CONSUME(keyword.to);
    const { end } = this.SUBRULE(this.stepEnd);
    this.CONSUME(keyword.by);
    const first = this.SUBRULE(this.point);
    const second: PointSyntax | undefined = this.OPTION(() => {
      this.CONSUME(keyword.and);
      return this.SUBRULE2(this.point);
    });
    return this.ACTION(() => ({
      kind: 'curve',
      keyword: rangeOf(word),
      to: end,
      controls: second ? [first, second] : [first],
      range: spanOf(rangeOf(word), (second ?? first).range),
    }));
  });

  private optionalAt = this.RULE('optionalAt', (): PointSyntax | null => {
    const at = this.OPTION(() => {
      this.CONSUME(keyword.at);
      return this.SUBRULE(this.point);
    });
    return at ?? null;
  });

  public circle = this.RULE('circle', (): CircleStep => {
    const word = this.CONSUME(keyword.circle);
    const at = this.SUBRULE(this.optionalAt);
    this.CONSUME(keyword.radius);
    const radius = this.SUBRULE(this.expression);
    return this.ACTION(() => ({
      kind: 'circle',
      keyword: rangeOf(word),
      at,
      radius,
      range: spanOf(rangeOf(word), radius.range),
    }));
  });

  public rectangle = this.RULE('rectangle', (): RectangleStep => {
    const word = this.CONSUME(keyword.rectangle);
    const width = this.SUBRULE(this.expression);
    this.CONSUME(keyword.x);
    const height = this.SUBRULE2(this.expression);
    const at = this.SUBRULE(this.optionalAt);
    return this.ACTION(() => ({
      kind: 'rectangle',
      keyword: rangeOf(word),
      width,
      height,
      at,
      range: spanOf(rangeOf(word), at?.range ?? height.range),
    }));
  });

  public path = this.RULE('path', (): PathStep => {
    const word = this.CONSUME(keyword.path);
    const data = this.SUBRULE(this.text);
    return this.ACTION(() => ({
      kind: 'path',
      keyword: rangeOf(word),
      data,
      range: spanOf(rangeOf(word), data.range),
    }));
  });
}
