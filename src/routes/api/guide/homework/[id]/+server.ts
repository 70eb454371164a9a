import { parseAssignment } from '$lib/practice';
import { extend, refuseNotOwn, replaceTask, setClosed } from '$lib/server/assignments';
import { answering, bodyOf, database, deleting, guideFrom, timeNow } from '$lib/server/http';
import { deleteAssignments } from '$lib/server/retention';
import type { RequestHandler } from './$types';
import { homeworkOrder } from '$lib/wire';

export const prerender = false;

/** Closes, extends or edits homework. */
export const PATCH: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const asked = await bodyOf(event, homeworkOrder.change);
    const db = await database();
    const { id } = event.params;
    await refuseNotOwn(db, guide, id);
    if (asked.change === 'close') await setClosed(db, guide, id, timeNow());
    else if (asked.change === 'extend') await extend(db, guide, id, asked.due, timeNow());
    else await replaceTask(db, guide, id, parseAssignment(asked.task, 'task'), timeNow());
  });

/** Deletes homework with all its clients. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const db = await database();
    await refuseNotOwn(db, guide, event.params.id);
    await deleting(() => deleteAssignments(db, [event.params.id]));
  });
