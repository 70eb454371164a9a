import { answering, bodyOf, deleting, roomKept, takeOne } from '$lib/server/http';
import { forgetParticipant } from '$lib/server/rooms';
import { limits, runtime } from '$lib/server/runtime';
import type { RequestHandler } from './$types';
import { clinicRequest } from '$lib/wire';

export const prerender = false;

/** Deletes a seat at its phone's own wish, at once, also when the code is dead for all else. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { token } = await bodyOf(event, clinicRequest.forget);
    takeOne(limits.sender, token);
    const { id } = await roomKept(event);
    await deleting((db) => forgetParticipant(db, id, token));
    (await runtime()).feed.changed(id);
  });
