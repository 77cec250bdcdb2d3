/** The house rules that a reader relies on: who may import whom, an opening line in every file, one meaning a code. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ESLint, type Linter } from 'eslint';
import { describe, expect, test } from 'vitest';
import { problemCatalogue } from '../grammar/problems/problem-catalogue.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const eslint = new ESLint({ cwd: root, overrideConfigFile: join(root, '.config/eslint.config.mjs') });

/** Whether the lint refuses `specifier` in `file`. */
async function isBanned(file: string, specifier: string): Promise<boolean> {
  const config = (await eslint.calculateConfigForFile(join(root, file))) as Linter.Config;
  const rule = config.rules?.['no-restricted-imports'] as
    [unknown, { patterns: readonly { regex: string }[] }] | undefined;
  return rule?.[1].patterns.some(({ regex }) => new RegExp(regex, 'u').test(specifier)) ?? false;
}

describe('the lint', () => {
  test.each([
    ['grammar/rules/parser.ts', '../../server/geometry/point.ts'],
    ['grammar/rules/place-rules.ts', '../reading/syntax-problems.ts'],
    ['grammar/vocabulary/tokens.ts', '../phrases/phrase-forms.ts'],
    ['server/geometry/region.ts', '../design/design-model.ts'],
    ['server/geometry/region.ts', '../../grammar/tree/source-range.ts'],
    ['server/design/design-model.ts', '../lattice/laid-panel.ts'],
    ['server/lattice/laid-panel.ts', '../shop/marks/marked-kinds.ts'],
    ['server/lattice/laid-panel.ts', 'node:fs'],
    ['server/lattice/grid/grid-lines.ts', '../../shop/shop-plan.ts'],
    ['server/shop/sections/plan-cost.ts', '../../analyse.ts'],
    ['server/shop/build-plan.ts', '../analyse.ts'],
    ['server/shop/build-plan.ts', '../plan-design.ts'],
    ['server/shop/build-plan.ts', '../cli/main.ts'],
    ['server/drawing/draw-panel.ts', '../compare/compare-designs.ts'],
    ['server/drawing/write-svg.ts', '../language/start-server.ts'],
    ['server/language/features/hover.ts', 'vscode-languageserver'],
    ['server/language/features/hover.ts', 'node:fs'],
    ['server/language/features/hover.ts', '../../cli/main.ts'],
    ['server/language/features/hover.ts', '../../../client/extension.ts'],
    ['server/cli/run-command.ts', 'vscode-languageserver/node'],
    ['server/cli/verbs/serve.ts', '../../language/serve-standard-streams.ts'],
    ['server/machine/typefaces.ts', '../cli/terminal.ts'],
    ['server/machine/typefaces.ts', '../language/to-protocol.ts'],
    ['server/compare/plan-reuse.ts', '../machine/load-solver.ts'],
    ['server/shop/stock/pattern-program.ts', 'highs'],
    ['server/plan-design.ts', './machine/search-effort.ts'],
    ['server/plan-design.ts', 'highs'],
    ['server/cli/verbs/serve.ts', '../../../client/extension.ts'],
    ['server/analyse.ts', 'node:fs'],
    ['client/extension.ts', '../server/analyse.ts'],
    ['client/preview/panel.ts', '../../grammar/problems/problem.ts'],
    ['client/preview/webview/main.ts', '../../../server/drawing/write-svg.ts'],
  ])('keeps %s from importing %s', async (file, specifier) => {
    expect(await isBanned(file, specifier)).toBe(true);
  });

  test.each([
    ['grammar/reading/syntax-problems.ts', '../phrases/phrase-forms.ts'],
    ['server/geometry/region.ts', './point.ts'],
    ['server/lattice/laid-panel.ts', '../design/design-model.ts'],
    ['server/drawing/drawing.ts', '../../grammar/tree/source-range.ts'],
    ['server/language/start-server.ts', 'vscode-languageserver/node'],
    ['server/language/features/hover.ts', '../../analyse.ts'],
    ['server/cli/verbs/plan.ts', '../../shop/build-plan.ts'],
    ['server/cli/read-source.ts', 'node:fs/promises'],
    ['server/cli/read-source.ts', '../machine/disk-files.ts'],
    ['server/language/open-documents.ts', '../machine/disk-files.ts'],
    ['server/machine/load-solver.ts', 'highs'],
    ['server/machine/typefaces.ts', '../drawing/page/typeface.ts'],
    ['server/main.ts', './language/serve-standard-streams.ts'],
    ['client/preview/webview/main.ts', '../../../server/drawing/drawing.ts'],
    ['client/extension.ts', '../server/language/preview-messages.ts'],
    ['client/preview/webview/measure.ts', '../../../server/words/figures.ts'],
  ])('lets %s import %s', async (file, specifier) => {
    expect(await isBanned(file, specifier)).toBe(false);
  });
});

test('every source file opens with what it is for', () => {
  const files = ['grammar', 'server', 'client'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.ts'))
      .map((file) => join(folder, file)),
  );
  expect(files.filter((file) => !readFileSync(join(root, file), 'utf8').startsWith('/**'))).toEqual([]);
});

test('every diagnostic has a code of its own', () => {
  const codes = Object.values(problemCatalogue).map(({ code }) => code);
  expect(new Set(codes).size).toBe(codes.length);
  expect(codes.filter((code) => !/^LAP\d{4}$/.test(code))).toEqual([]);
});
