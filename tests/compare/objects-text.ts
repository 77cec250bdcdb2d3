/** A coaster sawn from a cast blank, banded, with a cast foot and a board: the objects of the notation in their smallest form. */

export interface CoasterWords {
  readonly taken?: number;
  readonly laminations?: number;
  readonly layers?: string;
  readonly board?: string;
  readonly foot?: string;
  readonly packing?: string;
  readonly panel?: string;
}

export function coasterText(words: CoasterWords = {}): string {
  const { taken = 2, laminations = 1, layers = 'layer 6', board = '200 x 100', foot = 'foot' } = words;
  const { packing = '6 EUR', panel = 'coaster' } = words;
  return `title "Coasters"
strip ash { wood white_ash  section face 3 depth 10  lengths 900 }
strip thin { wood walnut  section face 1 depth 12  lengths 1000 }
resin clear { density 1.1  mix 2 to 1 by volume  deepest 20 }
sheet ply { thick 6  size 600 x 300  density 680 }
grid squares { square  pitch 40  of ash }
outline square_line { rectangle 80 x 80 }
outline base { rectangle ${board} }
panel ${panel} { grid squares  centred node  shape square_line  edge sawn  copies ${taken} }
blank cast { grid squares  shape 300 x 160  gap 1  take ${panel} ${taken} }
band rim { around ${panel}  of thin  laminations ${laminations} }
pour ${foot} { mould 40 x 20  ${layers}  of clear }
board plate { shape base  of ply }
work set { place plate at 0, 0  packing ${packing}  margin 40% }
`;
}
