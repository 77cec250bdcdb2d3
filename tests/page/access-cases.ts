/** For those who use the keyboard or hear the page: everything reachable, named and told; axe-core finds nothing. */
import { strict as assert } from 'node:assert';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { type Case, it } from '../extension/case-list.ts';
import type { PreviewPage } from './page-host.ts';
import { type Stage, withPage } from './stage.ts';
import type { ThemeClass } from './themes.ts';

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

const focused = (page: PreviewPage): Promise<string> =>
  page.page.evaluate(
    `document.activeElement.id || document.activeElement.dataset.view || document.activeElement.textContent`,
  );

export const accessCases = (stage: Stage): Case[] => [
  ...(['vscode-light', 'vscode-dark', 'vscode-high-contrast'] as const).flatMap((theme: ThemeClass) =>
    [null, 'pieces', 'settings'].map((view) =>
      it(`axe-core finds no violation in ${view ?? 'a panel'} under ${theme}`, () =>
        withPage(stage, { theme, view }, async (page) => {
          const axe = createRequire(join(stage.root, 'package.json')).resolve('axe-core/axe.min.js');
          await page.page.evaluate(readFileSync(axe, 'utf8'));
          await page.page.evaluate(`document.querySelectorAll('details').forEach((part) => { part.open = true; })`);
          const { violations } = await page.page.evaluate<{ violations: Violation[] }>('axe.run()');
          assert.deepEqual(
            violations.map(({ id, nodes }) => [
              id,
              ...nodes.map(({ html, failureSummary }) => `${html} ${failureSummary}`),
            ]),
            [],
          );
        })),
    ),
  ),

  it('walks along the views with the arrow keys, and through them with Page Down', () =>
    withPage(stage, {}, async (page) => {
      await page.page.focus('[role=tab][aria-selected=true]');
      await page.page.keyboard.press('ArrowRight');
      assert.equal(await focused(page), 'pieces');
      await page.page.focus('#drawing');
      await page.page.keyboard.press('PageDown');
      assert.deepEqual(
        (await page.sent('chooseView')).map(({ view }) => view),
        ['pieces', 'pieces'],
      );
    })),

  it('reaches every control by Tab, with the focus to be seen', () =>
    withPage(stage, {}, async (page) => {
      const reached = new Set<string>();
      for (let step = 0; step < 60; step++) {
        await page.page.keyboard.press('Tab');
        reached.add(await focused(page));
        const seen = await page.page.evaluate<boolean>(
          `document.activeElement === document.body || getComputedStyle(document.activeElement).outlineStyle !== 'none'`,
        );
        assert.ok(seen, `no focus to be seen on ${await focused(page)}`);
      }
      for (const id of ['zoom-in', 'fit', 'measure', 'tabled', 'lock', 'drawing', 'find', 'table-frame'])
        assert.ok(reached.has(id), `${id} is not reached`);
    })),

  it('has the figures of the picture in a table that takes its place', () =>
    withPage(stage, {}, async (page) => {
      await page.page.focus('#drawing');
      await page.page.keyboard.press('t');
      assert.equal(await page.page.evaluate(`getComputedStyle(document.querySelector('#stage')).display`), 'none');
      const row = await page.page.evaluate<string>(`document.querySelector('#table tbody tr').innerText`);
      assert.match(row, /^A\s+arm of hemp\s+17\.8 mm\s+227\s+736$/);
    })),

  it('finds a mark by a word of it', () =>
    withPage(stage, {}, async (page) => {
      await page.page.fill('#find', 'arm hemp');
      assert.equal(await page.text('announced'), '1 row');
      const shown = `[...document.querySelectorAll('#table tbody tr:not([hidden]) button')].map(({ innerText }) => innerText)`;
      assert.deepEqual(await page.page.evaluate(shown), ['A']);
    })),
];
