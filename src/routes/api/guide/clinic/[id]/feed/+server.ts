import { screenViewOf } from '$lib/server/clinic-view';
import {
  addressOf,
  answering,
  cookieOf,
  database,
  guideFrom,
  streamed,
  timeNow
} from '$lib/server/http';
import { roomOf } from '$lib/server/rooms';
import { codes, runtime } from '$lib/server/runtime';
import { sessionHolds } from '$lib/server/spaces';
import type { RequestHandler } from './$types';

export const prerender = false;

/** What the big screen shows, as it changes. */
export const GET: RequestHandler = (event) =>
  answering(async () => {
    const db = await database();
    const guide = await guideFrom(event);
    const { id, code } = await roomOf(db, guide, event.params.id);
    const from = addressOf(event);
    codes.wasRight(from, code);
    const { feed } = await runtime();
    const cookie = cookieOf(event) ?? '';
    const keyed = { space: guide.space, holds: () => sessionHolds(db, cookie, timeNow()) };
    const view = () => screenViewOf(db, id, timeNow(), feed.away(id));
    return streamed(event, () => feed.stream(id, { key: 'screen', view, from, keyed }));
  });
