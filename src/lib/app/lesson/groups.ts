import type { Lesson } from '$lib/course';

export interface LessonGroup {
  readonly name: string;
  readonly says: string;
  readonly lessons: readonly Lesson[];
}

/** Each group ends before the lesson that begins the next: lessons keep the order of the course. */
const GROUPS = [
  {
    begins: 'one-foot',
    name: 'Down there',
    says: 'How far, how slack, how deep, how heavy, how fast.'
  },
  { begins: 'the-clock', name: 'Off the bottom', says: 'Lifts by the clock, hops and falls.' },
  { begins: 'line-and-rod', name: 'What you feel', says: 'Line, bottoms, bites and snags.' },
  { begins: 'season-and-mood', name: 'A day out', says: 'Put together, and safe.' }
] as const;

/**
 * The lessons in groups, in their order. What has nothing to try, as the talk about safety, stands
 * with the day out: it is for before a real rod, not before the screen.
 */
export function groupsOf(lessons: readonly Lesson[]): LessonGroup[] {
  const groups = GROUPS.map(({ name, says }) => ({ name, says, lessons: [] as Lesson[] }));
  let at = 0;
  for (const lesson of lessons.filter(({ challenges }) => challenges.length > 0)) {
    const begun = GROUPS.findIndex(({ begins }) => begins === lesson.id);
    if (begun > at) at = begun;
    groups[at].lessons.push(lesson);
  }
  const talks = lessons.filter(({ challenges }) => challenges.length === 0);
  groups[groups.length - 1].lessons.unshift(...talks);
  return groups.filter((group) => group.lessons.length > 0);
}
