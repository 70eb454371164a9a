import { loadLessons } from '$lib/course';
import { parseSetup } from '$lib/model';
import { assignmentOf, assignmentsOf } from '$lib/server/assignments';
import { serverCompute } from '$lib/server/compute';
import { clientsOf } from '$lib/server/clients';
import { addressOf, database, guideOfPage, refusalOf, timeNow } from '$lib/server/http';
import { planLesson } from '$lib/server/lesson-plan';
import { MOST_COUNT_S } from '$lib/compute/jobs/jig';
import { handOf, type ClientHand } from '$lib/server/plan-hand';
import { clientProgressOf } from '$lib/server/progress';
import type { Guide } from '$lib/server/spaces';
import type { Db } from '$lib/server/store';
import { error } from '@sveltejs/kit';
import { planRequestIn, clientsIn, gearFor, type OwnGear } from '$lib/app/guide';
import type { PageServerLoad } from './$types';
import type { ChallengeProgress } from '$lib/wire';

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
    const people = await Promise.all(clientsIn(asked).map((one) => clientOf(db, guide, one)));
    const gear = gearFor(asked, people.find(({ own }) => own)?.own ?? null);
    const { temperature, ground, wind, fish, minutes } = asked;
    const conditions = { temperature_C: temperature, ground, wind, fish, ...gear };
    const jig = await serverCompute('jig', conditions, {
      space: guide.space,
      address: addressOf(event)
    });
    const plan = planLesson(
      { conditions, jig, minutes, hands: people.map(({ hand }) => hand) },
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

interface Known {
  nickname: string | null;
  hand: ClientHand | null;
  own: OwnGear | null;
}

async function clientOf(
  db: Db,
  guide: Guide,
  wanted: ReturnType<typeof clientsIn>[number]
): Promise<Known> {
  if (!wanted) return { nickname: null, hand: null, own: null };
  const assignment = await assignmentOf(db, guide, wanted.homework);
  const [found] = assignment ? await clientProgressOf(db, assignment, [wanted.client]) : [];
  if (!found) error(404, 'This client is not here, or wished to be deleted.');
  const { client, challenges } = found;
  return { nickname: client.nickname, hand: handOf(challenges), own: ownGearOf(challenges) };
}

/** Of the first challenge that was tried, or else the first that was set; null without any. */
function ownGearOf(challenges: readonly ChallengeProgress[]): OwnGear | null {
  const [first] = [...challenges.filter(({ tries }) => tries.length > 0), ...challenges];
  if (!first) return null;
  const { bait, water } = parseSetup(first.challenge.setup);
  return { depth_m: water.depth_m, mass_kg: bait.mass_kg };
}
