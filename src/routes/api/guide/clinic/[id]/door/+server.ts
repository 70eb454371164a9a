import { setAdmission } from '$lib/server/admission';
import { answering, bodyOf, database, guideFrom, timeNow } from '$lib/server/http';
import { runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { clinicRequest } from '$lib/wire';

export const prerender = false;

/** The instructor opens or closes the door. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const { door } = await bodyOf(event, clinicRequest.admission);
    await setAdmission(await database(), guide, event.params.id, door, timeNow());
    (await runtime()).feed.changed(event.params.id);
  });
