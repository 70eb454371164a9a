import { allLessons, findLesson, nameInOrder, type ToldLesson } from '$lib/course';
import { error, json } from '@sveltejs/kit';
import type { RequestHandler } from './$types';

/** Written once, when the app is built: a phone would fetch all lessons to show one, and check them all. */
export const prerender = true;

export const GET: RequestHandler = ({ params }) => {
  const lesson = findLesson(params.slug, allLessons());
  if (!lesson) error(404, `There’s no lesson "${params.slug}".`);
  const next = allLessons()[allLessons().indexOf(lesson) + 1];
  const told: ToldLesson = { lesson, next: next ? { id: next.id, name: nameInOrder(next) } : null };
  return json(told);
};
