/** The `halflap` command. */
import { runCommand } from './run-command.ts';
import { processTerminal } from './terminal.ts';

const terminal = processTerminal();

void runCommand(process.argv.slice(2), terminal).then(
  (code) => {
    process.exitCode = code;
  },
  (fault: unknown) => {
    terminal.writeError(
      `halflap: a fault in Halflap itself: ${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}\n`,
    );
    process.exitCode = 70;
  },
);
