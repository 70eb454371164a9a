import { resolve } from '$app/paths';
import * as v from 'valibot';
import { lessonPictures, type LessonPictures } from '$lib/wire';

let asked: Promise<LessonPictures> | null = null;

/** The lessons' pictures, which the build drew. Without them, plain water: the next page asks again. */
export function picturesOfLessons(): Promise<LessonPictures> {
  return (asked ??= fetchPictures().catch(() => {
    asked = null;
    return {};
  }));
}

async function fetchPictures(): Promise<LessonPictures> {
  const answer = await fetch(resolve('/lessons/pictures.json'));
  return v.parse(lessonPictures, await answer.json());
}
