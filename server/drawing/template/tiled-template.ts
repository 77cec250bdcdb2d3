/** A template at full size over as few sheets of paper as may be, with a map of them. */
import type { Bounds } from '../../geometry/polygons.ts';
import { itemsWithin } from '../page/items-within.ts';
import { movedItems } from '../page/moved-items.ts';
import type { Page, PageFile, PageItem } from '../page/page-model.ts';
import { blackAndWhite } from '../page/palettes.ts';
import { type PaperName, paperSizes } from '../page/paper-sizes.ts';
import type { Typefaces } from '../page/typeface.ts';
import { rectangle } from '../sheet/sheet-lines.ts';
import { glueStrips, joinMarks, joinsOf } from './joins.ts';
import { mapPage } from './map-page.ts';
import { frameItems, type SheetFrame, sheetFrame } from './sheet-frame.ts';
import type { Template } from './template.ts';
import { templateItems } from './template-items.ts';
import { type Sheet, tilePlan, type TilePlan } from './tile-plan.ts';

/** Wide enough to glue well. */
const overlap = 10;

/** Sheets of one paper, upright or lying. */
interface TiledPaper {
  readonly frame: SheetFrame;
  readonly plan: TilePlan;
}

/** The file to print: a map first where there is more than one sheet. */
export function tiledTemplate(template: Template, paper: PaperName, typefaces: Typefaces): PageFile {
  const { frame, plan } = fewestSheets(template, paper, typefaces);
  const joins = joinsOf(plan);
  const drawn = templateItems(template);
  const sheets = plan.sheets.filter(({ number }) => number !== null);
  const pages = sheets.map((sheet): Page => {
    const title = sheetTitle(sheet, plan);
    const { picture } = frame;
    const onSheet = (items: readonly PageItem[]): PageItem[] =>
      movedItems(items, picture.left - sheet.window.left, picture.top + sheet.window.top);
    return {
      width: frame.width,
      height: frame.height,
      title,
      items: [
        {
          kind: 'group',
          name: 'picture',
          facts: { sheet: sheet.number ?? 0 },
          items: onSheet([...glueStrips(joins, sheet), ...itemsWithin(drawn, flipped(sheet.window))]),
          clip: rectangle(picture.left, picture.top, picture.width, picture.height),
        },
        ...onSheet(joinMarks(joins, sheet)),
        ...frameItems(frame, template, title, typefaces),
      ],
    };
  });
  const map = plan.count > 1 ? [mapPage(frame, template, plan, paper, typefaces)] : [];
  return {
    title: `Template of ${template.heading}`,
    summary: `${template.heading} at full size on ${plan.count} ${plan.count === 1 ? 'sheet' : 'sheets'} of ${paper}`,
    palette: blackAndWhite,
    pages: [...map, ...pages],
  };
}

const flipped = ({ left, right, bottom, top }: Bounds): Bounds => ({ left, right, bottom: -top, top: -bottom });

function sheetTitle({ number, row, column }: Sheet, { count, rows, columns }: TilePlan): string {
  const place = rows * columns > 1 ? ` · row ${row}, column ${column}` : '';
  return `sheet ${number ?? ''} of ${count}${place}`;
}

/** Upright or lying, whichever takes fewer sheets; of equals the one that leaves fewer places empty, then upright. */
function fewestSheets(template: Template, paper: PaperName, typefaces: Typefaces): TiledPaper {
  const { width, height } = paperSizes[paper];
  const [upright, lying] = [
    { width, height },
    { width: height, height: width },
  ].map((size): TiledPaper => {
    const frame = sheetFrame(size, template, typefaces);
    return { frame, plan: tilePlan(template.ground, { ...frame.picture, overlap }) };
  }) as [TiledPaper, TiledPaper];
  const [first, second] = [upright.plan, lying.plan];
  const difference = second.count - first.count || second.sheets.length - first.sheets.length;
  return difference < 0 ? lying : upright;
}
