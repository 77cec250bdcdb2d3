/** Grammar of the places in an opening. */
import { EOF, type ParserMethod } from 'chevrotain';
import { GridRules } from './grid-rules.ts';
import type { LineSyntax, PlaceSyntax } from '../tree/place-syntax.ts';
import type { Ordinal } from '../tree/syntax-nodes.ts';
import { Comma, keyword, NumberToken, Word } from '../vocabulary/tokens.ts';
import { rangeOf, spanOf } from '../tree/source-range.ts';

/** What may stand behind a whole place, and so behind the name of a node. */
const behindPlaces = [
  keyword.to,
  keyword.and,
  keyword.at,
  keyword.over,
  keyword.by,
  keyword.about,
  keyword.from,
  keyword.piece,
  Comma,
  EOF,
];

export class PlaceRules extends GridRules {
  /** Whether the word ahead stands alone, as the name of a node does. */
  private standsAlone = (): boolean => behindPlaces.some((type) => this.isAhead(2, type));

  /** Whether a place made out of other places may begin here, rather than a node that is called `turned` or so. */
  private mayBuildPlace = (): boolean => this.mayNest() && !this.standsAlone();

  private mayBeNode = (): boolean =>
    this.isAhead(1, Word) &&
    !this.isAhead(2, keyword.along) &&
    !this.arithmeticAhead(2) &&
    !(this.isAhead(1, keyword.edge) && this.isAhead(2, NumberToken));

  public place: ParserMethod<[], PlaceSyntax> = this.RULE('place', (): PlaceSyntax =>
    this.OR({
      DEF: [
        { ALT: () => this.SUBRULE(this.cornerPlace) },
        { ALT: () => this.SUBRULE(this.midPlace) },
        { ALT: () => this.SUBRULE(this.middlePlace) },
        { GATE: this.mayBuildPlace, ALT: () => this.SUBRULE(this.betweenPlace) },
        { GATE: this.mayBuildPlace, ALT: () => this.SUBRULE(this.mirroredPlace) },
        { GATE: this.mayBuildPlace, ALT: () => this.SUBRULE(this.turnedPlace) },
        { GATE: this.mayBuildPlace, ALT: () => this.SUBRULE(this.intersectionPlace) },
        {
          GATE: this.mayBeNode,
          ALT: () => {
            const name = this.SUBRULE(this.name, { ARGS: ['a node'] });
            return this.ACTION((): PlaceSyntax => ({ kind: 'named', name, range: name.range }));
          },
        },
        { ALT: () => this.SUBRULE(this.alongPlace) },
      ],
      IGNORE_AMBIGUITIES: true,
      MAX_LOOKAHEAD: 1,
      ERR_MSG: 'a node or a place, such as `corner 1`, `mid edge 2`, `0.3 along edge 1`, `centroid` or `incentre`',
    }),
  );

  private cornerPlace = this.RULE('cornerPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.corner);
    const number = this.SUBRULE(this.optionalOrdinal);
    return this.ACTION(() => ({
      kind: 'corner',
      number,
      range: spanOf(rangeOf(word), number?.range ?? rangeOf(word)),
    }));
  });

  private midPlace = this.RULE('midPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.mid);
    this.OPTION(() => this.CONSUME(keyword.of));
    const edge = this.CONSUME(keyword.edge);
    const number = this.SUBRULE(this.optionalOrdinal);
    return this.ACTION(() => ({ kind: 'mid', number, range: spanOf(rangeOf(word), number?.range ?? rangeOf(edge)) }));
  });

  private middlePlace = this.RULE('middlePlace', (): PlaceSyntax => {
    const word = this.OR([
      { ALT: () => this.CONSUME(keyword.centroid) },
      { ALT: () => this.CONSUME(keyword.incentre) },
    ]);
    return this.ACTION(() => ({ kind: word.image as 'centroid' | 'incentre', range: rangeOf(word) }));
  });

  private betweenPlace = this.RULE('betweenPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.between);
    this.nest();
    const first = this.SUBRULE(this.place);
    this.CONSUME(keyword.and);
    const second = this.SUBRULE2(this.place);
    const fraction = this.OPTION(() => {
      this.CONSUME(keyword.at);
      return this.SUBRULE(this.expression);
    });
    return this.ACTION(() => ({
      kind: 'between',
      first,
      second,
      fraction: fraction ?? null,
      range: spanOf(rangeOf(word), fraction?.range ?? second.range),
    }));
  });

  private alongPlace = this.RULE('alongPlace', (): PlaceSyntax => {
    const fraction = this.SUBRULE(this.expression);
    this.CONSUME(keyword.along);
    const edge = this.CONSUME(keyword.edge);
    const number = this.SUBRULE(this.optionalOrdinal);
    return this.ACTION(() => ({
      kind: 'along',
      fraction,
      number,
      range: spanOf(fraction.range, number?.range ?? rangeOf(edge)),
    }));
  });

  private mirroredPlace = this.RULE('mirroredPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.mirrored);
    this.nest();
    const place = this.SUBRULE(this.place);
    this.CONSUME(keyword.over, { ERR_MSG: '`over` and a line, as in `mirrored hub over edge 1`' });
    const line = this.SUBRULE(this.mirrorLine);
    return this.ACTION(() => ({ kind: 'mirrored', place, line, range: spanOf(rangeOf(word), line.range) }));
  });

  /** The line that something is mirrored over: an edge, or the line through two places. */
  protected mirrorLine = this.RULE('mirrorLine', (): LineSyntax =>
    this.OR({
      DEF: [
        {
          ALT: () => {
            const word = this.CONSUME(keyword.edge);
            const number = this.SUBRULE(this.optionalOrdinal);
            return this.ACTION((): LineSyntax => ({
              kind: 'edge line',
              number,
              range: spanOf(rangeOf(word), number?.range ?? rangeOf(word)),
            }));
          },
        },
        { ALT: () => this.SUBRULE(this.lineThrough) },
      ],
      IGNORE_AMBIGUITIES: true,
      ERR_MSG: '`edge 1` or a line such as `corner 1 to centroid`',
    }),
  );

  private lineThrough = this.RULE('lineThrough', (): LineSyntax => {
    const from = this.SUBRULE(this.place);
    this.CONSUME(keyword.to, { ERR_MSG: '`to` and the far end of the line, as in `corner 1 to centroid`' });
    const to = this.SUBRULE2(this.place);
    return this.ACTION(() => ({ kind: 'line through', from, to, range: spanOf(from.range, to.range) }));
  });

  private turnedPlace = this.RULE('turnedPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.turned);
    this.nest();
    const place = this.SUBRULE(this.place);
    this.CONSUME(keyword.by, { ERR_MSG: '`by` and a turn, as in `turned corner 1 by 2 corners about centroid`' });
    const by = this.SUBRULE(this.expression);
    const corners = this.OPTION(() =>
      this.OR([{ ALT: () => this.CONSUME(keyword.corners) }, { ALT: () => this.CONSUME(keyword.corner) }]),
    );
    this.CONSUME(keyword.about, {
      ERR_MSG: '`about` and a place, as in `turned corner 1 by 2 corners about centroid`',
    });
    const about = this.SUBRULE2(this.place);
    return this.ACTION(() => ({
      kind: 'turned',
      place,
      by,
      inCorners: corners !== undefined,
      about,
      range: spanOf(rangeOf(word), about.range),
    }));
  });

  private intersectionPlace = this.RULE('intersectionPlace', (): PlaceSyntax => {
    const word = this.CONSUME(keyword.intersection);
    this.nest();
    this.CONSUME(keyword.of, {
      ERR_MSG: '`of` and two lines, as in `intersection of corner 1 to centroid and corner 2 to mid edge 3`',
    });
    const first = this.SUBRULE(this.lineThrough);
    this.CONSUME(keyword.and, {
      ERR_MSG: '`and` and the other line, as in `intersection of corner 1 to centroid and corner 2 to mid edge 3`',
    });
    const second = this.SUBRULE2(this.lineThrough);
    return this.ACTION(() => ({ kind: 'intersection', first, second, range: spanOf(rangeOf(word), second.range) }));
  });

  protected optionalOrdinal = this.RULE('optionalOrdinal', (): Ordinal | null => {
    const number = this.OPTION({
      GATE: () => this.isAhead(1, NumberToken) && !this.isAhead(2, keyword.along),
      DEF: () => this.SUBRULE(this.ordinal),
    });
    return number ?? null;
  });
}
