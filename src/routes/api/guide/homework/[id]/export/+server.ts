import { assignmentOf } from '$lib/server/assignments';
import { exportName, homeworkTable } from '$lib/server/export';
import { Refusal } from '$lib/server/faults';
import { answering, database, guideFrom, timeNow } from '$lib/server/http';
import { clientProgressOf } from '$lib/server/progress';
import type { RequestHandler } from './$types';

export const prerender = false;

/** All that clients of a homework did: a table, or with ?as=json everything down to the rod input. */
export const GET: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const db = await database();
    const assignment = await assignmentOf(db, guide, event.params.id);
    if (!assignment) throw new Refusal(404, 'That homework isn’t here.');
    const clients = await clientProgressOf(db, assignment);
    const { searchParams } = event.url;
    const isJson = searchParams.get('as') === 'json';
    const units = searchParams.get('units') === 'metric' ? 'metric' : 'imperial';
    const zone = zoneIn(searchParams.get('zone') ?? 'UTC');
    const text = isJson
      ? JSON.stringify({ task: assignment.task, clients }, null, 1)
      : homeworkTable(clients, assignment.task, { units, zone });
    const name = exportName(assignment.task.title, timeNow(), zone, isJson ? 'json' : 'csv');
    return new Response(text, {
      headers: {
        'content-type': `${isJson ? 'application/json' : 'text/csv'}; charset=utf-8`,
        'content-disposition': `attachment; filename="${name}"`
      }
    });
  });

function zoneIn(zone: string): string {
  try {
    return new Intl.DateTimeFormat('en', { timeZone: zone }).resolvedOptions().timeZone;
  } catch {
    throw new Refusal(422, `zone: "${zone}" isn’t a time zone.`);
  }
}
