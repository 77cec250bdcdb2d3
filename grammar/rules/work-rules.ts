/** Grammar of the phrases inside the work. */
import type { IToken } from 'chevrotain';
import { listed, typed } from '../problems/listed-words.ts';
import { ObjectRules } from './object-rules.ts';
import { phraseOf } from './property-rules.ts';
import { keyword } from '../vocabulary/tokens.ts';
import type {
  CommissionProperty,
  FinishUse,
  HangProperty,
  MinutesProperty,
  MoistureProperty,
  PlaceProperty,
} from '../tree/work-syntax.ts';
import { labourUnits } from '../tree/work-syntax.ts';
import { rangeOf, type SourceRange } from '../tree/source-range.ts';

export class WorkRules extends ObjectRules {
  public placement = this.RULE('placement', (): PlaceProperty => {
    const word = this.CONSUME(keyword.place);
    const part = this.SUBRULE(this.name, { ARGS: ['the name of a panel, board or pour'] });
    this.CONSUME(keyword.at);
    const at = this.SUBRULE(this.point);
    const turned = this.OPTION(() => {
      this.CONSUME(keyword.turned);
      return this.SUBRULE(this.expression);
    });
    const mirrored = this.OPTION2(() => this.CONSUME(keyword.mirrored));
    const inFrontOf = this.OPTION3(() => {
      this.CONSUME(keyword.in);
      this.CONSUME(keyword.front);
      this.CONSUME(keyword.of);
      return this.SUBRULE2(this.name, { ARGS: ['the name of what is behind it'] });
    });
    return this.ACTION((): PlaceProperty => {
      const last: SourceRange = inFrontOf?.range ?? (mirrored ? rangeOf(mirrored) : (turned ?? at).range);
      return {
        ...phraseOf('place', word, last),
        part,
        at,
        turned: turned ?? null,
        mirrored: mirrored !== undefined,
        inFrontOf: inFrontOf ?? null,
      };
    });
  });

  public hang = this.RULE('hang', (): HangProperty => {
    const word = this.CONSUME(keyword.hang);
    this.CONSUME(keyword.cleat);
    this.CONSUME(keyword.screws);
    const screws = this.SUBRULE(this.expression);
    this.CONSUME(keyword.each);
    const each = this.SUBRULE2(this.expression);
    const safety = this.OPTION(() => {
      this.CONSUME(keyword.safety);
      return this.SUBRULE3(this.expression);
    });
    const height = this.OPTION2(() => {
      this.CONSUME(keyword.height);
      return this.SUBRULE4(this.expression);
    });
    return this.ACTION(() => ({
      ...phraseOf('hang', word, (height ?? safety ?? each).range),
      screws,
      each,
      safety: safety ?? null,
      height: height ?? null,
    }));
  });

  public finishUse = this.RULE('finishUse', (): FinishUse => {
    const word = this.CONSUME(keyword.finish);
    return this.OR<FinishUse>({
      DEF: [
        {
          ALT: () => {
            const none = this.CONSUME(keyword.none);
            return this.ACTION(() => ({ ...phraseOf('finish used', word, rangeOf(none)), name: null }));
          },
        },
        {
          ALT: () => {
            const name = this.SUBRULE(this.name, { ARGS: ['the name of a finish'] });
            return this.ACTION(() => ({ ...phraseOf('finish used', word, name.range), name }));
          },
        },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: 'the name of a finish, or `none`',
    });
  });

  public moisture = this.RULE('moisture', (): MoistureProperty => {
    const word = this.CONSUME(keyword.moisture);
    const made = this.SUBRULE(this.expression);
    this.CONSUME(keyword.to);
    const hangs = this.SUBRULE2(this.expression);
    return this.ACTION(() => ({ ...phraseOf('moisture', word, hangs.range), made, hangs }));
  });

  public hourly = this.moneyRule('hourly');
  public packing = this.moneyRule('packing');
  public gain = this.chosenValueRule('gain', ['margin', 'markup']);
  public tax = this.valueRule('tax');
  public losses = this.valueRule('losses');

  public commission = this.RULE('commission', (): CommissionProperty => {
    const word = this.CONSUME(keyword.commission);
    const value = this.SUBRULE(this.expression);
    const of = this.OPTION(() => {
      this.CONSUME(keyword.of);
      return this.OR({
        DEF: [{ ALT: () => this.CONSUME(keyword.before_tax) }, { ALT: () => this.CONSUME(keyword.buyer_price) }],
        ERR_MSG: listed(typed(['before_tax', 'buyer_price'])),
      });
    });
    return this.ACTION((): CommissionProperty => ({
      ...phraseOf('commission', word, of ? rangeOf(of) : value.range),
      value,
      of: (of?.image ?? null) as CommissionProperty['of'],
    }));
  });

  public minutes = this.RULE('minutes', (): MinutesProperty => {
    const word = this.CONSUME(keyword.minutes);
    const value = this.SUBRULE(this.expression);
    const per = this.OR({
      DEF: [{ ALT: () => this.CONSUME(keyword.once) }, { ALT: () => this.SUBRULE(this.labourUnit) }],
      ERR_MSG: '`once` or `per` and what the minutes are for',
    });
    this.CONSUME(keyword.for);
    const aStep = 'a step of the job, such as `notch_strips`';
    const step = this.OR2({
      DEF: [{ GATE: () => !this.isAhead(1, keyword.for), ALT: () => this.SUBRULE(this.name, { ARGS: [aStep] }) }],
      ERR_MSG: aStep,
    });
    const wait = this.OPTION(() => {
      this.CONSUME(keyword.wait);
      return this.SUBRULE2(this.expression);
    });
    return this.ACTION(() => ({
      ...phraseOf('minutes', word, (wait ?? step).range),
      value,
      per: per.image as MinutesProperty['per'],
      perRange: rangeOf(per),
      step,
      wait: wait ?? null,
    }));
  });

  private labourUnit = this.RULE('labourUnit', (): IToken => {
    this.CONSUME(keyword.per);
    return this.OR({
      DEF: labourUnits.map((unit) => ({ ALT: () => this.CONSUME2(keyword[unit]) })),
      ERR_MSG: listed(typed(labourUnits)),
    });
  });
}
