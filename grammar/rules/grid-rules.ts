/** Grammar of the families of a grid: declared each, or changed of a kind that has its own. */
import { rangeOf } from './expression-rules.ts';
import { PanelRules } from './panel-rules.ts';
import { spanOf } from '../tree/source-range.ts';
import type { ExceptProperty, Expression, FamilyProperty } from '../tree/syntax-tree.ts';
import { keyword } from '../vocabulary/tokens.ts';

/** How the lines of a family lie: in equal steps, or at places of their own. */
interface FamilyLines {
  readonly spacing: Expression | null;
  readonly offset: Expression | null;
  readonly positions: readonly Expression[];
  readonly last: Expression;
}

export class GridRules extends PanelRules {
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
      kind: 'family',
      keyword: rangeOf(word),
      direction,
      spacing: lines.spacing,
      offset: lines.offset,
      positions: lines.positions,
      stock: stock ?? null,
      layer: layer ?? null,
      range: spanOf(rangeOf(word), (layer ?? lines.last).range),
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
    return this.ACTION(() => ({
      kind: 'except',
      keyword: rangeOf(word),
      family,
      stock,
      range: spanOf(rangeOf(word), stock.range),
    }));
  });

  public wall = this.valueRule('wall');
  public layers = this.listRule('layers');
}
