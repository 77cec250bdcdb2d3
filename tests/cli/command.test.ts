import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { copyFile, mkdir, mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
let folder: string;
/** What the package ships; `npm test` builds it first. */
const program = fileURLToPath(new URL('../../dist/halflap.cjs', import.meta.url));

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'halflap-command-'));
});

afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

interface Outcome {
  readonly code: number | null;
  readonly output: string;
  readonly errors: string;
}

function run(args: readonly string[], input: string, command = program): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [command, ...args], { cwd: root });
    let output = '';
    let errors = '';
    child.stdout.on('data', (chunk: Buffer) => (output += chunk.toString('utf8')));
    child.stderr.on('data', (chunk: Buffer) => (errors += chunk.toString('utf8')));
    child.on('error', reject);
    child.on('close', (code) => {
      resolve({ code, output, errors });
    });
    child.stdin.end(input);
  });
}

describe('the bundled command', () => {
  test('plans and draws the ginkgo into files', async () => {
    const plan = join(folder, 'out', 'ginkgo.json');
    const drawing = join(folder, 'out', 'ginkgo.svg');
    expect(await run(['plan', 'samples/ginkgo.lap', '--as', 'json', '-o', plan], '')).toEqual({
      code: 0,
      output: '',
      errors: '',
    });
    expect(await run(['draw', 'samples/ginkgo.lap', '-o', drawing], '')).toEqual({ code: 0, output: '', errors: '' });
    expect(JSON.parse(await readFile(plan, 'utf8'))).toMatchObject({ source: 'samples/ginkgo.lap', incomplete: false });
    expect(await readFile(drawing, 'utf8')).toMatch(/^<svg [^]*<\/svg>\n$/);
  });

  test('prints with nothing but what is packed: the program, its typefaces and painters, no packages', async () => {
    const packed = join(folder, 'packed');
    await mkdir(packed);
    const dist = dirname(program);
    const carried = (await readdir(dist)).filter((name) => /\.(wasm|ttf)$|^halflap\.cjs$/.test(name));
    for (const name of carried) await copyFile(join(dist, name), join(packed, name));
    const alone = join(packed, 'halflap.cjs');
    const sheet = join(folder, 'lamp.pdf');
    const picture = join(folder, 'lamp.png');
    expect(await run(['plan', 'samples/lamp.lap', '--as', 'pdf', '-o', sheet], '', alone)).toMatchObject({ code: 0 });
    expect(await run(['draw', 'samples/lamp.lap', '--as', 'png', '-o', picture], '', alone)).toMatchObject({ code: 0 });
    expect((await readFile(sheet)).subarray(0, 5).toString('latin1')).toBe('%PDF-');
    expect((await readFile(picture)).subarray(1, 4).toString('latin1')).toBe('PNG');
  });

  test('reads a pipe and gives its exit code', async () => {
    const { code, output } = await run(['check', '-'], 'panel {');
    expect(code).toBe(1);
    expect(output).toMatch(/^<stdin>:1:\d+: error LAP\d{4} /);
  });

  test('exits 2 on wrong usage', async () => {
    expect((await run(['plan'], '')).code).toBe(2);
  });

  test('serves the language protocol', async () => {
    const child = spawn(process.execPath, [program, 'serve', '--stdio'], { cwd: root });
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
