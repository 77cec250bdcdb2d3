/** The looks of the page, compared with pictures that were looked at and approved. */
import { join } from 'node:path';
import { type Case, it } from '../extension/case-list.ts';
import { comparePicture } from './pictures.ts';
import { type Opening, type Stage, withPage } from './stage.ts';

const looks: readonly (Opening & { readonly name: string })[] = [
  { name: 'leaf-light', design: 'leaf.lap', theme: 'vscode-light' },
  { name: 'leaf-dark', design: 'leaf.lap', theme: 'vscode-dark' },
  { name: 'leaf-high-contrast', design: 'leaf.lap', theme: 'vscode-high-contrast' },
  { name: 'infill-light', design: 'lamp.lap', view: 'pieces', theme: 'vscode-light' },
  { name: 'strips-dark', design: 'tray.lap', view: 'strips', theme: 'vscode-dark' },
  { name: 'slivers-light', design: 'plaque.lap', view: 'panel shield', theme: 'vscode-light' },
  { name: 'members-light', design: 'plaque.lap', view: 'members', theme: 'vscode-light' },
  { name: 'members-high-contrast', design: 'plaque.lap', view: 'members', theme: 'vscode-high-contrast' },
  { name: 'work-dark', design: 'plaque.lap', view: 'work', theme: 'vscode-dark' },
  { name: 'settings-light', design: 'lamp.lap', view: 'settings', theme: 'vscode-light' },
];

export const lookCases = (stage: Stage): Case[] =>
  looks.map(({ name, ...opening }) =>
    it(`looks as approved: ${name}`, () =>
      withPage(stage, opening, async ({ page }) => {
        const approved = join(stage.root, 'tests/page/approved');
        comparePicture(name, await page.screenshot(), { approved, taken: join(stage.pictures, 'page') });
      })),
  );
