/** Grammar of the phrases inside strips, benches, woods, sheets, resins and finishes. */
import type {
  BandBladeProperty,
  LengthsProperty,
  MixProperty,
  OnHandProperty,
  RecoatWindowProperty,
  RipProperty,
  SectionProperty,
  ShrinkageProperty,
  SizeProperty,
  SpareProperty,
} from '../tree/material-syntax.ts';
import type { Expression } from '../tree/syntax-nodes.ts';
import { phraseOf, PropertyRules } from './property-rules.ts';
import { Comma, keyword } from '../vocabulary/tokens.ts';
import { rangeOf, type SourceRange } from '../tree/source-range.ts';

export class MaterialRules extends PropertyRules {
  public rupture = this.valueRule('rupture');
  public elasticity = this.valueRule('elasticity');
  public pores = this.wordRule('pores', ['porous', 'closed']);

  public shrinkage = this.RULE('shrinkage', (): ShrinkageProperty => {
    const word = this.CONSUME(keyword.shrinkage);
    return this.OR({
      DEF: [
        {
          ALT: () => {
            const radial = this.SUBRULE(this.radialShare);
            const tangential = this.OPTION(() => this.SUBRULE(this.tangentialShare)) ?? null;
            return this.ACTION((): ShrinkageProperty => ({
              ...phraseOf('shrinkage', word, (tangential ?? radial).range),
              radial,
              tangential,
            }));
          },
        },
        {
          ALT: () => {
            const tangential = this.SUBRULE2(this.tangentialShare);
            return this.ACTION((): ShrinkageProperty => ({
              ...phraseOf('shrinkage', word, tangential.range),
              radial: null,
              tangential,
            }));
          },
        },
      ],
      ERR_MSG: '`radial` or `tangential`',
    });
  });

  private radialShare = this.RULE('radialShare', (): Expression => {
    this.CONSUME(keyword.radial);
    return this.SUBRULE(this.expression);
  });

  private tangentialShare = this.RULE('tangentialShare', (): Expression => {
    this.CONSUME(keyword.tangential);
    return this.SUBRULE(this.expression);
  });

  public ofWood = this.usedNameRule('of wood', 'wood', 'the name of a wood');
  public flush = this.valueRule('flush');
  public rejects = this.valueRule('rejects');
  public endTrim = this.valueRule('end_trim');
  public breath = this.listRule('breath');
  public keepOffcuts = this.valueRule('keep_offcuts');

  public section = this.RULE('section', (): SectionProperty => {
    const word = this.CONSUME(keyword.section);
    this.CONSUME(keyword.face);
    const { face, faceRange } = this.SUBRULE(this.sectionFace);
    this.CONSUME(keyword.depth);
    const depth = this.SUBRULE(this.expression);
    return this.ACTION(() => ({ ...phraseOf('section', word, depth.range), face, faceRange, depth }));
  });

  private sectionFace = this.RULE('sectionFace', (): Pick<SectionProperty, 'face' | 'faceRange'> =>
    this.OR<Pick<SectionProperty, 'face' | 'faceRange'>>({
      DEF: [
        {
          ALT: () => {
            const word = this.CONSUME(keyword.from_kerf);
            return this.ACTION(() => ({ face: null, faceRange: rangeOf(word) }));
          },
        },
        {
          ALT: () => {
            const face = this.SUBRULE(this.expression);
            return this.ACTION(() => ({ face, faceRange: face.range }));
          },
        },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: 'a length or `from_kerf`',
    }),
  );

  public lengths = this.RULE('lengths', (): LengthsProperty => {
    const word = this.CONSUME(keyword.lengths);
    const lengths: LengthsProperty['lengths'][number][] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: Comma,
      DEF: () => {
        const length = this.SUBRULE(this.expression);
        const price = this.SUBRULE(this.priceBehindAt);
        this.ACTION(() => lengths.push({ length, price }));
      },
    });
    return this.ACTION(() => {
      const last = lengths.at(-1);
      return { ...phraseOf('lengths', word, (last?.price ?? last?.length)?.range ?? rangeOf(word)), lengths };
    });
  });

  public onHand = this.RULE('onHand', (): OnHandProperty => {
    const word = this.CONSUME(keyword.on_hand);
    const sticks: OnHandProperty['sticks'][number][] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: Comma,
      DEF: () => {
        const count = this.SUBRULE(this.expression);
        this.CONSUME(keyword.of);
        const length = this.SUBRULE2(this.expression);
        this.ACTION(() => sticks.push({ count, length }));
      },
    });
    return this.ACTION(() => ({
      ...phraseOf('on_hand', word, sticks.at(-1)?.length.range ?? rangeOf(word)),
      sticks,
    }));
  });

  public spare = this.RULE('spare', (): SpareProperty => {
    const word = this.CONSUME(keyword.spare);
    return this.OR<SpareProperty>({
      DEF: [
        {
          GATE: () => this.valueAhead(2),
          ALT: () => {
            this.CONSUME(keyword.breakage);
            const share = this.SUBRULE(this.expression);
            this.CONSUME(keyword.confidence);
            const confidence = this.SUBRULE2(this.expression);
            return this.ACTION(() => ({ ...phraseOf('spare', word, confidence.range), share, confidence }));
          },
        },
        {
          ALT: () => {
            const share = this.SUBRULE3(this.expression);
            return this.ACTION(() => ({ ...phraseOf('spare', word, share.range), share, confidence: null }));
          },
        },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: 'a percentage or `breakage`',
    });
  });

  public rip = this.RULE('rip', (): RipProperty => {
    const word = this.CONSUME(keyword.rip);
    this.CONSUME(keyword.from);
    const thickness = this.SUBRULE(this.expression);
    this.CONSUME(keyword.x, { ERR_MSG: '`x` between thickness, width and length' });
    const { width, height: length } = this.SUBRULE(this.twoMeasures);
    const price = this.SUBRULE(this.priceBehindAt);
    const gives = this.OPTION(() => {
      this.CONSUME(keyword.thickness);
      this.CONSUME(keyword.is);
      return this.OR({
        DEF: [{ ALT: () => this.CONSUME(keyword.face) }, { ALT: () => this.CONSUME(keyword.depth) }],
        ERR_MSG: '`face` or `depth`',
      });
    });
    const rejoint = this.OPTION2(() => {
      this.CONSUME(keyword.rejoint);
      const allowance = this.SUBRULE2(this.expression);
      this.CONSUME(keyword.every);
      const every = this.SUBRULE3(this.expression);
      return { allowance, every };
    });
    return this.ACTION((): RipProperty => {
      const last: SourceRange = rejoint?.every.range ?? (gives && rangeOf(gives)) ?? (price ?? length).range;
      const thicknessGives = (gives?.image ?? null) as RipProperty['thicknessGives'];
      return {
        ...phraseOf('rip', word, last),
        thickness,
        width,
        length,
        price,
        thicknessGives,
        rejoint: rejoint ?? null,
      };
    });
  });

  public bevels = this.listRule('bevels');
  public rippingKerf = this.valueRule('ripping_kerf');
  public shortest = this.valueRule('shortest');
  public gang = this.valueRule('gang');
  public trim = this.valueRule('trim');
  public pinPitches = this.twoWordListRule('pin pitches', 'pin', 'pitches');
  public fixedStop = this.wordRule('fixed stop', ['fixed_stop']);
  public pitchError = this.valueRule('pitch_error');
  public pitchScatter = this.valueRule('pitch_scatter');

  public bandBlade = this.RULE('bandBlade', (): BandBladeProperty => {
    const word = this.CONSUME(keyword.band_blade);
    const width = this.SUBRULE(this.expression);
    const cuts = this.OPTION(() => {
      this.CONSUME(keyword.cuts);
      return this.SUBRULE2(this.expression);
    });
    const curve = this.OPTION2(() => {
      this.CONSUME(keyword.curve);
      return this.SUBRULE3(this.expression);
    });
    return this.ACTION(() => ({
      ...phraseOf('band_blade', word, (curve ?? cuts ?? width).range),
      width,
      cuts: cuts ?? null,
      curve: curve ?? null,
    }));
  });

  public thick = this.valueRule('thick');

  public size = this.RULE('size', (): SizeProperty => {
    const word = this.CONSUME(keyword.size);
    const sizes: SizeProperty['sizes'][number][] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: Comma,
      DEF: () => {
        const measures = this.SUBRULE(this.twoMeasures);
        const price = this.SUBRULE(this.priceBehindAt);
        this.ACTION(() => sizes.push({ ...measures, price }));
      },
    });
    return this.ACTION(() => {
      const last = sizes.at(-1);
      return { ...phraseOf('size', word, (last?.price ?? last?.height)?.range ?? rangeOf(word)), sizes };
    });
  });

  public mix = this.RULE('mix', (): MixProperty => {
    const word = this.CONSUME(keyword.mix);
    const resin = this.SUBRULE(this.expression);
    this.CONSUME(keyword.to);
    const hardener = this.SUBRULE2(this.expression);
    this.CONSUME(keyword.by);
    const by = this.OR({
      DEF: [{ ALT: () => this.CONSUME(keyword.volume) }, { ALT: () => this.CONSUME(keyword.mass) }],
      ERR_MSG: '`volume` or `mass`',
    });
    return this.ACTION(() => ({
      ...phraseOf('mix', word, rangeOf(by)),
      resin,
      hardener,
      by: by.image as MixProperty['by'],
    }));
  });

  public partDensities = this.twoWordListRule('part densities', 'part', 'densities');
  public deepest = this.valueRule('deepest');
  public potLife = this.valueRule('pot_life');
  public cure = this.valueRule('cure');
  public mixSize = this.valueRule('mix_size');

  public recoatWindow = this.RULE('recoatWindow', (): RecoatWindowProperty => {
    const word = this.CONSUME(keyword.recoat);
    const earliest = this.SUBRULE(this.expression);
    this.CONSUME(keyword.to);
    const latest = this.SUBRULE2(this.expression);
    return this.ACTION(() => ({ ...phraseOf('recoat window', word, latest.range), earliest, latest }));
  });

  public coverage = this.valueRule('coverage');
  public coats = this.valueRule('coats');
  public loss = this.valueRule('loss');
  public recoat = this.valueRule('recoat');
}
