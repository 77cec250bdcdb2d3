/** An analysis that takes long: a newer text leaves the rest of it undone, and so does the wish to stop. */
import type { MessageConnection, PublishDiagnosticsParams } from 'vscode-languageserver/node';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { analyseByStages } from '../../server/analyse.ts';
import { disc } from './disc.ts';
import { startWithEngine } from './engine-session.ts';
import { positionOf } from './places.ts';

const uri = 'file:///long.lap';
/** A text whose analysis never ends by itself. */
const endless = `${disc}# endless\n`;
const announced: (number | undefined)[] = [];
const progress: (string | null)[] = [];
let editor: MessageConnection;
let stages = 0;
/** Called at every stage of an endless analysis. */
let onStage = (): void => undefined;

beforeAll(async () => {
  editor = await startWithEngine(
    function* (text, place) {
      while (text === endless) {
        stages++;
        onStage();
        yield 'waiting';
      }
      return yield* analyseByStages(text, place);
    },
    (listening) => {
      listening.onNotification('textDocument/publishDiagnostics', ({ version }: PublishDiagnosticsParams) => {
        announced.push(version);
      });
      listening.onNotification('halflap/progress', ({ doing }: { doing: string | null }) => {
        progress.push(doing);
      });
    },
  );
});
afterAll(() => {
  editor.dispose();
});

const change = (version: number, text: string): Promise<void> =>
  editor.sendNotification('textDocument/didChange', {
    textDocument: { uri, version },
    contentChanges: [{ text }],
  });
const stageBegun = (): Promise<void> => new Promise((resolve) => (onStage = resolve));
/** The panel's counts, by which a question is answered from the latest text. */
const hover = (): Promise<unknown> =>
  editor.sendRequest('textDocument/hover', { textDocument: { uri }, position: positionOf(disc, 'window') });

async function until(condition: () => boolean): Promise<void> {
  while (!condition()) await new Promise((resume) => setImmediate(resume));
}

it('a newer text is analysed in its place, and only that is announced', async () => {
  const begun = stageBegun();
  await editor.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'halflap', version: 1, text: endless },
  });
  await begun;
  await change(2, disc);
  await until(() => announced.length > 0);
  expect(announced).toEqual([2]);
  const done = stages;
  expect(await hover()).toMatchObject({ contents: { value: expect.stringContaining('342') as string } });
  expect(stages).toBe(done);
});

it('says what it is at, and stops when told to; the next text is analysed again', async () => {
  await change(3, endless);
  await until(() => progress.length > 0);
  expect(progress[0]).toBe('Analysing: waiting');
  await editor.sendNotification('halflap/stop', { uri });
  await until(() => progress.at(-1) === null);
  const done = stages;
  await change(4, disc);
  await until(() => announced.length > 1);
  expect(announced).toEqual([2, 4]);
  expect(stages).toBe(done);
});
