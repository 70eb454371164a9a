import { allLessons, findChallenge, type Lesson, type Retrieve, RETRIEVES } from '$lib/course';
import type { Challenge } from '$lib/scoring';

const lessons = allLessons();

/** A retrieve with all that the page needs of it. */
export interface ShownRetrieve extends Omit<Retrieve, 'challenges'> {
  readonly challenges: readonly Challenge[];
  /** The lesson that teaches the plainest of them. */
  readonly lesson: Lesson;
}

export const shownRetrieves: readonly ShownRetrieve[] = RETRIEVES.map((retrieve) => {
  const challenges = retrieve.challenges.map(challengeOf);
  const lesson = lessons.find((one) => one.challenges.includes(challenges[0]));
  if (!lesson) throw new Error(`retrieves: no lesson teaches ${retrieve.name}`);
  return { ...retrieve, challenges, lesson };
});

function challengeOf(id: string): Challenge {
  const challenge = findChallenge(id, lessons);
  if (!challenge) throw new Error(`retrieves: there is no challenge ${id}`);
  return challenge;
}

/** The challenge that an address names by its hash, or null. */
export function challengeAt(hash: string): string | null {
  const id = hash.replace(/^#/, '');
  return RETRIEVES.some(({ challenges }) => challenges.includes(id)) ? id : null;
}
