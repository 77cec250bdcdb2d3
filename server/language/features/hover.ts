/** What the words under the pointer come to: counts of a name, the other unit of a number, the meaning of a word. */
import { phraseWordAt } from '../../../grammar/reading/word-places.ts';
import { nodesOf } from '../../../grammar/tree/walk-tree.ts';
import { isKnownFunction, knownFunctions } from '../../../grammar/vocabulary/tokens.ts';
import type { Analysis } from '../../analyse.ts';
import type { Definition } from '../../design/names/name-index.ts';
import { expressionHover } from './hover-expression.ts';
import { gridHover } from './hover-grid.ts';
import { signAt, signHover } from './hover-map.ts';
import { finishHover, resinHover, sheetHover, woodHover } from './hover-materials.ts';
import { motifHover, roleHover } from './hover-motif.ts';
import { bandHover, blankHover, boardHover, kitHover, pourHover, workHover } from './hover-objects.ts';
import { outlineHover } from './hover-outline.ts';
import { panelHover } from './hover-panel.ts';
import { quantityHover } from './hover-quantity.ts';
import { benchHover, stockHover } from './hover-stock.ts';
import { type HoverLines, type HoverText, hoverText } from './hover-text.ts';
import { numberAt } from './expressions.ts';
import { mentionAt } from './names.ts';

/** The hover at `offset`; null where there is nothing to say. */
export function hoverAt(analysis: Analysis, offset: number): HoverText | null {
  const mention = mentionAt(analysis.names, offset);
  if (mention) {
    const lines = mention.definition && definitionHover(analysis, mention.definition);
    return lines && hoverText(lines, mention.range);
  }
  const sign = signAt(analysis.tree, offset);
  if (sign) return hoverText(signHover(analysis, sign), sign.sign.range);
  const number = numberAt(analysis.tree, offset);
  if (number) {
    const lines = quantityHover(number);
    return lines && hoverText(lines, number.range);
  }
  return functionHover(analysis, offset) ?? wordHover(analysis, offset);
}

function functionHover({ tree }: Analysis, offset: number): HoverText | null {
  const called = nodesOf(tree, 'call').find(({ name: { range } }) => range.start <= offset && offset <= range.end);
  if (!called || !isKnownFunction(called.name.text)) return null;
  const { text, range } = called.name;
  return hoverText([`**${text}**`, knownFunctions[text]], range);
}

/** What a word means in the phrase where it stands, and how that phrase is written where it begins it. */
function wordHover({ text, files }: Analysis, offset: number): HoverText | null {
  const word = phraseWordAt(files[0].parsed.phrases, text, offset);
  if (!word) return null;
  const example = word.example === null ? '' : `\`${word.example}\``;
  return hoverText([`**${word.text}**`, word.meaning, example], word.range);
}

/** The hover of what a name means; null where the design has left it out for an error. */
function definitionHover(analysis: Analysis, definition: Definition): HoverLines | null {
  const { design } = analysis;
  const named = <Item extends { readonly name: string }>(items: readonly Item[], hover: (item: Item) => HoverLines) => {
    const item = items.find(({ name }) => name === definition.name);
    return item ? hover(item) : null;
  };
  switch (definition.kind) {
    case 'panel':
      return named(design.panels, (panel) => panelHover(analysis, panel));
    case 'motif':
      return named(design.motifs, (motif) => motifHover(analysis, motif));
    case 'blank':
      return named(design.blanks, (blank) => blankHover(analysis, blank));
    case 'band':
      return named(design.bands, (band) => bandHover(analysis, band));
    case 'pour':
      return named(design.pours, (pour) => pourHover(analysis, pour));
    case 'board':
      return named(design.boards, (board) => boardHover(analysis, board));
    case 'work':
      return design.work && workHover(analysis, design.work);
    case 'kit':
      return named(design.kits, (kit) => kitHover(analysis, kit));
    case 'wood':
      return named(design.woods, (wood) => woodHover(analysis, wood));
    case 'sheet':
      return named(design.sheets, (sheet) => sheetHover(analysis, sheet));
    case 'resin':
      return named(design.resins, (resin) => resinHover(analysis, resin));
    case 'finish':
      return named(design.finishes, (finish) => finishHover(analysis, finish));
    case 'strip':
      return named(design.strips, (stock) => stockHover(analysis, stock));
    case 'bench':
      return named(design.benches, (bench) => benchHover(analysis, bench));
    case 'grid':
      return named(design.grids, (grid) => gridHover(analysis, grid));
    case 'outline':
      return named(design.outlines, (outline) => outlineHover(analysis, outline));
    case 'piece':
    case 'divider': {
      const motif = design.motifs.find(({ name }) => name === definition.scope);
      return motif ? roleHover(analysis, motif, definition.name) : null;
    }
    case 'let':
    case 'node':
      return expressionHover(analysis, definition);
  }
}
