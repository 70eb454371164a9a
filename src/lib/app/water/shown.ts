import { allLessons, findChallenge, type Lesson, type Retrieve, RETRIEVES } from '$lib/course';
import type { Challenge } from '$lib/scoring';

/** A retrieve with all that a page needs of it. */
export interface ShownRetrieve extends Omit<Retrieve, 'challenges'> {
  readonly challenges: readonly Challenge[];
  /** The lesson that teaches the plainest of them. */
  readonly lesson: Pick<Lesson, 'id' | 'order' | 'title'>;
}

/** For the build, which writes them down: a page would fetch and check all lessons for these few. */
export const shownRetrieves = (): ShownRetrieve[] =>
  RETRIEVES.map((retrieve) => {
    const challenges = retrieve.challenges.map(challengeOf);
    const lesson = allLessons().find((one) => one.challenges.includes(challenges[0]));
    if (!lesson) throw new Error(`retrieves: no lesson teaches ${retrieve.name}`);
    const { id, order, title } = lesson;
    return { ...retrieve, challenges, lesson: { id, order, title } };
  });

function challengeOf(id: string): Challenge {
  const challenge = findChallenge(id, allLessons());
  if (!challenge) throw new Error(`retrieves: there is no challenge ${id}`);
  return challenge;
}
