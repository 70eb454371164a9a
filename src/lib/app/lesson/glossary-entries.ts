import { allLessons, findLesson, glossary, type Lesson } from '$lib/course';

const lessons = allLessons();

export interface Entry {
  readonly term: string;
  /** Its place on the page: an address that can be given. */
  readonly id: string;
  readonly means: string;
  readonly lesson: Pick<Lesson, 'id' | 'order' | 'title'>;
}

/** The glossary with its lessons. Throws for a word whose lesson is not there. */
export const entries: readonly Entry[] = glossary().map(({ term, means, lesson: id }) => {
  const lesson = findLesson(id, lessons);
  if (!lesson) throw new Error(`glossary: no lesson ${id} for ${term}`);
  return { term, id: term.replaceAll(' ', '-'), means, lesson };
});
