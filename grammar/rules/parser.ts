/**
 * Grammar of declarations, on top of all phrases that stand in their blocks, one public rule each.
 * `read-blocks.ts` finds where phrases begin and joins them into a tree, so an error stays inside its phrase.
 */
import { WorkRules } from './work-rules.ts';
import type { Name, Phrase, ShapeName } from '../tree/syntax-nodes.ts';
import type {
  BlockDeclaration,
  LetDeclaration,
  TitleDeclaration,
  UnitsDeclaration,
  UseDeclaration,
} from '../tree/syntax-tree.ts';
import { Equals, keyword, Word } from '../vocabulary/tokens.ts';
import { rangeOf } from '../tree/source-range.ts';
import { phraseOf } from './property-rules.ts';

/** The head of a declaration with a body: all that stands before its `{`. */
export interface BlockHead extends Phrase {
  readonly kind: 'head';
  readonly declared: BlockDeclaration['kind'];
  readonly name: Name;
  readonly shape: ShapeName | null;
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
    return this.ACTION(() => ({ ...phraseOf('use', word, source.range), source }));
  });

  public title = this.RULE('title', (): TitleDeclaration => {
    const word = this.CONSUME(keyword.title);
    const text = this.SUBRULE(this.text);
    return this.ACTION(() => ({ ...phraseOf('title', word, text.range), text }));
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
      ...phraseOf('units', word, rangeOf(unit)),
      unit: unit.image as UnitsDeclaration['unit'],
    }));
  });

  public let = this.RULE('let', (): LetDeclaration => {
    const word = this.CONSUME(keyword.let);
    const name = this.SUBRULE(this.name, { ARGS: ['a name for the number'] });
    this.CONSUME(Equals);
    const value = this.SUBRULE(this.expression);
    return this.ACTION(() => ({ ...phraseOf('let', word, value.range), name, value }));
  });

  public wood = this.headRule('wood');
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
    return this.ACTION(() => ({ ...phraseOf('head', word, shape.range), declared: 'motif', name, shape }));
  });

  private headRule(word: BlockDeclaration['kind']) {
    return this.RULE(`${word}_head`, (): BlockHead => {
      const first = this.CONSUME(keyword[word]);
      const name = this.SUBRULE(this.name, { ARGS: [`a name for the ${word}`] });
      return this.ACTION(() => ({ ...phraseOf('head', first, name.range), declared: word, name, shape: null }));
    });
  }
}

/** One for all: working out the grammar takes a while. */
export const phraseParser = new PhraseParser();
