import { answering, deleting, guideFrom } from '$lib/server/http';
import { endOpenSession } from '$lib/server/open-sessions';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';

export const prerender = false;

/** That browser is out, and so are the screens that it has open. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    await deleting((db) => endOpenSession(db, guide, event.params.id));
    (await runtime()).feed.doubt(guide.space);
  });
