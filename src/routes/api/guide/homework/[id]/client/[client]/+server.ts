import { assignmentOf } from '$lib/server/assignments';
import { clientOf, forgetClient } from '$lib/server/clients';
import { Refusal } from '$lib/server/faults';
import { answering, database, deleting, guideFrom } from '$lib/server/http';
import type { RequestHandler } from './$types';

export const prerender = false;

/** Deletes one client with all that was sent. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const db = await database();
    const { id, client } = event.params;
    const assignment = await assignmentOf(db, guide, id);
    // A client of another homework, and so perhaps of another guide, is not here.
    if (!assignment || !(await clientOf(db, id, client)))
      throw new Refusal(404, 'This client isn’t here, or asked to be deleted.');
    await deleting(() => forgetClient(db, id, client));
  });
