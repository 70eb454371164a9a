import type { Challenge } from '../scoring';
import { findChallenge } from './find-challenge';
import { allLessons } from './load';

/** A challenge of all there are, by its id: for whoever fetches the lessons only when one is asked for. */
export function challengeOfAny(id: string): Challenge | undefined {
  return findChallenge(id, allLessons());
}
