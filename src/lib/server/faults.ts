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
 * PostgreSQL: 08 connection, 57P0 going down, 57014 and 55P03 statement and lock took too long, 25P03 and
 * 40001, 40P01 a transaction that was given up, 53300 no connection left. ENOENT: its socket is gone.
 */
const NO_ANSWER =
  /^(08|57P0|57014|55P03|25P03|40001|40P01|53300|ECONN|ENOENT|EPIPE|ETIMEDOUT|EAI_)/;

/** Of connections that broke under a query the driver has words alone. */
const BROKEN = [
  'Connection terminated',
  'Client has encountered a connection error',
  'Client was closed and is not queryable',
  'timeout exceeded when trying to connect',
  'timeout expired',
  'Query read timeout',
  'driver has already been destroyed',
  'Cannot use a pool after calling end'
];

const isBroken = (error: unknown) =>
  error instanceof Error && BROKEN.some((words) => error.message.includes(words));

/** 53100 is PostgreSQL's. */
const DISK_FULL = new Set(['SQLITE_FULL', '53100', 'ENOSPC']);

export const isDiskFull = (error: unknown) =>
  DISK_FULL.has(String((error as { code?: unknown } | null)?.code ?? ''));

/** PostgreSQL that is read-only; a folder that is. */
const NOT_TO_WRITE = new Set(['25006', 'EACCES', 'EROFS', 'EPERM']);

/**
 * What to say when the store cannot write: nothing was lost, since nothing was acknowledged.
 * @returns undefined when the error is none of the store's
 */
export function storeTrouble(error: unknown): Refusal | undefined {
  const code = String((error as { code?: unknown } | null)?.code ?? '');
  if (isDiskFull(error)) {
    return new Refusal(
      507,
      'The server’s disk is full. Nothing was saved there; you still have what you sent.'
    );
  }
  if (code.startsWith('SQLITE_READONLY') || NOT_TO_WRITE.has(code)) {
    return new Refusal(503, 'The server can’t save right now. Nothing was saved; try again later.');
  }
  if (code.startsWith('SQLITE_') || NO_ANSWER.test(code) || isBroken(error)) {
    return new Refusal(
      503,
      'The server’s store isn’t answering. Nothing was saved; try again later.'
    );
  }
  if (error instanceof Error && error.name === 'StoreLost') {
    return new Refusal(503, 'The server has lost its data. Nothing was saved.');
  }
  return undefined;
}
