import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { runCommand } from '../../server/cli/run-command.ts';
import { readPdf } from '../drawing/read-pdf.ts';
import { FakeTerminal } from './fake-terminal.ts';
import { halflap, type Outcome } from './halflap.ts';

const file = fileURLToPath(new URL('../cases/drawings/hemp.lap', import.meta.url));

const draw = (...args: string[]): Promise<Outcome> => halflap(['draw', ...args]);

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
    expect(errors).toContain('only one of --panel, --piece, --chart, --blank, --sheet, --work and --template');
  });

  test('--template draws an outline or a panel to cut by, and names what there is', async () => {
    expect((await draw(file, '--template', 'star')).output).toContain('finished line');
    const { code, errors } = await draw(file, '--template', 'moon');
    expect(code).toBe(2);
    expect(errors).toContain('no outline, panel, board or band is called moon; there is');
    expect((await draw(file, '--template', 'star', '--from-back')).output).toContain('seen from the back');
    expect((await draw(file, '--from-back')).errors).toContain('--from-back is for --template');
  });

  test('--work draws the assembled work, refuses DXF, and says where there is none', async () => {
    const sample = fileURLToPath(new URL('../../samples/ginkgo.lap', import.meta.url));
    const { code, output } = await draw(sample, '--work');
    expect(code).toBe(0);
    expect(output).toContain('1000 mm wide, 580 mm high over all');
    expect((await draw(sample, '--work', '--as', 'dxf')).errors).toContain(
      '--as dxf draws what is cut, not the assembled work',
    );
    expect((await draw(file, '--work')).errors).toContain('the file has no work to draw');
    expect((await draw(file, '--work', '--panel', 'star')).code).toBe(2);
  });

  test('--as dxf writes what is cut, and no chart', async () => {
    for (const subject of [
      ['--panel', 'star'],
      ['--piece', 'A'],
      ['--template', 'star'],
    ]) {
      expect((await draw(file, ...subject, '--as', 'dxf')).output).toMatch(/^ {2}0\r\nSECTION\r\n[^]*EOF\r\n$/);
    }
    expect((await draw(file, '--chart', 'star', '--as', 'dxf')).errors).toContain(
      '--as dxf draws what is cut, not a chart',
    );
  });
});

describe('draw in other formats', () => {
  /** Bytes drawn to a pipe. */
  async function bytesOf(...args: string[]): Promise<Uint8Array> {
    const terminal = new FakeTerminal();
    expect(await runCommand(['draw', file, ...args], terminal)).toBe(0);
    expect(terminal.output).toBe('');
    return terminal.bytes;
  }

  test('--as png paints a sheet at 200 dots an inch (width and height stand first in a PNG, RFC 2083)', async () => {
    const bytes = await bytesOf('--piece', 'A', '--as', 'png');
    expect([...bytes.slice(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
    const header = new DataView(bytes.buffer, 16);
    expect(header.getUint32(0)).toBe(Math.ceil((297 / 25.4) * 200));
    expect(header.getUint32(4)).toBe(Math.ceil((210 / 25.4) * 200));
  });

  test('--as pdf writes the panel on a page of its own size, and a chart likewise', async () => {
    const panel = await readPdf(await bytesOf('--as', 'pdf'));
    expect(panel.pages[0]?.text).toContain('Panel star');
    const chart = await readPdf(await bytesOf('--chart', 'star', '--as', 'pdf'));
    expect(chart.pages[0]?.text).toContain('Seen from the back, mirrored');
  });

  test('a template as pdf comes on the paper that is asked for (ASME Y14.1: tabloid is 11 × 17 in, 792 × 1224 points)', async () => {
    const { pages } = await readPdf(await bytesOf('--template', 'star', '--as', 'pdf', '--paper', 'tabloid'));
    expect([...(pages[0]?.sizePt ?? [])].sort((a, b) => a - b).map((size) => Number(size.toFixed(1)))).toEqual([
      792, 1224,
    ]);
    const { errors } = await draw(file, '--as', 'pdf', '--paper', 'A4');
    expect(errors).toContain('--paper is for --template');
  });

  test.each(['pdf', 'png'])('--as %s is kept off a terminal', async (format) => {
    const terminal = new FakeTerminal({ outputIsTerminal: true });
    expect(await runCommand(['draw', file, '--as', format], terminal)).toBe(2);
    expect(terminal.errors).toContain('name a file with -o');
  });
});

describe('plan to print', () => {
  async function plan(...args: string[]) {
    const terminal = new FakeTerminal();
    const code = await runCommand(['plan', file, ...args], terminal);
    return { code, terminal };
  }

  test('--as pdf on letter paper (ANSI Y14.1: 8.5 × 11 in, 612 × 792 points)', async () => {
    const { code, terminal } = await plan('--as', 'pdf', '--paper', 'letter');
    expect(code).toBe(0);
    const { pages } = await readPdf(terminal.bytes);
    expect(pages[0]?.sizePt.map((size) => Number(size.toFixed(1)))).toEqual([612, 792]);
    expect(pages.at(-1)?.text).toContain(`page ${pages.length} of ${pages.length}`);
  });

  test('--as html on A4', async () => {
    const { terminal } = await plan('--as', 'html');
    expect(terminal.output).toMatch(/^<!doctype html>\n[^]*<\/html>\n$/);
    expect(terminal.output).toContain('width="210mm" height="297mm"');
  });

  test('refuses a paper for what is not printed, one that there is not, and a PDF on a terminal', async () => {
    expect((await plan('--as', 'json', '--paper', 'A4')).terminal.errors).toContain('--paper is for');
    expect((await plan('--as', 'pdf', '--paper', 'A9')).terminal.errors).toContain('choose A4 or letter');
    const shown = new FakeTerminal({ outputIsTerminal: true });
    expect(await runCommand(['plan', file, '--as', 'pdf'], shown)).toBe(2);
    expect(shown.errors).toContain('name a file with -o');
  });
});
