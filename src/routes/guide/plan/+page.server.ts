import { loadLessons } from '$lib/course';
import { assignmentsOf } from '$lib/server/assignments';
import { serverCompute } from '$lib/server/compute';
import { clientsOf } from '$lib/server/clients';
import { addressOf, database, guideOfPage, refusalOf, timeNow } from '$lib/server/http';
import { plannedClient } from '$lib/server/plan-client';
import { planLesson } from '$lib/server/lesson-plan';
import { MOST_COUNT_S } from '$lib/compute/jobs/jig-for';
import { error } from '@sveltejs/kit';
import { planRequestIn, clientsIn, gearFor } from '$lib/app/guide';
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
    const asked = planRequestIn(event.url.searchParams);
    const people = await Promise.all(clientsIn(asked).map((one) => plannedClient(db, guide, one)));
    const gear = gearFor(asked, people.find(({ own }) => own)?.own ?? null);
    const { temperature, ground, wind, fish, minutes, run: run_min } = asked;
    const conditions = { temperature_C: temperature, ground, wind, fish, ...gear };
    const jig = await serverCompute('jig', conditions, {
      space: guide.space,
      address: addressOf(event)
    });
    const plan = planLesson(
      { conditions, jig, minutes, run_min, hands: people.map(({ hand }) => hand) },
      lessons
    );
    const day = asked.day ?? timeNow().slice(0, 10);
    const wanted_s = MOST_COUNT_S;
    const known = people.map(({ nickname }) => nickname);
    return { groups: await Promise.all(groups), asked, gear, day, wanted_s, known, jig, plan };
  } catch (fault) {
    const { status, message } = refusalOf(fault);
    error(status, message);
  }
};
