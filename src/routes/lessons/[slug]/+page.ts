import { allLessons, findLesson } from '$lib/course';
import { error } from '@sveltejs/kit';
import type { EntryGenerator, PageLoad } from './$types';

export const entries: EntryGenerator = () => allLessons().map(({ id }) => ({ slug: id }));

export const load: PageLoad = ({ params }) => {
  const lesson = findLesson(params.slug, allLessons());
  if (!lesson) error(404, `There’s no lesson "${params.slug}".`);
  const at = allLessons().indexOf(lesson);
  return { lesson, next: allLessons()[at + 1] ?? null };
};
