/** The command was not given what it needs, or may not do what was asked: said on stderr in one line, exit code 2. */
export class WrongUsage extends Error {
  override readonly name = 'WrongUsage';
}

/** Exit codes of every verb. */
export const exitCode = { fine: 0, designHasErrors: 1, wrongUsage: 2 } as const;
