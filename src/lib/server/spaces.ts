import { storeTrouble } from './faults';
import { daysAfter } from './retention';
import type { Db } from './store';
import { hashToken, newToken, seal, unseal } from './token';

/** A guide who has shown a valid cookie. */
export interface Guide {
  space: string;
  name: string;
  keep_until: string;
  shareKey: string;
}

/** A cookie is good for so long after it was last used. */
export const SESSION_DAYS = 30;
export const KEPT_DAYS = 90;
/** The cookie's end is written anew at most once a day, not at every click. */
const RENEW_BELOW_DAYS = SESSION_DAYS - 1;

/** Opens a space. @returns the guide's secret, which is stored nowhere here. */
export async function createSpace(db: Db, name: string, now: string): Promise<string> {
  const secret = newToken();
  const space = {
    id: newToken(),
    name,
    manage_hash: hashToken(secret),
    sealed_share_key: seal(newToken(), secret),
    created_at: now,
    keep_until: daysAfter(now, KEPT_DAYS)
  };
  await db.insertInto('spaces').values(space).execute();
  return secret;
}

/** Exchanges the guide's secret for a cookie's token; undefined when no space has that secret. */
export async function startSession(
  db: Db,
  secret: string,
  now: string,
  device = ''
): Promise<string | undefined> {
  const space = await db
    .selectFrom('spaces')
    .select(['id', 'sealed_share_key'])
    .where('manage_hash', '=', hashToken(secret))
    .executeTakeFirst();
  if (!space) return undefined;
  const token = await sessionFor(db, space.id, unseal(space.sealed_share_key, secret), now, device);
  const still = await db
    .selectFrom('spaces')
    .select('id')
    .where('manage_hash', '=', hashToken(secret))
    .executeTakeFirst();
  if (still) return token;
  // Renewed in this very moment: who tries a stolen key again and again must not slip through.
  await endSession(db, token);
  return undefined;
}

/**
 * A cookie's token for who has shown to be this space's guide. The space lives on from now.
 * @param device what kind of machine asks, for its guide to tell it from others
 */
export async function sessionFor(
  db: Db,
  space_id: string,
  shareKey: string,
  now: string,
  device = ''
): Promise<string> {
  const token = newToken();
  const session = {
    token_hash: hashToken(token),
    space_id,
    sealed_share_key: seal(shareKey, token),
    ends_at: daysAfter(now, SESSION_DAYS),
    opened_at: now,
    device
  };
  await db.insertInto('sessions').values(session).execute();
  await keepSpace(db, space_id, now);
  return token;
}

async function keepSpace(db: Db, space: string, now: string): Promise<void> {
  await db
    .updateTable('spaces')
    .set({ keep_until: daysAfter(now, KEPT_DAYS) })
    .where('id', '=', space)
    .execute();
}

/** The guide behind a cookie. A cookie in use lives on, and with it the space. */
export async function guideOf(
  db: Db,
  token: string | undefined,
  now: string
): Promise<Guide | undefined> {
  if (!token) return undefined;
  const found = await db
    .selectFrom('sessions')
    .innerJoin('spaces', 'spaces.id', 'sessions.space_id')
    .select([
      'spaces.id',
      'spaces.name',
      'spaces.keep_until',
      'sessions.ends_at',
      'sessions.sealed_share_key'
    ])
    .where('sessions.token_hash', '=', hashToken(token))
    .where('sessions.ends_at', '>', now)
    .executeTakeFirst();
  if (!found) return undefined;
  if (found.ends_at < daysAfter(now, RENEW_BELOW_DAYS)) await tryToRenew(db, found.id, token, now);
  const { id: space, name, keep_until } = found;
  return { space, name, keep_until, shareKey: unseal(found.sealed_share_key, token) };
}

/** On a full disk the cookie is good as it is: its guide may have come to delete. */
async function tryToRenew(db: Db, space: string, token: string, now: string): Promise<void> {
  try {
    await renew(db, space, token, now);
  } catch (fault) {
    if (!storeTrouble(fault)) throw fault;
  }
}

async function renew(db: Db, space: string, token: string, now: string): Promise<void> {
  await db
    .updateTable('sessions')
    .set({ ends_at: daysAfter(now, SESSION_DAYS) })
    .where('token_hash', '=', hashToken(token))
    .execute();
  await keepSpace(db, space, now);
}

/** Gives the space a new secret; the old link, key file, passkeys and cookies are void. */
export async function renewSecret(db: Db, guide: Guide): Promise<string> {
  const secret = newToken();
  await db.transaction().execute(async (inOne) => {
    await inOne
      .updateTable('spaces')
      .set({ manage_hash: hashToken(secret), sealed_share_key: seal(guide.shareKey, secret) })
      .where('id', '=', guide.space)
      .execute();
    await dropWaysIn(inOne, guide.space);
  });
  // Again: what another node wrote while this was not yet to be seen.
  await dropWaysIn(db, guide.space);
  return secret;
}

async function dropWaysIn(db: Db, space: string): Promise<void> {
  for (const table of ['sessions', 'passkeys', 'challenges'] as const) {
    await db.deleteFrom(table).where('space_id', '=', space).execute();
  }
}

/** @returns the space that it was of */
export async function endSession(db: Db, token: string): Promise<string | undefined> {
  const ended = await db
    .deleteFrom('sessions')
    .where('token_hash', '=', hashToken(token))
    .returning('space_id')
    .executeTakeFirst();
  return ended?.space_id;
}

/** Whether a cookie still opens. Unlike its use, this makes neither cookie nor space live longer. */
export async function sessionHolds(db: Db, token: string, now: string): Promise<boolean> {
  const session = await db
    .selectFrom('sessions')
    .select('space_id')
    .where('token_hash', '=', hashToken(token))
    .where('ends_at', '>', now)
    .executeTakeFirst();
  return session !== undefined;
}
