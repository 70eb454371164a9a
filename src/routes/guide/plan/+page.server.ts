import { loadLessons } from '$lib/course';
import { assignmentOf, assignmentsOf } from '$lib/server/assignments';
import { beside } from '$lib/server/beside';
import { clientsOf } from '$lib/server/clients';
import { database, guideOfPage, refusalOf } from '$lib/server/http';
import { planLesson } from '$lib/server/lesson-plan';
import { handOf, type Hand } from '$lib/server/plan-hand';
import { progressOf } from '$lib/server/progress';
import type { Guide } from '$lib/server/spaces';
import type { Db } from '$lib/server/store';
import { error } from '@sveltejs/kit';
import { askedIn, clientIn, type Asked } from './asked';
import type { PageServerLoad } from './$types';

/** Read once: that checks every lesson, which takes as long as some tries. */
const lessons = loadLessons();

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const db = await database();
  const homework = await assignmentsOf(db, guide);
  const groups = homework.map(async ({ id, task }) => {
    return { id, title: task.title, clients: await clientsOf(db, id) };
  });
  try {
    const asked = askedIn(event.url.searchParams);
    const { nickname, hand } = await clientOf(db, guide, asked);
    const { temperature, depth, ground, wind, fish, minutes } = asked;
    const conditions = { temperature_C: temperature, depth_m: depth, ground, wind, fish };
    const jig = await beside('jig', conditions);
    const plan = planLesson({ conditions, jig, minutes, hand }, lessons);
    return { groups: await Promise.all(groups), asked, nickname, jig, plan };
  } catch (fault) {
    const { status, message } = refusalOf(fault);
    error(status, message);
  }
};

async function clientOf(
  db: Db,
  guide: Guide,
  asked: Asked
): Promise<{ nickname: string | null; hand: Hand | null }> {
  const wanted = clientIn(asked);
  if (!wanted) return { nickname: null, hand: null };
  const assignment = await assignmentOf(db, guide, wanted.homework);
  const [found] = assignment ? await progressOf(db, assignment, [wanted.client]) : [];
  if (!found) error(404, 'This client is not here, or wished to be deleted.');
  return { nickname: found.client.nickname, hand: handOf(found.challenges) };
}
