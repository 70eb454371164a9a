import { json } from '@sveltejs/kit';
import { thumbOf } from '$lib/app/try';
import { allLessons } from '$lib/course';
import type { LessonPictures } from '$lib/wire';

/** Written once, when the app is built: a phone would run the model for each. */
export const prerender = true;

/** Each lesson's first try as the model draws it, by the challenge's id. */
export function GET(): Response {
  const first = allLessons().flatMap(({ challenges: [challenge] }) => challenge ?? []);
  const pictures: LessonPictures = Object.fromEntries(
    first.map((challenge) => [challenge.id, thumbOf(challenge)])
  );
  return json(pictures);
}
