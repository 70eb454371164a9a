import { assignmentsOf } from '$lib/server/assignments';
import { database, guideOfPage } from '$lib/server/http';
import { standingsOf } from '$lib/server/standing';
import type { PageServerLoad } from './$types';

/** The newest so many: a season's. Each is one count over what its clients sent. */
const MOST_HOMEWORK = 12;

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  const all = await assignmentsOf(db, guide);
  const homework = all.slice(0, MOST_HOMEWORK).map(async (one) => {
    const { title, lessons, challenges, objectives, lawn } = one.task;
    const titles = challenges.map(({ id, title }) => ({ id, title }));
    const task = { title, lessons, challenges: titles, objectives, lawn };
    return { id: one.id, task, standings: await standingsOf(db, one) };
  });
  return { homework: await Promise.all(homework), older: Math.max(0, all.length - MOST_HOMEWORK) };
};
