import { rodLimit, rodPlaceOf, rodRoom } from '$lib/server/clinic-rod';
import { answering, bodyOf, database, takeOne, timeNow } from '$lib/server/http';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { clinicRequest } from '$lib/wire';

export const prerender = false;

/** The phone that is the rod says how it is turned, and hears in what water. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { link, ...batch } = await bodyOf(event, clinicRequest.rod);
    const { id, state } = await rodRoom(await database(), link, timeNow());
    takeOne(rodLimit, id);
    (await runtime()).feed.relay(id, 'screen', 'rod', batch);
    return rodPlaceOf(state);
  });
