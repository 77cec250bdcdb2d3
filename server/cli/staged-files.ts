/**
 * Files made whole under a name of their own before they take their place: written, handed to the disk, then renamed.
 * The name tells which process makes them, so what a killed one left behind can be swept by the next.
 */
import { createHash, randomUUID } from 'node:crypto';
import type { Stats } from 'node:fs';
import { lstat, open, readdir, rm } from 'node:fs/promises';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { hasCode } from '../machine/reason.ts';
import { WrongUsage } from './wrong-usage.ts';

/** Process numbers are those of one machine; disks may be shared by several. */
const machine = createHash('sha256').update(hostname()).digest('hex').slice(0, 8);

const stagedName = /^\.halflap-(?<machine>[0-9a-f]{8})-(?<process>\d+)-[0-9a-f-]+\.tmp$/;

/** Longer than any run takes: after that, whoever made it is gone, whatever process has its number now. */
const longestRun = 24 * 60 * 60 * 1000;

/** A fresh path in `folder` for what this process stages there. */
export const stagedPath = (folder: string): string =>
  join(folder, `.halflap-${machine}-${process.pid}-${randomUUID()}.tmp`);

export const isStaged = (name: string): boolean => stagedName.test(name);

/** Writes the bytes to `path`, which is new, down to the disk. It looks as `like`, the file whose place it takes. */
export async function stageFile(path: string, content: string | Uint8Array, like: Stats | null): Promise<void> {
  const file = await open(path, 'wx', like ? 0o600 : 0o666);
  try {
    if (like) await takeAfter(file, like);
    await file.writeFile(content);
    await file.sync();
  } finally {
    await file.close();
  }
}

/** Owner before mode: a change of owner takes bits of the mode away. */
async function takeAfter(file: Awaited<ReturnType<typeof open>>, like: Stats): Promise<void> {
  const own = await file.stat();
  if (own.uid !== like.uid || own.gid !== like.gid) {
    await file.chown(like.uid, like.gid).catch(() => {
      throw new WrongUsage('it belongs to another owner or group, which cannot be kept: name another file');
    });
  }
  await file.chmod(like.mode & 0o7777);
}

/** Hands the names in a folder to the disk, where the system knows how: a rename then outlives a power cut. */
export async function settleFolder(folder: string): Promise<void> {
  const handle = await open(folder, 'r').catch(() => null);
  await handle?.sync().catch(() => undefined);
  await handle?.close();
}

/** Removes what killed runs left in `folder`; what cannot be removed stays. */
export async function sweepStaged(folder: string): Promise<void> {
  const names = await readdir(folder).catch(() => []);
  for (const name of names.filter(isStaged)) {
    const path = join(folder, name);
    if (await isLeftOver(path, name)) await rm(path, { recursive: true, force: true }).catch(() => undefined);
  }
}

async function isLeftOver(path: string, name: string): Promise<boolean> {
  const { machine: made, process: number } = stagedName.exec(name)?.groups ?? {};
  if (made === machine && !runs(Number(number))) return true;
  const stats = await lstat(path).catch(() => null);
  return stats !== null && Date.now() - stats.mtimeMs > longestRun;
}

/** Whether a process of that number runs here, be it another user's. */
function runs(number: number): boolean {
  try {
    process.kill(number, 0);
    return true;
  } catch (error) {
    return !hasCode(error, 'ESRCH');
  }
}
