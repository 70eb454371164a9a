import { resolve } from '$app/paths';
import type { ShownRetrieve } from '$lib/app/water';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ fetch }) => {
  const answer = await fetch(resolve('/retrieves/shown.json'));
  // Checked when it was written.
  return { retrieves: (await answer.json()) as ShownRetrieve[] };
};
