import { lendRod } from '$lib/server/clinic-rod';
import { answering, database, guideFrom, timeNow } from '$lib/server/http';
import { act } from '$lib/server/rooms';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

/** Makes a link for the phone that becomes the screen's rod. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const link = await lendRod(await database(), guide, event.params.id, timeNow());
    (await runtime()).feed.changed(event.params.id);
    return { link };
  });

/** Puts the rod away: its link is void. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    await act(await database(), guide, event.params.id, { do: 'rod', hash: null }, timeNow());
    (await runtime()).feed.changed(event.params.id);
  });
