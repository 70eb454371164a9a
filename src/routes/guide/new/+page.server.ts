import { assignmentOf } from '$lib/server/assignments';
import { database, guideOfPage, timeNow } from '$lib/server/http';
import { daysAfter } from '$lib/server/retention';
import type { PageServerLoad } from './$types';

/** A week is proposed: who is not told a day begins on the eve of the next meeting. */
const DAYS = 7;

export const load: PageServerLoad = async (event) => {
  const guide = await guideOfPage(event);
  const { searchParams } = event.url;
  const challenge = searchParams.get('challenge') ?? '';
  const edited = searchParams.get('edit');
  const asked = edited ?? searchParams.get('again');
  const before = asked ? await assignmentOf(await database(), guide, asked) : undefined;
  const week = daysAfter(timeNow(), DAYS).slice(0, 10);
  const isChanged = before !== undefined && edited !== null;
  const due = isChanged ? (before.task.due ?? '') : week;
  return {
    name: guide.name,
    challenge,
    before: before?.task ?? null,
    /** The homework that is changed, rather than set anew. */
    edited: isChanged ? before.id : null,
    due,
    days: isChanged ? null : DAYS
  };
};
