import { assignmentOf } from '$lib/server/assignments';
import { writeNote } from '$lib/server/clients';
import { Refusal } from '$lib/server/faults';
import { answering, bodyOf, database, guideFrom } from '$lib/server/http';
import type { RequestHandler } from './$types';
import { homeworkOrder } from '$lib/wire';

export const prerender = false;

/** Writes back to a client. */
export const POST: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const { client, note } = await bodyOf(event, homeworkOrder.note);
    const db = await database();
    const assignment = await assignmentOf(db, guide, event.params.id);
    if (!assignment) throw new Refusal(404, 'That homework isn’t here.');
    await writeNote(db, assignment.id, client, note);
  });
