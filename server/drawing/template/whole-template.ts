/** A template at full size on one sheet as large as it needs. */
import { movedItems } from '../page/moved-items.ts';
import type { PageFile } from '../page/page-model.ts';
import { blackAndWhite } from '../page/palettes.ts';
import type { Typefaces } from '../page/typeface.ts';
import { frameAround, frameItems } from './sheet-frame.ts';
import type { Template } from './template.ts';
import { templateItems } from './template-items.ts';

/** Paper round the outermost line, for the ends of the strips' middles. */
const around = 10;

export function wholeTemplate(template: Template, typefaces: Typefaces): PageFile {
  const { left, right, bottom, top } = template.bounds;
  const size = { width: right - left + 2 * around, height: top - bottom + 2 * around };
  const frame = frameAround(size, template, typefaces);
  const { picture } = frame;
  const middle = { x: picture.left + picture.width / 2, y: picture.top + picture.height / 2 };
  const items = [
    ...movedItems(templateItems(template), middle.x - (left + right) / 2, middle.y + (bottom + top) / 2),
    ...frameItems(frame, template, 'one sheet', typefaces),
  ];
  const title = `Template of ${template.heading}`;
  return {
    title,
    summary: `${template.heading} at full size`,
    palette: blackAndWhite,
    pages: [{ width: frame.width, height: frame.height, title, items }],
  };
}
