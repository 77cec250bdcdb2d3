/** Grammar of the steps that draw an outline. */
import type { IToken } from 'chevrotain';
import { rangeOf } from './expression-rules.ts';
import { MotifRules } from './motif-rules.ts';
import type {
  ArcForm,
  ArcStep,
  CircleStep,
  CurveStep,
  EllipseStep,
  LineStep,
  LoopStep,
  PathStep,
  PolygonStep,
  RectangleStep,
  SplineStep,
  StartStep,
} from '../tree/outline-syntax.ts';
import type { SourceRange } from '../tree/source-range.ts';
import { spanOf } from '../tree/source-range.ts';
import type { Expression, PointSyntax } from '../tree/syntax-tree.ts';
import { keyword } from '../vocabulary/tokens.ts';

interface ArcFormPlace {
  readonly form: ArcForm;
  readonly range: SourceRange;
}

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
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({
      kind: 'line',
      keyword: rangeOf(word),
      to: end,
      rounded,
      range: spanOf(rangeOf(word), rounded?.range ?? range),
    }));
  });

  public arc = this.RULE('arc', (): ArcStep => {
    const word = this.CONSUME(keyword.arc);
    this.CONSUME(keyword.to);
    const { end } = this.SUBRULE(this.stepEnd);
    const { form, range } = this.SUBRULE(this.arcForm);
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({
      kind: 'arc',
      keyword: rangeOf(word),
      to: end,
      form,
      rounded,
      range: spanOf(rangeOf(word), rounded?.range ?? range),
    }));
  });

  private arcForm = this.RULE('arcForm', (): ArcFormPlace =>
    this.OR({
      DEF: [
        { ALT: () => this.SUBRULE(this.arcByRadius) },
        { ALT: () => this.SUBRULE(this.arcThrough) },
        { ALT: () => this.SUBRULE(this.arcByBulge) },
      ],
      ERR_MSG: '`radius`, `through` or `bulge`',
    }),
  );

  private arcByRadius = this.RULE('arcByRadius', (): ArcFormPlace => {
    this.CONSUME(keyword.radius);
    const radius = this.SUBRULE(this.expression);
    const turn = this.SUBRULE(this.arcTurn);
    const large: IToken | undefined = this.OPTION(() => this.CONSUME(keyword.large));
    return this.ACTION(() => ({
      form: { kind: 'radius', radius, turn: turn.image as 'left' | 'right', large: large !== undefined },
      range: rangeOf(large ?? turn),
    }));
  });

  private arcThrough = this.RULE('arcThrough', (): ArcFormPlace => {
    this.CONSUME(keyword.through);
    const point = this.SUBRULE(this.point);
    return this.ACTION(() => ({ form: { kind: 'through', point }, range: point.range }));
  });

  private arcByBulge = this.RULE('arcByBulge', (): ArcFormPlace => {
    this.CONSUME(keyword.bulge);
    const bulge = this.SUBRULE(this.expression);
    const turn = this.SUBRULE(this.arcTurn);
    return this.ACTION(() => ({
      form: { kind: 'bulge', bulge, turn: turn.image as 'left' | 'right' },
      range: rangeOf(turn),
    }));
  });

  private arcTurn = this.RULE('arcTurn', (): IToken =>
    this.OR({
      DEF: [{ ALT: () => this.CONSUME(keyword.left) }, { ALT: () => this.CONSUME(keyword.right) }],
      ERR_MSG: '`left` (turning counter-clockwise) or `right` (clockwise)',
    }),
  );

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
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({
      kind: 'curve',
      keyword: rangeOf(word),
      to: end,
      controls: second ? [first, second] : [first],
      rounded,
      range: spanOf(rangeOf(word), (rounded ?? second ?? first).range),
    }));
  });

  public spline = this.RULE('spline', (): SplineStep => {
    const word = this.CONSUME(keyword.spline);
    this.CONSUME(keyword.to);
    const { end, range } = this.SUBRULE(this.stepEnd);
    const through = this.SUBRULE(this.throughPoints);
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({
      kind: 'spline',
      keyword: rangeOf(word),
      to: end,
      through,
      rounded,
      range: spanOf(rangeOf(word), (rounded ?? through.at(-1))?.range ?? range),
    }));
  });

  public loop = this.RULE('loop', (): LoopStep => {
    const word = this.CONSUME(keyword.loop);
    const through = this.SUBRULE(this.throughPoints);
    return this.ACTION(() => ({
      kind: 'loop',
      keyword: rangeOf(word),
      through,
      range: spanOf(rangeOf(word), through.at(-1)?.range ?? rangeOf(word)),
    }));
  });

  private throughPoints = this.RULE('throughPoints', (): readonly PointSyntax[] => {
    const points: PointSyntax[] = [];
    this.CONSUME(keyword.through);
    this.AT_LEAST_ONE_SEP({
      SEP: keyword.and,
      DEF: () => {
        const point = this.SUBRULE(this.point);
        this.ACTION(() => points.push(point));
      },
    });
    return points;
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

  public ellipse = this.RULE('ellipse', (): EllipseStep => {
    const word = this.CONSUME(keyword.ellipse);
    const at = this.SUBRULE(this.optionalAt);
    this.CONSUME(keyword.radii);
    const radii = this.SUBRULE(this.point);
    const turned = this.SUBRULE(this.optionalTurned);
    return this.ACTION(() => ({
      kind: 'ellipse',
      keyword: rangeOf(word),
      at,
      radii,
      turned,
      range: spanOf(rangeOf(word), (turned ?? radii).range),
    }));
  });

  public rectangle = this.RULE('rectangle', (): RectangleStep => {
    const word = this.CONSUME(keyword.rectangle);
    const width = this.SUBRULE(this.expression);
    this.CONSUME(keyword.x);
    const height = this.SUBRULE2(this.expression);
    const at = this.SUBRULE(this.optionalAt);
    const turned = this.SUBRULE(this.optionalTurned);
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({
      kind: 'rectangle',
      keyword: rangeOf(word),
      width,
      height,
      at,
      turned,
      rounded,
      range: spanOf(rangeOf(word), (rounded ?? turned ?? at ?? height).range),
    }));
  });

  public polygon = this.RULE('polygon', (): PolygonStep => {
    const word = this.CONSUME(keyword.polygon);
    const corners = this.SUBRULE(this.expression);
    const at = this.SUBRULE(this.optionalAt);
    this.CONSUME(keyword.radius);
    const radius = this.SUBRULE2(this.expression);
    const turned = this.SUBRULE(this.optionalTurned);
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({
      kind: 'polygon',
      keyword: rangeOf(word),
      corners,
      at,
      radius,
      turned,
      rounded,
      range: spanOf(rangeOf(word), (rounded ?? turned ?? radius).range),
    }));
  });

  public path = this.RULE('path', (): PathStep => {
    const word = this.CONSUME(keyword.path);
    const source = this.OR({
      DEF: [{ ALT: () => this.SUBRULE(this.pathData) }, { ALT: () => this.SUBRULE(this.pathInDrawing) }],
      ERR_MSG: 'path data in double quotes, or `from` and an SVG file',
    });
    const last = this.ACTION(() => (source.kind === 'data' ? source.data : source.id));
    return this.ACTION(() => ({
      kind: 'path',
      keyword: rangeOf(word),
      source,
      range: spanOf(rangeOf(word), last.range),
    }));
  });

  private pathData = this.RULE('pathData', (): PathStep['source'] => {
    const data = this.SUBRULE(this.text);
    return this.ACTION(() => ({ kind: 'data', data }));
  });

  private pathInDrawing = this.RULE('pathInDrawing', (): PathStep['source'] => {
    this.CONSUME(keyword.from);
    const file = this.SUBRULE(this.text);
    this.CONSUME(keyword.id);
    const id = this.SUBRULE2(this.text);
    return this.ACTION(() => ({ kind: 'drawing', file, id }));
  });

  private optionalAt = this.RULE('optionalAt', (): PointSyntax | null => {
    const at = this.OPTION(() => {
      this.CONSUME(keyword.at);
      return this.SUBRULE(this.point);
    });
    return at ?? null;
  });

  private optionalTurned = this.RULE('optionalTurned', (): Expression | null => {
    const angle = this.OPTION(() => {
      this.CONSUME(keyword.turned);
      return this.SUBRULE(this.expression);
    });
    return angle ?? null;
  });

  private optionalRounded = this.RULE('optionalRounded', (): Expression | null => {
    const radius = this.OPTION(() => {
      this.CONSUME(keyword.rounded);
      return this.SUBRULE(this.expression);
    });
    return radius ?? null;
  });
}
