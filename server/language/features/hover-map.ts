/** A sign in the map of a panel: where its cell lies, what it gets and in how many cells. */
import { counted } from '../../../grammar/words.ts';
import type { MapProperty, MapSign } from '../../../grammar/tree/fill-syntax.ts';
import type { SyntaxTree } from '../../../grammar/tree/syntax-tree.ts';
import type { Analysis } from '../../analyse.ts';
import type { PanelFill } from '../../design/design-model.ts';
import type { HoverLines } from './hover-text.ts';

/** A sign with its place. */
export interface SignMention {
  readonly sign: MapSign;
  readonly panel: string;
  readonly map: MapProperty;
  /** From 1 at the top left; null where the sign is given its meaning. */
  readonly place: { readonly row: number; readonly cell: number } | null;
}

/** The sign whose words hold `offset`, its end included. */
export function signAt(tree: SyntaxTree, offset: number): SignMention | null {
  const holds = ({ range }: MapSign): boolean => range.start <= offset && offset <= range.end;
  for (const declaration of tree.declarations) {
    if (declaration.kind !== 'panel') continue;
    for (const map of declaration.properties) {
      if (map.kind !== 'map') continue;
      const found = mentionsIn(map).find(({ sign }) => holds(sign));
      if (found) return { ...found, panel: declaration.name.text, map };
    }
  }
  return null;
}

function mentionsIn(map: MapProperty): Pick<SignMention, 'sign' | 'place'>[] {
  const rows = map.lines.filter((line) => line.kind === 'map row');
  const entries = map.lines.filter((line) => line.kind === 'map entry');
  return [
    ...entries.map(({ sign }) => ({ sign, place: null })),
    ...rows.flatMap(({ signs }, row) => signs.map((sign, cell) => ({ sign, place: { row: row + 1, cell: cell + 1 } }))),
  ];
}

export function signHover({ design }: Analysis, { sign, panel, map, place }: SignMention): HoverLines {
  const fills = design.panels.find(({ name }) => name === panel)?.fills ?? [];
  const own = fills.filter(({ where }) => where.some((each) => each.kind === 'mapped' && each.sign === sign.text));
  const cells = mentionsIn(map).filter((other) => other.place !== null && other.sign.text === sign.text).length;
  const title = place ? `row ${place.row} from the top, cell ${place.cell}` : `of the map of ${panel}`;
  return [
    `**sign** \`${sign.text}\` (${title})`,
    own.length > 0 ? own.map(fillText).join(', then ') : 'Left open',
    `In ${counted(cells, 'cell')} of the map`,
  ];
}

function fillText({ motif, turned, mirrored, stock }: PanelFill): string {
  const ways = [mirrored ? 'mirrored' : '', turned > 0 ? `turned ${counted(turned, 'corner')}` : ''].filter(Boolean);
  return [`\`${motif.name}\` of \`${stock.name}\``, ...ways].join(', ');
}
