/** Grammar of the phrases inside frames, blanks, bands, pours, boards and kits. */
import { PanelRules } from './panel-rules.ts';
import type {
  BendsProperty,
  CastDepthProperty,
  DoneProperty,
  FrameProperty,
  InsertProperty,
  LayerProperty,
  PivotProperty,
  SparesProperty,
  TakeProperty,
} from '../tree/object-syntax.ts';
import type { ChoiceProperty, Expression, NameProperty, SizedProperty, ValueProperty } from '../tree/syntax-nodes.ts';
import { phraseOf } from './property-rules.ts';
import { Comma, keyword, LeftBracket, Word } from '../vocabulary/tokens.ts';
import { rangeOf, type SourceRange } from '../tree/source-range.ts';

export class ObjectRules extends PanelRules {
  public frame = this.RULE('frame', (): FrameProperty => {
    const word = this.CONSUME(keyword.frame);
    return this.ACTION(() => ({ ...phraseOf('frame', word, rangeOf(word)), properties: [], incomplete: false }));
  });

  public joint = this.chosenValueRule('joint', ['groove', 'stub']);
  public endGap = this.valueRule('end_gap');
  public bearing = this.wordRule('bearing', ['border', 'fillers']);

  public take = this.RULE('take', (): TakeProperty => {
    const word = this.CONSUME(keyword.take);
    const panel = this.SUBRULE(this.name, { ARGS: ['the name of a panel'] });
    const count = this.OPTION({
      GATE: () => this.valueAhead(1),
      DEF: () => this.SUBRULE(this.expression),
    });
    return this.ACTION(() => ({ ...phraseOf('take', word, (count ?? panel).range), panel, count: count ?? null }));
  });

  public blankSize = this.RULE('blankSize', (): SizedProperty<'blank size'> => {
    const word = this.CONSUME(keyword.shape);
    const { width, height } = this.SUBRULE(this.twoMeasures);
    return this.ACTION(() => ({ ...phraseOf('blank size', word, height.range), width, height }));
  });

  public gap = this.valueRule('gap');
  public allowance = this.valueRule('allowance');
  public fromBack = this.wordRule('from back', ['from_back']);

  public matchLaps = this.RULE('matchLaps', (): ChoiceProperty<'match laps', 'match'> => {
    const word = this.CONSUME(keyword.match);
    const laps = this.CONSUME(keyword.laps);
    return this.ACTION(() => ({ ...phraseOf('match laps', word, rangeOf(laps)), choice: 'match' }));
  });

  public castDepth = this.RULE('castDepth', (): CastDepthProperty => {
    const word = this.CONSUME(keyword.depth);
    const depth = this.SUBRULE(this.expression);
    const surfaced = this.OPTION(() => {
      this.CONSUME(keyword.surfaced);
      return this.SUBRULE2(this.expression);
    });
    const overfill = this.OPTION2(() => {
      this.CONSUME(keyword.overfill);
      return this.SUBRULE3(this.expression);
    });
    return this.ACTION(() => ({
      ...phraseOf('cast depth', word, (overfill ?? surfaced ?? depth).range),
      depth,
      surfaced: surfaced ?? null,
      overfill: overfill ?? null,
    }));
  });

  public around = this.usedNameRule('around', 'around', 'the name of a panel or outline');
  public laminations = this.valueRule('laminations');
  public method = this.choiceRule('method', ['cold', 'damp', 'hot']);
  public overLength = this.valueRule('over_length');
  public overWidth = this.valueRule('over_width');

  public bends = this.RULE('bends', (): BendsProperty => {
    const word = this.CONSUME(keyword.bends);
    const radius = this.SUBRULE(this.expression);
    const method = this.OPTION(() =>
      this.OR([
        { ALT: () => this.CONSUME(keyword.cold) },
        { ALT: () => this.CONSUME(keyword.damp) },
        { ALT: () => this.CONSUME(keyword.hot) },
      ]),
    );
    const tested = this.CONSUME(keyword.tested);
    return this.ACTION(() => ({
      ...phraseOf('bends', word, rangeOf(tested)),
      radius,
      method: (method?.image ?? null) as BendsProperty['method'],
    }));
  });

  public mould = this.RULE('mould', (): NameProperty<'mould'> | SizedProperty<'mould size'> => {
    const word = this.CONSUME(keyword.mould);
    return this.OR<NameProperty<'mould'> | SizedProperty<'mould size'>>({
      DEF: [
        {
          GATE: () => this.isAhead(1, Word) && !this.isAhead(2, keyword.x) && !this.arithmeticAhead(2),
          ALT: () => {
            const name = this.SUBRULE(this.name, { ARGS: ['the name of an outline or blank'] });
            return this.ACTION(() => ({ ...phraseOf('mould', word, name.range), name }));
          },
        },
        {
          ALT: () => {
            const { width, height } = this.SUBRULE(this.twoMeasures);
            return this.ACTION(() => ({ ...phraseOf('mould size', word, height.range), width, height }));
          },
        },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: 'the name of an outline or blank, or `80 x 400`',
    });
  });

  public layer = this.RULE('layer', (): LayerProperty => {
    const word = this.CONSUME(keyword.layer);
    const colour = this.OPTION({
      GATE: () => this.LA(1).tokenType === Word && this.valueAhead(2) && !this.isAhead(2, LeftBracket),
      DEF: () => this.SUBRULE(this.name, { ARGS: ['a colour or a depth'] }),
    });
    const depth = this.SUBRULE(this.expression);
    return this.ACTION(() => ({ ...phraseOf('layer', word, depth.range), colour: colour ?? null, depth }));
  });

  public insert = this.RULE('insert', (): InsertProperty => {
    const word = this.CONSUME(keyword.insert);
    const outline = this.SUBRULE(this.name, { ARGS: ['the name of an outline'] });
    this.CONSUME(keyword.from);
    const from = this.SUBRULE(this.expression);
    this.CONSUME(keyword.to);
    const to = this.SUBRULE2(this.expression);
    const density = this.OPTION(() => {
      this.CONSUME(keyword.density);
      return this.SUBRULE3(this.expression);
    });
    return this.ACTION(() => ({
      ...phraseOf('insert', word, (density ?? to).range),
      outline,
      from,
      to,
      density: density ?? null,
    }));
  });

  public overfill = this.valueRule('overfill');
  public surfaced = this.valueRule('surfaced');
  public seal = this.valueRule('seal');
  public waste = this.valueRule('waste');
  public spareCastings = this.valueRule('spare_castings');

  public boardShape = this.usedNameRule('board shape', 'shape', 'the name of an outline');
  public ofSheet = this.usedNameRule('of sheet', 'of', 'the name of a sheet');
  public boardEdge = this.chosenValueRule('board edge', ['chamfer', 'round_over']);

  public pivot = this.RULE('pivot', (): PivotProperty => {
    const word = this.CONSUME(keyword.pivot);
    const at = this.SUBRULE(this.point);
    return this.ACTION(() => ({ ...phraseOf('pivot', word, at.range), at }));
  });

  public kitPanel = this.usedNameRule('kit panel', 'panel', 'the name of a panel');
  public students = this.valueRule('students');
  public breakage = this.valueRule('breakage');

  public done = this.RULE('done', (): DoneProperty => {
    const word = this.CONSUME(keyword.done);
    const tasks: DoneProperty['tasks'][number][] = [];
    let last: SourceRange = this.ACTION(() => rangeOf(word));
    this.AT_LEAST_ONE_SEP({
      SEP: Comma,
      DEF: () => {
        const task = this.OR({
          DEF: [
            { ALT: () => this.CONSUME(keyword.milled) },
            { ALT: () => this.CONSUME(keyword.notched) },
            { ALT: () => this.CONSUME(keyword.cut) },
            { ALT: () => this.CONSUME(keyword.bevelled) },
          ],
          ERR_MSG: '`milled`, `notched`, `cut` or `bevelled`',
        });
        this.ACTION(() => {
          tasks.push(task.image as DoneProperty['tasks'][number]);
          last = rangeOf(task);
        });
      },
    });
    return this.ACTION(() => ({ ...phraseOf('done', word, last), tasks }));
  });

  public spares = this.RULE('spares', (): SparesProperty => {
    const word = this.CONSUME(keyword.spares);
    let perBag: Expression | null = null;
    let withTeacher: Expression | null = null;
    let last: SourceRange = this.ACTION(() => rangeOf(word));
    this.AT_LEAST_ONE_SEP({
      SEP: Comma,
      DEF: () => {
        const count = this.SUBRULE(this.expression);
        this.OR({
          DEF: [
            {
              ALT: () => {
                this.CONSUME(keyword.per);
                last = rangeOf(this.CONSUME(keyword.bag));
                perBag = count;
              },
            },
            {
              ALT: () => {
                this.CONSUME(keyword.with);
                last = rangeOf(this.CONSUME(keyword.teacher));
                withTeacher = count;
              },
            },
          ],
          ERR_MSG: '`per bag` or `with teacher`',
        });
      },
    });
    return this.ACTION(() => ({ ...phraseOf('spares', word, last), perBag, withTeacher }));
  });

  public jig = this.RULE('jig', (): ValueProperty<'jig'> => {
    const word = this.CONSUME(keyword.jig);
    this.CONSUME(keyword.for);
    const value = this.SUBRULE(this.expression);
    return this.ACTION(() => ({ ...phraseOf('jig', word, value.range), value }));
  });
}
