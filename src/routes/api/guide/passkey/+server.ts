import { answering, bodyOf, database, guideFrom, siteOf, timeNow } from '$lib/server/http';
import { addPasskey } from '$lib/server/passkeys';
import { made, PASSKEY_COOKIE } from '$lib/server/shapes-passkey';
import type { RequestHandler } from './$types';

export const prerender = false;

/** A second way into the guide's space. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const sent = await bodyOf(event, made);
    const begun = event.cookies.get(PASSKEY_COOKIE);
    await addPasskey(await database(), guide, siteOf(event), sent, begun, timeNow());
  });
