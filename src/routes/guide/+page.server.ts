import { assignmentsOf } from '$lib/server/assignments';
import { clientsOf } from '$lib/server/clients';
import { Refusal } from '$lib/server/faults';
import { database, guideFrom } from '$lib/server/http';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
  try {
    const guide = await guideFrom(event);
    const db = await database();
    const homework = await assignmentsOf(db, guide);
    const counted = homework.map(async ({ id, task, closed_at }) => {
      const { length: clients } = await clientsOf(db, id);
      return { id, title: task.title, due: task.due, isClosed: closed_at !== null, clients };
    });
    const { name, keep_until } = guide;
    return { guide: { name, keep_until }, homework: await Promise.all(counted) };
  } catch (fault) {
    if (fault instanceof Refusal && fault.status === 401) return { guide: null, homework: [] };
    throw fault;
  }
};
