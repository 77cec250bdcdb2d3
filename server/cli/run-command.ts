/** Which verb, and what becomes of its answer or its refusal. */
import { maximum } from '../geometry/numbers.ts';
import packageFile from '../../package.json' with { type: 'json' };
import type { Terminal } from './terminal.ts';
import type { Verb } from './verb.ts';
import { check } from './verbs/check.ts';
import { compare } from './verbs/compare.ts';
import { draw } from './verbs/draw.ts';
import { format } from './verbs/format.ts';
import { plan } from './verbs/plan.ts';
import { serve } from './verbs/serve.ts';
import { exitCode, WrongUsage } from './wrong-usage.ts';

const verbs: ReadonlyMap<string, Verb> = new Map(Object.entries({ check, plan, draw, compare, format, serve }));

/** Runs `halflap ARGS` and gives its exit code; only a fault of Halflap itself is thrown. */
export async function runCommand(args: readonly string[], terminal: Terminal): Promise<number> {
  const [first, ...rest] = args;
  const verb = verbs.get(first ?? '');
  try {
    if (verb) return await (asksForHelp(rest) ? said(terminal, verb.help) : verb.run(rest, terminal));
    if (first === '--version') return await said(terminal, `${packageFile.version}\n`);
    if (first === '--help' || first === '-h') return await said(terminal, overview());
  } catch (error) {
    if (!(error instanceof WrongUsage)) throw error;
    terminal.writeError(`halflap${verb ? ` ${first ?? ''}` : ''}: ${error.message}\n`);
    return exitCode.wrongUsage;
  }
  terminal.writeError(first === undefined ? overview() : `halflap: “${first}” is not a verb\n\n${overview()}`);
  return exitCode.wrongUsage;
}

/** `--help` anywhere before a `--` that ends the options. */
function asksForHelp(args: readonly string[]): boolean {
  const end = args.indexOf('--');
  return (end < 0 ? args : args.slice(0, end)).some((argument) => argument === '--help' || argument === '-h');
}

async function said(terminal: Terminal, text: string): Promise<number> {
  await terminal.write(text);
  return exitCode.fine;
}

function overview(): string {
  const width = maximum([...verbs.keys()].map((name) => name.length));
  const lines = [...verbs].map(([name, verb]) => `  ${name.padEnd(width)}  ${verb.summary}`);
  return `Halflap counts, checks and draws wooden lattice panels written as text (.lap files).

halflap VERB [options] FILE

${lines.join('\n')}

halflap VERB --help tells more; halflap --version says which version this is.
`;
}
