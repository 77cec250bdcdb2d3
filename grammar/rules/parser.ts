/**
 * The grammar of every phrase: declarations' heads and properties, one public rule each.
 * `read-blocks.ts` finds where phrases begin and joins them into a tree, so an error stays inside its phrase.
 */
import { rangeOf } from './expression-rules.ts';
import { WorkRules } from './work-rules.ts';
import { spanOf } from '../tree/source-range.ts';
import type { SourceRange } from '../tree/source-range.ts';
import type { BothSlantsProperty, GridKindProperty, MeasuredProperty } from '../tree/grid-syntax.ts';
import type {
  BlockDeclaration,
  LetDeclaration,
  Name,
  ShapeName,
  TitleDeclaration,
  UnitsDeclaration,
  UseDeclaration,
} from '../tree/syntax-tree.ts';
import { Equals, keyword, Word } from '../vocabulary/tokens.ts';

/** The head of a declaration with a body: all that stands before its `{`. */
export interface BlockHead {
  readonly kind: 'head';
  readonly declared: BlockDeclaration['kind'];
  readonly keyword: SourceRange;
  readonly name: Name;
  readonly shape: ShapeName | null;
  readonly range: SourceRange;
}

export class PhraseParser extends WorkRules {
  constructor() {
    super();
    this.performSelfAnalysis();
  }

  public use = this.RULE('use', (): UseDeclaration => {
    const word = this.CONSUME(keyword.use);
    const source = this.OR({
      DEF: [
        {
          ALT: () => {
            const file = this.SUBRULE(this.text);
            return this.ACTION((): UseDeclaration['source'] => ({ kind: 'file', ...file }));
          },
        },
        {
          GATE: () => this.LA(1).tokenType === Word, // a known word begins the next declaration
          ALT: () => {
            const library = this.SUBRULE(this.name, { ARGS: ['a file or a library'] });
            return this.ACTION((): UseDeclaration['source'] => ({ kind: 'library', ...library }));
          },
        },
      ],
      ERR_MSG: 'a file in double quotes or the name of a library',
    });
    return this.ACTION(() => ({
      kind: 'use',
      keyword: rangeOf(word),
      source,
      range: spanOf(rangeOf(word), source.range),
    }));
  });

  public title = this.RULE('title', (): TitleDeclaration => {
    const word = this.CONSUME(keyword.title);
    const text = this.SUBRULE(this.text);
    return this.ACTION(() => ({
      kind: 'title',
      keyword: rangeOf(word),
      text,
      range: spanOf(rangeOf(word), text.range),
    }));
  });

  public units = this.RULE('units', (): UnitsDeclaration => {
    const word = this.CONSUME(keyword.units);
    const unit = this.OR({
      DEF: [
        { ALT: () => this.CONSUME(keyword.mm) },
        { ALT: () => this.CONSUME(keyword.cm) },
        { ALT: () => this.CONSUME(keyword.m) },
        { ALT: () => this.CONSUME(keyword.in) },
        { ALT: () => this.CONSUME(keyword.ft) },
      ],
      ERR_MSG: '`mm`, `cm`, `m`, `in` or `ft`',
    });
    return this.ACTION(() => ({
      kind: 'units',
      keyword: rangeOf(word),
      unit: unit.image as UnitsDeclaration['unit'],
      range: spanOf(rangeOf(word), rangeOf(unit)),
    }));
  });

  public let = this.RULE('let', (): LetDeclaration => {
    const word = this.CONSUME(keyword.let);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the number'] });
    this.CONSUME(Equals);
    const value = this.SUBRULE(this.expression);
    return this.ACTION(() => ({
      kind: 'let',
      keyword: rangeOf(word),
      name,
      value,
      range: spanOf(rangeOf(word), value.range),
    }));
  });

  public woodHead = this.headRule('wood');
  public strip = this.headRule('strip');
  public sheet = this.headRule('sheet');
  public resin = this.headRule('resin');
  public finish = this.headRule('finish');
  public bench = this.headRule('bench');
  public grid = this.headRule('grid');
  public outline = this.headRule('outline');
  public panel = this.headRule('panel');
  public blank = this.headRule('blank');
  public band = this.headRule('band');
  public pour = this.headRule('pour');
  public board = this.headRule('board');
  public work = this.headRule('work');
  public kit = this.headRule('kit');

  public motif = this.RULE('motif', (): BlockHead => {
    const word = this.CONSUME(keyword.motif);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the motif'] });
    this.CONSUME(keyword.for);
    const shape = this.SUBRULE(this.shapeName);
    return this.ACTION(() => ({
      kind: 'head',
      declared: 'motif',
      keyword: rangeOf(word),
      name,
      shape,
      range: spanOf(rangeOf(word), shape.range),
    }));
  });

  public gridKind = this.RULE('gridKind', (): GridKindProperty => {
    const word = this.OR([
      { ALT: () => this.CONSUME(keyword.three_way) },
      { ALT: () => this.CONSUME(keyword.square) },
      { ALT: () => this.CONSUME(keyword.basket_weave) },
      { ALT: () => this.CONSUME(keyword.free) },
    ]);
    return this.ACTION(() => ({
      kind: 'grid kind',
      keyword: rangeOf(word),
      gridKind: word.image as GridKindProperty['gridKind'],
      angle: null,
      range: rangeOf(word),
    }));
  });

  public diamond = this.RULE('diamond', (): GridKindProperty => {
    const word = this.CONSUME(keyword.diamond);
    const angle = this.SUBRULE(this.expression);
    return this.ACTION(() => ({
      kind: 'grid kind',
      keyword: rangeOf(word),
      gridKind: 'diamond',
      angle,
      range: spanOf(rangeOf(word), angle.range),
    }));
  });

  public side = this.valueRule('side');
  public pitch = this.valueRule('pitch');
  public of = this.nameRule('of', 'the name of a strip');
  public fit = this.valueRule('fit');
  public turn = this.valueRule('turn');

  public measured = this.RULE('measured', (): MeasuredProperty => {
    const word = this.CONSUME(keyword.measured);
    const cells = this.SUBRULE(this.expression);
    this.CONSUME(keyword.cells);
    const over = this.SUBRULE2(this.expression);
    const face = this.OPTION(() => {
      this.CONSUME(keyword.face);
      return this.SUBRULE3(this.expression);
    });
    return this.ACTION(() => ({
      kind: 'measured',
      keyword: rangeOf(word),
      cells,
      over,
      face: face ?? null,
      range: spanOf(rangeOf(word), (face ?? over).range),
    }));
  });

  public bothSlants = this.RULE('bothSlants', (): BothSlantsProperty => {
    const first = this.CONSUME(keyword.both);
    const second = this.CONSUME(keyword.slants);
    return this.ACTION(() => {
      const range = spanOf(rangeOf(first), rangeOf(second));
      return { kind: 'both slants', keyword: range, range };
    });
  });

  public usedGrid = this.nameRule('grid', 'the name of a grid');
  public stub = this.valueRule('stub');
  public tail = this.valueRule('tail');
  public sliver = this.valueRule('sliver');
  public copies = this.valueRule('copies');

  private headRule(word: BlockDeclaration['kind']) {
    return this.RULE(`${word}_head`, (): BlockHead => {
      const first = this.CONSUME(keyword[word]);
      const name = this.SUBRULE(this.name, { ARGS: [`a name for the ${word}`] });
      return this.ACTION(() => ({
        kind: 'head',
        declared: word,
        keyword: rangeOf(first),
        name,
        shape: null,
        range: spanOf(rangeOf(first), name.range),
      }));
    });
  }
}
