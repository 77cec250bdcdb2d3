/** Cases inside the editor: run in order, counted, written down for the runner. */
import { writeFileSync } from 'node:fs';

export interface Case {
  readonly name: string;
  readonly run: () => Promise<void>;
}

/** Names a case, read as a sentence about the extension. */
export const it = (name: string, run: () => Promise<void>): Case => ({ name, run });

/** Runs all cases and writes `{ passed, failed }` to `resultsFile`; a failure is printed, and `onFailure` is told. */
export async function runCases(
  cases: readonly Case[],
  resultsFile: string,
  onFailure: (name: string) => Promise<void>,
): Promise<void> {
  const counts = { passed: 0, failed: 0 };
  for (const { name, run } of cases) {
    try {
      await run();
      counts.passed++;
      console.log(`  ok    ${name}`);
    } catch (error) {
      counts.failed++;
      console.log(`  FAIL  ${name}\n${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
      await onFailure(name);
    }
  }
  writeFileSync(resultsFile, JSON.stringify(counts));
}

/** Waits until `condition` gives something other than null or false; throws with `what` after 15 s. */
export async function until<Found>(
  what: string,
  condition: () => Promise<Found | null | false> | Found | null | false,
): Promise<Found> {
  const end = Date.now() + 15_000;
  for (;;) {
    const found = await condition();
    if (found !== null && found !== false) return found;
    if (Date.now() > end) throw new Error(`Waited in vain: ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
