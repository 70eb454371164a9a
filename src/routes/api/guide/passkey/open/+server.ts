import { answering, bodyOf, database, setCookie, siteOf, timeNow } from '$lib/server/http';
import { openByPasskey } from '$lib/server/passkeys';
import { PASSKEY_COOKIE, used } from '$lib/server/shapes-passkey';
import type { RequestHandler } from './$types';

export const prerender = false;

/** Exchanges a passkey's answer for a cookie. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const sent = await bodyOf(event, used);
    const begun = event.cookies.get(PASSKEY_COOKIE);
    const db = await database();
    setCookie(event, await openByPasskey(db, siteOf(event), sent, begun, timeNow()));
  });
