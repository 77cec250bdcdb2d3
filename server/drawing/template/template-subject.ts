/** What a template may be of. */
import type { Outline, Panel } from '../../design/design-model.ts';
import type { Design } from '../../design/design.ts';
import type { Band, Board, Hanging, Work } from '../../design/work-model.ts';

/** A work stands for what it hangs on: the template to drill by. */
export type TemplateSubject = { readonly name: string } & (
  | { readonly kind: 'panel'; readonly panel: Panel }
  | { readonly kind: 'outline'; readonly outline: Outline }
  | { readonly kind: 'board'; readonly board: Board }
  | { readonly kind: 'band'; readonly band: Band }
  | { readonly kind: 'work'; readonly work: HungWork }
);

export type HungWork = Work & { readonly hanging: Hanging };

/** Those of which the template shows the edge itself. */
export type PartSubject = Extract<TemplateSubject, { readonly kind: 'panel' | 'outline' | 'board' }>;

/** Everything a template may be of; where two share a name, the first is meant. */
export const templateSubjects = ({ panels, outlines, boards, bands, work }: Design): TemplateSubject[] => [
  ...panels.map((panel) => ({ kind: 'panel' as const, name: panel.name, panel })),
  ...outlines.map((outline) => ({ kind: 'outline' as const, name: outline.name, outline })),
  ...boards.map((board) => ({ kind: 'board' as const, name: board.name, board })),
  ...bands.map((band) => ({ kind: 'band' as const, name: band.name, band })),
  ...(work?.hanging ? [{ kind: 'work' as const, name: work.name, work: { ...work, hanging: work.hanging } }] : []),
];

/** The subject called `name`, null where nothing is. */
export const templateSubject = (design: Design, name: string): TemplateSubject | null =>
  templateSubjects(design).find((subject) => subject.name === name) ?? null;
