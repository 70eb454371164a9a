import { Refused } from './ask';

/** Something done here that a server is to have. It is kept until the server has acknowledged it. */
export interface OutboxEntry<Sent> {
  sent: Sent;
  state: 'waiting' | 'taken' | 'refused';
  /** Why it was refused. */
  why?: string;
}

/** What waits is tried again this often, ms: a hall waits for its votes, homework for nobody. */
export const RETRY_MS = { clinic: 3000, homework: 20_000 };

/** Whether the same may be taken if it is asked again: there was no connection, or no time for it. */
export function isPassing(error: unknown): boolean {
  return !(error instanceof Refused) || error.status === 429 || error.status >= 500;
}

/**
 * Sends what waits, one after the other, until something does not get through. What is refused is not
 * sent again. Sending twice is safe: the server counts an id once.
 * @param next the first that waits; undefined ends it
 * @param settle keeps that it was taken or refused: it waits no more
 */
export async function deliver<Entry extends OutboxEntry<unknown>>(
  next: () => Entry | undefined,
  send: (sent: Entry['sent']) => Promise<unknown>,
  settle: (entry: Entry) => Promise<void> | void
): Promise<void> {
  for (let entry = next(); entry; entry = next()) {
    try {
      await send(entry.sent);
    } catch (error) {
      if (isPassing(error)) return;
      await settle({ ...entry, state: 'refused', why: (error as Refused).message });
      continue;
    }
    await settle({ ...entry, state: 'taken' });
  }
}
