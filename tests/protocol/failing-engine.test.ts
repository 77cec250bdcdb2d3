/** An engine that fails must cost one answer, never the server. */
import type { MessageConnection, PublishDiagnosticsParams } from 'vscode-languageserver/node';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { analyseByStages } from '../../server/analyse.ts';
import { disc } from './disc.ts';
import { startWithEngine } from './engine-session.ts';
import { positionOf } from './places.ts';

const uri = 'file:///failing.lap';
const logged: string[] = [];
let editor: MessageConnection;

beforeAll(async () => {
  editor = await startWithEngine(
    (text) => {
      if (text.includes('# fail')) throw new Error('the engine broke');
      return analyseByStages(text);
    },
    (listening) => {
      listening.onNotification('window/logMessage', ({ message }: { message: string }) => {
        logged.push(message);
      });
    },
  );
});
afterAll(() => {
  editor.dispose();
});

const open = (version: number, text: string): Promise<void> =>
  editor.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'halflap', version, text },
  });

it('answers null and logs while the engine fails, and answers again when it works', async () => {
  const question = { textDocument: { uri }, position: positionOf(disc, 'window') };
  await open(1, `${disc}# fail\n`);
  expect(await editor.sendRequest('textDocument/hover', question)).toBeNull();
  expect(await editor.sendRequest('textDocument/documentSymbol', question)).toBeNull();
  expect(await editor.sendRequest('halflap/drawing', { uri, view: null })).toBeNull();
  for (const question of ['Hover', 'Document symbols', 'Drawing']) {
    expect(logged).toContainEqual(expect.stringMatching(`^${question} failed: Error: the engine broke`));
  }

  const told = new Promise<PublishDiagnosticsParams>((resolve) => {
    editor.onNotification('textDocument/publishDiagnostics', resolve);
  });
  await editor.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 2 },
    contentChanges: [{ text: disc }],
  });
  expect(await told).toMatchObject({ uri, version: 2, diagnostics: [] });
  expect(await editor.sendRequest('textDocument/hover', question)).toMatchObject({
    contents: { value: expect.stringContaining('342') as string },
  });
});
