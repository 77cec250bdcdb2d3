/** Blocks and tables poured into pages. No block and no row is cut; a table moves to a new page whole if a page can hold it. */
import { append } from '../../geometry/numbers.ts';
import type { Block } from './blocks.ts';
import { movedItems } from '../page/moved-items.ts';
import type { PageItem } from '../page/page-model.ts';

/** Rows under a head. The tail stands under the last row, on the same page. */
export interface FlowTable {
  readonly kind: 'table';
  /** Stands over the head, and over its repetition with "continued" behind it. */
  readonly title: (continued: boolean) => Block | null;
  readonly head: Block;
  readonly rows: readonly Block[];
  readonly tail: Block | null;
}

export type FlowPart = { readonly kind: 'block'; readonly block: Block } | FlowTable;

/** What begins a new page together, under one title, in one of the two parts of the print. */
export interface Section {
  readonly title: string;
  readonly part: 1 | 2;
  readonly parts: readonly FlowPart[];
}

/** Items of one page's body, from the body's upper left corner. */
export interface Body {
  readonly title: string;
  readonly part: 1 | 2;
  readonly items: readonly PageItem[];
}

export const asPart = (block: Block): FlowPart => ({ kind: 'block', block });

/** The bodies of all sections, each begun on a page of its own; `height` is that of a body. */
export const pourSections = (sections: readonly Section[], height: number): Body[] =>
  sections.filter(({ parts }) => parts.length > 0).flatMap((section) => pourSection(section, height));

function pourSection({ title, part, parts }: Section, height: number): Body[] {
  const pages = [new PageInMaking(height)];
  const page = (): PageInMaking => pages.at(-1) ?? new PageInMaking(height);
  const turnPage = (): PageInMaking => {
    if (!page().isEmpty) pages.push(new PageInMaking(height));
    return page();
  };
  parts.forEach((each, index) => {
    const needed = heightOf(each) + keptHeight(parts, index);
    const mayStay = page().holds(needed) || (page().isKept && page().holds(leastHeight(each)));
    if (!mayStay) turnPage();
    if (each.kind === 'block') page().put(each.block);
    else putTable(each, page, turnPage);
  });
  return pages.map(({ items }, index) => ({ title: index === 0 ? title : `${title}, continued`, part, items }));
}

class PageInMaking {
  readonly items: PageItem[] = [];
  private top = 0;
  private readonly height: number;
  /** Whether all that stands on the page is to be kept with what comes next. */
  isKept = true;

  constructor(height: number) {
    this.height = height;
  }

  get isEmpty(): boolean {
    return this.top === 0;
  }

  holds(height: number): boolean {
    return this.top + height <= this.height;
  }

  put(block: Block): void {
    append(this.items, movedItems(block.items, 0, this.top));
    this.top += block.height;
    this.isKept &&= block.keepsWithNext;
  }
}

/** Height of the parts after `index` that must stay with it, the first that need not included. */
function keptHeight(parts: readonly FlowPart[], index: number): number {
  let total = 0;
  for (let next = index; ; next++) {
    const part = parts[next];
    if (part?.kind !== 'block' || !part.block.keepsWithNext) return total;
    const after = parts[next + 1];
    if (after) total += heightOf(after);
  }
}

const heightOf = (part: FlowPart): number => (part.kind === 'block' ? part.block.height : tableHeight(part));

/** What must be on one page where a part begins. */
const leastHeight = (part: FlowPart): number =>
  part.kind === 'block' ? part.block.height : tableHeight({ ...part, rows: part.rows.slice(0, 1), tail: null });

const tableHeight = ({ title, head, rows, tail }: FlowTable): number =>
  [title(false), head, ...rows, tail].reduce((total, block) => total + (block?.height ?? 0), 0);

function putTable(table: FlowTable, page: () => PageInMaking, turnPage: () => PageInMaking): void {
  const begin = (continued: boolean): void => {
    for (const block of [table.title(continued), table.head]) if (block) page().put(block);
  };
  begin(false);
  table.rows.forEach((row, index) => {
    const isLast = index === table.rows.length - 1;
    const needed = row.height + (isLast ? (table.tail?.height ?? 0) : 0);
    if (index > 0 && !page().holds(needed)) {
      turnPage();
      begin(true);
    }
    page().put(row);
  });
  if (table.tail) page().put(table.tail);
}
