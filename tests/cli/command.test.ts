/** The bundled command as it is packed: few processes, each of which proves what only a process can. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { closeSync, openSync } from 'node:fs';
import { copyFile, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Outcome } from './halflap.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** What the package ships; `npm test` builds it first. */
const program = join(root, 'dist/halflap.cjs');
const design = 'tests/cases/drawings/hemp.lap';
let folder: string;
/** The program with what is packed beside it, and no packages. */
let alone: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'halflap-command-'));
  alone = join(folder, 'halflap.cjs');
  const carried = (await readdir(dirname(program))).filter((name) => /\.(wasm|ttf)$|^halflap\.cjs$/.test(name));
  for (const name of carried) await copyFile(join(dirname(program), name), join(folder, name));
});

afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

async function run(args: readonly string[], input = ''): Promise<Omit<Outcome, 'code'> & { code: number | null }> {
  const child = spawn(process.execPath, [alone, ...args], { cwd: root });
  let [output, errors] = ['', ''];
  child.stdout.on('data', (chunk: Buffer) => (output += chunk.toString('utf8')));
  child.stderr.on('data', (chunk: Buffer) => (errors += chunk.toString('utf8')));
  child.stdin.end(input);
  const [code] = (await once(child, 'close')) as [number | null];
  return { code, output, errors };
}

describe('the bundled command', () => {
  test('plans and prints with nothing but what is packed: solver and typefaces', async () => {
    const sheet = join(folder, 'out', 'hemp.pdf');
    expect(await run(['plan', design, '--as', 'pdf', '-o', sheet])).toEqual({ code: 0, output: '', errors: '' });
    expect((await readFile(sheet)).subarray(0, 5).toString('latin1')).toBe('%PDF-');
  });

  test('and draws with the painter', async () => {
    const picture = join(folder, 'hemp.png');
    expect(await run(['draw', design, '--as', 'png', '-o', picture])).toEqual({ code: 0, output: '', errors: '' });
    expect((await readFile(picture)).subarray(1, 4).toString('latin1')).toBe('PNG');
  });

  test('reads a pipe and gives its exit code', async () => {
    const { code, output } = await run(['check', '-'], 'panel {');
    expect(code).toBe(1);
    expect(output).toMatch(/^<stdin>:1:\d+: error LAP\d{4} /);
  });

  test('a full standard output, or one that its reader has closed, gives one line and exit code 2', async () => {
    const full = openSync('/dev/full', 'w');
    try {
      for (const output of [full, 'pipe'] as const) {
        const child = spawn(process.execPath, [alone, 'plan', design], {
          cwd: root,
          stdio: ['ignore', output, 'pipe'],
        });
        child.stdout?.destroy();
        let errors = '';
        child.stderr?.on('data', (chunk: Buffer) => (errors += chunk.toString('utf8')));
        expect(await once(child, 'close')).toEqual([2, null]);
        expect(errors).toMatch(/^halflap plan: cannot write standard output: [^\n]+\n$/);
      }
    } finally {
      closeSync(full);
    }
  });

  test('serves the language protocol', async () => {
    const child = spawn(process.execPath, [alone, 'serve', '--stdio'], { cwd: root });
    const ended = once(child, 'close');
    let output = '';
    const send = (content: object): void => {
      const body = JSON.stringify({ jsonrpc: '2.0', ...content });
      child.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
    };
    const answerTo = async (id: number): Promise<void> => {
      while (!output.includes(`"id":${id},`)) {
        const [chunk] = (await once(child.stdout, 'data')) as [Buffer];
        output += chunk.toString('utf8');
      }
    };
    send({ id: 1, method: 'initialize', params: { processId: null, rootUri: null, capabilities: {} } });
    await answerTo(1);
    expect(output).toMatch(/^Content-Length: \d+\r\n/);
    expect(output).toContain('"capabilities"');
    send({ id: 2, method: 'shutdown' });
    await answerTo(2);
    send({ method: 'exit' });
    expect(await ended).toEqual([0, null]);
  });
});
