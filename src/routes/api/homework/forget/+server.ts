import { clientWith, forgetClient, sharedAssignment } from '$lib/server/clients';
import { answering, bodyOf, database, deleting } from '$lib/server/http';
import type { RequestHandler } from './$types';
import { homeworkRequest } from '$lib/wire';

export const prerender = false;

/** Deletes a client at the client's own wish, at once. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { share, token } = await bodyOf(event, homeworkRequest.forget);
    const db = await database();
    const { id } = await sharedAssignment(db, share);
    const client = await clientWith(db, id, token);
    if (client) await deleting(() => forgetClient(db, id, client.id));
  });
