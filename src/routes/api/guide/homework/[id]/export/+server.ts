import { assignmentOf } from '$lib/server/assignments';
import { homeworkTable } from '$lib/server/export';
import { Refusal } from '$lib/server/faults';
import { answering, database, guideFrom } from '$lib/server/http';
import { clientProgressOf } from '$lib/server/progress';
import type { RequestHandler } from './$types';

export const prerender = false;

/** All that clients of a homework did: a table, or with ?as=json everything down to the rod input. */
export const GET: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const db = await database();
    const assignment = await assignmentOf(db, guide, event.params.id);
    if (!assignment) throw new Refusal(404, 'There is no such homework.');
    const clients = await clientProgressOf(db, assignment);
    const isJson = event.url.searchParams.get('as') === 'json';
    const text = isJson
      ? JSON.stringify({ task: assignment.task, clients }, null, 1)
      : homeworkTable(clients, assignment.task.phase);
    return new Response(text, {
      headers: {
        'content-type': `${isJson ? 'application/json' : 'text/csv'}; charset=utf-8`,
        'content-disposition': `attachment; filename="homework.${isJson ? 'json' : 'csv'}"`
      }
    });
  });
