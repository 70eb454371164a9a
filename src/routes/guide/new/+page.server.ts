import { guideOfPage } from '$lib/server/http';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async (event) => {
  const { name } = await guideOfPage(event);
  return { name };
};
