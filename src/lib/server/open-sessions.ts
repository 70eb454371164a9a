import type { OpenSession } from '../wire';
import { SESSION_DAYS, type Guide } from './spaces';
import { daysAfter } from './retention';
import type { Db } from './store';
import { hashToken } from './token';

/** What the guide may know it by is no secret, but the hash of one need not be shown. */
const idOf = (token_hash: string) => hashToken(`session ${token_hash}`);

/** Where the guide's space is open: here, and then last used first. @param token of the cookie that asks */
export async function sessionsOf(
  db: Db,
  { space }: Guide,
  token: string,
  now: string
): Promise<OpenSession[]> {
  const rows = await db
    .selectFrom('sessions')
    .select(['token_hash', 'device', 'opened_at', 'ends_at'])
    .where('space_id', '=', space)
    .where('ends_at', '>', now)
    .orderBy('ends_at', 'desc')
    .execute();
  const sessions = rows.map(({ token_hash, device, opened_at, ends_at }) => ({
    id: idOf(token_hash),
    device,
    opened: opened_at,
    // A cookie that is used is written anew, to end so long after (spaces.ts).
    used: daysAfter(ends_at, -SESSION_DAYS),
    isThis: token_hash === hashToken(token)
  }));
  return sessions.sort((a, b) => Number(b.isThis) - Number(a.isThis));
}

/** Ends one of the guide's own sessions; of another space's nothing is found. */
export async function endOpenSession(db: Db, { space }: Guide, id: string): Promise<void> {
  const rows = await db
    .selectFrom('sessions')
    .select('token_hash')
    .where('space_id', '=', space)
    .execute();
  const named = rows.map(({ token_hash }) => token_hash).filter((hash) => idOf(hash) === id);
  if (named.length === 0) return;
  await db.deleteFrom('sessions').where('token_hash', 'in', named).execute();
}
