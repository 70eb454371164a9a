import { createHash } from 'node:crypto';
import type { Db } from './store';
import { write } from './submission-writer';

/** One thing that a phone sends. `id` is made on the phone and kept there until it is acknowledged. */
export interface Submission {
  /** The client or seat that sends it. */
  scope: string;
  id: string;
  /** Homework or clinic that it belongs to. */
  parent: string;
  part: string;
  payload: unknown;
}

export type Receipt =
  | { kind: 'accepted' | 'repeated'; reply: string }
  /** The id was used before for something else. Nothing was changed. */
  | { kind: 'conflict' };

/** What is known of an id that has come before. */
export interface Stored {
  payload_hash: string;
  reply: string;
}

/**
 * Takes a submission so that it counts once, however often and in whatever order it comes. Key, hash
 * of the payload and reply are one row, written by one statement: there is no moment at which a
 * submission is counted and its reply unknown. `answer` is asked only for what is new.
 */
export async function accept(
  db: Db,
  submission: Submission,
  now: string,
  answer: () => unknown
): Promise<Receipt> {
  return acceptAfter(db, submission, await stored(db, submission), now, answer);
}

/**
 * The same, for who has just looked what is stored under this id. It may have been stored since: then
 * the insert finds it.
 */
export async function acceptAfter(
  db: Db,
  submission: Submission,
  before: Stored | undefined,
  now: string,
  answer: () => unknown
): Promise<Receipt> {
  const payload = JSON.stringify(submission.payload);
  const payload_hash = hashOf(submission.parent, submission.part, payload);
  if (before) return receiptOf(before, payload_hash);
  const { scope, id, parent, part } = submission;
  const reply = JSON.stringify(await answer());
  const row = { scope, id, parent, part, payload_hash, payload, reply, received_at: now };
  if (await write(db, row)) return { kind: 'accepted', reply };
  // The same came by another way between the look and the insert: that one stands.
  const other = await stored(db, submission);
  if (!other) throw new Error(`submission ${id}: neither inserted nor there`);
  return receiptOf(other, payload_hash);
}

function stored(db: Db, { scope, id }: Submission): Promise<Stored | undefined> {
  return db
    .selectFrom('submissions')
    .select(['payload_hash', 'reply'])
    .where('scope', '=', scope)
    .where('id', '=', id)
    .executeTakeFirst();
}

function receiptOf(row: Stored, hash: string): Receipt {
  return row.payload_hash === hash ? { kind: 'repeated', reply: row.reply } : { kind: 'conflict' };
}

function hashOf(...parts: string[]): string {
  return createHash('sha256').update(JSON.stringify(parts)).digest('base64url');
}

/** How many submissions a sender has stored: bounds what one phone can fill. */
export async function submissionCountOf(db: Db, scope: string): Promise<number> {
  const { count } = await db
    .selectFrom('submissions')
    .select((of) => of.fn.countAll().as('count'))
    .where('scope', '=', scope)
    .executeTakeFirstOrThrow();
  return Number(count);
}

/** Deletes all that came from a client or a seat. */
export async function forgetSent(db: Db, scope: string): Promise<void> {
  await db.deleteFrom('submissions').where('scope', '=', scope).execute();
}
