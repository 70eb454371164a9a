/** A request that cannot be met, with the HTTP status that says so and words for whoever sent it. */
export class Refusal extends Error {
  constructor(
    readonly status: number,
    message: string,
    /** When to ask again, s. */
    readonly retryAfter_s?: number
  ) {
    super(message);
    this.name = 'Refusal';
  }
}

/**
 * What to say when the store cannot write: nothing was lost, since nothing was acknowledged.
 * @returns undefined when the error is none of the store's
 */
export function storeTrouble(error: unknown): Refusal | undefined {
  const code = String((error as { code?: unknown } | null)?.code ?? '');
  // PostgreSQL: 53100 disk full, 25006 read-only, 57P0x going down, 08xxx connection.
  if (code === 'SQLITE_FULL' || code === '53100') {
    return new Refusal(507, 'The disk is full. Nothing was taken; what you sent stays with you.');
  }
  if (code.startsWith('SQLITE_READONLY') || code === '25006') {
    return new Refusal(503, 'The store can only be read. Nothing was taken; try again later.');
  }
  if (code.startsWith('SQLITE_') || /^(08|57P|ECONN)/.test(code)) {
    return new Refusal(503, 'The store does not answer. Nothing was taken; try again later.');
  }
  return undefined;
}
