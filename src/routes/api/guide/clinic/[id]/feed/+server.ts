import { screenView } from '$lib/server/clinic-view';
import { addressOf, answering, database, guideFrom, streamed, timeNow } from '$lib/server/http';
import { roomOf } from '$lib/server/rooms';
import { codes, runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

/** What the big screen shows, as it changes. */
export const GET: RequestHandler = (event) =>
  answering(async () => {
    const db = await database();
    const { id, code } = await roomOf(db, await guideFrom(event), event.params.id);
    codes.wasRight(addressOf(event), code);
    const { feed } = await runtime();
    return streamed(feed.stream(id, 'screen', () => screenView(db, id, timeNow())));
  });
