import { answering, database, guideFrom } from '$lib/server/http';
import { removePasskey } from '$lib/server/passkeys';
import type { RequestHandler } from './$types';

export const prerender = false;

/** This passkey opens nothing any more. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    await removePasskey(await database(), await guideFrom(event), event.params.id);
  });
