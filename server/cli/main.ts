/** The `halflap` command. */
import { runCommand } from './run-command.ts';
import { processTerminal } from './terminal.ts';
import { exitCode, faultWords } from './wrong-usage.ts';

const terminal = processTerminal();

void runCommand(process.argv.slice(2), terminal).then(
  (code) => {
    process.exitCode = code;
  },
  (fault: unknown) => {
    terminal.writeError(`halflap: ${faultWords(fault)}\n`);
    process.exitCode = exitCode.fault;
  },
);
