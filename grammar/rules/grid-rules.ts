/** Grammar of the phrases inside a grid. */
import { MaterialRules } from './material-rules.ts';
import type {
  BothSlantsProperty,
  ExceptProperty,
  FamilyProperty,
  GridKindProperty,
  MeasuredProperty,
} from '../tree/grid-syntax.ts';
import type { Expression } from '../tree/syntax-nodes.ts';
import { keyword } from '../vocabulary/tokens.ts';
import { rangeOf, spanOf } from '../tree/source-range.ts';
import { phraseOf } from './property-rules.ts';

/** How the lines of a family lie: in equal steps, or at places of their own. */
interface FamilyLines {
  readonly spacing: Expression | null;
  readonly offset: Expression | null;
  readonly positions: readonly Expression[];
  readonly last: Expression;
}

export class GridRules extends MaterialRules {
  public gridKind = this.RULE('gridKind', (): GridKindProperty => {
    const word = this.OR([
      { ALT: () => this.CONSUME(keyword.three_way) },
      { ALT: () => this.CONSUME(keyword.square) },
      { ALT: () => this.CONSUME(keyword.kagome) },
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
    return this.ACTION(() => ({ ...phraseOf('grid kind', word, angle.range), gridKind: 'diamond', angle }));
  });

  public family = this.RULE('family', (): FamilyProperty => {
    const word = this.CONSUME(keyword.family);
    const direction = this.SUBRULE(this.expression);
    const stock = this.OPTION(() => {
      this.CONSUME(keyword.of);
      return this.SUBRULE(this.name, { ARGS: ['the name of a strip'] });
    });
    const lines = this.OR({
      DEF: [{ ALT: () => this.SUBRULE(this.spacedLines) }, { ALT: () => this.SUBRULE(this.singleLines) }],
      ERR_MSG: '`spacing 40` or `at 0, 35, 80`',
    });
    const layer = this.OPTION2(() => {
      this.CONSUME(keyword.layer);
      return this.SUBRULE2(this.expression);
    });
    return this.ACTION(() => ({
      ...phraseOf('family', word, (layer ?? lines.last).range),
      direction,
      spacing: lines.spacing,
      offset: lines.offset,
      positions: lines.positions,
      stock: stock ?? null,
      layer: layer ?? null,
    }));
  });

  private spacedLines = this.RULE('spacedLines', (): FamilyLines => {
    this.CONSUME(keyword.spacing);
    const spacing = this.SUBRULE(this.expression);
    const offset = this.OPTION(() => {
      this.CONSUME(keyword.offset);
      return this.SUBRULE2(this.expression);
    });
    return this.ACTION(() => ({ spacing, offset: offset ?? null, positions: [], last: offset ?? spacing }));
  });

  private singleLines = this.RULE('singleLines', (): FamilyLines => {
    this.CONSUME(keyword.at);
    const positions = this.SUBRULE(this.expressionList);
    return this.ACTION(() => ({
      spacing: null,
      offset: null,
      positions,
      last: positions.at(-1) as Expression,
    }));
  });

  public except = this.RULE('except', (): ExceptProperty => {
    const word = this.CONSUME(keyword.except);
    const family = this.SUBRULE(this.expression);
    this.CONSUME(keyword.of);
    const stock = this.SUBRULE(this.name, { ARGS: ['the name of a strip'] });
    return this.ACTION(() => ({ ...phraseOf('except', word, stock.range), family, stock }));
  });

  public wall = this.valueRule('wall');
  public layers = this.listRule('layers');
  public side = this.valueRule('side');
  public pitch = this.valueRule('pitch');
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
      ...phraseOf('measured', word, (face ?? over).range),
      cells,
      over,
      face: face ?? null,
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
}
