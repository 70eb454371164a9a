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
  const again = searchParams.get('again');
  const before = again ? await assignmentOf(await database(), guide, again) : undefined;
  const due = daysAfter(timeNow(), DAYS).slice(0, 10);
  return { name: guide.name, challenge, before: before?.task ?? null, due };
};
