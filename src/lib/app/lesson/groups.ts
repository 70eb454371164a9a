import type { Lesson } from '$lib/course';

export interface LessonGroup {
  readonly name: string;
  readonly says: string;
  readonly lessons: readonly Lesson[];
}

/** Each group ends before the lesson that begins the next: lessons keep the order of the course. */
const GROUPS = [
  { begins: 'safety', name: 'On shore', says: 'Read it before you go out.' },
  {
    begins: 'one-foot',
    name: 'Down there',
    says: 'How far, how deep, how heavy, how fast, and from where.'
  },
  { begins: 'the-clock', name: 'Off the bottom', says: 'Lifts by the clock, hops and falls.' },
  {
    begins: 'line-and-rod',
    name: 'What you feel',
    says: 'Line, bottoms, bites, snags and deep water.'
  },
  { begins: 'season-map', name: 'A day out', says: 'Season, mood, and all of it together.' }
] as const;

/** The lessons in groups, in their order: safety stands first, and the screen does not wait for it. */
export function groupsOf(lessons: readonly Lesson[]): LessonGroup[] {
  const groups = GROUPS.map(({ name, says }) => ({ name, says, lessons: [] as Lesson[] }));
  let at = 0;
  for (const lesson of lessons) {
    const begun = GROUPS.findIndex(({ begins }) => begins === lesson.id);
    if (begun > at) at = begun;
    groups[at].lessons.push(lesson);
  }
  return groups.filter((group) => group.lessons.length > 0);
}
