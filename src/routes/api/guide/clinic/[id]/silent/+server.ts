import { clearSilent } from '$lib/server/admission';
import { answering, database, guideFrom } from '$lib/server/http';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

/** Takes out the seats that have answered nothing. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    await clearSilent(await database(), await guideFrom(event), event.params.id);
    (await runtime()).feed.changed(event.params.id);
  });
