/** The command in this process, as tests run it, and folders of their own to run it in. */
import { mkdtempSync, rmSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach } from 'vitest';
import { runCommand } from '../../server/cli/run-command.ts';
import { FakeTerminal } from './fake-terminal.ts';

export interface Outcome {
  readonly code: number;
  readonly output: string;
  readonly errors: string;
}

/** Runs `halflap ARGS`; `folder` is where the person stands, `input` what they pipe in. */
export async function halflap(
  args: readonly string[],
  { input = '', folder }: { readonly input?: string; readonly folder?: string } = {},
): Promise<Outcome> {
  const terminal = new FakeTerminal({ input });
  const before = process.cwd();
  if (folder !== undefined) process.chdir(folder);
  try {
    return { code: await runCommand(args, terminal), output: terminal.output, errors: terminal.errors };
  } finally {
    process.chdir(before);
  }
}

export interface Scratch {
  path(...parts: readonly string[]): string;
  /** Writes a file; gives its path. */
  file(name: string, content: string | Uint8Array): Promise<string>;
}

/** An empty folder for each test of the file that asks for it. */
export function scratchFolder(): Scratch {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'halflap-test-'));
  });
  afterEach(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  const path = (...parts: readonly string[]): string => join(folder, ...parts);
  return {
    path,
    file: async (name, content) => {
      await writeFile(path(name), content);
      return path(name);
    },
  };
}
