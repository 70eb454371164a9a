import { resolve } from '$app/paths';
import type { ShownRetrieve } from '$lib/app/water';
import type { Units } from '$lib/scoring';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ fetch }) => {
  const [shown, said] = await Promise.all(
    [resolve('/retrieves/shown.json'), resolve('/compare/said.json')].map((path) => fetch(path))
  );
  // Checked when they were written.
  const retrieves = (await shown.json()) as ShownRetrieve[];
  return { retrieves, firstSaid: (await said.json()) as Record<Units, string> };
};
