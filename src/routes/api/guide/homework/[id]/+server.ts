import { deleteAssignment, extend, setClosed } from '$lib/server/assignments';
import { answering, bodyOf, database, guideFrom, timeNow } from '$lib/server/http';
import type { RequestHandler } from './$types';
import { homeworkOrder } from '$lib/wire';

export const prerender = false;

/** Closes or extends homework. */
export const PATCH: RequestHandler = (event) =>
  answering(async () => {
    const guide = await guideFrom(event);
    const asked = await bodyOf(event, homeworkOrder.change);
    const db = await database();
    const { id } = event.params;
    if (asked.change === 'close') await setClosed(db, guide, id, timeNow());
    else await extend(db, guide, id, asked.due, timeNow());
  });

/** Deletes homework with all its clients. */
export const DELETE: RequestHandler = (event) =>
  answering(async () => {
    await deleteAssignment(await database(), await guideFrom(event), event.params.id);
  });
