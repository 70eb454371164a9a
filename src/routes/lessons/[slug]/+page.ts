import { resolve } from '$app/paths';
import type { ToldLesson } from '$lib/course';
import { error } from '@sveltejs/kit';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ params, fetch }) => {
  const answer = await fetch(resolve('/lessons/[slug]/lesson.json', params));
  if (!answer.ok) error(answer.status, `There’s no lesson "${params.slug}".`);
  // Checked when it was written, with all others.
  return (await answer.json()) as ToldLesson;
};
