import { loadLessons } from '$lib/course';
import { assignmentsOf } from '$lib/server/assignments';
import { Refusal } from '$lib/server/faults';
import { cookieOf, database, guideFrom, timeNow } from '$lib/server/http';
import { sessionsOf } from '$lib/server/open-sessions';
import { clinicOffer } from '$lib/server/clinic-plan';
import { passkeysOf } from '$lib/server/passkeys';
import { phoneAddressOf } from '$lib/server/reach';
import { participantsIn, roomsOf } from '$lib/server/rooms';
import { standingsOf } from '$lib/server/standing';
import { isAllDone } from '$lib/app/guide';
import type { PageServerLoad } from './$types';

/** Read once: that checks every lesson, which takes as long as some tries. */
const lessons = loadLessons();

export const load: PageServerLoad = async (event) => {
  try {
    const guide = await guideFrom(event);
    const db = await database();
    const homework = await assignmentsOf(db, guide);
    const counted = homework.map(async (one) => {
      const standings = await standingsOf(db, one);
      const { id, task, closed_at } = one;
      const [clients, done] = [standings.length, standings.filter(isAllDone).length];
      return { id, title: task.title, due: task.due, isClosed: closed_at !== null, clients, done };
    });
    const rooms = await roomsOf(db, guide);
    const clinics = rooms.map(async ({ id, code, created_at, state: { name, isOver } }) => {
      const phones = await participantsIn(db, id);
      return { id, code, name, at: created_at, isOver, phones };
    });
    const passkeys = (await passkeysOf(db, guide)).map(({ id, created_at }) => {
      return { id, at: created_at };
    });
    const sessions = await sessionsOf(db, guide, cookieOf(event) ?? '', timeNow());
    const { name, keep_until } = guide;
    const { origin } = phoneAddressOf(event);
    const offer = clinicOffer(lessons);
    return {
      guide: { name, keep_until, origin },
      homework: await Promise.all(counted),
      clinics: await Promise.all(clinics),
      offer,
      passkeys,
      sessions
    };
  } catch (fault) {
    if (fault instanceof Refusal && fault.status === 401)
      return { guide: null, homework: [], clinics: [], offer: null, passkeys: [], sessions: [] };
    throw fault;
  }
};
