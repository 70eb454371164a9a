import { clientWith, forgetClient, sharedAssignment } from '$lib/server/clients';
import { answering, bodyOf, database } from '$lib/server/http';
import { token } from '$lib/server/shapes';
import * as v from 'valibot';
import type { RequestHandler } from './$types';

export const prerender = false;

const forgetting = v.strictObject({ share: token, token });

/** Deletes a client at the client's own wish, at once. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const { share, token } = await bodyOf(event, forgetting);
    const db = await database();
    const { id } = await sharedAssignment(db, share);
    const client = await clientWith(db, id, token);
    if (client) await forgetClient(db, id, client.id);
  });
