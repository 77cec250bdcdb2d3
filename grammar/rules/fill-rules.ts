/** Grammar of what fills the cells of a panel: fills, and the map with its signs. */
import type { NodeOf } from '../tree/syntax-tree.ts';
import type { IToken } from 'chevrotain';
import type {
  FillPlaceSyntax,
  MapEntry,
  MapProperty,
  MapRow,
  MapSign,
  MotifUse,
  PanelFillProperty,
} from '../tree/fill-syntax.ts';
import type { Expression, Name } from '../tree/syntax-nodes.ts';
import { OutlineChangeRules } from './outline-change-rules.ts';
import { Comma, Dot, Equals, keyword, Word } from '../vocabulary/tokens.ts';
import { rangeOf, type SourceRange, spanOf } from '../tree/source-range.ts';
import { phraseOf } from './property-rules.ts';

/** A motif use with where it stands. */
interface MotifUsePlace {
  readonly use: MotifUse | null;
  readonly range: SourceRange;
}

type ByDistance = NodeOf<'by distance'>;

export class FillRules extends OutlineChangeRules {
  public panelFill = this.RULE('panelFill', (): PanelFillProperty => {
    const word = this.CONSUME(keyword.fill);
    const places: FillPlaceSyntax[] = [];
    this.MANY(() => {
      const place = this.SUBRULE(this.fillPlace);
      this.ACTION(() => places.push(place));
    });
    const shape = this.SUBRULE(this.shapeName);
    this.CONSUME(keyword.with);
    const { use, range } = this.SUBRULE(this.openOrUse);
    return this.ACTION(() => ({ ...phraseOf('panel fill', word, range), places, shape, use, tips: [] }));
  });

  private fillPlace = this.RULE('fillPlace', (): FillPlaceSyntax =>
    this.OR([
      { ALT: () => this.SUBRULE(this.numberedPlace) },
      { ALT: () => this.SUBRULE(this.everyPlace) },
      { ALT: () => this.SUBRULE(this.regionPlace) },
      { ALT: () => this.SUBRULE(this.marginPlace) },
    ]),
  );

  private numberedPlace = this.RULE('numberedPlace', (): FillPlaceSyntax => {
    const word = this.OR([
      { ALT: () => this.CONSUME(keyword.row) },
      { ALT: () => this.CONSUME(keyword.column) },
      { ALT: () => this.CONSUME(keyword.ring) },
    ]);
    const first = this.SUBRULE(this.expression);
    const last: Expression | undefined = this.OPTION(() => {
      this.CONSUME(keyword.to);
      return this.SUBRULE2(this.expression);
    });
    return this.ACTION(() => ({
      kind: word.image === 'row' ? 'rows' : word.image === 'column' ? 'columns' : 'rings',
      first,
      last: last ?? null,
      range: spanOf(rangeOf(word), (last ?? first).range),
    }));
  });

  private everyPlace = this.RULE('everyPlace', (): FillPlaceSyntax => {
    const word = this.CONSUME(keyword.every);
    const every = this.SUBRULE(this.expression);
    const of = this.OR({
      DEF: [{ ALT: () => this.CONSUME(keyword.rows) }, { ALT: () => this.CONSUME(keyword.columns) }],
      ERR_MSG: '`rows` or `columns`',
    });
    const from: Expression | undefined = this.OPTION(() => {
      this.CONSUME(keyword.from);
      return this.SUBRULE2(this.expression);
    });
    return this.ACTION(() => ({
      kind: 'every',
      of: of.image as 'rows' | 'columns',
      every,
      from: from ?? null,
      range: spanOf(rangeOf(word), from?.range ?? rangeOf(of)),
    }));
  });

  private regionPlace = this.RULE('regionPlace', (): FillPlaceSyntax => {
    const word = this.OR([{ ALT: () => this.CONSUME(keyword.inside) }, { ALT: () => this.CONSUME(keyword.outside) }]);
    const outline = this.SUBRULE(this.name, { ARGS: ['the name of an outline'] });
    return this.ACTION(() => ({
      kind: 'region',
      inside: word.image === 'inside',
      outline,
      range: spanOf(rangeOf(word), outline.range),
    }));
  });

  private marginPlace = this.RULE('marginPlace', (): FillPlaceSyntax => {
    const word = this.OR([{ ALT: () => this.CONSUME(keyword.within) }, { ALT: () => this.CONSUME(keyword.beyond) }]);
    const reach = this.SUBRULE(this.expression);
    this.CONSUME(keyword.of);
    const line = this.SUBRULE(this.rimOrOutline);
    return this.ACTION(() => ({
      kind: 'by distance',
      within: word.image === 'within',
      reach,
      of: line.of,
      range: spanOf(rangeOf(word), line.range),
    }));
  });

  private rimOrOutline = this.RULE('rimOrOutline', (): Pick<ByDistance, 'of' | 'range'> =>
    this.OR<Pick<ByDistance, 'of' | 'range'>>({
      DEF: [
        {
          ALT: () => {
            const word = this.CONSUME(keyword.rim);
            return this.ACTION(() => ({ of: null, range: rangeOf(word) }));
          },
        },
        {
          ALT: () => {
            const outline = this.SUBRULE(this.name, { ARGS: ['the name of an outline'] });
            return this.ACTION(() => ({ of: outline, range: outline.range }));
          },
        },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: '`rim` or the name of an outline',
    }),
  );

  private motifUse = this.RULE('motifUse', (): MotifUsePlace => {
    const motifs: Name[] = [];
    this.AT_LEAST_ONE_SEP({
      SEP: Comma,
      DEF: () => {
        const motif = this.SUBRULE(this.name, { ARGS: ['the name of a motif'] });
        this.ACTION(() => motifs.push(motif));
      },
    });
    this.CONSUME(keyword.of);
    const stock = this.SUBRULE2(this.name, { ARGS: ['the name of a strip'] });
    const turned: readonly Expression[] | undefined = this.OPTION(() => {
      this.CONSUME(keyword.turned);
      return this.SUBRULE(this.expressionList);
    });
    const by: MotifUse['by'] | undefined = this.OPTION2(() => this.SUBRULE(this.takingTurns));
    const mirrored: IToken | undefined = this.OPTION3(() => this.CONSUME(keyword.mirrored));
    return this.ACTION(() => ({
      use: {
        motifs,
        stock,
        turned: turned ?? [],
        by: by ?? null,
        mirrored: mirrored !== undefined,
      },
      range: spanOf(
        motifs[0]?.range ?? stock.range,
        mirrored ? rangeOf(mirrored) : (by ?? turned?.at(-1) ?? stock).range,
      ),
    }));
  });

  /** `open`, or a motif, which may have that name. */
  private openOrUse = this.RULE('openOrUse', (): MotifUsePlace =>
    this.OR({
      DEF: [
        {
          GATE: () => !this.isAhead(2, keyword.of) && !this.isAhead(2, Comma),
          ALT: () => {
            const word = this.CONSUME(keyword.open);
            return this.ACTION(() => ({ use: null, range: rangeOf(word) }));
          },
        },
        { ALT: () => this.SUBRULE(this.motifUse) },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: 'the name of a motif',
    }),
  );

  /** `by row`. */
  private takingTurns = this.RULE('takingTurns', (): NonNullable<MotifUse['by']> => {
    const word = this.CONSUME(keyword.by);
    const what = this.OR({
      DEF: [
        { ALT: () => this.CONSUME(keyword.cell) },
        { ALT: () => this.CONSUME(keyword.row) },
        { ALT: () => this.CONSUME(keyword.column) },
      ],
      ERR_MSG: '`cell`, `row` or `column`',
    });
    return this.ACTION(() => ({
      what: what.image as NonNullable<MotifUse['by']>['what'],
      range: spanOf(rangeOf(word), rangeOf(what)),
    }));
  });

  public map = this.RULE('map', (): MapProperty => {
    const word = this.CONSUME(keyword.map);
    return this.ACTION(() => ({
      kind: 'map',
      keyword: rangeOf(word),
      lines: [],
      incomplete: false,
      range: rangeOf(word),
    }));
  });

  private mapSign = this.RULE('mapSign', (): MapSign => {
    const token = this.OR({
      DEF: [{ ALT: () => this.CONSUME(Word) }, { ALT: () => this.CONSUME(Dot) }],
      ERR_MSG: 'a sign: a name or `.`',
    });
    return this.ACTION(() => ({ text: token.image, range: rangeOf(token) }));
  });

  public mapEntry = this.RULE('mapEntry', (): MapEntry => {
    const sign = this.SUBRULE(this.mapSign);
    this.CONSUME(Equals);
    const { use, range } = this.SUBRULE(this.openOrUse);
    return this.ACTION(() => ({
      kind: 'map entry',
      keyword: sign.range,
      sign,
      use,
      range: spanOf(sign.range, range),
    }));
  });

  public mapRow = this.RULE('mapRow', (): MapRow => {
    const word = this.CONSUME(keyword.row);
    const signs: MapSign[] = [];
    this.AT_LEAST_ONE({
      GATE: () => !this.isAhead(1, keyword.row) && !this.isAhead(2, Equals),
      DEF: () => {
        const sign = this.SUBRULE(this.mapSign);
        this.ACTION(() => signs.push(sign));
      },
      ERR_MSG: 'signs, one a cell',
    });
    return this.ACTION(() => ({ ...phraseOf('map row', word, signs.at(-1)?.range ?? rangeOf(word)), signs }));
  });
}
