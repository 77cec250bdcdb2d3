/** A git repository in a folder of its own, for tests. Nothing of the person's git settings counts in it. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

const environment = {
  ...process.env,
  GIT_CONFIG_GLOBAL: '/dev/null',
  GIT_CONFIG_NOSYSTEM: '1',
  GIT_AUTHOR_NAME: 'A maker',
  GIT_AUTHOR_EMAIL: 'maker@halflap.invalid',
  GIT_COMMITTER_NAME: 'A maker',
  GIT_COMMITTER_EMAIL: 'maker@halflap.invalid',
  GIT_AUTHOR_DATE: '2026-01-05T09:00:00Z',
  GIT_COMMITTER_DATE: '2026-01-05T09:00:00Z',
};

export class GitFolder {
  readonly path = mkdtempSync(join(tmpdir(), 'halflap-git-'));

  constructor() {
    this.git('init', '--quiet', '--initial-branch', 'main');
  }

  git(...args: readonly string[]): string {
    return execFileSync('git', [...args], { cwd: this.path, env: environment, encoding: 'utf8' });
  }

  /** Gives the path of the file. */
  write(name: string, text: string): string {
    const path = join(this.path, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    return path;
  }

  /** Writes files and commits everything; the message is the tag as well. */
  commit(tag: string, files: Readonly<Record<string, string>>): void {
    for (const [name, text] of Object.entries(files)) this.write(name, text);
    this.git('add', '--all');
    this.git('commit', '--quiet', '--message', tag);
    this.git('tag', tag);
  }

  /** Runs a program here, with variables added; gives its output. */
  run(program: string, args: readonly string[], variables: Readonly<Record<string, string>> = {}): string {
    return execFileSync(program, [...args], {
      cwd: this.path,
      env: { ...environment, ...variables },
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    });
  }

  remove(): void {
    rmSync(this.path, { recursive: true, force: true });
  }
}
