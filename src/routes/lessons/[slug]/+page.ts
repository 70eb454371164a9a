import { findLesson } from '$lib/course';
import { error } from '@sveltejs/kit';
import { lessons } from '../lessons';
import type { EntryGenerator, PageLoad } from './$types';

export const entries: EntryGenerator = () => lessons.map(({ id }) => ({ slug: id }));

export const load: PageLoad = ({ params }) => {
  const lesson = findLesson(params.slug, lessons);
  if (!lesson) error(404, `There is no lesson "${params.slug}".`);
  const at = lessons.indexOf(lesson);
  return { lesson, next: lessons[at + 1] ?? null };
};
