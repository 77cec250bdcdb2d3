import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../server/cli/run-command.ts';
import { FakeTerminal } from './fake-terminal.ts';

const file = fileURLToPath(new URL('../cases/drawings/hemp.lap', import.meta.url));

async function draw(...args: string[]) {
  const terminal = new FakeTerminal();
  return { code: await runCommand(['draw', ...args], terminal), output: terminal.output, errors: terminal.errors };
}

describe('draw', () => {
  test('--piece draws an infill piece or a strip by its mark', async () => {
    expect((await draw(file, '--piece', 'A')).output).toContain('20.1 tip to tip');
    expect((await draw(file, '--piece', 'S1')).output).toContain('strip, 172.0 mm long');
  });

  test('--piece with an unknown mark names those there are', async () => {
    const { code, output, errors } = await draw(file, '--piece', 'Z9');
    expect(code).toBe(2);
    expect(output).toBe('');
    expect(errors).toContain('no piece has the mark Z9; there is A, S1');
  });

  test('--chart draws the chart of a panel, and says where it comes from', async () => {
    const { code, output } = await draw(file, '--chart', 'star');
    expect(code).toBe(0);
    expect(output).toContain('Seen from the back, mirrored');
    expect(output).toMatch(/hemp\.lap, text [0-9a-f]{8}/);
  });

  test('--chart of an unknown panel names those there are', async () => {
    const { code, errors } = await draw(file, '--chart', 'moon');
    expect(code).toBe(2);
    expect(errors).toContain('there is star');
  });

  test('draws one thing at a time', async () => {
    const { code, errors } = await draw(file, '--piece', 'A', '--chart', 'star');
    expect(code).toBe(2);
    expect(errors).toContain('only one of --panel, --piece and --chart');
  });
});
