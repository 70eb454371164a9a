import { guideOfPage, timeNow } from '$lib/server/http';
import { daysAfter } from '$lib/server/retention';
import type { PageServerLoad } from './$types';

/** A week is proposed: who is not told a day begins on the eve of the next meeting. */
const DAYS = 7;

export const load: PageServerLoad = async (event) => {
  const { name } = await guideOfPage(event);
  const challenge = event.url.searchParams.get('challenge') ?? '';
  return { name, challenge, due: daysAfter(timeNow(), DAYS).slice(0, 10) };
};
