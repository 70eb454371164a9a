import { phoneView } from '$lib/server/clinic-view';
import { answering, database, roomAsked, streamed } from '$lib/server/http';
import { roomById } from '$lib/server/rooms';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

/** What the phones of a room show, as it changes. Who can see the screen may see this. */
export const GET: RequestHandler = (event) =>
  answering(async () => {
    const db = await database();
    const { id } = await roomAsked(event);
    const { feed } = await runtime();
    return streamed(feed.stream(id, 'phone', async () => phoneView(await roomById(db, id))));
  });
