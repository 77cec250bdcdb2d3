/** Grammar of the phrases inside a panel. */
import { FillRules } from './fill-rules.ts';
import type {
  CentredProperty,
  CutCellsProperty,
  EdgeProperty,
  FitShapeSyntax,
  MeetsProperty,
  NodeAtProperty,
  PanelShapeSyntax,
  ShapeProperty,
} from '../tree/panel-syntax.ts';
import { keyword, LeftBracket, NumberToken, Word } from '../vocabulary/tokens.ts';
import { rangeOf, spanOf } from '../tree/source-range.ts';
import { phraseOf } from './property-rules.ts';

export class PanelRules extends FillRules {
  public centred = this.RULE('centred', (): CentredProperty => {
    const word = this.CONSUME(keyword.centred);
    const on = this.OR({
      DEF: [
        { ALT: () => this.CONSUME(keyword.node) },
        { ALT: () => this.CONSUME(keyword.cell) },
        { ALT: () => this.CONSUME(keyword.edge) },
      ],
      ERR_MSG: '`node`, `cell` or `edge`',
    });
    return this.ACTION(() => ({ ...phraseOf('centred', word, rangeOf(on)), on: on.image as CentredProperty['on'] }));
  });

  public nodeAt = this.RULE('nodeAt', (): NodeAtProperty => {
    const word = this.CONSUME(keyword.node);
    this.CONSUME(keyword.at);
    const at = this.SUBRULE(this.point);
    return this.ACTION(() => ({ ...phraseOf('node at', word, at.range), at }));
  });

  public shape = this.RULE('shape', (): ShapeProperty => {
    const word = this.CONSUME(keyword.shape);
    const shape = this.SUBRULE(this.panelShape);
    return this.ACTION(() => ({ ...phraseOf('shape', word, shape.range), shape }));
  });

  private panelShape = this.RULE('panelShape', (): PanelShapeSyntax =>
    this.OR({
      DEF: [
        {
          GATE: () =>
            this.isAhead(2, NumberToken) ||
            this.isAhead(2, LeftBracket) ||
            this.isAhead(3, keyword.cells) ||
            this.isAhead(4, keyword.cells),
          ALT: () => this.SUBRULE(this.hexagonOfCells),
        },
        {
          GATE: () =>
            this.isAhead(2, NumberToken) ||
            this.isAhead(2, LeftBracket) ||
            (this.isAhead(2, Word) && this.isAhead(3, keyword.x)),
          ALT: () => this.SUBRULE(this.fitOfCells),
        },
        {
          GATE: () => this.isAhead(1, Word) && !this.isAhead(2, keyword.x) && !this.arithmeticAhead(2),
          ALT: () => {
            const name = this.SUBRULE(this.name, { ARGS: ['the name of an outline'] });
            return this.ACTION((): PanelShapeSyntax => ({ kind: 'outline shape', name, range: name.range }));
          },
        },
        { ALT: () => this.SUBRULE(this.widthByHeight) },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG:
        'the name of an outline, `420 x 297`, `5 x 4 cells`, `hexagon 3 cells` or `fit 21 x 8 cells in 900 x 380 by pitch`',
    }),
  );

  private hexagonOfCells = this.RULE('hexagonOfCells', (): PanelShapeSyntax => {
    const word = this.CONSUME(keyword.hexagon);
    const count = this.SUBRULE(this.expression);
    const last = this.CONSUME(keyword.cells);
    return this.ACTION(() => ({
      kind: 'hexagon shape',
      cells: count,
      range: spanOf(rangeOf(word), rangeOf(last)),
    }));
  });

  private fitOfCells = this.RULE('fitOfCells', (): PanelShapeSyntax => {
    const word = this.CONSUME(keyword.fit);
    const across = this.SUBRULE(this.expression);
    this.CONSUME(keyword.x, { ERR_MSG: '`x` between the cells across and up' });
    const up = this.SUBRULE2(this.expression);
    this.CONSUME(keyword.cells);
    this.CONSUME(keyword.in);
    const width = this.SUBRULE3(this.expression);
    this.CONSUME2(keyword.x, { ERR_MSG: '`x` between the width and the height' });
    const height = this.SUBRULE4(this.expression);
    this.CONSUME(keyword.by);
    const by = this.OR({
      DEF: [{ ALT: () => this.CONSUME(keyword.pitch) }, { ALT: () => this.CONSUME(keyword.frame) }],
      ERR_MSG: '`pitch` or `frame`',
    });
    return this.ACTION(() => ({
      kind: 'fitted shape',
      across,
      up,
      width,
      height,
      by: by.image as FitShapeSyntax['by'],
      range: spanOf(rangeOf(word), rangeOf(by)),
    }));
  });

  private widthByHeight = this.RULE('widthByHeight', (): PanelShapeSyntax => {
    const width = this.SUBRULE(this.expression);
    this.CONSUME(keyword.x, { ERR_MSG: '`x` between the width and the height' });
    const height = this.SUBRULE2(this.expression);
    const last = this.OPTION(() => this.CONSUME(keyword.cells));
    return this.ACTION(() => ({
      kind: last ? 'cells shape' : 'rectangle shape',
      width,
      height,
      range: spanOf(width.range, last ? rangeOf(last) : height.range),
    }));
  });

  public edge = this.RULE('edge', (): EdgeProperty => {
    const word = this.CONSUME(keyword.edge);
    const edge = this.OR({
      DEF: [{ ALT: () => this.CONSUME(keyword.sawn) }, { ALT: () => this.CONSUME(keyword.framed) }],
      ERR_MSG: '`sawn` or `framed`',
    });
    return this.ACTION(() => ({ ...phraseOf('edge', word, rangeOf(edge)), edge: edge.image as EdgeProperty['edge'] }));
  });

  public meets = this.RULE('meets', (): MeetsProperty => {
    const word = this.CONSUME(keyword.meets);
    const other = this.SUBRULE(this.name, { ARGS: ['the name of a panel, board, pour or outline'] });
    this.CONSUME(keyword.leave);
    const leave = this.SUBRULE(this.expression);
    return this.ACTION(() => ({ ...phraseOf('meets', word, leave.range), other, leave }));
  });

  public cutCells = this.RULE('cutCells', (): CutCellsProperty => {
    const word = this.CONSUME(keyword.cut_cells);
    const choice = this.OR({
      DEF: [
        { ALT: () => this.CONSUME(keyword.trim) },
        { ALT: () => this.CONSUME(keyword.own) },
        { ALT: () => this.CONSUME(keyword.open) },
      ],
      ERR_MSG: '`trim`, `own` or `open`',
    });
    return this.ACTION(() => ({
      ...phraseOf('cut cells', word, rangeOf(choice)),
      cutCells: choice.image as CutCellsProperty['cutCells'],
    }));
  });

  public stub = this.valueRule('stub');
  public tail = this.valueRule('tail');
  public sliver = this.valueRule('sliver');
}
