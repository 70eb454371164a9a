import type { RegistrationResponseJSON, AuthenticationResponseJSON } from '@simplewebauthn/server';
import { Refusal } from './faults';
import { sessionFor, type Guide } from './spaces';
import type { Db } from './store';
import { hashToken, newToken, seal, unseal } from './token';

/** Names the browser that began, until its authenticator has answered. */
export const PASSKEY_COOKIE = 'feltfoot_passkey';

/** Where a passkey is made or used. Its name must be one that the server answers to. */
export interface Site {
  host: string;
  origin: string;
}

/** What a browser asks its authenticator, and the token of the browser that may bring the answer. */
export interface Begun<Options> {
  options: Options;
  token: string;
}

/** Time to find the key and touch it, s. */
export const CHALLENGE_S = 300;
/** More on one space are a mistake. */
const MOST_PASSKEYS = 12;
/** Of a challenge that opens a space: whose, is only known afterwards. */
const NO_SPACE = '';

// Heavy, and asked for by few: loaded by the first who needs it.
const webauthn = () => import('@simplewebauthn/server');

export async function beginAdding(db: Db, guide: Guide, { host }: Site, now: string) {
  const known = await passkeysOf(db, guide);
  if (known.length >= MOST_PASSKEYS) throw new Refusal(429, 'Remove a passkey first.');
  const options = await (
    await webauthn()
  ).generateRegistrationOptions({
    rpName: 'Feltfoot',
    rpID: host,
    userName: guide.name,
    userID: Uint8Array.from(Buffer.from(hashToken(`passkey ${guide.space}`), 'base64url')),
    timeout: CHALLENGE_S * 1000,
    excludeCredentials: known.map(({ id }) => ({ id })),
    // Found by the browser without our knowing who asks, and never without a finger or a code.
    authenticatorSelection: { residentKey: 'required', userVerification: 'required' }
  });
  return { options, token: await keepChallenge(db, options.challenge, guide.space, now) };
}

export async function beginOpening(db: Db, { host }: Site, now: string) {
  const options = await (
    await webauthn()
  ).generateAuthenticationOptions({
    rpID: host,
    timeout: CHALLENGE_S * 1000,
    userVerification: 'required'
  });
  return { options, token: await keepChallenge(db, options.challenge, NO_SPACE, now) };
}

/**
 * Adds a passkey to the guide's space.
 * @param token of the browser that began
 * @param sealing what the authenticator's own secret makes, the same at every use; never stored
 */
export async function addPasskey(
  db: Db,
  guide: Guide,
  site: Site,
  { response, sealing }: { response: RegistrationResponseJSON; sealing: string },
  token: string | undefined,
  now: string
): Promise<void> {
  const challenge = await takeChallenge(db, token, guide.space, now);
  const { verifyRegistrationResponse } = await webauthn();
  const { registrationInfo } = await checked(() =>
    verifyRegistrationResponse({ response, ...expected(site, challenge) })
  );
  if (!registrationInfo) throw unfit();
  const { id, publicKey, counter } = registrationInfo.credential;
  const row = {
    id,
    space_id: guide.space,
    public_key: Buffer.from(publicKey).toString('base64url'),
    counter: String(counter),
    sealed_share_key: seal(guide.shareKey, sealing),
    created_at: now
  };
  await db.insertInto('passkeys').values(row).execute();
}

/** Opens the space that a passkey belongs to. @returns the cookie's token */
export async function openByPasskey(
  db: Db,
  site: Site,
  { response, sealing }: { response: AuthenticationResponseJSON; sealing: string },
  token: string | undefined,
  now: string,
  device = ''
): Promise<string> {
  const challenge = await takeChallenge(db, token, NO_SPACE, now);
  const row = await db
    .selectFrom('passkeys')
    .selectAll()
    .where('id', '=', response.id)
    .executeTakeFirst();
  if (!row) throw new Refusal(404, 'No space has this passkey. It may have been removed.');
  const { verifyAuthenticationResponse } = await webauthn();
  const credential = {
    id: row.id,
    publicKey: Uint8Array.from(Buffer.from(row.public_key, 'base64url')),
    counter: Number(row.counter)
  };
  const { verified, authenticationInfo } = await checked(() =>
    verifyAuthenticationResponse({ response, credential, ...expected(site, challenge) })
  );
  if (!verified) throw unfit();
  const shareKey = await checked(async () => unseal(row.sealed_share_key, sealing));
  await db
    .updateTable('passkeys')
    .set({ counter: String(authenticationInfo.newCounter) })
    .where('id', '=', row.id)
    .execute();
  return sessionFor(db, row.space_id, shareKey, now, device);
}

/** The guide's passkeys, oldest first. */
export function passkeysOf(db: Db, guide: Guide): Promise<{ id: string; created_at: string }[]> {
  return db
    .selectFrom('passkeys')
    .select(['id', 'created_at'])
    .where('space_id', '=', guide.space)
    .orderBy('created_at')
    .execute();
}

export async function removePasskey(db: Db, guide: Guide, id: string): Promise<void> {
  await db
    .deleteFrom('passkeys')
    .where('space_id', '=', guide.space)
    .where('id', '=', id)
    .execute();
}

async function keepChallenge(db: Db, challenge: string, space_id: string, now: string) {
  const token = newToken();
  const ends_at = new Date(Date.parse(now) + CHALLENGE_S * 1000).toISOString();
  const row = { token_hash: hashToken(token), challenge, space_id, ends_at };
  await db.insertInto('challenges').values(row).execute();
  return token;
}

/** A challenge is good once, for the browser and the purpose that it was made for. */
async function takeChallenge(db: Db, token: string | undefined, space: string, now: string) {
  const row = await db
    .deleteFrom('challenges')
    .where('token_hash', '=', hashToken(token ?? ''))
    .returningAll()
    .executeTakeFirst();
  if (row && row.space_id === space && row.ends_at > now) return row.challenge;
  throw new Refusal(403, 'That took too long, or came from somewhere else. Start over.');
}

const expected = ({ host, origin }: Site, expectedChallenge: string) => {
  const expectedRPID = host;
  return {
    expectedChallenge,
    expectedOrigin: origin,
    expectedRPID,
    requireUserVerification: true
  };
};

const unfit = () => new Refusal(403, 'That’s the wrong passkey.');

/** What the library throws tells of its inside, and is no fault of ours. */
async function checked<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch {
    throw unfit();
  }
}
