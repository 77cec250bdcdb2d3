/** The command was not given what it needs, or may not do what was asked: said on stderr in one line, exit code 2. */
export class WrongUsage extends Error {
  override readonly name: string = 'WrongUsage';
}

/** Standard output takes no more, so there is no use in going on. */
export class OutputClosed extends WrongUsage {
  override readonly name = 'OutputClosed';
}

/** Exit codes of every verb, the graver the larger. */
export const exitCode = { fine: 0, designHasErrors: 1, wrongUsage: 2, fault: 70 } as const;

/** What to say of a fault of Halflap itself, with where it happened. */
export const faultWords = (fault: unknown): string =>
  `a fault in Halflap itself: ${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}`;
