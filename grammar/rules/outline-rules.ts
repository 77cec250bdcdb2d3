/** Grammar of the steps that draw an outline. */
import type { IToken } from 'chevrotain';
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
  StepEnd,
} from '../tree/outline-syntax.ts';
import type { Expression, PointSyntax } from '../tree/syntax-nodes.ts';
import { Comma, keyword } from '../vocabulary/tokens.ts';
import { rangeOf, type SourceRange, spanOf } from '../tree/source-range.ts';
import { phraseOf } from './property-rules.ts';

/** The end of a step and where it stands. */
interface StepEndPlace {
  readonly end: StepEnd;
  readonly range: SourceRange;
}

export class OutlineRules extends MotifRules {
  public start = this.RULE('start', (): StartStep => {
    const word = this.CONSUME(keyword.start);
    const at = this.SUBRULE(this.point);
    return this.ACTION(() => ({ ...phraseOf('start', word, at.range), at }));
  });

  public line = this.RULE('line', (): LineStep => {
    const word = this.CONSUME(keyword.line);
    this.CONSUME(keyword.to);
    const { end, range } = this.SUBRULE(this.stepEnd);
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({ ...phraseOf('line', word, rounded?.range ?? range), to: end, rounded }));
  });

  public arc = this.RULE('arc', (): ArcStep => {
    const word = this.CONSUME(keyword.arc);
    this.CONSUME(keyword.to);
    const { end } = this.SUBRULE(this.stepEnd);
    const form = this.SUBRULE(this.arcForm);
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({ ...phraseOf('arc', word, rounded?.range ?? form.range), to: end, form, rounded }));
  });

  private arcForm = this.RULE('arcForm', (): ArcForm =>
    this.OR({
      DEF: [
        { ALT: () => this.SUBRULE(this.arcByRadius) },
        { ALT: () => this.SUBRULE(this.arcThrough) },
        { ALT: () => this.SUBRULE(this.arcByRise) },
      ],
      ERR_MSG: '`radius`, `through` or `rise`',
    }),
  );

  private arcByRadius = this.RULE('arcByRadius', (): ArcForm => {
    const word = this.CONSUME(keyword.radius);
    const radius = this.SUBRULE(this.expression);
    const turn = this.SUBRULE(this.arcTurn);
    const large: IToken | undefined = this.OPTION(() => this.CONSUME(keyword.large));
    return this.ACTION(() => ({
      kind: 'arc by radius',
      radius,
      turn: turn.image as 'left' | 'right',
      large: large !== undefined,
      range: spanOf(rangeOf(word), rangeOf(large ?? turn)),
    }));
  });

  private arcThrough = this.RULE('arcThrough', (): ArcForm => {
    const word = this.CONSUME(keyword.through);
    const point = this.SUBRULE(this.point);
    return this.ACTION(() => ({ kind: 'arc through', point, range: spanOf(rangeOf(word), point.range) }));
  });

  private arcByRise = this.RULE('arcByRise', (): ArcForm => {
    const word = this.CONSUME(keyword.rise);
    const rise = this.SUBRULE(this.expression);
    const turn = this.SUBRULE(this.arcTurn);
    return this.ACTION(() => ({
      kind: 'arc by rise',
      rise,
      turn: turn.image as 'left' | 'right',
      range: spanOf(rangeOf(word), rangeOf(turn)),
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
      ...phraseOf('curve', word, (rounded ?? second ?? first).range),
      to: end,
      controls: second ? [first, second] : [first],
      rounded,
    }));
  });

  public spline = this.RULE('spline', (): SplineStep => {
    const word = this.CONSUME(keyword.spline);
    this.CONSUME(keyword.to);
    const { end, range } = this.SUBRULE(this.stepEnd);
    const through = this.SUBRULE(this.throughPoints);
    const rounded = this.SUBRULE(this.optionalRounded);
    return this.ACTION(() => ({
      ...phraseOf('spline', word, (rounded ?? through.at(-1))?.range ?? range),
      to: end,
      through,
      rounded,
    }));
  });

  public loop = this.RULE('loop', (): LoopStep => {
    const word = this.CONSUME(keyword.loop);
    const through = this.SUBRULE(this.throughPoints);
    return this.ACTION(() => ({ ...phraseOf('loop', word, through.at(-1)?.range ?? rangeOf(word)), through }));
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
    return this.ACTION(() => ({ ...phraseOf('circle', word, radius.range), at, radius }));
  });

  public ellipse = this.RULE('ellipse', (): EllipseStep => {
    const word = this.CONSUME(keyword.ellipse);
    const at = this.SUBRULE(this.optionalAt);
    this.CONSUME(keyword.radii);
    const radii = this.SUBRULE(this.point);
    const turned = this.SUBRULE(this.optionalTurned);
    return this.ACTION(() => ({ ...phraseOf('ellipse', word, (turned ?? radii).range), at, radii, turned }));
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
      ...phraseOf('rectangle', word, (rounded ?? turned ?? at ?? height).range),
      width,
      height,
      at,
      turned,
      rounded,
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
      ...phraseOf('polygon', word, (rounded ?? turned ?? radius).range),
      corners,
      at,
      radius,
      turned,
      rounded,
    }));
  });

  public path = this.RULE('path', (): PathStep => {
    const word = this.CONSUME(keyword.path);
    const source = this.OR({
      DEF: [{ ALT: () => this.SUBRULE(this.pathData) }, { ALT: () => this.SUBRULE(this.pathInDrawing) }],
      ERR_MSG: 'path data in double quotes, or `from` and an SVG file',
    });
    return this.ACTION(() => ({ ...phraseOf('path', word, source.range), source }));
  });

  private pathData = this.RULE('pathData', (): PathStep['source'] => {
    const data = this.SUBRULE(this.text);
    return this.ACTION(() => ({ kind: 'data', data, range: data.range }));
  });

  private pathInDrawing = this.RULE('pathInDrawing', (): PathStep['source'] => {
    const word = this.CONSUME(keyword.from);
    const file = this.SUBRULE(this.text);
    this.CONSUME(keyword.id);
    const id = this.SUBRULE2(this.text);
    return this.ACTION(() => ({ kind: 'drawing', file, id, range: spanOf(rangeOf(word), id.range) }));
  });

  private stepEnd = this.RULE('stepEnd', (): StepEndPlace =>
    this.OR<StepEndPlace>({
      DEF: [
        {
          GATE: () => this.isAhead(1, keyword.start) && !this.isAhead(2, Comma) && !this.arithmeticAhead(2),
          ALT: () => {
            const start = this.CONSUME(keyword.start);
            return this.ACTION(() => ({ end: null, range: rangeOf(start) }));
          },
        },
        {
          ALT: () => {
            const point = this.SUBRULE(this.point);
            return this.ACTION(() => ({ end: point, range: point.range }));
          },
        },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: 'a point `x, y` or `start`',
    }),
  );

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
