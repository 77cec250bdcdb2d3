/** The `halflap` command: the verbs of server/cli, and the language server behind the one that serves. */
import { runCommand } from './cli/run-command.ts';
import { processTerminal } from './cli/terminal.ts';
import { exitCode, faultWords } from './cli/wrong-usage.ts';

const terminal = processTerminal(async () => {
  const { serveStandardStreams } = await import('./language/serve-standard-streams.ts');
  serveStandardStreams();
});

void runCommand(process.argv.slice(2), terminal).then(
  (code) => {
    process.exitCode = code;
  },
  (fault: unknown) => {
    terminal.writeError(`halflap: ${faultWords(fault)}\n`);
    process.exitCode = exitCode.fault;
  },
);
