/** Messages that are none: each is answered, and those after it as well. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';

const bundle = fileURLToPath(new URL('../../dist/server.cjs', import.meta.url));

interface Message {
  readonly id?: number | null;
  readonly error?: { readonly code: number; readonly message: string };
  readonly result?: unknown;
}

let server: ChildProcessWithoutNullStreams;
let heard: Buffer;

beforeEach(() => {
  server = spawn(process.execPath, [bundle, '--stdio']);
  heard = Buffer.alloc(0);
});
afterEach(() => {
  server.kill();
});

const framed = (body: string): string => `Content-Length: ${String(Buffer.byteLength(body))}\r\n\r\n${body}`;
const request = (id: number, method: string, params: object = {}): string =>
  framed(JSON.stringify({ jsonrpc: '2.0', id, method, params }));
const initialize = (id: number): string =>
  request(id, 'initialize', { processId: null, rootUri: null, capabilities: {} });

/** The next answer: messages without an id tell, and answer nothing. */
async function nextAnswer(): Promise<Message> {
  for (;;) {
    const head = /^Content-Length: (\d+)\r\n\r\n/.exec(heard.toString('latin1'));
    const end = head ? head[0].length + Number(head[1]) : Number.POSITIVE_INFINITY;
    if (head && heard.length >= end) {
      const message = JSON.parse(heard.subarray(head[0].length, end).toString('utf8')) as Message;
      heard = heard.subarray(end);
      if (message.id !== undefined) return message;
      continue;
    }
    const [chunk] = (await once(server.stdout, 'data')) as [Buffer];
    heard = Buffer.concat([heard, chunk]);
  }
}

test.each([
  ['a header without a length', 'Content-Type: text\r\n\r\n'],
  ['a length that is no number', 'Content-Length: many\r\n\r\n'],
  ['a header that is none', 'what is this\r\n\r\n'],
  ['a body that is no JSON', framed('{{{{{')],
])('%s', async (_, broken) => {
  server.stdin.write(broken);
  expect(await nextAnswer()).toMatchObject({ id: null, error: { code: -32700 } });
  server.stdin.write(initialize(1));
  expect((await nextAnswer()).id).toBe(1);
});

test('what comes in one piece with a broken header is read', async () => {
  server.stdin.write(`what is this\r\n\r\n${initialize(1)}`);
  expect((await nextAnswer()).error).toMatchObject({ code: -32700 });
  expect((await nextAnswer()).id).toBe(1);
});

test('a second `initialize` is refused, and nothing of the first is lost', async () => {
  server.stdin.write(initialize(1));
  expect(await nextAnswer()).toMatchObject({ id: 1, result: { serverInfo: { name: 'halflap' } } });
  server.stdin.write(initialize(2));
  expect(await nextAnswer()).toMatchObject({ id: 2, error: { code: -32600 } });
  server.stdin.write(request(3, 'shutdown'));
  expect((await nextAnswer()).id).toBe(3);
  server.stdin.end();
  expect(await once(server, 'exit')).toEqual([0, null]);
});

test('an editor that goes without a word ends the server', async () => {
  server.stdin.write(initialize(1));
  await nextAnswer();
  server.stdin.end();
  expect(await once(server, 'exit')).toEqual([1, null]);
});
